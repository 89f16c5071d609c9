import type { Vector2 } from '../../geometry/vector.js';
import type { Item, LineRole } from '../drawing.js';
import { zeroMark } from '../operations/zero-mark.js';
import type { Piece } from '../operations/set-blocks.js';
import { house } from '../place/house.js';
import { lettering, movedItems, stroke } from '../place/pieces.js';
import { tints } from './picture/picture-tints.js';
import { cutterArrow } from './picture/cutter-arrow.js';
import { boxItems } from './tick-box.js';
import { group } from './words.js';

const swatch = { width: 15, height: 9 } as const;
const pitch = swatch.height + 4.5;

/** What the lines and strokes of the pictures mean, each with a sample. */
export function legendPiece(width: number): Piece {
  const samples: readonly (readonly [string, readonly Item[]])[] = [
    ['cut in this operation', field('visible', 'cut')],
    ['taken off, or cut out of sight', field('removed')],
    ['the work otherwise', field('work')],
    ['finished part, in metal to go', field('finished')],
    ['what holds the work', field('work', 'held')],
    ['what it lies on', field('work', 'packing')],
    ['where the cutter comes from', cutterArrow(group, [[0, -swatch.height / 2], [swatch.width, -swatch.height / 2]])],
    ['zero of the set-up', zeroMark(group, [swatch.width - 3.5, -swatch.height / 2], [3, -swatch.height / 2])],
  ];
  const columns = 2;
  const rows = Math.ceil(samples.length / columns);
  const items = samples.flatMap(([text, drawn], i) => {
    const at: Vector2 = [Math.trunc(i / rows) * (width / columns), -(i % rows) * pitch - 1];
    return [...movedItems(drawn, at), lettering(group, 'note', [at[0] + swatch.width + 4, at[1] - (swatch.height + house.height) / 2], text)];
  });
  return { items, height: rows * pitch };
}

function field(role: LineRole, tint?: keyof typeof tints): readonly Item[] {
  const box = boxItems(group, role, [0, 0], swatch.width, swatch.height);
  if (tint === undefined) return box;
  const { angle, pitch: apart } = tints[tint];
  const strokes: Item[] = [];
  const [w, h] = [swatch.width, swatch.height];
  if (angle === 0) for (let y = -apart / 2; y > -h; y -= apart) strokes.push(stroke(group, 'tint', [0, y], [w, y]));
  else
    for (let k = apart * Math.SQRT1_2; k < w + h; k += apart * Math.SQRT2) {
      // The line x + depth = k of the field, or its mirror image.
      const ends = [[Math.max(0, k - h), Math.min(h, k)], [Math.min(w, k), Math.max(0, k - w)]] as const;
      const [from, to] = ends.map(([x, depth]): Vector2 => [x, angle === 45 ? -depth : depth - h]) as [Vector2, Vector2];
      strokes.push(stroke(group, 'tint', from, to));
    }
  return [...box, ...strokes];
}
