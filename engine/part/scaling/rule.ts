import type { Drill } from '../../trade/drills.js';
import type { Thread } from '../../trade/threads.js';
import type { Parameter } from '../parameters.js';
import type { SeriesAsked } from './series.js';

export type ParameterValue = number | string | Thread | Drill;

/** What a rule looks at: one parameter, its value, and by how much the part grows. */
export interface RuleTask<P extends Parameter = Parameter> {
  readonly name: string;
  readonly parameter: P;
  readonly value: ParameterValue;
  readonly factor: number;
  /** The series of threads asked for; each thread's own if not given. */
  readonly series: SeriesAsked | undefined;
}

/** What a rule makes of it. */
export interface Outcome {
  readonly value: ParameterValue;
  /** Exactly scaled, mm, degrees or a count. */
  readonly exact: number;
  readonly rule: string;
  readonly because: string;
  readonly source: string;
  readonly half?: number;
  readonly knockOn?: readonly string[];
  readonly decision?: string;
  /** Set where nothing can be made of it at this size. */
  readonly cannot?: string;
}

/** Lengths are kept to the millionth of a millimetre: less than any figure that is printed, and enough to come back exactly. */
export const exactly = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/** The size of a value by which limits, lists and relations judge it; undefined for a word. */
export function sizeOf(value: ParameterValue): number | undefined {
  if (typeof value === 'number') return value;
  if (typeof value === 'string') return undefined;
  return 'major' in value ? value.major : value.diameter;
}

export const nameOf = (value: ParameterValue): string | undefined => (typeof value === 'number' ? undefined : typeof value === 'string' ? value : 'major' in value ? value.designation : value.name);
