import type { PrintRecord } from '../print-record.js';

/** What a finding says, with its figures; lengths mm. */
export interface RecordedFinding {
  readonly check: string;
  readonly operation: number;
  readonly gravity: 'fatal' | 'warning' | 'remark';
  readonly figures: Readonly<Record<string, number | string>>;
  readonly sentence: string;
  readonly source: string;
}

/** What stands at stake at an operation, hours and chances from 0 to 1. */
export interface RecordedStake {
  readonly operation: number;
  readonly chance: number;
  readonly risks: readonly { readonly kind: string; readonly chance: number; readonly because: string; readonly figures: Readonly<Record<string, number | string>>; readonly source: string }[];
  readonly hoursSoFar: number;
  readonly hoursHere: number;
  readonly materialHours: number;
  readonly materialKilograms: number;
  readonly atStake: number;
  /** With the operations alike, which one rehearsal serves. */
  readonly atStakeWithAlike: number;
  readonly alike: readonly number[];
  readonly rehearsedWith: number | null;
  readonly rehearsalCost: number;
  readonly worthRehearsing: boolean;
  readonly notRehearsed: string | null;
}

type PrintedOperation = PrintRecord['operations'][number];

/** An operation as the plan has it: volumes mm3 as the facets have them. */
export interface PlannedOperation extends PrintedOperation {
  readonly volume: { readonly before: number; readonly removed: number; readonly left: number };
  /** From where the cutter comes; null where none does. */
  readonly cutterFrom: string | null;
  readonly hold: string;
  readonly pack: string;
  /** What is measured, with boxes as lines. */
  readonly readings: readonly string[];
}

/** What a plan says, for programs and checks. */
export interface PlanRecord {
  readonly format: 'trialpiece plan record';
  readonly version: 1;
  readonly part: string;
  readonly title: string;
  readonly hand: 'right' | 'left' | 'none';
  readonly units: 'in' | 'mm';
  readonly paper: PrintRecord['paper'];
  readonly sheets: PrintRecord['sheets'];
  readonly setUps: readonly (PrintRecord['setUps'][number] & { readonly grip: { readonly kind: string; readonly between: readonly [string, string] } | null })[];
  readonly operations: readonly PlannedOperation[];
  /** Stock, all that is removed, and what is left; mm3. */
  readonly volumes: { readonly stock: number; readonly removed: number; readonly part: number };
  readonly findings: readonly RecordedFinding[];
  readonly stops: readonly { readonly operation: number; readonly when: 'before' | 'after'; readonly kind: 'measure' | 'no return'; readonly sentence: string }[];
  readonly stakes: readonly RecordedStake[];
  readonly checks: PrintRecord['checks'];
}
