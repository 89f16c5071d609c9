import type { Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import type { Edge } from './edges.js';

/** A point of the mesh that stands for a stretch of an edge, and the vertices whose common facets are the edge's own there. */
export interface TestPoint {
  readonly point: Vector3;
  readonly vertices: readonly number[];
}

/**
 * A point of the facets (not of the exact curve, which stands off them) for the stretch t0 to t1: the vertex nearest to
 * its middle, or where it has none inside, the middle's place on the chord.
 */
export function testPoint({ positions }: Solid, edge: Edge, t0: number, t1: number): TestPoint {
  const { parameters, vertices, closed, low, high } = edge;
  const middle = (t0 + t1) / 2;
  const turns = closed ? Math.floor((middle - low) / (high - low)) * (high - low) : 0;
  const target = middle - turns;
  const margin = 0.1 * (t1 - t0);
  let [a, b] = [0, parameters.length - 1];
  while (b - a > 1) {
    const half = (a + b) >> 1;
    if (parameters[half]! <= target) a = half;
    else b = half;
  }
  const nearer = target - parameters[a]! <= parameters[b]! - target ? a : b;
  const place = (i: number): Vector3 => {
    const at = 3 * vertices[i]!;
    return [positions[at]!, positions[at + 1]!, positions[at + 2]!];
  };
  const at = parameters[nearer]! + turns;
  const isEnd = !closed && (nearer === 0 || nearer === parameters.length - 1);
  if (!isEnd && at > t0 + margin && at < t1 - margin) return { point: place(nearer), vertices: [vertices[nearer]!] };
  const width = parameters[b]! - parameters[a]!;
  const share = width > 0 ? Math.max(0, Math.min(1, (target - parameters[a]!) / width)) : 0.5;
  const [p, q] = [place(a), place(b)];
  const point = [0, 1, 2].map((k) => p[k]! + (q[k]! - p[k]!) * share) as unknown as Vector3;
  return { point, vertices: [vertices[a]!, vertices[b]!] };
}
