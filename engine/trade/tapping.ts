import { UserError } from '../units/user-error.js';
import { inchClearance, metricClearance } from './data/clearance-holes.js';
import { findDrill, nearestDrill, type Drill, type DrillChoice } from './drills.js';
import { holeForPercent, threadPercents, type ThreadPercent } from './thread-percent.js';
import type { Thread } from './thread.js';

export { threadPercent, threadPercents, type ThreadPercent } from './thread-percent.js';

export interface TappingDrill extends ThreadPercent {
  readonly drill: Drill;
  /** The same hole counted by the other customs. */
  readonly others: readonly ThreadPercent[];
  /** The hole asked for, before a drill was chosen, mm. */
  readonly ideal: number;
  /** Whether the hole lies within the minor diameters of the thread's nut class; undefined where it has no class. */
  readonly withinClass?: boolean;
}

/** Those of the drills at hand that leave a usable thread: none smaller than the core by a quarter pitch, none near the crest. */
const drillsFor = (thread: Thread): readonly Drill[] =>
  (thread.drillsAtHand ?? []).filter(({ diameter }) => diameter < thread.major - 0.1 * thread.pitch && diameter > thread.minorInternal - 0.25 * thread.pitch);

/**
 * The drill nearest to the hole that leaves `percent` of thread; counted on the usual basis of the thread's series. Where the thread knows the
 * drills at hand it is one of these, as far as one serves.
 * @throws UserError for a percentage outside 20 to 100, or where no drill is allowed by the choice.
 */
export function tappingDrill(thread: Thread, percent = 65, choice: DrillChoice = {}): TappingDrill {
  if (!(percent >= 20 && percent <= 100)) {
    throw new UserError(`engagement ${percent} is outside 20 to 100 per cent; 60 to 75 is usual.`);
  }
  const ideal = holeForPercent(thread, percent);
  const atHand = choice.from === undefined ? drillsFor(thread) : [];
  const drill = nearestDrill(ideal, { ...choice, ...(atHand.length === 0 ? {} : { from: atHand }), atMost: Math.min(choice.atMost ?? Infinity, thread.major - 0.1 * thread.pitch) });
  const [usual, ...others] = threadPercents(thread, drill.diameter);
  if (usual === undefined) throw new RangeError(`no basis for ${thread.designation}`);
  const nut = thread.classes.find(({ of }) => of === 'minorInternal');
  return {
    drill,
    ...usual,
    others,
    ideal,
    ...(nut === undefined ? {} : { withinClass: drill.diameter >= nut.min - 1e-6 && drill.diameter <= nut.max + 1e-6 }),
  };
}

export type ClearanceFit = 'close' | 'normal' | 'loose';

export interface ClearanceDrill {
  readonly drill: Drill;
  /** Play on the diameter, mm. */
  readonly clearance: number;
  readonly source: string;
}

/** Common practice where no standard lists the screw: D + 2 % + 0.03, D + 4 % + 0.06, D + 10 % + 0.06 mm, next drill up. */
const practice: Readonly<Record<ClearanceFit, readonly [part: number, more: number]>> = {
  close: [1.02, 0.03],
  normal: [1.04, 0.06],
  loose: [1.1, 0.06],
};

const column: Readonly<Record<ClearanceFit, 1 | 2 | 3>> = { close: 1, normal: 2, loose: 3 };

/** The drill for a hole that a screw passes: by ASME B18.2.8 or ISO 273 where they list it, else by common practice. */
export function clearanceDrill(thread: Thread, fit: ClearanceFit = 'normal', choice: DrillChoice = {}): ClearanceDrill {
  const listed = listedClearance(thread, fit);
  const [part, more] = practice[fit];
  const least = listed?.diameter ?? thread.major * part + more;
  const drill = listed !== undefined && choice.from === undefined && choice.series === undefined ? listed : nearestDrill(least, { ...choice, atLeast: least });
  const source = thread.series.startsWith('metric') ? 'ISO 273' : 'ASME B18.2.8';
  return {
    drill,
    clearance: drill.diameter - thread.major,
    source: listed === undefined ? `common practice: at least ${part} D + ${more} mm` : source,
  };
}

function listedClearance(thread: Thread, fit: ClearanceFit): Drill | undefined {
  if (thread.series.startsWith('metric')) {
    const row = metricClearance.find(([major]) => major === thread.major);
    return row === undefined ? undefined : findDrill(`${row[column[fit]]} mm`);
  }
  if (!thread.series.startsWith('unified')) return undefined;
  const row = inchClearance.find(([major]) => Math.abs(major * 25.4 - thread.major) < 1e-6);
  return row === undefined ? undefined : findDrill(row[column[fit]]);
}
