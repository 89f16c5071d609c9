import { fromFrame, frameAlong, type Frame } from '../geometry/frame.js';
import { cross, dot, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { Form, HalfSpace } from '../part/form.js';
import { directionsAcross } from './grid.js';
import { checkOutline } from './ring.js';
import { prismFaces, prismSweep } from './prism.js';
import { revolutionFaces, revolutionSweep } from './revolution.js';
import type { FormFace, FormMesh, SweptMesh } from './swept-mesh.js';
import type { Sweeper } from './sweep.js';

/** What half-spaces are measured by: a point amid the body and the greatest extent of the body, mm. */
export interface Reach {
  readonly centre: Vector3;
  readonly size: number;
}

export interface MeshOptions {
  readonly segments: number;
  readonly reach: Reach;
  /** Meshes already swept, by what decides them; holes of one size are swept once. */
  readonly memo: Map<string, SweptMesh>;
}

/**
 * The mesh of a form, its vertices on the exact surfaces. Frames may be left-handed.
 * Throws RangeError when the outline is open, runs clockwise, or crosses the axis that it is turned about.
 */
export function formMesh(sweep: Sweeper, form: Form, options: MeshOptions): FormMesh {
  if (form.kind === 'half-space') return halfSpaceMesh(form, options.reach);
  const known = meshes.get(form)?.get(options.segments);
  if (known !== undefined) return known;
  const mesh = boundedMesh(sweep, form, options);
  const bySegments = meshes.get(form) ?? new Map<number, FormMesh>();
  meshes.set(form, bySegments.set(options.segments, mesh));
  return mesh;
}

/** Meshes of forms that bound themselves, by facets in a turn: a part is cut from the same forms again and again. */
const meshes = new WeakMap<Form, Map<number, FormMesh>>();

function boundedMesh(sweep: Sweeper, form: Exclude<Form, HalfSpace>, options: MeshOptions): FormMesh {
  checkOutline(form.outline);
  if (form.kind === 'prism') {
    const across = directionsAcross(form.frame.z).x;
    const zero: [number, number] = [dot(across, form.frame.x), dot(across, form.frame.y)];
    const key = JSON.stringify(['prism', form.outline, form.low, form.high, zero]);
    const swept = remember(options.memo, key, () => prismSweep(sweep, form, zero, options.segments));
    return placed(swept, form.frame, prismFaces(form));
  }
  const { x, y } = directionsAcross(form.frame.z);
  const key = JSON.stringify(['revolution', form.outline]);
  const swept = remember(options.memo, key, () => revolutionSweep(sweep, form.outline, options.segments));
  return placed(swept, { origin: form.frame.origin, x, y, z: form.frame.z }, revolutionFaces(form));
}

function remember(memo: Map<string, SweptMesh>, key: string, make: () => SweptMesh): SweptMesh {
  const known = memo.get(key);
  if (known !== undefined) return known;
  const made = make();
  memo.set(key, made);
  return made;
}

/** A swept mesh put in its place; in a left-handed frame the corners of each facet change their order. */
function placed(swept: SweptMesh, frame: Frame, faces: readonly Omit<FormFace, 'sag'>[]): FormMesh {
  const positions = new Float64Array(swept.points.length * 3);
  swept.points.forEach((point, i) => positions.set(fromFrame(frame, point), 3 * i));
  const triangles = swept.triangles.slice();
  if (dot(cross(frame.x, frame.y), frame.z) < 0) {
    for (let i = 0; i < triangles.length; i += 3) {
      const second = triangles[i + 1] as number;
      triangles[i + 1] = triangles[i + 2] as number;
      triangles[i + 2] = second;
    }
  }
  const sagged = faces.map((face, i) => ({ ...face, sag: swept.sags[i] ?? 0 }));
  return { positions, triangles, faceOfTriangle: swept.faceOfTriangle, faces: sagged };
}

/** A box large enough to stand for all space on one side of the plane. Only the face in the plane meets the body. */
function halfSpaceMesh(form: HalfSpace, reach: Reach): FormMesh {
  const toCentre = dot(subtract(reach.centre, form.point), form.normal);
  const origin = subtract(reach.centre, scale(form.normal, toCentre));
  const { x } = directionsAcross(form.normal);
  const frame = frameAlong(origin, form.normal, x);
  const half = reach.size;
  const depth = Math.max(0, toCentre) + reach.size;
  const points: Vector3[] = [];
  for (const z of [0, depth]) {
    for (const [u, v] of [[-1, -1], [1, -1], [1, 1], [-1, 1]] as const) points.push([u * half, v * half, z]);
  }
  const triangles = Uint32Array.from(
    [[0, 3, 2, 1], [4, 5, 6, 7], [0, 1, 5, 4], [1, 2, 6, 5], [2, 3, 7, 6], [3, 0, 4, 7]].flatMap((corners) => {
      const [a, b, c, d] = corners as [number, number, number, number];
      return [a, b, c, a, c, d];
    }),
  );
  const normals: Vector3[] = [[0, 0, -1], [0, 0, 1], [0, -1, 0], [1, 0, 0], [0, 1, 0], [-1, 0, 0]];
  const faces = normals.map((n, i) => {
    const normal = i === 0 ? scale(form.normal, -1) : subtract(fromFrame(frame, n), origin);
    const point = i === 0 ? form.point : fromFrame(frame, [n[0] * half, n[1] * half, n[2] > 0 ? depth : 0]);
    return { face: form.face, surface: { kind: 'plane', point, normal } as const };
  });
  const faceOfTriangle = Uint32Array.from([0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5, 5]);
  return placed({ points, triangles, faceOfTriangle, sags: [] }, frame, faces);
}
