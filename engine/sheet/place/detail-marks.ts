import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import { chainOf } from '../say/extremes.js';
import type { Detail } from '../views/details.js';
import type { Board, Placing } from './board.js';
import { lettering, textBox } from './pieces.js';

const letter = 5;

/** The circle round what a detail shows larger, and its letter beside it (ISO 128-3, drawing rule V9). */
export function detailMarks(group: string, detail: Detail, scale: number, board: Board): Placing & { readonly items: readonly Item[] } {
  const centre: Vector2 = [detail.centre[0] * scale, detail.centre[1] * scale];
  const radius = detail.radius * scale;
  const circle = { kind: 'arc', centre, radius, start: 0, sweep: 360 } as const;
  const about = `detail ${detail.letter}`;
  const ring: Item = { kind: 'stroke', group, role: 'break', curve: circle, about };
  const chain = chainOf(circle);
  const ink = chain.slice(1).map((b, i) => ({ kind: 'centre' as const, a: chain[i]!, b }));
  let best: { readonly item: Item; readonly box: ReturnType<typeof textBox>; readonly cost: number } | undefined;
  for (const angle of [50, 130, -50, -130, 20, 160, -20, -160, 90, -90])
    for (const out of [1.5, 4, 7]) {
      const radians = (angle * Math.PI) / 180;
      const reach = radius + out + letter / 2;
      const item = lettering(group, 'label', [centre[0] + reach * Math.cos(radians), centre[1] + reach * Math.sin(radians) - letter / 2], detail.letter, {
        height: letter,
        anchor: 'middle',
        style: 'bold',
        about,
      });
      const box = textBox(item);
      const cost = board.cost({ boxes: [box], ink: [] }) + out;
      if (cost < (best?.cost ?? Infinity)) best = { item, box, cost };
    }
  return { items: best === undefined ? [ring] : [ring, best.item], ink, boxes: best === undefined ? [] : [best.box] };
}
