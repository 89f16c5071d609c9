import type { Thread } from '../../trade/threads.js';
import type { CountParameter, Parameters } from '../parameters.js';
import type { ValuesByName } from './mend.js';

/** Nuts stand so many hexagons apart at least, for half a nut over its corners and half a box spanner: common practice. */
const PITCH_OF_FLATS = 1.33;

/** A row of screws worked out again: how many hold what exact scaling would, at which pitch, and whether that leaves room. */
export interface Row {
  readonly name: string;
  readonly pitchName: string;
  readonly count: number;
  readonly pitch: number;
  readonly least: number;
  readonly room: boolean;
  /** Stress area of all together against exact scaling, part of one, with the old count. */
  readonly short: number;
}

/**
 * The rows of screws whose threads came out so small that as many as before hold less than exact scaling would have: their
 * number follows from the stress areas, their pitch from the length of the row, which stays.
 * @param shortage from which on a row is looked at, part of one.
 */
export function rowsToCount(parameters: Parameters, before: ValuesByName, values: ValuesByName, factor: number, shortage: number): readonly Row[] {
  return Object.entries(parameters).flatMap(([name, parameter]): readonly Row[] => {
    const screws = parameter.kind === 'count' ? (parameter satisfies CountParameter).screws : undefined;
    if (screws === undefined) return [];
    const [old, thread] = [before[screws.thread] as Thread, values[screws.thread] as Thread];
    const [had, pitch] = [values[name] as number, values[screws.pitch] as number];
    const share = thread.stressArea / (factor ** 2 * old.stressArea);
    if (share >= 1 - shortage) return [];
    const count = Math.ceil(had / share - shortage / 2);
    const closer = (pitch * (had - 1)) / Math.max(1, count - 1);
    const least = PITCH_OF_FLATS * (thread.acrossFlats ?? 1.75 * thread.major);
    return [{ name, pitchName: screws.pitch, count, pitch: Math.round(closer * 1e6) / 1e6, least, room: closer >= least, short: 1 - share }];
  });
}
