import type { Values } from '../../../engine/part/parameters.js';
import type { Relation, Side } from '../../../engine/part/relation.js';
import { tappingDrill } from '../../../engine/trade/tapping.js';
import type { crossheadAndPin } from '../../mates/crosshead-and-pin.js';
import type { crossheadParameters } from './parameters.js';

type CrossheadValues = Values<typeof crossheadParameters & typeof crossheadAndPin>;

const side = (text: string, value: number): Side => ({ text, value });

/** Height of a 118 degree drill point on a diameter: 0.3004 of it (drill point geometry). */
const point = (diameter: number): number => diameter / 2 / Math.tan((59 * Math.PI) / 180);

/** What must hold for the part to exist and to be makeable. */
export function crossheadRelations(p: CrossheadValues): readonly Relation[] {
  const length = (says: string, left: Side, is: Relation['is'], right: Side): Relation => ({ says, left, is, right, measure: 'length' });
  const padEnd = p.padFirst + p.padPitch * (p.padCount - 1);
  const padRadius = p.padThread.major / 2;
  const rodDrill = tappingDrill(p.rodThread).drill.diameter;
  const lugDrill = tappingDrill(p.lugThread).drill.diameter;
  const padDrill = tappingDrill(p.padThread).drill.diameter;
  const lugHoleZ = p.length - p.lugLength / 2;
  const bevelDepth = (p.bevelStart - p.bossLength) * Math.tan((p.bevelAngle * Math.PI) / 180);
  const nearestPad = Math.min(...Array.from({ length: p.padCount }, (_, i) => Math.abs(p.padFirst + i * p.padPitch - p.pinPosition)));
  const padTip = p.grooveSpan / 2 - p.padDrillDepth - point(padDrill);
  const padToBore = Math.hypot(padTip, nearestPad) - p.pinDiameter / 2;
  return [
    length('the bar is wide enough for body, lug and a cleaning cut each side', side('bar width', p.barWidth), '>=', side('body width and lug and 0.5 mm', p.bodyWidth + p.lugProud + 0.5)),
    length('the boss clears the slide bars', side('boss diameter', p.bossDiameter), '<=', side('span between groove floors', p.grooveSpan)),
    length('the boss stands inside the body', side('boss diameter and fillets', p.bossDiameter + 2 * p.bossFillet), '<=', side('body width', p.bodyWidth)),
    length('the register leaves a wall in the boss', side('register diameter and two walls', p.registerDiameter + 2 * p.wall), '<=', side('boss diameter less chamfers', p.bossDiameter - 2 * p.bossChamfer)),
    length('the register is wider than the thread', side('register diameter', p.registerDiameter), '>=', side('thread diameter', p.rodThread.major)),
    length('the register is shallower than the thread is deep', side('register depth', p.registerDepth), '<', side('thread depth', p.rodThreadDepth)),
    length('the drill goes deeper than the thread, by two pitches at least', side('drilled depth', p.rodDrillDepth), '>=', side('thread depth and two pitches', p.rodThreadDepth + 2 * p.rodThread.pitch)),
    length('metal stays between the rod hole and the pocket', side('rod hole with its point and a wall', p.rodDrillDepth + point(rodDrill) + p.wall), '<=', side('front face to pocket floor', p.pocketFloor)),
    length('the body is longer than the boss', side('boss length and fillet', p.bossLength + p.bossFillet), '<', side('front face to pocket floor', p.pocketFloor)),
    length('the groove floors lie inside the bar', side('span between groove floors and twice 0.5 mm', p.grooveSpan + 1), '<=', side('body height', p.bodyHeight)),
    length('the grooves leave a land on each side', side('groove width and two walls', p.grooveWidth + 2 * p.wall), '<=', side('body width', p.bodyWidth)),
    length('a web stays between pocket and grooves', side('pocket height and two walls', p.pocketHeight + 2 * p.wall), '<=', side('span between groove floors', p.grooveSpan)),
    length('the pocket’s corners fit its width', side('two corner radii', 2 * p.pocketCorner), '<=', side('pocket width', p.pocketWidth)),
    length('the pocket’s corners fit its height', side('two corner radii', 2 * p.pocketCorner), '<', side('pocket height', p.pocketHeight)),
    length('the pocket runs behind the pin', side('front face to pocket floor and pin radius', p.pocketFloor + p.pinDiameter / 2), '<', side('pin position', p.pinPosition)),
    length('the pin lies inside the body', side('pin position, head radius and a wall', p.pinPosition + p.headDiameter / 2 + p.wall), '<=', side('length over all', p.length)),
    length('the pin leaves webs in the pocket', side('pin diameter', p.pinDiameter), '<', side('pocket height', p.pocketHeight)),
    length('the pin head is larger than the pin', side('head diameter', p.headDiameter), '>=', side('pin diameter and 0.5 mm', p.pinDiameter + 0.5)),
    length('the pin’s seat stays within its cheek', side('depth of the seat', (p.headDiameter - p.pinDiameter) / 2 + p.wall), '<=', side('cheek thickness', (p.bodyWidth - p.pocketWidth) / 2)),
    length('the pin’s seat stays clear of the lug', side('pin position and head radius', p.pinPosition + p.headDiameter / 2), '<=', side('front of the lug', p.length - p.lugLength)),
    length('the pin’s seat stays clear of the bevel', side('start of the bevels', p.bevelStart), '<=', side('pin position less head radius', p.pinPosition - p.headDiameter / 2)),
    length('the pin’s seat stays inside the bar', side('head diameter and two walls', p.headDiameter + 2 * p.wall), '<=', side('span between groove floors', p.grooveSpan)),
    length('the bevels begin behind the shoulder', side('start of the bevels', p.bevelStart), '>', side('boss length', p.bossLength)),
    length('the bevels end outside the boss', side('boss radius and fillet', p.bossDiameter / 2 + p.bossFillet), '<=', side('half body width less bevel', p.bodyWidth / 2 - bevelDepth)),
    length('the bevels leave the groove walls', side('half groove width and a wall', p.grooveWidth / 2 + p.wall), '<=', side('half body width less bevel', p.bodyWidth / 2 - bevelDepth)),
    length('the pad screws begin inside the body', side('first pad screw less thread radius and a wall', p.padFirst - padRadius - p.wall), '>=', side('boss length', p.bossLength)),
    length('the pad screws end inside the body', side('last pad screw, thread radius and a wall', padEnd + padRadius + p.wall), '<=', side('length over all', p.length)),
    length('the pad screws stand a wall apart', side('pad pitch', p.padPitch), '>=', side('thread and two walls', p.padThread.major + 2 * p.wall)),
    length('the pad rows clear the pocket', side('half row spacing less thread radius', p.padRowSpacing / 2 - padRadius), '>=', side('half pocket width and a wall', p.pocketWidth / 2 + p.wall)),
    length('the pad rows clear the groove walls', side('half row spacing and thread radius and a wall', p.padRowSpacing / 2 + padRadius + p.wall), '<=', side('half groove width', p.grooveWidth / 2)),
    length('the pad holes are drilled below their thread', side('drilled depth', p.padDrillDepth), '>=', side('thread depth and two pitches', p.padThreadDepth + 2 * p.padThread.pitch)),
    length('the pad holes of one groove stay clear of those of the other', side('twice the drilled depth with its point, and a wall', p.grooveSpan - 2 * padTip + p.wall), '<=', side('span between groove floors', p.grooveSpan)),
    length('the pad holes stay clear of the cross bore', side('wall between them', padToBore), '>=', side('least wall', p.wall)),
    length('the oil hole enters on the land', side('oil hole offset less radius and a wall', p.oilHoleOffset - p.oilHole.diameter / 2 - p.wall), '>=', side('half groove width', p.grooveWidth / 2)),
    length('the oil hole stays inside the cheek', side('oil hole offset and radius and a wall', p.oilHoleOffset + p.oilHole.diameter / 2 + p.wall), '<=', side('half body width less depth of the pin’s seat', p.bodyWidth / 2 - (p.headDiameter - p.pinDiameter) / 2)),
    length('the oil hole is smaller than the cross bore', side('oil hole', p.oilHole.diameter), '<=', side('half the pin diameter', p.pinDiameter / 2)),
    length('the lug stays inside the body’s height', side('lug drop and half its height', p.lugDrop + p.lugHeight / 2), '<=', side('half body height', p.bodyHeight / 2)),
    length('the lug screw leaves a wall along the lug', side('thread and two walls', p.lugThread.major + 2 * p.wall), '<=', side('lug length', p.lugLength)),
    length('the lug screw leaves a wall across the lug', side('thread and two walls', p.lugThread.major + 2 * p.wall), '<=', side('lug height', p.lugHeight)),
    length('the lug screw hole is drilled below its thread', side('drilled depth', p.lugDrillDepth), '>=', side('thread depth and two pitches', p.lugThreadDepth + 2 * p.lugThread.pitch)),
    length('the lug screw hole leaves a wall to the pocket', side('drilled depth with its point and a wall', p.lugDrillDepth + point(lugDrill) + p.wall), '<=', side('cheek thickness and lug', (p.bodyWidth - p.pocketWidth) / 2 + p.lugProud)),
    length('the lug screw stands behind the pin', side('pin position and pin radius and a wall', p.pinPosition + p.pinDiameter / 2 + p.wall), '<=', side('lug screw less thread radius', lugHoleZ - p.lugThread.major / 2)),
  ];
}
