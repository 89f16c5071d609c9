import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { add, cross, dot, scale, subtract, unit, type Vector2, type Vector3 } from '../../engine/geometry/vector.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import type { Solid } from '../../engine/solid/model.js';
import { offsetFrom } from '../../engine/solid/surface.js';
import { cameraFrom, projectPoint } from '../../engine/view/camera.js';
import { prepare } from '../../engine/view/prepared.js';
import { project } from '../../engine/view/project.js';
import { crossheadForms, drilledBlock } from '../support/crosshead-forms.js';
import { coverOf, polylineOf } from '../support/line-agreement.js';
import { manifoldForms, shaftForms } from '../support/view-forms.js';

/*
 * The slow plain way: many points along each edge, lifted off the body, and from each a ray against every facet. Points
 * near the outline of something before them are left to chance by the facets' error, so a few in a thousand may differ.
 */

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const SEED = 5;
const LIFT = 0.004;

/** True when the ray from p along w meets a facet (by signed volumes, as plainly as can be). */
function blocked({ positions, triangles }: Solid, p: Vector3, w: Vector3): boolean {
  const corner = (i: number): Vector3 => {
    const at = 3 * triangles[i]!;
    return [positions[at]! - p[0], positions[at + 1]! - p[1], positions[at + 2]! - p[2]];
  };
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [corner(i), corner(i + 1), corner(i + 2)];
    const [x, y, z] = [dot(w, cross(a, b)), dot(w, cross(b, c)), dot(w, cross(c, a))];
    if (!((x > 0 && y > 0 && z > 0) || (x < 0 && y < 0 && z < 0))) continue;
    const normal = cross(subtract(b, a), subtract(c, a));
    if (dot(a, normal) / dot(w, normal) > 0) return true;
  }
  return false;
}

const BODIES = { 'drilled block': drilledBlock, shaft: shaftForms, 'crossing bores': manifoldForms, crosshead: crossheadForms };

describe.each(Object.entries(BODIES))('%s', (_name, body) => {
  it('shows the points of its edges that a plain ray finds free, and no others, from any side', () => {
    const { stock, removed } = body();
    const solid = formsToSolid(kernel, stock, removed);
    const { edges } = prepare(solid);
    let tried = 0;
    let wrong = 0;
    // Directions in which no edge stands before another all along, for then the nearer covers the farther.
    fc.assert(fc.property(fc.integer({ min: 0, max: 71 }), fc.integer({ min: -11, max: 11 }), (round, rise) => {
      const [turn, lean] = [((5 * round + 2.3) * Math.PI) / 180, ((7 * rise + 1.1) * Math.PI) / 180];
      const camera = cameraFrom([Math.cos(turn) * Math.cos(lean), Math.sin(turn) * Math.cos(lean), Math.sin(lean)]);
      const toEye = scale(camera.toward, -1);
      const view = project(solid, camera);
      const [seen, hidden] = [true, false].map((state) =>
        coverOf(view.curves.filter(({ visible }) => visible === state).map(({ geometry }) => polylineOf(geometry, 0.05)), 0.01)) as [(p: Vector2) => boolean, (p: Vector2) => boolean];
      for (const { left, right, smooth, vertices } of edges) {
        if (smooth || vertices.length < 2) continue;
        const place = (v: number): Vector3 => [solid.positions[3 * v]!, solid.positions[3 * v + 1]!, solid.positions[3 * v + 2]!];
        const inner = vertices.slice(1, -1);
        // A vertex lies on the exact curve; an edge without any inside is straight, or as short as a chord.
        const points = inner.length === 0
          ? [scale(add(place(vertices[0]!), place(vertices[1]!)), 0.5)]
          : [0, 1, 2, 3].map((k) => place(inner[Math.floor((k * inner.length) / 4)]!));
        for (const p of points) {
          const normals = [left, right].map((sheet) => scale(offsetFrom(solid.surfaces[sheet >> 1]!, p).normal, sheet & 1 ? -1 : 1));
          const lifted = add(p, scale(unit(add(normals[0]!, normals[1]!)), LIFT));
          const at = projectPoint(camera, p);
          // Where seen and hidden lines cross in the view both may cover the point.
          if (seen(at) && hidden(at)) continue;
          tried += 1;
          const free = !blocked(solid, lifted, toEye);
          if (!(free ? seen(at) : hidden(at))) wrong += 1;
        }
      }
    }), { seed: SEED, numRuns: 6 });
    expect(tried).toBeGreaterThan(100);
    expect(wrong / tried).toBeLessThan(0.003);
  });
});
