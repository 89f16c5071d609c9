import type { Vector2 } from '../../geometry/vector.js';
import type { DrawnView } from '../place/draw-view.js';
import { house } from '../place/house.js';
import { movedItems } from '../place/pieces.js';
import { boxesMeet, grown, movedBox, unionOf } from '../place/plane.js';
import type { ViewPlace } from '../views/plan.js';
import type { Block } from './block.js';

export interface AlignedViews extends Block {
  /** Where each view's own origin stands in the block. */
  readonly origins: ReadonlyMap<string, Vector2>;
}

/**
 * The outside views round the front view, in line with it: in third angle a view stands on the side from which it is seen,
 * in first angle on the other (ISO 128-3).
 */
export function alignedViews(views: readonly DrawnView[], angle: 'third' | 'first'): AlignedViews {
  const front = views.find((view) => view.plan.place === 'front');
  if (front === undefined) throw new RangeError('a print needs a front view');
  const origins = new Map<string, Vector2>([[front.plan.id, [0, 0]]]);
  const boxes = [front.envelope];
  const swap: Readonly<Record<string, ViewPlace>> = { right: 'left', left: 'right', above: 'below', below: 'above' };
  const order: readonly ViewPlace[] = ['right', 'left', 'above', 'below', 'rear'];
  for (const seen of order) {
    const view = views.find((each) => each.plan.place === seen);
    if (view === undefined) continue;
    const side = angle === 'third' || seen === 'rear' ? seen : swap[seen]!;
    const gap = house.betweenViews;
    let offset: Vector2;
    if (side === 'right') offset = [front.envelope.right + gap - view.envelope.left, 0];
    else if (side === 'left') offset = [front.envelope.left - gap - view.envelope.right, 0];
    else if (side === 'above') offset = [0, front.envelope.top + gap - view.envelope.bottom];
    else if (side === 'below') offset = [0, front.envelope.bottom - gap - view.envelope.top];
    else offset = [Math.max(...boxes.map((box) => box.right)) + gap - view.envelope.left, 0];
    const step: Vector2 = side === 'right' || side === 'rear' ? [2, 0] : side === 'left' ? [-2, 0] : side === 'above' ? [0, 2] : [0, -2];
    let box = movedBox(view.envelope, offset);
    while (boxes.some((other) => boxesMeet(grown(box, gap - 0.01), other))) {
      offset = [offset[0] + step[0], offset[1] + step[1]];
      box = movedBox(view.envelope, offset);
    }
    origins.set(view.plan.id, offset);
    boxes.push(box);
  }
  const items = views.flatMap((view) => {
    const origin = origins.get(view.plan.id);
    return origin === undefined ? [] : movedItems(view.items, origin);
  });
  return { id: 'views', items, box: unionOf(boxes), fills: boxes, origins };
}
