import type { DrawingScale } from '../../../templates/scales.js';
import { scaleCurve } from '../../lettering/place-curve.js';
import type { Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import { alignedViews } from '../compose/aligned-views.js';
import type { Block } from '../compose/block.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { DrawnView } from '../place/draw-view.js';
import { lettering, movedItems, textBox } from '../place/pieces.js';
import { unionOf } from '../place/plane.js';
import { viewPlan } from '../views/candidates.js';
import { orientationsRound } from '../views/orientation.js';
import type { ViewPlace, ViewPlan } from '../views/plan.js';

/** The outside views that show a part's size: a turned part is the same from above. */
export function outsidePlans(part: Part, solid: Solid, id: string): readonly ViewPlan[] {
  const round = orientationsRound(part.attitude.front, part.attitude.up);
  const places: readonly ViewPlace[] = part.attitude.kind === 'turned' ? ['front', 'right'] : ['front', 'right', 'above'];
  return places.map((place) => viewPlan(part, solid, { id: `${id}, ${place}`, title: place, place }, round[place]));
}

const titleHeight = 5;
const below = 4;

/** The outside of a part at a scale, with its name and its sizes over all: no dimension lines, for nothing is made from it. */
export function outsideBlock(plans: readonly ViewPlan[], id: string, name: string, scale: DrawingScale, angle: 'third' | 'first', unit: LengthUnit): Block {
  const views = alignedViews(plans.map((plan) => drawn(plan, scale.factor)), angle);
  const middle = (views.box.left + views.box.right) / 2;
  const front = plans[0]!.view.box;
  const side = plans[1]!.view.box;
  const size = (low: number, high: number): string => formatLength(high - low, unit, unit === 'in' ? 3 : 2);
  const overAll = `over all ${size(front.low[0], front.high[0])} x ${size(front.low[1], front.high[1])} x ${size(side.low[0], side.high[0])} ${unit}`;
  const title = lettering(id, 'label', [middle, views.box.bottom - below - titleHeight], name, { height: titleHeight, anchor: 'middle', style: 'bold' });
  const sizes = lettering(id, 'note', [middle, views.box.bottom - below - titleHeight - 6], overAll, { anchor: 'middle' });
  return { id, items: [...views.items, title, sizes], box: unionOf([views.box, textBox(title), textBox(sizes)]) };
}

function drawn(plan: ViewPlan, factor: number): DrawnView {
  const items = plan.view.curves
    .filter(({ visible }) => visible)
    .map(({ geometry, role }): Item => ({ kind: 'stroke', group: plan.id, role: role === 'edge' || role === 'silhouette' ? 'visible' : role, curve: scaleCurve(geometry, factor) }));
  const { low, high } = plan.view.box;
  const outline: PaperBox = { left: low[0] * factor, right: high[0] * factor, bottom: low[1] * factor, top: high[1] * factor };
  return { plan, scale: factor, items, outline, envelope: outline, texts: new Map(), failed: [] };
}

export const moved = (block: Block, by: readonly [number, number]): readonly Item[] => movedItems(block.items, by);
