import { holderAcross, jobberDrills, lengthIn, longEndMills, shankSeen, shortEndMills } from '../data/cutter-lengths.js';
import type { Finding } from '../finding.js';
import { besideOf } from './beside.js';
import { acrossRound, commonPractice, figureOf, frameOf, mm, type Check } from './context.js';
import { endMillOf } from './cutters.js';
import { drillings } from './drillings.js';
import { ownWallHeight } from './own-walls.js';
import { place } from './placed.js';

/**
 * Whether holder or chuck stay clear of the work when the cutter stands at the bottom of its cut. What stands beside it is
 * taken from the edge of the cut, to which a cutter comes no nearer than by its rim.
 */
export const holderRoom: Check = (context, state) => {
  const { part } = context;
  const { operation, setUp, after } = state;
  if (setUp.machine !== 'mill' && setUp.machine !== 'drill') return [];
  const finding = (figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'cutter reach', operation: operation.number, gravity: 'warning', figures, sentence, source: commonPractice });
  const nameOf = (id: string): string => (id === 'stock' ? 'the bar' : part.operations.flatMap(({ cuts }) => cuts).find((cut) => cut.id === id)?.name ?? id);
  const found: Finding[] = [];
  const mill = endMillOf(context, state);
  const drilled = drillings(context, state);
  const drill = mill === undefined ? Math.min(Infinity, ...drilled.map(({ size }) => size.diameter.value)) : Infinity;
  const diameter = mill ?? drill;
  if (!Number.isFinite(diameter)) return [];
  const [across, flute, seen] = mill === undefined ? [holderAcross.drill, lengthIn(jobberDrills, drill), shankSeen.drill] : [holderAcross.mill, lengthIn(/long/i.test(operation.cutter.name) ? longEndMills : shortEndMills, mill), shankSeen.mill];
  const stickOut = flute + seen;
  // A hole is counted from its mouth: the drill stands deeper than that by its depth when it is done.
  const depth = mill === undefined ? Math.max(0, ...drilled.flatMap(({ metal }) => metal.map((each) => each.depth))) : 0;
  const neighbours = besideOf(part, state, across / 2).filter(({ distance }) => distance + diameter / 2 < across / 2);
  const worst = [...neighbours].sort((a, b) => b.height - a.height)[0];
  if (worst !== undefined && worst.height + depth > stickOut)
    found.push(finding({ height: figureOf(worst.height), depth: figureOf(depth), distance: worst.distance, stickOut: figureOf(stickOut), holder: across }, `The ${mill === undefined ? 'chuck' : 'holder'} would strike ${nameOf(worst.what.cut)}, which stands `, mm(worst.height), ' above the cut, ', mm(worst.distance), ' beside it: the cutter must stick out ', mm(worst.height + depth + 1), ', and a usual one does ', mm(stickOut)));
  if (mill !== undefined) {
    const placed = place(after, frameOf(context, state));
    const wall = Math.max(0, ...operation.cuts.map((cut) => ownWallHeight(placed, cut)));
    if (wall > stickOut && mill < across) found.push(finding({ depth: figureOf(wall), stickOut: figureOf(stickOut), holder: across }, 'The holder would strike the rim of its own cut, which is ', mm(wall), ' deep: the cutter must stick out ', mm(wall + 1), ', and a usual one ', acrossRound(mill), ' does ', mm(stickOut)));
  }
  return found;
};
