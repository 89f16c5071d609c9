import type { Vector2 } from '../../../geometry/vector.js';
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
  const { positions, triangles, faceOfTriangle } = solid;
  const count = positions.length / 3;
  // Along the strokes, across them, and away from the eye.
  const [along, across, far] = [new Float64Array(count), new Float64Array(count), new Float64Array(count)];
  const { up, toward } = camera;
  for (let i = 0; i < count; i += 1) {
    const p = positions[3 * i]!;
    const q = positions[3 * i + 1]!;
    const r = positions[3 * i + 2]!;
    const x = (p * right[0] + q * right[1] + r * right[2]) * factor;
    const y = (p * up[0] + q * up[1] + r * up[2]) * factor;
    along[i] = x * c + y * s;
    across[i] = y * c - x * s;
    far[i] = p * toward[0] + q * toward[1] + r * toward[2];
  }
  const facing = trianglesFacing(solid, along, across);
  const chosen = facing.filter((t) => wanted(solid.faceOfTriangle[t] ?? 0));
  if (chosen.length === 0) return [];
  const reach = (values: Float64Array, list: readonly number[]): readonly [number, number] => {
    let [low, high] = [Infinity, -Infinity];
    for (const t of list)
      for (let k = 0; k < 3; k += 1) {
        const value = values[solid.triangles[3 * t + k] ?? 0] ?? 0;
        if (value < low) low = value;
        if (value > high) high = value;
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
    const a = triangles[3 * t]!;
    const b = triangles[3 * t + 1]!;
    const d = triangles[3 * t + 2]!;
    const lowest = Math.min(across[a]!, across[b]!, across[d]!);
    const highest = Math.max(across[a]!, across[b]!, across[d]!);
    const from = Math.max(first, Math.ceil((lowest - 0.377 * pitch) / pitch));
    const to = Math.min(last, Math.floor((highest - 0.377 * pitch) / pitch));
    if (from > to) continue;
    const tinted = wanted(faceOfTriangle[t] ?? 0) ? 1 : 0;
    for (let row = from; row <= to; row += 1) {
      const level = row * pitch + 0.377 * pitch;
      // Where the row enters and leaves the facet: along it, and away from the eye.
      let x0 = 0;
      let z0 = 0;
      let x1 = 0;
      let z1 = 0;
      let found = 0;
      for (let k = 0; k < 3; k += 1) {
        const p = k === 0 ? a : k === 1 ? b : d;
        const q = k === 0 ? b : k === 1 ? d : a;
        const h = across[p]!;
        const g = across[q]!;
        if (h > level === g > level) continue;
        const share = (level - h) / (g - h);
        const x = along[p]! + (along[q]! - along[p]!) * share;
        const z = far[p]! + (far[q]! - far[p]!) * share;
        // The lesser end is the first.
        if (found > 0 && x < x0) {
          x1 = x0;
          z1 = z0;
          x0 = x;
          z0 = z;
        } else if (found > 0) {
          x1 = x;
          z1 = z;
        } else {
          x0 = x;
          z0 = z;
        }
        found += 1;
      }
      if (found < 2) continue;
      const slope = x1 - x0 < 1e-12 ? 0 : (z1 - z0) / (x1 - x0);
      const end = Math.min(cells - 1, Math.floor((x1 - start) / cell));
      for (let i = Math.max(0, Math.ceil((x0 - start) / cell)); i <= end; i += 1) {
        const depth = z0 + slope * (start + i * cell - x0);
        const at = (row - first) * cells + i;
        if (depth < nearest[at]! - 1e-9) {
          nearest[at] = depth;
          seen[at] = tinted;
        }
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
    const a = triangles[3 * t]!;
    const b = triangles[3 * t + 1]!;
    const c = triangles[3 * t + 2]!;
    const area = (x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!);
    if (area > 1e-9) facing.push(t);
  }
  return facing;
}
