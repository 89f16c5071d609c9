import type { Solid } from './model.js';
import type { Motion } from './transform.js';

/** Columns along each side of the grid. */
const COLUMNS = 32;

/** Columns stand a little off the middle of their cells, where no edge of a drawn part is likely to lie. */
const OFF_MIDDLE = [0.5 + 0.0137, 0.5 - 0.0091] as const;

/** A grid of columns along z; each with the heights at which it goes through the surface of a solid, in order. */
export interface Columns {
  readonly low: readonly [number, number];
  readonly cell: readonly [number, number];
  readonly heights: readonly Float64Array[];
}

/** The columns of a solid over the box of its facets. */
export function columnsOf({ positions, triangles }: Solid): Columns {
  const low = [Infinity, Infinity];
  const high = [-Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    for (let k = 0; k < 2; k += 1) {
      low[k] = Math.min(low[k]!, positions[i + k]!);
      high[k] = Math.max(high[k]!, positions[i + k]!);
    }
  }
  const corner = [low[0]!, low[1]!] as const;
  const cell = [(high[0]! - corner[0]) / COLUMNS, (high[1]! - corner[1]) / COLUMNS] as const;
  return { low: corner, cell, heights: pierce(positions, triangles, corner, cell) };
}

/**
 * About how much volume only one of a solid and its moved image has, mm3: along each column, the length that is in one of
 * the two. What lies outside the box is not counted; features smaller than a cell may be missed.
 */
export function estimateDifference(columns: Columns, solid: Solid, { matrix: [r, s, t], shift: [x, y, z] }: Motion): number {
  const { positions } = solid;
  const moved = new Float64Array(positions.length);
  for (let i = 0; i < moved.length; i += 3) {
    const a = positions[i]!;
    const b = positions[i + 1]!;
    const c = positions[i + 2]!;
    moved[i] = r[0] * a + r[1] * b + r[2] * c + x;
    moved[i + 1] = s[0] * a + s[1] * b + s[2] * c + y;
    moved[i + 2] = t[0] * a + t[1] * b + t[2] * c + z;
  }
  const image = pierce(moved, solid.triangles, columns.low, columns.cell);
  let length = 0;
  columns.heights.forEach((own, column) => {
    length += lengthInOne(own, image[column]!);
  });
  return length * columns.cell[0] * columns.cell[1];
}

/** Each height goes in or out of one of the two: between an odd one and the next, of both in order, just one is there. */
function lengthInOne(own: Float64Array, other: Float64Array): number {
  let [i, j, length, from, inside] = [0, 0, 0, 0, false];
  while (i < own.length || j < other.length) {
    const at = j >= other.length || (i < own.length && own[i]! <= other[j]!) ? own[i++]! : other[j++]!;
    if (inside) length += at - from;
    [from, inside] = [at, !inside];
  }
  return length;
}

/** For each column the heights at which it goes through the facets, in order. Plain loops: this is done for each map that is tried. */
function pierce(
  positions: Float64Array,
  triangles: Uint32Array,
  [lowX, lowY]: readonly [number, number],
  [cellX, cellY]: readonly [number, number],
): Float64Array[] {
  const columns: number[] = [];
  const found: number[] = [];
  const counts = new Uint32Array(COLUMNS * COLUMNS);
  for (let i = 0; i < triangles.length; i += 3) {
    const a = 3 * triangles[i]!;
    const b = 3 * triangles[i + 1]!;
    const c = 3 * triangles[i + 2]!;
    const ax = positions[a]!;
    const ay = positions[a + 1]!;
    const bx = positions[b]!;
    const by = positions[b + 1]!;
    const cx = positions[c]!;
    const cy = positions[c + 1]!;
    const right = lastCell((Math.max(ax, bx, cx) - lowX) / cellX - OFF_MIDDLE[0]);
    const back = lastCell((Math.max(ay, by, cy) - lowY) / cellY - OFF_MIDDLE[1]);
    const front = firstCell((Math.min(ay, by, cy) - lowY) / cellY - OFF_MIDDLE[1]);
    for (let column = firstCell((Math.min(ax, bx, cx) - lowX) / cellX - OFF_MIDDLE[0]); column <= right; column += 1) {
      const x = lowX + (column + OFF_MIDDLE[0]) * cellX;
      for (let row = front; row <= back; row += 1) {
        const y = lowY + (row + OFF_MIDDLE[1]) * cellY;
        // Taken from the lower vertex to the higher, so that both facets of an edge get the very same number.
        const u = b < c ? side(bx, by, cx, cy, x, y) : -side(cx, cy, bx, by, x, y);
        const v = c < a ? side(cx, cy, ax, ay, x, y) : -side(ax, ay, cx, cy, x, y);
        const w = a < b ? side(ax, ay, bx, by, x, y) : -side(bx, by, ax, ay, x, y);
        if (!((u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0))) continue;
        const index = column * COLUMNS + row;
        columns.push(index);
        found.push((u * positions[a + 2]! + v * positions[b + 2]! + w * positions[c + 2]!) / (u + v + w));
        counts[index]! += 1;
      }
    }
  }
  const heights = Array.from(counts, (count) => new Float64Array(count));
  counts.fill(0);
  found.forEach((height, i) => {
    const index = columns[i]!;
    heights[index]![counts[index]!++] = height;
  });
  return heights.map((own) => own.sort());
}

const side = (px: number, py: number, qx: number, qy: number, x: number, y: number): number => (qx - px) * (y - py) - (qy - py) * (x - px);

const firstCell = (place: number): number => Math.max(0, Math.ceil(place));
const lastCell = (place: number): number => Math.min(COLUMNS - 1, Math.floor(place));
