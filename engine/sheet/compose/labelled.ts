import type { DrawnView } from '../place/draw-view.js';
import { lettering, textBox } from '../place/pieces.js';
import { unionOf } from '../place/plane.js';
import type { Block } from './block.js';

const height = 5;

/** A section or a detail as a block of its own, its title over it. */
export function labelledView(view: DrawnView, name = view.plan.title): Block {
  const title = lettering(view.plan.id, 'label', [(view.outline.left + view.outline.right) / 2, view.envelope.top + 3], name, {
    height,
    anchor: 'middle',
    style: 'bold',
  });
  return { id: view.plan.id, items: [...view.items, title], box: unionOf([view.envelope, textBox(title)]) };
}
