import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Solid, Surface } from '../solid/model.js';
import { offsetFrom } from '../solid/surface.js';
import type { Chain } from './chains.js';
import { isConvex, outward } from './edge-normals.js';
import { evenPlanes, meeting, type PlainCurve } from './meeting.js';
import { normalCourse, type NormalCourse } from './normal-course.js';
import { settle } from './settle.js';
import { parameterOf, pointAt, type SpaceCurve } from './space-curve.js';
import { traceMeeting } from './trace-meeting.js';

/** A stretch of an exact curve along which two sheets of the solid meet; the left sheet lies left of the way of rising t. */
export interface Edge {
  readonly curve: SpaceCurve;
  readonly low: number;
  readonly high: number;
  readonly closed: boolean;
  readonly left: number;
  readonly right: number;
  /** How the outward normals of the left and the right sheet run along a line or an ellipse; none along a spline. */
  readonly courses?: readonly [NormalCourse, NormalCourse];
  /** The body bulges at the edge; of a spline, at its middle. */
  readonly convex: boolean;
  /** The two surfaces touch here: no sharp edge. */
  readonly smooth: boolean;
  /** The mesh vertices along the edge and their parameters, which rise (of a closed edge the first comes again as the last). */
  readonly vertices: readonly number[];
  readonly parameters: readonly number[];
}

/** Normals nearer than this (radians) count as one. */
export const SMOOTH = 0.009;

/** A plain curve that leaves its mesh vertices by more than this, mm, is not believed. */
const BELIEF = 5e-3;

const vertexAt = ({ positions }: Solid, vertex: number): Vector3 => [
  positions[3 * vertex]!,
  positions[3 * vertex + 1]!,
  positions[3 * vertex + 2]!,
];

/** The surfaces that meet at the ends of chains, by vertex. */
export function surfacesAtEnds(chains: readonly Chain[]): Map<number, number[]> {
  const found = new Map<number, number[]>();
  for (const { left, right, vertices } of chains) {
    if (vertices[0] === vertices.at(-1)) continue;
    for (const vertex of [vertices[0]!, vertices.at(-1)!]) {
      const known = found.get(vertex) ?? [];
      for (const sheet of [left, right]) if (!known.includes(sheet >> 1)) known.push(sheet >> 1);
      found.set(vertex, known);
    }
  }
  return found;
}

/** The exact edges of a chain: one, but where it turns from one curve into another. */
export function edgesOf(solid: Solid, chain: Chain, ends: ReadonlyMap<number, readonly number[]>): Edge[] {
  const pair = [solid.surfaces[chain.left >> 1]!, solid.surfaces[chain.right >> 1]!] as const;
  return partsOf(solid, chain, pair).map((part) => edgeOf(solid, part, pair, ends));
}

/** Equal crossing cylinders meet in two ellipses: the chain is cut where it changes from one to the other. */
function partsOf(solid: Solid, chain: Chain, [a, b]: readonly [Surface, Surface]): Chain[] {
  const planes = evenPlanes(a, b);
  if (!planes) return [chain];
  const nearer = chain.vertices.slice(1).map((vertex, i) => {
    const middle = scale(add(vertexAt(solid, vertex), vertexAt(solid, chain.vertices[i]!)), 0.5);
    const [first, second] = planes.map((plane) => Math.abs(dot(subtract(middle, plane.point), plane.normal))) as [number, number];
    return first <= second;
  });
  const cuts = nearer.flatMap((side, i) => (i > 0 && side !== nearer[i - 1] ? [i] : []));
  if (cuts.length === 0) return [chain];
  const { vertices } = chain;
  const pieces = [0, ...cuts].map((cut, i) => vertices.slice(cut, (cuts[i] ?? vertices.length - 1) + 1));
  if (vertices[0] === vertices.at(-1) && nearer[0] === nearer.at(-1)) {
    const last = pieces.pop()!;
    pieces[0] = [...last, ...pieces[0]!.slice(1)];
  }
  return pieces.map((piece) => ({ ...chain, vertices: piece }));
}

