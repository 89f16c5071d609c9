import { cross, dot, length, scale, type Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import type { Edge } from './edges.js';
import { roundShadow, shadowOf, type Shadow, type Turn } from './shadow.js';
import { pointAt, slopeAt } from './space-curve.js';
import type { Strand } from './strand.js';
import { turningsOf } from './turning.js';

/** A sine below this is a surface seen edge-on. */
const EDGE_ON = 1e-6;

/** The outward normal of a sheet at a point of it. */
export function outward(solid: Solid, sheet: number, p: Vector3): Vector3 {
  const { normal } = offsetFrom(solid.surfaces[sheet >> 1]!, p);
  return sheet & 1 ? scale(normal, -1) : normal;
}

const sign = (x: number): number => (x > EDGE_ON ? 1 : x < -EDGE_ON ? -1 : 0);

/**
 * The stretches of an edge, cut where one of its faces turns away from the eye. `toEye` points at the eye. A smooth edge
 * is left out unless wanted, but where its faces stand edge-on it is their silhouette and is kept.
 */
export function edgeStrands(solid: Solid, edge: Edge, parent: number, toEye: Vector3, turn: Turn, wantSmooth: boolean): Strand[] {
  const { curve, low, high, left, right } = edge;
  const surfaces = [left >> 1, right >> 1];
  // Once round a closed edge a cut may fall on the very place where it begins.
  const early = edge.closed && curve.kind === 'ellipse' ? 1e-7 : 0;
  const cuts = surfaces
    .flatMap((index) => turningsOf(solid.surfaces[index]!, curve, low - early, high - early, toEye))
    .sort((a, b) => a - b);
  const stretches: [number, number][] = [];
  const around = early > 0 && cuts.length > 0;
  const stops = around ? [...cuts, cuts[0]! + high - low] : [low, ...cuts, high];
  for (let i = 0; i + 1 < stops.length; i += 1) {
    if (stops[i + 1]! - stops[i]! > 1e-9) stretches.push([stops[i]!, stops[i + 1]!]);
  }
  const shadow = shadowOnCircle(solid, edge, toEye, turn);
  return stretches.flatMap(([from, to]): Strand[] => {
    const middle = (from + to) / 2;
    const p = pointAt(curve, middle);
    const [a, b] = [outward(solid, left, p), outward(solid, right, p)];
    const [facingA, facingB] = [sign(dot(a, toEye)), sign(dot(b, toEye))];
    const common = { parent, curve, shadow, low: from, high: to, surfaces, edge };
    if (edge.smooth) {
      const edgeOn = Math.abs(dot(a, toEye)) < 10 * EDGE_ON || Math.abs(dot(b, toEye)) < 10 * EDGE_ON;
      if (edgeOn) return [{ ...common, role: 'silhouette', covered: false, outline: true }];
      return wantSmooth ? [{ ...common, role: 'smooth', covered: facingA < 0, outline: false }] : [];
    }
    const convex = dot(b, cross(a, slopeAt(curve, middle))) < 0;
    // With a face edge-on the ray decides: the sight line runs along that face.
    const covered = convex ? facingA < 0 && facingB < 0 : facingA < 0 || facingB < 0;
    const outline = convex && Math.max(facingA, facingB) > 0 && Math.min(facingA, facingB) <= 0;
    return [{ ...common, role: 'edge', covered, outline }];
  });
}

/** The shadow of an edge; of a spline on a cylinder seen along its axis, that on the cylinder's circle. */
function shadowOnCircle(solid: Solid, { curve, left, right }: Edge, toEye: Vector3, turn: Turn): Shadow {
  const shadow = shadowOf(curve, turn);
  if (shadow.kind !== 'spline') return shadow;
  for (const sheet of [left, right]) {
    const surface = solid.surfaces[sheet >> 1]!;
    if (surface.kind !== 'cylinder' || length(cross(surface.axis, toEye)) > 1e-9) continue;
    const [x, y] = turn(surface.origin);
    return roundShadow(shadow, [x, y], surface.radius);
  }
  return shadow;
}
