import type { Vector2, Vector3 } from '../../../geometry/vector.js';
import type { Solid } from '../../../solid/model.js';
import { rightOf } from '../../../view/camera.js';
import type { Camera } from '../../../view/model.js';

/** Cells along the longer side of what is looked at. */
const fineness = 140;

/**
 * Tells where one solid stands before another, as a camera sees them: points of the view, mm of the part. Two grids hold how
 * far off each is in every cell; facets only decide what is where.
 */
export function coveringOf(front: Solid, behind: Solid, camera: Camera): (at: Vector2) => boolean {
  const [near, far] = [flat(front, camera), flat(behind, camera)];
  const [left, right, bottom, top] = [...reachOf(far.x), ...reachOf(far.y)] as [number, number, number, number];
  const cell = Math.max(right - left, top - bottom) / fineness;
  const grid: Grid = { left, bottom, cell, columns: Math.ceil((right - left) / cell) + 1, rows: Math.ceil((top - bottom) / cell) + 1 };
  const [first, second] = [depths(near, grid), depths(far, grid)];
  return ([x, y]) => {
    const [i, k] = [Math.round((x - left) / cell), Math.round((y - bottom) / cell)];
    if (i < 0 || k < 0 || i >= grid.columns || k >= grid.rows) return false;
    const at = k * grid.columns + i;
    return first[at]! < second[at]!;
  };
}

/** A solid's corners in the view, and how far they are off. */
interface Flat {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly depth: Float64Array;
  readonly triangles: Uint32Array;
}

interface Grid {
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

function flat({ positions, triangles }: Solid, camera: Camera): Flat {
  const count = positions.length / 3;
  const along = ([a, b, c]: Vector3): Float64Array => {
    const values = new Float64Array(count);
    for (let i = 0; i < count; i += 1) values[i] = a * positions[3 * i]! + b * positions[3 * i + 1]! + c * positions[3 * i + 2]!;
    return values;
  };
  return { x: along(rightOf(camera)), y: along(camera.up), depth: along(camera.toward), triangles };
}

const reachOf = (values: Float64Array): readonly [number, number] => [values.reduce((a, b) => Math.min(a, b), Infinity), values.reduce((a, b) => Math.max(a, b), -Infinity)];

/** How far off the nearest facet is in each cell, at the cell's middle. */
function depths({ x, y, depth, triangles }: Flat, { left, bottom, cell, columns, rows }: Grid): Float64Array {
  const nearest = new Float64Array(columns * rows).fill(Infinity);
  for (let t = 0; t + 2 < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t]!, triangles[t + 1]!, triangles[t + 2]!];
    const [ax, ay, bx, by, cx, cy] = [x[a]!, y[a]!, x[b]!, y[b]!, x[c]!, y[c]!];
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    // Facets that face away lie behind others.
    if (area < 1e-12) continue;
    const firstRow = Math.max(0, Math.ceil((Math.min(ay, by, cy) - bottom) / cell));
    const lastRow = Math.min(rows - 1, Math.floor((Math.max(ay, by, cy) - bottom) / cell));
    const firstColumn = Math.max(0, Math.ceil((Math.min(ax, bx, cx) - left) / cell));
    const lastColumn = Math.min(columns - 1, Math.floor((Math.max(ax, bx, cx) - left) / cell));
    for (let row = firstRow; row <= lastRow; row += 1)
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        const [px, py] = [left + column * cell, bottom + row * cell];
        const v = ((ax - cx) * (py - cy) - (ay - cy) * (px - cx)) / area;
        const w = ((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / area;
        if (v < -1e-9 || w < -1e-9 || v + w > 1 + 1e-9) continue;
        const off = depth[a]! + v * (depth[b]! - depth[a]!) + w * (depth[c]! - depth[a]!);
        const at = row * columns + column;
        if (off < nearest[at]!) nearest[at] = off;
      }
  }
  return nearest;
}
