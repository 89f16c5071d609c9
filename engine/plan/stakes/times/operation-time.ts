import { handlingMinutes, otherUncutMinutes, uncutMinutes } from '../../data/handling.js';
import { closeFrom } from '../../data/stake-limits.js';
import type { CutterPlan } from '../../speeds.js';
import { closestTolerance } from '../tolerances.js';
import type { OperationFacts } from '../facts.js';
import { drillingMinutes, mouthMinutes, reamingMinutes } from './holes.js';
import { millingMinutes, slittingMinutes } from './milling.js';
import { screwCuttingMinutes, tappingMinutes, threadingMinutes } from './threads.js';
import { boringMinutes, facingMinutes, partingMinutes, turningMinutes } from './turning.js';

/** Where the minutes of an operation come from. */
export interface OperationTime {
  /** Without the set-up. */
  readonly minutes: number;
  readonly cutting: number;
  readonly handling: number;
  readonly source: 'estimate' | 'part' | 'shop file';
}

/**
 * How long an operation takes, without its set-up: as the shop file or the part says, else cutting by the plan's speeds and
 * feeds and handling by the table.
 * @param most of a group of like holes no more than so many are counted.
 */
export function operationTime(facts: OperationFacts, most = Infinity): OperationTime {
  const { operation, part, shop, cutters } = facts;
  const told = shop.times?.[part.name]?.[String(operation.number)];
  const given = told ?? operation.minutes;
  const cutting = cutters.reduce((sum, cutter) => sum + cuttingMinutes(facts, cutter, most), 0);
  const handling = handlingOf(facts);
  // Of what is told for the whole, a few of its holes take their part as estimated.
  if (given !== undefined) {
    const whole = cutters.reduce((sum, cutter) => sum + cuttingMinutes(facts, cutter, Infinity), 0) + handling;
    const minutes = whole === 0 ? given : (given * (cutting + handling)) / whole;
    return { minutes, cutting: minutes, handling: 0, source: told === undefined ? 'part' : 'shop file' };
  }
  return { minutes: cutting + handling, cutting, handling, source: 'estimate' };
}

function cuttingMinutes(facts: OperationFacts, cutter: CutterPlan, most: number): number {
  switch (cutter.kind) {
    case 'facing':
      return facingMinutes(facts, cutter);
    case 'turning':
      return turningMinutes(facts, cutter);
    case 'boring':
      return boringMinutes(facts, cutter);
    case 'parting':
      return partingMinutes(facts, cutter);
    case 'chamfering':
      return handlingMinutes.chamfer;
    case 'centring':
      return handlingMinutes.centre;
    case 'drilling':
      return drillingMinutes(facts, cutter, most);
    case 'reaming':
      return reamingMinutes(facts, cutter, most);
    case 'tapping':
      return tappingMinutes(facts, most);
    case 'threading':
      return threadingMinutes(facts);
    case 'countersinking':
      return mouthMinutes(facts, 'countersink', most);
    case 'counterboring':
      return mouthMinutes(facts, 'counterbore', most);
    case 'screw-cutting':
      return screwCuttingMinutes(facts);
    case 'sawing':
      return slittingMinutes(facts);
    case 'milling':
      return millingMinutes(facts, cutter);
  }
}

/** Reading, cleaning, putting cutters in, measuring; on the bench, and where nothing is cut, the work itself. */
function handlingOf({ operation, cutters, part }: OperationFacts): number {
  const close = (closestTolerance(part, operation) ?? Infinity) < closeFrom;
  const checks = (operation.check ?? []).length > 0 ? handlingMinutes.check * (close ? 2 : 1) : 0;
  const uncut = cutters.length > 0 ? 0 : (uncutMinutes.find(([words]) => words.test(operation.title))?.[1] ?? otherUncutMinutes);
  return handlingMinutes.operation + checks + cutters.length * handlingMinutes.cutter + uncut;
}
