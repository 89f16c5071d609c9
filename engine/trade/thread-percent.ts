import { UserError } from '../units/user-error.js';
import type { Thread } from './thread.js';

/** A thread percentage says nothing without the double depth on which it is counted. */
export interface ThreadPercent {
  readonly percent: number;
  /** What counts as 100 %: "1.299 P (three quarters of the sharp V)". */
  readonly basis: string;
}

interface Basis {
  readonly basis: string;
  /** Twice the depth that counts as 100 %, mm. */
  readonly doubleDepth: number;
}

/**
 * The customs for counting thread percentages, the usual one of the series first: American lists count 1.299 P
 * (handbook rule, 3/4 H twice), metric lists the screw's depth 1.2269 P (ISO 68-1) or the height of the nut's thread
 * 1.0825 P (5/8 H twice), Whitworth form 1.2807 P (BS 84), British Association 1.2 P (BS 93).
 */
export function percentBases(thread: Thread): readonly Basis[] {
  const { pitch, formAngle } = thread;
  if (formAngle === 55) return [{ basis: '1.2807 P (whole depth of Whitworth form)', doubleDepth: 1.280654 * pitch }];
  if (formAngle === 47.5) return [{ basis: '1.2 P (whole depth of British Association form)', doubleDepth: 1.2 * pitch }];
  if (thread.series === 'miniature') return [{ basis: '0.96 P (depth of the nut’s thread, ISO 1501)', doubleDepth: 0.96 * pitch }];
  const american = { basis: '1.299 P (three quarters of the sharp V)', doubleDepth: 1.299038 * pitch };
  const screw = { basis: '1.2269 P (depth of the screw thread)', doubleDepth: 1.226869 * pitch };
  const nut = { basis: '1.0825 P (five eighths of the sharp V)', doubleDepth: 1.082532 * pitch };
  return thread.series.startsWith('metric') ? [screw, american, nut] : [american, screw, nut];
}

/**
 * The percentage of thread that a hole of `holeDiameter` (mm) leaves: 100 (D - d) / double depth, with every custom that
 * the form has; the usual one of its series first.
 * @throws UserError where the hole is no smaller than the thread, or is nought.
 */
export function threadPercents(thread: Thread, holeDiameter: number): readonly ThreadPercent[] {
  if (!(holeDiameter > 0 && holeDiameter < thread.major)) {
    throw new UserError(`a hole of ${+holeDiameter.toFixed(4)} mm leaves no thread of ${thread.designation}: it must lie between nought and ${+thread.major.toFixed(4)} mm.`);
  }
  return percentBases(thread).map(({ basis, doubleDepth }) => ({ basis, percent: (100 * (thread.major - holeDiameter)) / doubleDepth }));
}

/** The percentage on the usual basis of the thread's series. */
export function threadPercent(thread: Thread, holeDiameter: number): ThreadPercent {
  const [first] = threadPercents(thread, holeDiameter);
  if (first === undefined) throw new RangeError(`no basis for ${thread.designation}`);
  return first;
}

/** The hole (mm) that leaves `percent` of thread on the usual basis of the series. */
export function holeForPercent(thread: Thread, percent: number): number {
  const [first] = percentBases(thread);
  return thread.major - ((first?.doubleDepth ?? 0) * percent) / 100;
}
