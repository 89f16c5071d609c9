import type { CountersinkSize, HoleSize } from '../../../part/cut.js';
import { cutMinutes, drillPoint } from '../../../trade/cut-minutes.js';
import { handlingMinutes } from '../../data/handling.js';
import { overrun, turnsUnknown } from '../../data/passes.js';
import { holeSizes } from '../../hole-places.js';
import type { CutterPlan } from '../../speeds.js';
import type { OperationFacts } from '../facts.js';
import { holeLength, middleFeed } from './turning.js';

/** Of so many holes, those that count where no more than some are done. */
export const places = (points: readonly unknown[], most: number): number => Math.min(points.length, most);

const holesOf = (facts: OperationFacts): readonly HoleSize[] => holeSizes(facts.operation).filter((size): size is HoleSize => size.kind === 'hole');

/** To find each place and spot it; on a lathe the place is there. */
export function placingMinutes({ setUp, machine }: OperationFacts, count: number): number {
  const find = setUp.machine === 'lathe' ? 0 : machine?.readout === true ? handlingMinutes.holeByReadout : handlingMinutes.holeByDials;
  return count * (find + handlingMinutes.spot);
}

/** Full-diameter depth of a hole, mm; of the metal that it takes where it goes through. */
export const depthOf = (facts: OperationFacts, size: HoleSize): number => size.depth?.value ?? holeLength(facts, size.diameter.value, size.points.length);

/** Drilling: place and spot, down at the middle feed with the point, up to clear the chips. */
export function drillingMinutes(facts: OperationFacts, cutter: CutterPlan, most: number): number {
  const turns = cutter.speed ?? turnsUnknown;
  return holesOf(facts).filter(({ finish }) => finish === 'drilled' || finish === 'reamed').reduce((minutes, size) => {
    const diameter = cutter.diameter ?? size.diameter.value;
    const count = places(size.points, most);
    const depth = depthOf(facts, size);
    const down = cutMinutes({ length: depth + drillPoint(diameter, size.pointAngle < 180 ? size.pointAngle : 118), overrun: overrun / 2, feed: middleFeed('drilling', diameter), turns });
    return minutes + placingMinutes(facts, count) + count * (down + handlingMinutes.peck * Math.ceil(depth / diameter));
  }, 0);
}

export function reamingMinutes(facts: OperationFacts, cutter: CutterPlan, most: number): number {
  const turns = cutter.speed ?? turnsUnknown;
  return holesOf(facts).filter(({ finish }) => finish === 'reamed').reduce((minutes, size) => {
    const diameter = size.diameter.value;
    // In at the feed and out again still turning.
    return minutes + places(size.points, most) * 2 * cutMinutes({ length: depthOf(facts, size), overrun: overrun + diameter, feed: middleFeed('reaming', diameter), turns });
  }, 0);
}

/** Mouths of holes, cut by hand. */
export function mouthMinutes(facts: OperationFacts, kind: CountersinkSize['kind'] | 'counterbore', most: number): number {
  const sizes = holeSizes(facts.operation).filter((size) => size.kind === kind);
  const count = sizes.reduce((sum, { points }) => sum + places(points, most), 0);
  return count * (kind === 'countersink' ? handlingMinutes.countersink : handlingMinutes.counterbore) + (facts.setUp.machine === 'lathe' ? 0 : placingMinutes(facts, count));
}
