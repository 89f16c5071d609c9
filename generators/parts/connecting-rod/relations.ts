import type { Values } from '../../../engine/part/parameters.js';
import type { Relation, Side } from '../../../engine/part/relation.js';
import type { connectingRodParameters } from './parameters.js';

const side = (text: string, value: number): Side => ({ text, value });

/** What must hold for the rod to exist, to bear its load and to be makeable. */
export function connectingRodRelations(p: Values<typeof connectingRodParameters>): readonly Relation[] {
  const length = (says: string, left: Side, is: Relation['is'], right: Side): Relation => ({ says, left, is, right, measure: 'length' });
  const cutter = p.fluteWidth / 2;
  const flutes = p.fluted === 'both sides' ? 2 : 1;
  const edge = p.shankHeight / 2;
  // Along the rod from a bore to where the fillet runs into the shank's edge.
  const standOff = (radius: number): number => Math.sqrt(Math.max(0, (radius + p.fillet) ** 2 - (edge + p.fillet) ** 2));
  const cupDepth = p.oilCup / 2;
  return [
    length('the bar is wide enough for the big end and a cleaning cut each side', side('bar width', p.barWidth), '>=', side('big end and 1 mm', 2 * p.bigRadius + 1)),
    length('the little end is no larger than the big end', side('radius of the little end', p.smallRadius), '<=', side('radius of the big end', p.bigRadius)),
    length('the big end leaves a wall about its bore', side('bore and two walls', p.bigBore + 2 * p.wall), '<=', side('big end', 2 * p.bigRadius)),
    length('the little end leaves a wall about its bore', side('bore and two walls', p.smallBore + 2 * p.wall), '<=', side('little end', 2 * p.smallRadius)),
    length('both bosses stand out from the shank', side('shank height and 1 mm', p.shankHeight + 1), '<=', side('little end', 2 * p.smallRadius)),
    length('the shank is longer than its fillets', side('fillets at both bosses and a big end', standOff(p.bigRadius) + standOff(p.smallRadius) + 2 * p.bigRadius), '<=', side('between centres', p.centres)),
    length('the shank is higher than the rod is thick', side('shank height', p.shankHeight), '>=', side('thickness', p.thickness)),
    length('a third of the thickness stays as web', side('thickness less the flutes', p.thickness - flutes * p.fluteDepth), '>=', side('a third of the thickness', p.thickness / 3)),
    length('the flutes leave flanges', side('flute width and two walls', p.fluteWidth + 2 * p.wall), '<=', side('shank height', p.shankHeight)),
    length('the flute stops short of the big end, by its cutter’s radius', side('big end to the flute, less its round end', p.fluteFromBig - cutter), '>=', side('radius of the big end and of the cutter', p.bigRadius + cutter)),
    length('the flute stops short of the little end, by its cutter’s radius', side('little end to the flute, less its round end', p.fluteFromSmall - cutter), '>=', side('radius of the little end and of the cutter', p.smallRadius + cutter)),
    length('the flute is longer than its ends are round', side('both ends of the flute and four cutters', p.fluteFromBig + p.fluteFromSmall + 4 * p.fluteWidth), '<=', side('between centres', p.centres)),
    length('the oil cups are wider than their holes', side('oil cup', p.oilCup), '>=', side('oil hole and 0.3 mm', p.oilHole.diameter + 0.3)),
    length('the oil cups leave walls in the thickness', side('oil cup and two walls', p.oilCup + 2 * Math.min(p.wall, p.thickness / 5)), '<=', side('thickness', p.thickness)),
    length('the oil cups stay above the bores', side('depth of the cup', cupDepth), '<=', side('wall about either bore', Math.min(p.bigRadius - p.bigBore / 2, p.smallRadius - p.smallBore / 2))),
  ];
}
