import type { Values } from '../../../engine/part/parameters.js';
import type { Relation, Side } from '../../../engine/part/relation.js';
import { overCorners } from '../../../engine/part/author/index.js';
import type { glandNutParameters } from './parameters.js';
import { coreOf } from './core.js';

const side = (text: string, value: number): Side => ({ text, value });

/** What must hold for the nut to exist and to be makeable. */
export function glandNutRelations(p: Values<typeof glandNutParameters>): readonly Relation[] {
  const length = (says: string, left: Side, is: Relation['is'], right: Side): Relation => ({ says, left, is, right, measure: 'length' });
  const groove = p.thread.major + p.grooveOver;
  const core = coreOf(p.thread);
  const bite = ((overCorners(p.flats) - p.cornerCircle) / 2) * Math.tan(Math.PI / 6);
  return [
    length('the flats keep a wall over the groove', side('groove and two walls', groove + 2 * p.wall), '<=', side('across flats', p.flats)),
    length('the shoulder presses on the packing', side('rod and two walls', p.rod + 2 * p.wall), '<=', side('bore of the thread', core)),
    length('an end stays beyond the shoulder', side('shoulder depth and two walls', p.shoulderDepth + 2 * p.wall), '<=', side('length over all', p.length)),
    length('the tap runs out in the groove', side('width of the groove', p.grooveWidth), '>=', side('a pitch and a half', 1.5 * p.thread.pitch)),
    length('the thread has four turns at least', side('mouth, groove and four pitches', p.mouthChamfer + p.grooveWidth + 4 * p.thread.pitch), '<=', side('shoulder depth', p.shoulderDepth)),
    length('the mouth is wider than the thread', side('bore and two chamfers', core + 2 * p.mouthChamfer), '>=', side('thread', p.thread.major)),
    length('the end face outside the mouth keeps a wall', side('bore, two chamfers and a wall', core + 2 * p.mouthChamfer + p.wall), '<=', side('circle of the corners', p.cornerCircle)),
    length('the circle of the corners lies inside the flats', side('circle of the corners', p.cornerCircle), '<=', side('across flats less 0.1 mm', p.flats - 0.1)),
    length('the chamfers leave flats to hold', side('three chamfers of the corners', 3 * bite), '<=', side('length over all', p.length)),
  ];
}
