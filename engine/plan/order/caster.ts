import { cross, dot, unit, type Vector3 } from '../../geometry/vector.js';
import type { Solid } from '../../solid/model.js';

/** Metal on a line: from where to where, mm along its direction from the point asked for, and the faces at both ends. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly enters: number;
  readonly leaves: number;
}

/** Looks through a solid along one direction. */
export interface Caster {
  /** The metal on the line through a point, in order; spans behind the point are counted negative. */
  readonly spans: (point: Vector3) => readonly Span[];
}

/** Cells of the grid across the direction, each way. */
const cells = 48;
/** Lines are moved by this much, mm, so that none runs along an edge. */
const nudge = 3.1e-5;

const none: readonly number[] = [];
const nothing: readonly Span[] = [];

const kept = new WeakMap<Solid, Map<string, Caster>>();

/** The caster of a solid along a direction of length one; made once. */
export function casterOf(solid: Solid, direction: Vector3): Caster {
  const known = kept.get(solid) ?? new Map<string, Caster>();
  kept.set(solid, known);
  const key = direction.map((value) => value.toFixed(9)).join(' ');
  const made = known.get(key) ?? makeCaster(solid, direction);
  known.set(key, made);
  return made;
}

function makeCaster(solid: Solid, direction: Vector3): Caster {
  const { positions, triangles, faceOfTriangle } = solid;
  const u = unit(cross(Math.abs(direction[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0], direction));
  const v = cross(direction, u);
  const count = positions.length / 3;
  const flat = new Float64Array(3 * count);
  let [lowU, lowV, highU, highV] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < count; i += 1) {
    const x = positions[3 * i]!;
    const y = positions[3 * i + 1]!;
    const z = positions[3 * i + 2]!;
    const a = x * u[0] + y * u[1] + z * u[2];
    const b = x * v[0] + y * v[1] + z * v[2];
    flat[3 * i] = a;
    flat[3 * i + 1] = b;
    flat[3 * i + 2] = x * direction[0] + y * direction[1] + z * direction[2];
    if (a < lowU) lowU = a;
    if (a > highU) highU = a;
    if (b < lowV) lowV = b;
    if (b > highV) highV = b;
  }
  const column = (a: number): number => Math.min(cells - 1, Math.max(0, Math.floor(((a - lowU) / (highU - lowU || 1)) * cells)));
  const row = (b: number): number => Math.min(cells - 1, Math.max(0, Math.floor(((b - lowV) / (highV - lowV || 1)) * cells)));
  const buckets: (number[] | undefined)[] = Array.from({ length: cells * cells });
  for (let t = 0; t < triangles.length / 3; t += 1) {
    const i = 3 * triangles[3 * t]!;
    const j = 3 * triangles[3 * t + 1]!;
    const k = 3 * triangles[3 * t + 2]!;
    const ua = flat[i]!;
    const ub = flat[j]!;
    const uc = flat[k]!;
    const va = flat[i + 1]!;
    const vb = flat[j + 1]!;
    const vc = flat[k + 1]!;
    if (Math.abs((ub - ua) * (vc - va) - (uc - ua) * (vb - va)) < 1e-12) continue;
    const c1 = column(Math.max(ua, ub, uc));
    const r1 = row(Math.max(va, vb, vc));
    for (let r = row(Math.min(va, vb, vc)); r <= r1; r += 1)
      for (let c = column(Math.min(ua, ub, uc)); c <= c1; c += 1) {
        const bucket = buckets[r * cells + c];
        if (bucket === undefined) buckets[r * cells + c] = [t];
        else bucket.push(t);
      }
  }
  return {
    spans: (point) => {
      const pu = dot(point, u) + nudge;
      const pv = dot(point, v) + 0.7 * nudge;
      const start = dot(point, direction);
      if (pu < lowU || pu > highU || pv < lowV || pv > highV) return nothing;
      let hits: { at: number; into: boolean; face: number }[] | undefined;
      for (const t of buckets[row(pv) * cells + column(pu)] ?? none) {
        // Written out: this runs for every facet in the way of a line.
        const i = 3 * triangles[3 * t]!;
        const j = 3 * triangles[3 * t + 1]!;
        const k = 3 * triangles[3 * t + 2]!;
        const ua = flat[i]! - pu;
        const va = flat[i + 1]! - pv;
        const ub = flat[j]! - pu;
        const vb = flat[j + 1]! - pv;
        const uc = flat[k]! - pu;
        const vc = flat[k + 1]! - pv;
        const a = ub * vc - uc * vb;
        const b = uc * va - ua * vc;
        const c = ua * vb - ub * va;
        if (!((a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0))) continue;
        const area = a + b + c;
        (hits ??= []).push({ at: (a * flat[i + 2]! + b * flat[j + 2]! + c * flat[k + 2]!) / area - start, into: area < 0, face: faceOfTriangle[t]! });
      }
      return hits === undefined ? nothing : paired(hits.sort((a, b) => a.at - b.at || Number(b.into) - Number(a.into)));
    },
  };
}

function paired(hits: readonly { readonly at: number; readonly into: boolean; readonly face: number }[]): readonly Span[] {
  const spans: Span[] = [];
  let open: { at: number; face: number } | undefined;
  for (const { at, into, face } of hits) {
    if (into) open ??= { at, face };
    else if (open !== undefined) {
      if (at - open.at > 1e-6) spans.push({ from: open.at, to: at, enters: open.face, leaves: face });
      open = undefined;
    }
  }
  return spans;
}
