import { cross, dot, length, type Vector3 } from '../geometry/vector.js';
import type { Solid } from '../solid/model.js';
import { isConvex, outward } from './edge-normals.js';
import type { Edge } from './edges.js';
import { facing, turnings } from './normal-course.js';
import { roundShadow, shadowOf, type Shadow, type Turn } from './shadow.js';
import { pointAt } from './space-curve.js';
import type { Strand } from './strand.js';
import { searched } from './turning.js';

/** A cosine below this is a surface seen edge-on. */
const EDGE_ON = 1e-6;

/** How the two faces of an edge stand to the eye over a stretch, and whether the body bulges there. */
interface Stand {
  readonly left: number;
  readonly right: number;
  readonly convex: boolean;
}

/**
 * The stretches of an edge, cut where one of its faces turns away from the eye. `toEye` points at the eye. A smooth edge
 * is left out unless wanted, but where its faces stand edge-on it is their silhouette and is kept.
 */
export function edgeStrands(solid: Solid, edge: Edge, parent: number, toEye: Vector3, turn: Turn, wantSmooth: boolean): Strand[] {
  const { curve, low, high } = edge;
  // Once round a closed edge a cut may fall on the very place where it begins.
  const early = edge.closed && curve.kind === 'ellipse' ? 1e-7 : 0;
  const cuts = cutsOf(solid, edge, toEye, low - early, high - early);
  const around = early > 0 && cuts.length > 0;
  const stops = around ? [...cuts, cuts[0]! + high - low] : [low, ...cuts, high];
  const shadow = shadowOnCircle(solid, edge, toEye, turn);
  const surfaces = [edge.left >> 1, edge.right >> 1];
  const strands: Strand[] = [];
  for (let i = 0; i + 1 < stops.length; i += 1) {
    const [from, to] = [stops[i]!, stops[i + 1]!];
    if (to - from <= 1e-9) continue;
    const stand = standAt(solid, edge, (from + to) / 2, toEye);
    const state = stateOf(edge, stand, wantSmooth);
    if (state) strands.push({ parent, curve, shadow, low: from, high: to, surfaces, edge, ...state });
  }
  return strands;
}

/** What a stretch is for the drawing; undefined where it is not drawn. */
function stateOf({ smooth }: Edge, { left, right, convex }: Stand, wantSmooth: boolean): Pick<Strand, 'role' | 'covered' | 'outline'> | undefined {
  if (smooth) {
    if (Math.min(Math.abs(left), Math.abs(right)) < 10 * EDGE_ON) return { role: 'silhouette', covered: false, outline: true };
    return wantSmooth ? { role: 'smooth', covered: left < 0, outline: false } : undefined;
  }
  const [a, b] = [sign(left), sign(right)];
  // With a face edge-on the ray decides: the sight line runs along that face.
  const covered = convex ? a < 0 && b < 0 : a < 0 || b < 0;
  return { role: 'edge', covered, outline: convex && Math.max(a, b) > 0 && Math.min(a, b) <= 0 };
}

const sign = (x: number): number => (x > EDGE_ON ? 1 : x < -EDGE_ON ? -1 : 0);

/** The parameters at which one of the faces turns away, rising. */
function cutsOf(solid: Solid, edge: Edge, toEye: Vector3, low: number, high: number): number[] {
  const { curve, courses } = edge;
  const cuts: number[] = [];
  if (courses && curve.kind !== 'spline') {
    for (const course of courses) turnings(curve.kind, course, toEye, low, high, cuts);
  } else {
    for (const sheet of [edge.left, edge.right]) {
      if (solid.surfaces[sheet >> 1]!.kind === 'plane') continue;
      cuts.push(...searched((t) => dot(outward(solid, sheet, pointAt(curve, t)), toEye), low, high));
    }
  }
  return cuts.sort((a, b) => a - b);
}

function standAt(solid: Solid, { curve, courses, convex, left, right }: Edge, t: number, toEye: Vector3): Stand {
  if (courses && curve.kind !== 'spline') {
    return { left: facing(curve.kind, courses[0], toEye, t), right: facing(curve.kind, courses[1], toEye, t), convex };
  }
  const p = pointAt(curve, t);
  const [a, b] = [outward(solid, left, p), outward(solid, right, p)];
  return { left: dot(a, toEye), right: dot(b, toEye), convex: isConvex(a, b, curve, t) };
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
