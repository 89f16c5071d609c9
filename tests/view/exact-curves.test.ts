import { beforeAll, describe, expect, it } from 'vitest';
import { dot, length, subtract, unit, type Vector3 } from '../../engine/geometry/vector.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { offsetFrom } from '../../engine/solid/surface.js';
import { cameraFrom, standardCamera } from '../../engine/view/camera.js';
import { prepare } from '../../engine/view/prepared.js';
import { shadowOf, turnOf } from '../../engine/view/shadow.js';
import { silhouetteStrands } from '../../engine/view/silhouettes.js';
import { pointAt } from '../../engine/view/space-curve.js';
import { project } from '../../engine/view/project.js';
import { crossheadForms, drilledBlock } from '../support/crosshead-forms.js';
import { curvePoint } from '../support/line-agreement.js';
import { manifoldForms, shaftForms } from '../support/view-forms.js';

let kernel: Kernel;

beforeAll(async () => {
  kernel = await loadKernel();
});

const BODIES = { 'drilled block': drilledBlock, crosshead: crossheadForms, shaft: shaftForms, 'crossing bores': manifoldForms };

/** Greatest distance of a spline from the true curve, mm. */
const SPLINE = 2e-3;

describe.each(Object.entries(BODIES))('%s', (_name, body) => {
  const made = () => {
    const { stock, removed } = body();
    return formsToSolid(kernel, stock, removed);
  };

  it('has edges on both of their surfaces', () => {
    const solid = made();
    const { edges } = prepare(solid);
    expect(edges.length).toBeGreaterThan(20);
    for (const { curve, low, high, left, right } of edges) {
      const pair = [solid.surfaces[left >> 1]!, solid.surfaces[right >> 1]!];
      const away = (p: Vector3): number => Math.max(...pair.map((surface) => Math.abs(offsetFrom(surface, p).distance)));
      for (let i = 0; i <= 24; i += 1) {
        const distance = away(pointAt(curve, low + ((high - low) * i) / 24));
        expect(distance).toBeLessThan(curve.kind === 'spline' ? SPLINE : 1e-9);
      }
      if (curve.kind !== 'spline') continue;
      for (let i = 0; i < curve.points.length; i += 3) expect(away(curve.points[i]!)).toBeLessThan(1e-6);
    }
  });

  it('has every mesh vertex of an edge on its curve, in rising order', () => {
    const solid = made();
    for (const { curve, vertices, parameters } of prepare(solid).edges) {
      vertices.forEach((vertex, i) => {
        const at: Vector3 = [solid.positions[3 * vertex]!, solid.positions[3 * vertex + 1]!, solid.positions[3 * vertex + 2]!];
        expect(length(subtract(at, pointAt(curve, parameters[i]!)))).toBeLessThan(5e-3);
        if (i > 0) expect(parameters[i]!).toBeGreaterThanOrEqual(parameters[i - 1]!);
      });
    }
  });

  it('has silhouettes on their surface, where it turns from the eye', () => {
    const solid = made();
    for (const camera of [standardCamera('-y'), standardCamera('+x'), cameraFrom([0.3, -0.8, 0.55]), cameraFrom([-0.7, 0.1, 0.2])]) {
      const toEye = unit([-camera.toward[0], -camera.toward[1], -camera.toward[2]]);
      for (const { curve, low, high, surfaces } of silhouetteStrands(prepare(solid), toEye, turnOf(camera), 0)) {
        const surface = solid.surfaces[surfaces[0]!]!;
        for (let i = 0; i <= 12; i += 1) {
          const p = pointAt(curve, low + ((high - low) * i) / 12);
          if (surface.kind === 'cone' && length(subtract(p, surface.apex)) < 1e-6) continue;
          const { distance, normal } = offsetFrom(surface, p);
          expect(Math.abs(distance)).toBeLessThan(curve.kind === 'spline' ? SPLINE : 1e-9);
          // A spline within 2e-3 mm of the true curve turns the normal by no more than that over the least radius.
          expect(Math.abs(dot(normal, toEye))).toBeLessThan(curve.kind === 'spline' ? 5e-3 : 1e-9);
        }
      }
    }
  });

  it('draws arcs with the centres and radii of the edges, to 1e-9 mm', () => {
    const solid = made();
    for (const camera of [standardCamera('-y'), standardCamera('+z'), standardCamera('+x')]) {
      const turn = turnOf(camera);
      const circles = prepare(solid).edges.flatMap(({ curve }) => (curve.kind === 'ellipse' ? [shadowOf(curve, turn)] : []));
      for (const { geometry, role } of project(solid, camera).curves) {
        if (geometry.kind !== 'arc' || role !== 'edge') continue;
        const { centre, radius } = geometry;
        const like = circles.some((circle) => circle.kind === 'ellipse'
          && Math.hypot(circle.centre[0] - centre[0], circle.centre[1] - centre[1]) < 1e-9
          && Math.abs(Math.hypot(...circle.u) - radius) < 1e-9);
        expect(like).toBe(true);
      }
    }
  });
});

it('takes a circle from the surfaces and not from the facets, however coarse they are', () => {
  const { stock, removed } = crossheadForms();
  const rims = [8, 64].map((segments) => {
    const view = project(formsToSolid(kernel, stock, removed, { segments }), standardCamera('-y'));
    return view.curves.flatMap(({ geometry, visible }) => (visible && geometry.kind === 'arc' ? [geometry] : []))
      .map(({ centre, radius, sweep }) => [...centre, radius, sweep].map((x) => Math.round(x * 1e6) / 1e6 + 0).join(' ')).sort();
  });
  expect(rims[0]).toEqual(rims[1]);
  expect(rims[0]).toContain('0 12 4 360');
});

it('ends curves that run on where the one before ends', () => {
  const { stock, removed } = shaftForms();
  const view = project(formsToSolid(kernel, stock, removed), standardCamera('+x'));
  const ends = view.curves.map(({ geometry }) => [curvePoint(geometry, 0), curvePoint(geometry, 1)]).flat();
  const corner = ends.filter(([x, y]) => Math.hypot(x - 4, y - 6) < 1e-3);
  expect(corner.length).toBeGreaterThanOrEqual(2);
  for (const [x, y] of corner) expect(Math.hypot(x - 4, y - 6)).toBeLessThan(1e-9);
});
