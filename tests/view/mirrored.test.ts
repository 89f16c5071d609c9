import { beforeAll, describe, expect, it } from 'vitest';
import type { Curve2 } from '../../engine/geometry/curve.js';
import type { Vector2 } from '../../engine/geometry/vector.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import { threadLines } from '../../engine/sheet/views/thread-lines.js';
import { solidOf } from '../../engine/solid/build.js';
import { cutSolid } from '../../engine/solid/combine.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { reflection } from '../../engine/solid/matrix.js';
import type { Solid } from '../../engine/solid/model.js';
import { reflectSolid } from '../../engine/solid/reflect.js';
import { moveSolid } from '../../engine/solid/transform.js';
import { isometricCamera, standardCamera } from '../../engine/view/camera.js';
import type { View, ViewCurve } from '../../engine/view/model.js';
import { project } from '../../engine/view/project.js';
import { builtInPart } from '../support/built-in-part.js';

let kernel: Kernel;

beforeAll(async () => {
  kernel = await loadKernel();
});

/** Ends and middle of a curve, of a closed one the centre; the ends in either order stand for the same curve. */
function pointsOf(curve: Curve2): readonly [Vector2, Vector2, Vector2] {
  const at = (share: number): Vector2 => {
    if (curve.kind === 'line') return [0, 1].map((k) => curve.from[k]! + share * (curve.to[k]! - curve.from[k]!)) as unknown as Vector2;
    if (curve.kind === 'spline') return curve.points[0]!;
    if (Math.abs(curve.sweep) === 360) return curve.centre;
    const [rx, ry, turn] = curve.kind === 'arc' ? [curve.radius, curve.radius, 0] : [curve.radiusX, curve.radiusY, (curve.rotation * Math.PI) / 180];
    const t = ((curve.start + share * curve.sweep) * Math.PI) / 180;
    const [x, y] = [rx * Math.cos(t), ry * Math.sin(t)];
    return [curve.centre[0] + x * Math.cos(turn) - y * Math.sin(turn), curve.centre[1] + x * Math.sin(turn) + y * Math.cos(turn)];
  };
  return [at(0), at(0.5), at(1)];
}

const apart = (a: Vector2, b: Vector2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

function same(a: ViewCurve, b: ViewCurve): boolean {
  if (a.visible !== b.visible || a.role !== b.role || a.name !== b.name || a.geometry.kind !== b.geometry.kind) return false;
  if ([...a.surfaces].sort().join(' ') !== [...b.surfaces].sort().join(' ')) return false;
  // Splines are fitted from one end on, closed ones from any joint, so that only their courses are alike.
  if (a.geometry.kind === 'spline' && b.geometry.kind === 'spline') return follows(a.geometry, b.geometry) && follows(b.geometry, a.geometry);
  const [p, q] = [pointsOf(a.geometry), pointsOf(b.geometry)];
  if (apart(p[1], q[1]) > 1e-5) return false;
  return Math.min(apart(p[0], q[0]) + apart(p[2], q[2]), apart(p[0], q[2]) + apart(p[2], q[0])) < 1e-5;
}

type Spline = Curve2 & { readonly kind: 'spline' };

/** True when every joint of one spline lies on the other within twice the tolerance to which they are fitted. */
const follows = (one: Spline, other: Spline): boolean => {
  const chain = coursePoints(other);
  return one.points.filter((_, i) => i % 3 === 0).every((joint) => chain.some((from, i) => i > 0 && offChord(joint, chain[i - 1]!, from) < 4e-4));
};

/** Points along a spline, so close that chords between them do for it. */
const coursePoints = ({ points }: Spline): readonly Vector2[] =>
  points.slice(0, -1).flatMap((a, i) => {
    if (i % 3 !== 0) return [];
    const [b, c, d] = [points[i + 1]!, points[i + 2]!, points[i + 3]!];
    return Array.from({ length: 17 }, (_, k): Vector2 => {
      const [t, u] = [k / 16, 1 - k / 16];
      const mix = (j: 0 | 1): number => u * u * u * a[j] + 3 * u * u * t * b[j] + 3 * u * t * t * c[j] + t * t * t * d[j];
      return [mix(0), mix(1)];
    });
  });

function offChord(point: Vector2, from: Vector2, to: Vector2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const along = ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.min(1, Math.max(0, along));
  return apart(point, [from[0] + t * dx, from[1] + t * dy]);
}

/** The curves of one view that the other does not have. */
const missing = (from: View, of: View): readonly ViewCurve[] => of.curves.filter((curve) => !from.curves.some((other) => same(curve, other)));

const cameras = [
  ...(['+x', '-x', '+y', '-y', '+z', '-z'] as const).map((from) => [`from ${from}`, standardCamera(from)] as const),
  ['isometric', isometricCamera()] as const,
  ['isometric from below', isometricCamera([-1, -1, -1])] as const,
];

describe.each(['crosshead', 'crosshead-pin'])('the mirror image of the %s', async (name) => {
  const part = await builtInPart(name);
  const left = mirrorPart(part);
  const axis = part.handAxis;
  const mirror = { matrix: reflection(axis), shift: [0, 0, 0] } as const;
  let right: Solid;
  let image: Solid;
  let plain: Solid;

  beforeAll(() => {
    right = solidOf(kernel, part);
    image = reflectSolid(right, axis);
    // The plain one is not known to be an image, so that its views are made anew.
    plain = moveSolid(mirror, right);
  });

  it('is known for one, and mirrored again is the solid itself', () => {
    expect(image.imageOf).toEqual({ solid: right, axis });
    expect(reflectSolid(image, axis)).toBe(right);
    expect(reflectSolid(right, axis)).toBe(image);
  });

  it.each(cameras)('looks %s as when its view is made anew, threads among it', (_, camera) => {
    const added = threadLines(left, camera);
    const [mirrored, anew] = [project(image, camera, { added }), project(plain, camera, { added })];
    expect(mirrored.curves.length).toBe(anew.curves.length);
    expect(missing(mirrored, anew)).toEqual([]);
    expect(missing(anew, mirrored)).toEqual([]);
    for (const corner of ['low', 'high'] as const) expect(apart(mirrored.box[corner], anew.box[corner])).toBeLessThan(1e-6);
    expect(mirrored.camera).toBe(camera);
  });

  it('is cut as the mirror image of the cut that is mirrored', () => {
    const tool = [{ cut: 'section', form: { kind: 'half-space', point: [1, 0, 0], normal: [1, 0, 0], face: 'A' } as const }];
    const cut = cutSolid(kernel, image, tool);
    const source = cut.imageOf?.solid;
    const reach = (given: Solid): number => given.positions.reduce((most, value, i) => (i % 3 === 0 ? Math.max(most, value) : most), -Infinity);
    expect(reach(cut)).toBeCloseTo(1, 6);
    expect(source).toBeDefined();
    expect(cutSolid(kernel, image, tool)).toBe(cut);
  });
});
