import type { Values } from '../../../engine/part/parameters.js';
import type { Relation, Side } from '../../../engine/part/relation.js';
import { tappingDrill } from '../../../engine/trade/tapping.js';
import type { forkParameters } from './parameters.js';

const side = (text: string, value: number): Side => ({ text, value });

/** Height of a 118 degree drill point on a diameter (drill point geometry). */
const point = (diameter: number): number => diameter / 2 / Math.tan((59 * Math.PI) / 180);

/** What must hold for the fork to exist and to be makeable. */
export function forkRelations(p: Values<typeof forkParameters>): readonly Relation[] {
  const length = (says: string, left: Side, is: Relation['is'], right: Side): Relation => ({ says, left, is, right, measure: 'length' });
  const prong = (p.bar - p.tongue) / 2;
  const root = p.pinPosition - p.rootBehind;
  const drill = tappingDrill(p.rodThread).drill.diameter;
  return [
    length('each prong is at least two fifths of the tongue', side('prong', prong), '>=', side('0.4 of the tongue', 0.4 * p.tongue)),
    length('the prong under the head of the pin keeps a wall', side('depth of the recess and a wall', p.headDepth + p.wall), '<=', side('prong', prong)),
    length('the head of the pin is wider than the pin', side('recess', p.headDiameter), '>=', side('pin and 0.4 mm', p.pinDiameter + 0.4)),
    length('the recess stays inside the fork’s round end', side('recess and two walls', p.headDiameter + 2 * p.wall), '<=', side('bar', p.bar)),
    length('the oil hole keeps half its diameter of metal on both sides', side('two oil holes', 2 * p.oilHole.diameter), '<=', side('prong under the recess', prong - p.headDepth)),
    length('the oil hole is smaller than the pin', side('oil hole', p.oilHole.diameter), '<=', side('half the pin', p.pinDiameter / 2)),
    length('the slot runs past the pin', side('pin axis to root', p.rootBehind), '>=', side('pin radius and a wall', p.pinDiameter / 2 + p.wall)),
    length('the exact width reaches past the pin', side('pin axis to the end of the exact width', p.finishBehind), '>=', side('pin radius', p.pinDiameter / 2)),
    length('the slot is deeper than its exact width', side('pin axis to the end of the exact width and 0.3 mm', p.finishBehind + 0.3), '<=', side('pin axis to root', p.rootBehind)),
    length('the slot may not stay narrower than the saw', side('saw', p.sawThickness), '<=', side('tongue less what may stay', p.tongue - p.roughUnder)),
    length('the saw reaches the root before its collar meets the fork', side('slot from the fork’s end and 1 mm', p.bar / 2 + p.rootBehind + 1), '<=', side('saw radius less collar radius', (p.sawDiameter - p.sawCollar) / 2)),
    length('the shank is turned out of the bar', side('shank and 0.4 mm', p.shankDiameter + 0.4), '<=', side('bar', p.bar)),
    length('the shank keeps a wall round the thread', side('thread, two chamfers and two walls', p.rodThread.major + 2 * (p.shankChamfer + p.wall)), '<=', side('shank', p.shankDiameter)),
    length('the chamfer is shorter than the shank', side('chamfer', p.shankChamfer), '<', side('half the shank length', p.shankLength / 2)),
    length('the hole is drilled below its thread, by two pitches at least', side('drilled depth', p.drillDepth), '>=', side('thread depth and two pitches', p.threadDepth + 2 * p.rodThread.pitch)),
    length('metal stays between the drilled hole and the slot', side('drilled depth with its point and a wall', p.drillDepth + point(drill) + p.wall), '<=', side('shank end to root', root)),
    length('the thread holds for a diameter at least', side('thread depth', p.threadDepth), '>=', side('thread', p.rodThread.major)),
    length('the body behind the slot can be held', side('shank length and a third of the bar', p.shankLength + p.bar / 3), '<=', side('shank end to root', root)),
  ];
}
