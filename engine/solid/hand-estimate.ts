import type { Box } from './box.js';
import { apply } from './matrix.js';
import type { Solid } from './model.js';
import type { Motion } from './transform.js';

/** Columns along each side of the grid. */
const COLUMNS = 32;

/** Columns stand a little off the middle of their cells, where no edge of a drawn part is likely to lie. */
const OFF_MIDDLE = [0.5 + 0.0137, 0.5 - 0.0091] as const;

/** A grid of columns along z; each with the heights at which it goes through the surface of a solid. */
export interface Columns {
  readonly low: readonly [number, number];
  readonly cell: readonly [number, number];
  readonly heights: readonly number[][];
}

/** The columns of a solid over its own box. */
export function columnsOf(solid: Solid, box: Box): Columns {
  const low = [box.low[0], box.low[1]] as const;
  const cell = [(box.high[0] - low[0]) / COLUMNS, (box.high[1] - low[1]) / COLUMNS] as const;
  return { low, cell, heights: pierce(solid.positions, solid.triangles, low, cell) };
}

/**
 * About how much volume only one of a solid and its moved image has, mm3: along each column, the length that is in one of
 * the two. What lies outside the solid's box is not counted; features smaller than a cell may be missed.
 */
export function estimateDifference(columns: Columns, solid: Solid, motion: Motion): number {
  const moved = new Float64Array(solid.positions.length);
  for (let i = 0; i < moved.length; i += 3) {
    const point = [solid.positions[i] ?? 0, solid.positions[i + 1] ?? 0, solid.positions[i + 2] ?? 0] as const;
    const turned = apply(motion.matrix, point);
    for (let k = 0; k < 3; k += 1) moved[i + k] = (turned[k] ?? 0) + (motion.shift[k] ?? 0);
  }
  const image = pierce(moved, solid.triangles, columns.low, columns.cell);
  let length = 0;
  columns.heights.forEach((own, column) => {
    const all = [...own, ...(image[column] ?? [])].sort((a, b) => a - b);
    // Each height goes in or out of one of the two: between an odd one and the next, just one is there.
    for (let i = 1; i < all.length; i += 2) length += (all[i] ?? 0) - (all[i - 1] ?? 0);
  });
  return length * columns.cell[0] * columns.cell[1];
}

function pierce(
  positions: Float64Array,
  triangles: Uint32Array,
  low: readonly [number, number],
  cell: readonly [number, number],
): number[][] {
  const heights = Array.from({ length: COLUMNS * COLUMNS }, (): number[] => []);
  const firstCell = (value: number, k: 0 | 1): number =>
    Math.max(0, Math.ceil((value - low[k]) / cell[k] - OFF_MIDDLE[k]));
  const lastCell = (value: number, k: 0 | 1): number =>
    Math.min(COLUMNS - 1, Math.floor((value - low[k]) / cell[k] - OFF_MIDDLE[k]));
  const at = (vertex: number, k: number): number => positions[3 * vertex + k] as number;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [triangles[i] as number, triangles[i + 1] as number, triangles[i + 2] as number];
    const right = lastCell(Math.max(at(a, 0), at(b, 0), at(c, 0)), 0);
    const back = lastCell(Math.max(at(a, 1), at(b, 1), at(c, 1)), 1);
    const front = firstCell(Math.min(at(a, 1), at(b, 1), at(c, 1)), 1);
    for (let column = firstCell(Math.min(at(a, 0), at(b, 0), at(c, 0)), 0); column <= right; column += 1) {
      const x = low[0] + (column + OFF_MIDDLE[0]) * cell[0];
      for (let row = front; row <= back; row += 1) {
        const y = low[1] + (row + OFF_MIDDLE[1]) * cell[1];
        const side = (from: number, to: number): number => {
          // Taken from the lower vertex to the higher, so that both facets of an edge get the very same number.
          const [p, q, sense] = from < to ? [from, to, 1] : [to, from, -1];
          return sense * ((at(q, 0) - at(p, 0)) * (y - at(p, 1)) - (at(q, 1) - at(p, 1)) * (x - at(p, 0)));
        };
        const [u, v, w] = [side(b, c), side(c, a), side(a, b)];
        const inside = (u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0);
        if (inside) {
          const height = (u * at(a, 2) + v * at(b, 2) + w * at(c, 2)) / (u + v + w);
          heights[column * COLUMNS + row]?.push(height);
        }
      }
    }
  }
  return heights;
}