function edgeOf(solid: Solid, chain: Chain, pair: readonly [Surface, Surface], ends: ReadonlyMap<number, readonly number[]>): Edge {
  const { left, right, vertices } = chain;
  const closed = vertices[0] === vertices.at(-1) && vertices.length > 2;
  const points = vertices.map((vertex) => vertexAt(solid, vertex));
  if (!closed) {
    for (const i of [0, points.length - 1]) {
      const surfaces = (ends.get(vertices[i]!) ?? []).map((index) => solid.surfaces[index]!);
      points[i] = settle(points[i]!, surfaces.length > 2 ? surfaces : [...pair, ...surfaces], 0.02);
    }
  }
  const smooth = chain.left >> 1 !== chain.right >> 1 && points.every((p) => touching(pair, p, left, right));
  const common = { left, right, smooth, closed, vertices };
  const bulges = (curve: SpaceCurve, t: number): boolean => {
    const p = pointAt(curve, t);
    return isConvex(outward(solid, left, p), outward(solid, right, p), curve, t);
  };
  const plain = left >> 1 === right >> 1 ? undefined : meeting(...pair, points[points.length >> 1]!);
  const placed = plain && placeOn(plain, points, closed);
  if (placed) {
    const { curve, low, high } = placed;
    const courses = [normalCourse(pair[0], (left & 1) === 1, curve), normalCourse(pair[1], (right & 1) === 1, curve)] as const;
    return { ...common, ...placed, courses, convex: bulges(curve, (low + high) / 2) };
  }
  const { points: spline, parameters } = traceMeeting(pair, points, closed);
  const curve: SpaceCurve = { kind: 'spline', points: spline };
  const high = (spline.length - 1) / 3;
  return { ...common, curve, low: 0, high, parameters: rising(parameters, 0, high), convex: bulges(curve, high / 2) };
}

function touching([a, b]: readonly [Surface, Surface], p: Vector3, left: number, right: number): boolean {
  const [m, n] = [offsetFrom(a, p).normal, offsetFrom(b, p).normal];
  const cosine = dot(m, n) * ((left ^ right) & 1 ? -1 : 1);
  return cosine > 0 && length(cross(m, n)) < SMOOTH;
}

/** Parameters made to rise from low to high: where cuts graze, mesh vertices may stand out of turn. */
function rising(found: readonly number[], low: number, high: number): number[] {
  let least = low;
  return found.map((t, i) => (i === found.length - 1 ? high : (least = Math.max(least, Math.min(high, t)))));
}

type Placed = Pick<Edge, 'low' | 'high' | 'parameters'> & { readonly curve: PlainCurve };

/** The points' parameters on the curve, turned so that they rise; undefined when the points do not follow the curve. */
function placeOn(plain: PlainCurve, points: readonly Vector3[], closed: boolean): Placed | undefined {
  const raw = points.map((p) => parameterOf(plain, p));
  const turn = 2 * Math.PI;
  const steps = raw.slice(1).map((t, i) => {
    const step = t - raw[i]!;
    return plain.kind === 'ellipse' ? step - turn * Math.round(step / turn) : step;
  });
  const total = steps.reduce((sum, step) => sum + step, 0);
  if (points.some((p, i) => length(subtract(p, pointAt(plain, raw[i]!))) > BELIEF)) return undefined;
  if (closed && (plain.kind !== 'ellipse' || Math.abs(Math.abs(total) - turn) > 1e-3)) return undefined;
  const sign = total < 0 ? -1 : 1;
  const curve: PlainCurve = sign > 0 ? plain : plain.kind === 'line'
    ? { ...plain, direction: scale(plain.direction, -1) }
    : { ...plain, v: scale(plain.v, -1) };
  let t = sign * raw[0]!;
  const found = [t, ...steps.map((step) => (t += sign * step))];
  const low = found[0]!;
  const high = closed ? low + turn : found.at(-1)!;
  return { curve, low, high, parameters: rising(found, low, high) };
}
