import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { chainOf } from '../say/extremes.js';
import { textBox } from './pieces.js';
import { boxAround, unionOf } from './plane.js';

/** The box round all items, lettering included. */
export function envelopeOf(items: readonly Item[]): PaperBox {
  return unionOf(
    items.map((item): PaperBox => {
      if (item.kind === 'text') return textBox(item, 0);
      if (item.kind === 'stroke') return boxAround(chainOf(item.curve));
      if (item.shape.kind === 'polygon') return boxAround(item.shape.points);
      const { centre, radius } = item.shape;
      return { left: centre[0] - radius, right: centre[0] + radius, bottom: centre[1] - radius, top: centre[1] + radius };
    }),
  );
}
