import type { Vector3 } from '../geometry/vector.js';
import type { CurvedSheet } from './curved-sheets.js';
import type { Prepared } from './prepared.js';
import { nextOf } from './topology.js';

/** A rough silhouette across the facets of one curved sheet. */
export interface Trace {
  readonly sheet: number;
  /** Points on mesh edges; of a closed trace the first does not come again. */
  readonly points: readonly Vector3[];
  readonly closed: boolean;
  /** The surfaces that bound it at its first and last point; undefined at the tip of a cone. */
  readonly ends: readonly [number | undefined, number | undefined];
}

/** A normal's cosine below this counts as square to the eye, so that noise never decides. */
const SQUARE = 1e-9;

const TIP = 2;

/** The lines across curved sheets where the exact normals at the corners change from facing the eye to facing away. */
export function tracesOf(prepared: Prepared, toEye: Vector3): Trace[] {
  const { topology: { twin, sheetOfTriangle }, solid: { triangles, positions } } = prepared;
  const { states, values, seen } = prepared.marks;
  seen.fill(0);
  const traces: Trace[] = [];
  for (const sheet of prepared.curvedSheets) {
    if (!markCorners(sheet, toEye, states, values)) continue;
    const place = (h: number): Vector3 => {
      const [a, b] = [triangles[h]!, triangles[nextOf(h)]!];
      const [u, v] = [values[a]!, values[b]!];
      const s = u === v ? 0.5 : Math.max(0, Math.min(1, u / (u - v)));
      return [0, 1, 2].map((k) => positions[3 * a + k]! * (1 - s) + positions[3 * b + k]! * s) as unknown as Vector3;
    };
    /** Goes on from the half-edge by which a triangle is left, to the edge of the sheet, a tip, or a triangle seen. */
    const walk = (leave: number, points: Vector3[]): { end: number | undefined; closed: boolean } => {
      for (let h = leave; ; ) {
        points.push(place(h));
        const back = twin[h]!;
        const t = Math.trunc(back / 3);
        if (sheetOfTriangle[t] !== sheet.sheet) return { end: sheetOfTriangle[t]! >> 1, closed: false };
        if (seen[t]) return { end: undefined, closed: true };
        seen[t] = 1;
        const out = crossed(states, t).find((other) => other !== back);
        if (out === undefined) return { end: undefined, closed: false };
        h = out;
      }
    };
    for (const t of sheet.triangles) {
      if (seen[t]) continue;
      const [first, second] = crossed(states, t);
      if (first === undefined) continue;
      seen[t] = 1;
      const ahead: Vector3[] = [];
      const front = walk(first, ahead);
      if (front.closed) {
        traces.push({ sheet: sheet.sheet, points: ahead, closed: true, ends: [undefined, undefined] });
        continue;
      }
      const behind: Vector3[] = [];
      const rear = second === undefined ? { end: undefined } : walk(second, behind);
      traces.push({ sheet: sheet.sheet, points: [...behind.reverse(), ...ahead], closed: false, ends: [rear.end, front.end] });
    }
  }
  return traces;
}

/** Writes for each corner whether its normal faces the eye; false when all corners agree. */
function markCorners({ triangles, corners, normals, vertices }: CurvedSheet, toEye: Vector3, states: Uint8Array, values: Float64Array): boolean {
  const [x, y, z] = toEye;
  const marks = new Uint8Array(vertices.length);
  let [facing, away] = [false, false];
  for (let i = 0; i < vertices.length; i += 1) {
    const [nx, ny, nz] = [normals[3 * i]!, normals[3 * i + 1]!, normals[3 * i + 2]!];
    const value = nx * x + ny * y + nz * z;
    values[vertices[i]!] = value;
    marks[i] = nx === 0 && ny === 0 && nz === 0 ? TIP : value < -SQUARE ? 1 : 0;
    if (marks[i] === 1) away = true;
    else if (marks[i] === 0) facing = true;
  }
  if (!facing || !away) return false;
  for (let i = 0; i < corners.length; i += 1) states[3 * triangles[Math.trunc(i / 3)]! + (i % 3)] = marks[corners[i]!]!;
  return true;
}

/** The half-edges of a triangle at which the state of the corners changes; a tip has no state. */
function crossed(states: Uint8Array, t: number): number[] {
  const found: number[] = [];
  for (let h = 3 * t; h < 3 * t + 3; h += 1) {
    const [a, b] = [states[h]!, states[nextOf(h)]!];
    if (a !== b && a !== TIP && b !== TIP) found.push(h);
  }
  return found;
}
