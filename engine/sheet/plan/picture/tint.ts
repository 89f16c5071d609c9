import { dot, type Vector2, type Vector3 } from '../../../geometry/vector.js';
import type { Solid } from '../../../solid/model.js';
import { rightOf } from '../../../view/camera.js';
import type { Camera } from '../../../view/model.js';

/** How faces are set apart: strokes at an angle (degrees) and a pitch (mm on paper). */
export interface Tint {
  readonly angle: number;
  readonly pitch: number;
}

/** How fine sight is told along a stroke, mm on paper. */
const cell = 0.1;
const shortest = 0.3;

/**
 * Strokes over what is seen of some faces, paper mm: along each stroke the nearest facet is sought, so that what stands
 * before a face hides its strokes. Facets only decide what is seen.
 */
export function tintStrokes(solid: Solid, camera: Camera, factor: number, wanted: (face: number) => boolean, { angle, pitch }: Tint): readonly (readonly [Vector2, Vector2])[] {
  const turn = (angle * Math.PI) / 180;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const right = rightOf(camera);
  const count = solid.positions.length / 3;
  // Along the strokes, across them, and away from the eye.
  const [along, across, far] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  for (let i = 0; i < count; i += 1) {
    const point: Vector3 = [solid.positions[3 * i] ?? 0, solid.positions[3 * i + 1] ?? 0, solid.positions[3 * i + 2] ?? 0];
    const [x, y] = [dot(point, right) * factor, dot(point, camera.up) * factor];
    along[i] = x * c + y * s;
    across[i] = y * c - x * s;
    far[i] = dot(point, camera.toward);
  }
  const facing = trianglesFacing(solid, along, across);
  const chosen = facing.filter((t) => wanted(solid.faceOfTriangle[t] ?? 0));
  if (chosen.length === 0) return [];
  const reach = (values: Float64Array, list: readonly number[]): readonly [number, number] => {
    let [low, high] = [Infinity, -Infinity];
    for (const t of list)
      for (let k = 0; k < 3; k += 1) {
        const value = values[solid.triangles[3 * t + k] ?? 0] ?? 0;
        [low, high] = [Math.min(low, value), Math.max(high, value)];
      }
    return [low, high];
  };
  const [low, high] = reach(across, chosen);
  const [start, end] = reach(along, chosen);
  const cells = Math.ceil((end - start) / cell) + 1;
  // A phase that no edge is likely to lie on.
  const first = Math.ceil((low - 0.377 * pitch) / pitch);
  const last = Math.floor((high - 0.377 * pitch) / pitch);
  const rows = Math.max(0, last - first + 1);
  const nearest = new Float64Array(rows * cells).fill(Infinity);
  const seen = new Uint8Array(rows * cells);
  for (const t of facing) {
    const corners = [0, 1, 2].map((k) => solid.triangles[3 * t + k] ?? 0);
    const heights = corners.map((at) => across[at] ?? 0);
    const tinted = wanted(solid.faceOfTriangle[t] ?? 0) ? 1 : 0;
    const from = Math.max(first, Math.ceil((Math.min(...heights) - 0.377 * pitch) / pitch));
    const to = Math.min(last, Math.floor((Math.max(...heights) - 0.377 * pitch) / pitch));
    for (let row = from; row <= to; row += 1) {
      const level = row * pitch + 0.377 * pitch;
      const ends = crossings(corners, heights, level, along, far);
      if (ends === undefined) continue;
      const [a, b] = ends;
      const slope = b[0] - a[0] < 1e-12 ? 0 : (b[1] - a[1]) / (b[0] - a[0]);
      for (let i = Math.max(0, Math.ceil((a[0] - start) / cell)); i <= Math.min(cells - 1, Math.floor((b[0] - start) / cell)); i += 1) {
        const depth = a[1] + slope * (start + i * cell - a[0]);
        const at = (row - first) * cells + i;
        if (depth < nearest[at]! - 1e-9) [nearest[at], seen[at]] = [depth, tinted];
      }
    }
  }
  const strokes: (readonly [Vector2, Vector2])[] = [];
  const place = (x: number, y: number): Vector2 => [x * c - y * s, x * s + y * c];
  for (let row = 0; row < rows; row += 1) {
    const level = (row + first) * pitch + 0.377 * pitch;
    let began = -1;
    for (let i = 0; i <= cells; i += 1) {
      const on = i < cells && seen[row * cells + i] === 1;
      if (on && began < 0) began = i;
      if (!on && began >= 0) {
        if ((i - 1 - began) * cell >= shortest) strokes.push([place(start + began * cell, level), place(start + (i - 1) * cell, level)]);
        began = -1;
      }
    }
  }
  return strokes;
}

/** Facets that face the eye: counter-clockwise on paper. */
function trianglesFacing({ triangles }: Solid, x: Float64Array, y: Float64Array): readonly number[] {
  const facing: number[] = [];
  for (let t = 0; 3 * t < triangles.length; t += 1) {
    const [a, b, c] = [triangles[3 * t] ?? 0, triangles[3 * t + 1] ?? 0, triangles[3 * t + 2] ?? 0];
    const area = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);
    if (area > 1e-9) facing.push(t);
  }
  return facing;
}

/** Where a level line enters and leaves a facet, as (along, away from the eye), in the order along the line. */
function crossings(corners: readonly number[], heights: readonly number[], level: number, along: Float64Array, far: Float64Array): readonly [Vector2, Vector2] | undefined {
  const found: Vector2[] = [];
  for (let k = 0; k < 3; k += 1) {
    const next = (k + 1) % 3;
    const [h, g] = [heights[k]!, heights[next]!];
    if (h > level === g > level) continue;
    const share = (level - h) / (g - h);
    const [p, q] = [corners[k]!, corners[next]!];
    found.push([along[p]! + (along[q]! - along[p]!) * share, far[p]! + (far[q]! - far[p]!) * share]);
  }
  const [a, b] = found;
  if (a === undefined || b === undefined) return undefined;
  return a[0] <= b[0] ? [a, b] : [b, a];
}
