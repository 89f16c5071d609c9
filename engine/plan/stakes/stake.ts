import type { Phrase } from '../../part/cut.js';

/** One way in which an operation can spoil the work. */
export interface Risk {
  /** As in "small tap", "cutter beside a wall". */
  readonly kind: string;
  /** Chance that it spoils the work, 0 to 1, for somebody who does this cut for the first time. */
  readonly chance: number;
  /** What makes it so here, with its figures. */
  readonly because: Phrase;
  readonly figures: Readonly<Record<string, number | string>>;
  /** Where chance and limit come from: "common practice", a handbook, or the shop file. */
  readonly source: string;
}

/** What stands at stake when an operation begins, and what a rehearsal of it is worth. Times in hours. */
export interface Stake {
  readonly operation: number;
  readonly risks: readonly Risk[];
  /** Chance that any of the risks comes true: 1 less the product of what each leaves. */
  readonly chance: number;
  /** Work that is in the part when this operation begins, hours; what a spoiled part costs is this and the material. */
  readonly hoursSoFar: number;
  /** This operation itself with its share of the set-up, hours. */
  readonly hoursHere: number;
  /** The material of the blank, as the hours that stand for it, and its mass. */
  readonly materialHours: number;
  readonly materialKilograms: number;
  /** chance x (hoursSoFar + hoursHere + materialHours): hours lost on average without a rehearsal. */
  readonly atStake: number;
  /** What a rehearsal of this operation alone would cost, hours: its blank, set-up and the cuts that it needs first. */
  readonly rehearsalCost: number;
  readonly worthRehearsing: boolean;
  /** Later operations with the very same risks, which a rehearsal of this one serves as well. */
  readonly alike: readonly number[];
  /** Hours at stake here and at those alike: what a rehearsal is weighed against. */
  readonly atStakeWithAlike: number;
  /** The earlier operation alike, whose rehearsal serves this one. */
  readonly rehearsedWith?: number;
  /** Why it cannot be rehearsed at all, where nothing in it is tricky. */
  readonly notRehearsed?: string;
}
