import type { Values } from '../../../engine/part/parameters.js';
import type { Relation, Side } from '../../../engine/part/relation.js';
import type { expansionLinkParameters } from './parameters.js';
import { sagAt } from './sag.js';

/** A rail beside the slot is at least so much of the slot's width (common practice in valve gear). */
export const leastRail = 0.6;

const side = (text: string, value: number): Side => ({ text, value });

/** What must hold for the link to exist, to work and to be makeable. */
export function expansionLinkRelations(p: Values<typeof expansionLinkParameters>): readonly Relation[] {
  const length = (says: string, left: Side, is: Relation['is'], right: Side): Relation => ({ says, left, is, right, measure: 'length' });
  const rail = p.endRadius - p.slotWidth / 2;
  const slotTip = p.slotLength / 2 + p.slotWidth / 2;
  const headDepth = (p.screwHead - p.bracketHole) / 2;
  return [
    length('the slot is longer than its ends are round', side('between the middles of the ends', p.slotLength), '>=', side('slot width', p.slotWidth)),
    length('the slot ends beyond the travel of the die block', side('half the length between the ends', p.slotLength / 2), '>=', side('block travel, half a block and its clearance', p.blockTravel + p.blockLength / 2 + p.endClearance)),
    length('the die block is longer than wide', side('block length', p.blockLength), '>=', side('slot width', p.slotWidth)),
    length('the rails beside the slot are stout', side('rail', rail), '>=', side(`${leastRail} of the slot width`, leastRail * p.slotWidth)),
    length('the bracket screws stand a rail from the slot', side('half the bracket span', p.bracketSpan / 2), '>=', side('end of the slot, a rail and half a screw head', slotTip + rail + p.screwHead / 2)),
    length('the tail pin stands clear of the bracket screw', side('trunnion line to tail pin', p.tailDrop), '>=', side('bracket screw, half its head, a wall and half the pin', p.bracketSpan / 2 + p.screwHead / 2 + p.wall + p.tailHole / 2)),
    length('the tail pin leaves a wall in the end', side('tail pin hole and two walls', p.tailHole + 2 * p.wall), '<=', side('width of the link', 2 * p.endRadius)),
    length('the screw heads leave a wall in the end', side('screw head and two walls', p.screwHead + 2 * p.wall), '<=', side('width of the link', 2 * p.endRadius)),
    length('the screw heads are larger than the screws', side('screw head', p.screwHead), '>=', side('bracket hole and 0.4 mm', p.bracketHole + 0.4)),
    length('the countersinks leave half the thickness to the screws', side('depth of the countersink', headDepth), '<=', side('half the thickness', p.thickness / 2)),
    length('the link curves gently', side('twice the tail’s height', 2 * p.tailDrop), '<=', side('radius of the slot', p.radius)),
    length('the radius is larger than the link is wide', side('four end radii', 4 * p.endRadius), '<=', side('radius of the slot', p.radius)),
    length('the plate is wide enough for the curved link', side('width of the link, its sag and 0.5 mm', 2 * p.endRadius + sagAt(p.radius, p.tailDrop) + 0.5), '<=', side('width of the plate', p.barWidth)),
    length('the plate lies flat', side('thickness', p.thickness), '<=', side('width of the link', 2 * p.endRadius)),
  ];
}
