import type { Curve2 } from '../geometry/curve.js';
import type { Solid, SolidFace } from '../solid/model.js';
import type { Edge } from './edges.js';
import { flatCurve } from './flat-curve.js';
import type { Camera } from './model.js';
import { prepare, type Prepared } from './prepared.js';
import { shadowOf, turnOf, type Turn } from './shadow.js';
import { nextOf } from './topology.js';

/** A closed outline: curves end to end. */
export type Loop = readonly Curve2[];

/** A connected flat face as the camera sees it: it lies left of the way round each loop where it faces the eye. */
export interface SectionFace {
  readonly surface: number;
  readonly outer: Loop;
  readonly holes: readonly Loop[];
}

/**
 * The flat faces for which `wanted` holds (the cut faces of a section), each connected piece with its exact outlines, for
 * hatching. Faces that touch along a line are one piece. Throws RangeError when the mesh is not closed.
 */
export function sectionFaces(solid: Solid, wanted: (face: SolidFace) => boolean, camera: Camera): SectionFace[] {
  const prepared = prepare(solid);
  const chosen = Uint8Array.from(solid.faces, (face) => (solid.surfaces[face.surface]!.kind === 'plane' && wanted(face) ? 1 : 0));
  const inside = (h: number): boolean => chosen[solid.faceOfTriangle[Math.trunc(h / 3)]!] === 1;
  const { twin } = prepared.topology;
  const regions = regionsOf(solid, twin, inside);
  const rings = new Map<number, number[][]>();
  const used = new Set<number>();
  for (let h = 0; h < twin.length; h += 1) {
    if (!inside(h) || inside(twin[h]!) || used.has(h)) continue;
    const ring: number[] = [];
    for (let at = h; !used.has(at); at = onward(at, twin, inside)) {
      used.add(at);
      ring.push(at);
    }
    const region = regions[Math.trunc(h / 3)]!;
    const known = rings.get(region);
    if (known) known.push(ring);
    else rings.set(region, [ring]);
  }
  const turn = turnOf(camera);
  const find = edgeFinder(prepared);
  return [...rings.values()].map((list): SectionFace => {
    const sized = list.map((ring) => ({ ring, area: Math.abs(areaOf(solid, ring, turn)) }));
    const outer = sized.reduce((best, next) => (next.area > best.area ? next : best));
    const surface = solid.faces[solid.faceOfTriangle[Math.trunc(outer.ring[0]! / 3)]!]!.surface;
    const loop = (ring: readonly number[]): Loop => loopOf(solid, ring, turn, find);
    return { surface, outer: loop(outer.ring), holes: sized.filter((item) => item !== outer).map(({ ring }) => loop(ring)) };
  });
}

/** The boundary half-edge that follows: round the end vertex through chosen facets until one leads out. */
function onward(h: number, twin: Int32Array, inside: (h: number) => boolean): number {
  let next = nextOf(h);
  while (inside(twin[next]!)) next = nextOf(twin[next]!);
  return next;
}

/** Numbers the connected pieces of chosen facets; 0 for the others. */
function regionsOf({ faceOfTriangle }: Solid, twin: Int32Array, inside: (h: number) => boolean): Int32Array {
  const regions = new Int32Array(faceOfTriangle.length);
  let count = 0;
  for (let t = 0; t < regions.length; t += 1) {
    if (regions[t] !== 0 || !inside(3 * t)) continue;
    count += 1;
    regions[t] = count;
    const open = [t];
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      for (let h = 3 * at; h < 3 * at + 3; h += 1) {
        const next = Math.trunc(twin[h]! / 3);
        if (regions[next] !== 0 || !inside(twin[h]!)) continue;
        regions[next] = count;
        open.push(next);
      }
    }
  }
  return regions;
}

/** Twice the signed area of the ring in the view. */
function areaOf({ triangles, positions }: Solid, ring: readonly number[], turn: Turn): number {
  let area = 0;
  const place = (h: number): readonly [number, number, number] => {
    const at = 3 * triangles[h]!;
    return turn([positions[at]!, positions[at + 1]!, positions[at + 2]!]);
  };
  ring.forEach((h, i) => {
    const [a, b] = [place(h), place(ring[(i + 1) % ring.length]!)];
    area += a[0] * b[1] - a[1] * b[0];
  });
  return area;
}

/** A step along an exact edge, from one parameter to the next. */
interface Step {
  readonly edge: Edge;
  readonly from: number;
  readonly to: number;
}

/** Finds the exact edge that runs along the mesh edge between two vertices, in the way from the first to the second. */
function edgeFinder({ edges, solid }: Prepared): (from: number, to: number) => Step | undefined {
  const count = solid.positions.length / 3;
  const known = new Map<number, Step>();
  for (const edge of edges) {
    if (solid.surfaces[edge.left >> 1]!.kind !== 'plane' && solid.surfaces[edge.right >> 1]!.kind !== 'plane') continue;
    for (let i = 0; i + 1 < edge.vertices.length; i += 1) {
      const step = { edge, from: edge.parameters[i]!, to: edge.parameters[i + 1]! };
      known.set(edge.vertices[i]! * count + edge.vertices[i + 1]!, step);
    }
  }
  return (from, to) => {
    const ahead = known.get(from * count + to);
    if (ahead) return ahead;
    const back = known.get(to * count + from);
    return back && { edge: back.edge, from: back.to, to: back.from };
  };
}

/** The exact curves of a ring, steps along one edge taken together. */
function loopOf({ triangles, positions }: Solid, ring: readonly number[], turn: Turn, find: ReturnType<typeof edgeFinder>): Loop {
  const steps = ring.map((h) => ({ h, step: find(triangles[h]!, triangles[nextOf(h)]!) }));
  const change = steps.findIndex(({ step }, i) => !step || step.edge !== steps.at(i - 1)!.step?.edge);
  const ordered = change > 0 ? [...steps.slice(change), ...steps.slice(0, change)] : steps;
  const curves: Curve2[] = [];
  for (let i = 0; i < ordered.length; ) {
    const { h, step } = ordered[i]!;
    if (!step) {
      const [from, to] = [h, nextOf(h)].map((side) => {
        const at = 3 * triangles[side]!;
        const [x, y] = turn([positions[at]!, positions[at + 1]!, positions[at + 2]!]);
        return [x, y] as const;
      });
      curves.push({ kind: 'line', from: from!, to: to! });
      i += 1;
      continue;
    }
    let run = 0;
    for (; i < ordered.length && ordered[i]!.step?.edge === step.edge; i += 1) run += ordered[i]!.step!.to - ordered[i]!.step!.from;
    const shadow = shadowOf(step.edge.curve, turn);
    if (shadow.kind === 'spline' && run < 0) {
      const ahead = flatCurve(shadow, step.from + run, step.from);
      curves.push(ahead.kind === 'spline' ? { kind: 'spline', points: [...ahead.points].reverse() } : ahead);
    } else curves.push(flatCurve(shadow, step.from, step.from + run));
  }
  return curves;
}
