import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { DrawnView } from '../place/draw-view.js';
import { envelopeOf } from '../place/envelope.js';
import { arrowhead, lettering, stroke } from '../place/pieces.js';
import { unionOf } from '../place/plane.js';
import type { ViewPlace } from '../views/plan.js';
import type { Block } from './block.js';
import { labelledView } from './labelled.js';

/** Letters of views that stand out of their place; not those of sections, details or axes. */
const letters = ['U', 'V', 'W', 'G', 'H'];

/** Off the view, length and lettering of a reference arrow, mm (house values). */
const off = 3;
const shaft = 11;
const height = 5;

/** From where one looks, as a step away from the front view on paper; nothing for the rear, which is behind it. */
const from: Readonly<Partial<Record<ViewPlace | 'section', Vector2>>> = { above: [0, 1], below: [0, -1], right: [1, 0], left: [-1, 0] };

/**
 * Outside views as blocks of their own, for a sheet on which they find no room in line: each has a letter, and an arrow with
 * that letter at the front view shows which way one looks (ISO 128-3, reference arrow layout).
 */
export function viewsApart(views: readonly DrawnView[]): readonly Block[] {
  const front = views.find(({ plan }) => plan.place === 'front')!;
  const others = views.filter((view) => view !== front);
  const arrows = others.flatMap((view, i) => referenceArrow(front, view, letters[i]!));
  const items = [...front.items, ...arrows];
  const block: Block = { id: front.plan.id, items, box: unionOf([front.envelope, envelopeOf(items)]) };
  return [block, ...others.map((view, i) => labelledView(view, `${letters[i]!} (${view.plan.title})`))];
}

function referenceArrow(front: DrawnView, view: DrawnView, letter: string): readonly Item[] {
  const way = from[view.plan.place];
  if (way === undefined) return [];
  const { outline, envelope, plan } = front;
  const middle: Vector2 = [(outline.left + outline.right) / 2, (outline.bottom + outline.top) / 2];
  const edge = way[0] > 0 ? envelope.right : way[0] < 0 ? envelope.left : way[1] > 0 ? envelope.top : envelope.bottom;
  const at = (distance: number): Vector2 =>
    way[0] === 0 ? [middle[0], edge + way[1] * (off + distance)] : [edge + way[0] * (off + distance), middle[1]];
  const about = `view ${letter}`;
  const tail = at(shaft);
  return [
    stroke(plan.id, 'leader', tail, at(0), about),
    arrowhead(plan.id, 'leader', at(0), (Math.atan2(-way[1], -way[0]) * 180) / Math.PI, about),
    lettering(plan.id, 'label', way[0] === 0 ? [tail[0] + 2, tail[1] - height / 2] : [tail[0], tail[1] + 2], letter, {
      height,
      anchor: way[0] === 0 ? 'left' : 'middle',
      style: 'bold',
      about,
    }),
  ];
}
