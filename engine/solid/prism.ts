import { onFrame } from '../geometry/frame.js';
import { add, length2, scale, subtract2, unit, type Vector2, type Vector3 } from '../geometry/vector.js';
import type { Prism } from '../part/form.js';
import { arcRadius } from './grid.js';
import { outlineRing } from './ring.js';
import type { Sweeper } from './sweep.js';
import type { FormFace, SweptMesh } from './swept-mesh.js';

/**
 * The mesh of a prism in its own frame. Faces are numbered by the outline's segments, then low, then high.
 * Throws RangeError when `high` is not above `low`.
 */
export function prismSweep(sweep: Sweeper, prism: Prism, zero: Vector2, segments: number): SweptMesh {
  if (!(prism.high > prism.low)) throw new RangeError(`the prism with "${prism.lowFace}" has no height`);
  const ring = outlineRing(prism.outline, zero, segments);
  const count = ring.points.length;
  const sections = [prism.low, prism.high].map((z) => ring.points.map(([x, y]): Vector3 => [x, y, z]));
  const swept = withWholeEdges(sweep(sections, false), count);
  const faceOfTriangle: number[] = [];
  for (let i = 0; i < swept.length; i += 3) {
    const corners = [swept[i] ?? 0, swept[i + 1] ?? 0, swept[i + 2] ?? 0];
    const low = corners.filter((corner) => corner < count).length;
    const cap = prism.outline.length + (low === 0 ? 1 : 0);
    faceOfTriangle.push(low % 3 === 0 ? cap : (ring.owners[pieceOf(corners, count)] ?? 0));
  }
  const triangles = Uint32Array.from(swept);
  return { points: sections.flat(), triangles, faceOfTriangle: Uint32Array.from(faceOfTriangle), sags: ring.sags };
}

/** The piece of the ring that a wall facet stands on: its corners belong to the piece's two points. */
export function pieceOf(corners: readonly number[], count: number): number {
  const points = corners.map((corner) => corner % count);
  const first = Math.min(...points);
  const last = Math.max(...points);
  return last - first === 1 ? first : last;
}

/**
 * Filling a section may pass over a point that lies on a straight line between its neighbours. The wall has an edge on
 * each side of it, so the facet that passes over it is parted there.
 */
function withWholeEdges(triangles: Uint32Array, count: number): number[] {
  const edges = new Set<number>();
  const key = (from: number, to: number): number => from * 2 * count + to;
  for (let i = 0; i < triangles.length; i += 3) {
    for (let k = 0; k < 3; k += 1) edges.add(key(triangles[i + k] ?? 0, triangles[i + ((k + 1) % 3)] ?? 0));
  }
  const result: number[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    const corners = [triangles[i] ?? 0, triangles[i + 1] ?? 0, triangles[i + 2] ?? 0];
    const open = [0, 1, 2].find((k) => !edges.has(key(corners[(k + 1) % 3] ?? 0, corners[k] ?? 0)));
    if (open === undefined) {
      result.push(...corners);
      continue;
    }
    const [from, to, opposite] = [0, 1, 2].map((k) => corners[(open + k) % 3] ?? 0) as [number, number, number];
    const base = from < count ? 0 : count;
    // The low cap is seen from below: its edges run against the ring.
    const step = base === 0 ? count - 1 : 1;
    for (let at = from; at !== to; ) {
      const next = base + ((at - base + step) % count);
      result.push(at, next, opposite);
      at = next;
    }
  }
  return result;
}

/** Names and exact surfaces of a prism's faces, numbered as in its mesh. */
export function prismFaces(prism: Prism): Omit<FormFace, 'sag'>[] {
  const { frame, low, high } = prism;
  const inPlane = (v: Vector2): Vector3 => unit(add(scale(frame.x, v[0]), scale(frame.y, v[1])));
  const walls = prism.outline.map((segment): Omit<FormFace, 'sag'> => {
    if (segment.kind === 'arc') {
      const origin = onFrame(frame, segment.centre, low);
      return { face: segment.face, surface: { kind: 'cylinder', origin, axis: frame.z, radius: arcRadius(segment) } };
    }
    const along = subtract2(segment.to, segment.from);
    const size = length2(along);
    const normal = inPlane([along[1] / size, -along[0] / size]);
    return { face: segment.face, surface: { kind: 'plane', point: onFrame(frame, segment.from, low), normal } };
  });
  const end = (face: string, z: number, normal: Vector3): Omit<FormFace, 'sag'> => ({
    face,
    surface: { kind: 'plane', point: onFrame(frame, [0, 0], z), normal },
  });
  return [...walls, end(prism.lowFace, low, scale(frame.z, -1)), end(prism.highFace, high, frame.z)];
}
