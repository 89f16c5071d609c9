import { add, dot, scale, subtract, unit, type Vector3 } from '../../../geometry/vector.js';
import type { Operation, SetUp } from '../../../part/part.js';
import { machineAxes, type MachineFrame } from '../../../plan/machine-frame.js';
import type { CutterPlan } from '../../../plan/speeds.js';
import type { WorkKind } from '../../../plan/work.js';
import type { Solid } from '../../../solid/model.js';

/** From where a cutter comes to the work, and the point of the work that it comes to; in coordinates of the part. */
export interface CutterSide {
  readonly words: string;
  /** The way that it comes, length one. */
  readonly into: Vector3;
  readonly at: Vector3;
}

/** On a lathe these come along the spindle from the tailstock; all else from the side of the person. */
const fromTailstock: readonly WorkKind[] = ['drilling', 'centring', 'reaming', 'tapping', 'threading', 'countersinking', 'counterboring'];

/** Where the cutter of an operation comes from; undefined on the bench, and where nothing is cut by machine. */
export function cutterSide(setUp: SetUp, frame: MachineFrame, operation: Operation, cutters: readonly CutterPlan[], after: Solid, faces: ReadonlySet<number>): CutterSide | undefined {
  const [first] = cutters;
  if (setUp.machine === 'bench' || first === undefined) return undefined;
  const { right, up, near } = machineAxes(setUp);
  const places = operation.cuts.flatMap((cut) =>
    cut.sizes.flatMap((size) => (size.kind === 'hole' || size.kind === 'tapping' || size.kind === 'countersink' || size.kind === 'counterbore' ? size.points : size.kind === 'centre-hole' ? [size.point] : [])),
  );
  if (setUp.machine !== 'lathe') {
    const into = scale(up, -1);
    const at = lastOf(places, add(near, right)) ?? topOf(after, faces, up, add(near, right));
    return at === undefined ? undefined : { words: 'from above', into, at };
  }
  const through = (height: number): Vector3 => add(subtract(frame.origin, scale(right, dot(frame.origin, right))), scale(right, height));
  const touched = points(after, faces);
  if (touched.length === 0) return undefined;
  const heights = touched.map((p) => dot(p, right));
  const end = Math.max(...heights);
  if (fromTailstock.includes(first.kind) || first.kind === 'boring') return { words: first.kind === 'boring' ? 'into the bore' : 'from the tailstock', into: scale(right, -1), at: through(end) };
  // A turning tool stands on the near side, where its cut begins: its edge is on the face nearest to the person.
  const most = Math.max(...touched.map((p) => dot(p, near)));
  const nearest = touched.filter((p) => dot(p, near) > most - 1e-3);
  const middle = (Math.min(...nearest.map((p) => dot(p, right))) + Math.max(...nearest.map((p) => dot(p, right)))) / 2;
  return { words: 'from the near side', into: scale(near, -1), at: add(through(middle), scale(near, most - dot(frame.origin, near))) };
}

const lastOf = (places: readonly Vector3[], direction: Vector3): Vector3 | undefined =>
  places.length === 0 ? undefined : places.reduce((best, next) => (dot(next, direction) > dot(best, direction) + 1e-9 ? next : best));

/** Corners of some faces. */
function points({ positions, triangles, faceOfTriangle }: Solid, faces: ReadonlySet<number>): readonly Vector3[] {
  const found: Vector3[] = [];
  for (let i = 0; i < triangles.length; i += 1) {
    if (!faces.has(faceOfTriangle[Math.trunc(i / 3)] ?? 0)) continue;
    const at = 3 * (triangles[i] ?? 0);
    found.push([positions[at] ?? 0, positions[at + 1] ?? 0, positions[at + 2] ?? 0]);
  }
  return found;
}

/** Over the middle of the largest facet among some faces that looks upward, as high as they reach; else their topmost corner on the near right. */
function topOf(solid: Solid, faces: ReadonlySet<number>, up: Vector3, toward: Vector3): Vector3 | undefined {
  const corners = points(solid, faces);
  let best: { readonly area: number; readonly at: Vector3 } | undefined;
  for (let i = 0; i + 2 < corners.length; i += 3) {
    const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
    const [p, q] = [subtract(b, a), subtract(c, a)];
    const area = dot([p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]], up) / 2;
    if (area > (best?.area ?? 0) + 1e-6) best = { area, at: scale(add(add(a, b), c), 1 / 3) };
  }
  if (best !== undefined) return add(best.at, scale(up, Math.max(...corners.map((p) => dot(p, up))) - dot(best.at, up)));
  return lastOf(corners, add(scale(up, 4), unit(toward)));
}
