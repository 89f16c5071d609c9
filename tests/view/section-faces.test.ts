import { beforeAll, describe, expect, it } from 'vitest';
import type { Curve2 } from '../../engine/geometry/curve.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import type { Solid, SolidFace } from '../../engine/solid/model.js';
import { isometricCamera, standardCamera } from '../../engine/view/camera.js';
import { sectionFaces, type Loop } from '../../engine/view/section-faces.js';
import { crossheadForms } from '../support/crosshead-forms.js';
import { block, frameTo, halfSpace, rod } from '../support/forms.js';
import { curvePoint, polylineOf } from '../support/line-agreement.js';
import { forms, type Forms } from '../support/view-forms.js';

let kernel: Kernel;

beforeAll(async () => {
  kernel = await loadKernel();
});

const cutFace = (face: SolidFace): boolean => face.tag.cut === 'section';
const front = standardCamera('-y');

/** The solid with all before the plane y = `at` taken away. */
function cutAt({ stock, removed }: Forms, at: number): Solid {
  const section = { cut: 'section', form: halfSpace([0, at, 0], [0, -1, 0]) };
  return formsToSolid(kernel, stock, [...removed, section]);
}

/** Signed area inside a loop, by fine polygons. */
const areaOf = (loop: Loop): number => {
  const points = loop.flatMap((curve) => polylineOf(curve, 0.005).slice(0, -1));
  return points.reduce((sum, [x, y], i) => {
    const [u, v] = points[(i + 1) % points.length]!;
    return sum + (x * v - y * u) / 2;
  }, 0);
};

const gaps = (loop: Loop): number[] =>
  loop.map((curve, i) => {
    const [a, b] = [curvePoint(curve, 1), curvePoint(loop[(i + 1) % loop.length]!, 0)];
    return Math.hypot(a[0] - b[0], a[1] - b[1]);
  });

const kinds = (loop: Loop): Curve2['kind'][] => loop.map(({ kind }) => kind);

describe('the face of a section', () => {
  it('is a square with a full circle in it for a bored block', () => {
    const faces = sectionFaces(cutAt(forms(block([0, 0, 0], [10, 10, 10]), rod(frameTo([5, 0, 5], [0, 1, 0]), 2, -1, 11)), 4), cutFace, front);
    expect(faces).toHaveLength(1);
    const [face] = faces;
    expect(kinds(face!.outer)).toEqual(['line', 'line', 'line', 'line']);
    expect(face!.holes).toHaveLength(1);
    expect(face!.holes[0]).toMatchObject([{ kind: 'arc', radius: 2 }]);
    expect(Math.abs(areaOf(face!.outer))).toBeCloseTo(100, 9);
    expect(Math.abs(areaOf(face!.holes[0]!))).toBeCloseTo(4 * Math.PI, 4);
  });

  it('falls into two where a bore parts it, with no curve but straight ones', () => {
    const faces = sectionFaces(cutAt(forms(block([0, 0, 0], [10, 10, 10]), rod(frameTo([5, 4, 0], [0, 0, 1]), 2, -1, 11)), 4), cutFace, front);
    expect(faces.map(({ outer, holes }) => [kinds(outer), holes.length])).toEqual([[['line', 'line', 'line', 'line'], 0], [['line', 'line', 'line', 'line'], 0]]);
    for (const { outer } of faces) expect(Math.abs(areaOf(outer))).toBeCloseTo(30, 9);
  });

  it('has closed loops of true arcs on a crosshead, in any view', () => {
    const solid = cutAt(crossheadForms(), 0.1);
    for (const camera of [front, isometricCamera()]) {
      const faces = sectionFaces(solid, cutFace, camera);
      expect(faces.length).toBeGreaterThan(0);
      for (const loop of faces.flatMap(({ outer, holes }) => [outer, ...holes])) {
        for (const gap of gaps(loop)) expect(gap).toBeLessThan(1e-6);
      }
    }
    const [largest] = sectionFaces(solid, cutFace, front).sort((a, b) => Math.abs(areaOf(b.outer)) - Math.abs(areaOf(a.outer)));
    // The fillet at the foot of the boss, cut 0.1 mm beside its axis, is no circle any more; the pocket's round bottom is one.
    expect(kinds(largest!.outer)).toContain('arc');
  });

  it('is nothing on a solid without a section', () => {
    const { stock, removed } = crossheadForms();
    expect(sectionFaces(formsToSolid(kernel, stock, removed), cutFace, front)).toEqual([]);
  });
});
