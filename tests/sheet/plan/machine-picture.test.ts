import { describe, expect, it } from 'vitest';
import { dot, type Vector3 } from '../../../engine/geometry/vector.js';
import { mirrorPart } from '../../../engine/part/mirror.js';
import type { Part } from '../../../engine/part/part.js';
import { machineAxes } from '../../../engine/plan/machine-frame.js';
import { planCamera } from '../../../engine/sheet/plan/picture/plan-camera.js';
import { planGroundsFor } from '../../../engine/sheet/plan/make-plan.js';
import { depthOf, projectPoint, rightOf } from '../../../engine/view/camera.js';
import type { Solid } from '../../../engine/solid/model.js';
import { builtInPart } from '../../support/built-in-part.js';

const parts = ['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod', 'valve-rod-fork', 'gland-nut'];
const asked = { hand: 'both', units: undefined, paper: undefined, scale: undefined, angle: 'third' } as const;

const corners = ({ positions }: Solid): readonly Vector3[] => Array.from({ length: positions.length / 3 }, (_, i): Vector3 => [positions[3 * i]!, positions[3 * i + 1]!, positions[3 * i + 2]!]);
const reach = (points: readonly Vector3[], axis: Vector3) => ({ low: Math.min(...points.map((p) => dot(p, axis))), high: Math.max(...points.map((p) => dot(p, axis))) });

describe.each(parts)('the pictures of the %s', (name) => {
  it('show each set-up as one stands before the machine, for both hands', async () => {
    const right = await builtInPart(name);
    for (const part of [right, mirrorPart(right)])
      for (const setUp of part.setUps) {
        const camera = planCamera(setUp);
        const axes = machineAxes(setUp);
        expect(dot(rightOf(camera), camera.up)).toBeCloseTo(0, 9);
        const [x, level] = projectPoint(camera, axes.right);
        const [aside, up] = projectPoint(camera, axes.up);
        expect(x).toBeGreaterThan(0.5);
        expect(up).toBeGreaterThan(0.5);
        // What is nearer to the person and higher is nearer to the eye.
        expect(depthOf(camera, axes.near)).toBeLessThan(0);
        expect(depthOf(camera, axes.up)).toBeLessThan(0);
        if (setUp.machine === 'lathe') expect([setUp.id, level]).toEqual([setUp.id, expect.closeTo(0, 9)]);
        else expect([setUp.id, aside]).toEqual([setUp.id, expect.closeTo(0, 9)]);
      }
  });

  it('have the chuck at the left of the work that stands out of it, and jaws beside the work, not in it', async () => {
    for (const { part, runs } of await planGroundsFor(await builtInPart(name), asked))
      for (const { run, holding, states } of runs) {
        const kind = run.setUp.grip?.kind;
        if (holding === undefined || kind === undefined) continue;
        const { right } = machineAxes(run.setUp);
        const work = reach(corners(states[0]!.before), right);
        const held = reach(corners(holding), right);
        if (/chuck|collet/.test(kind)) {
          expect([part.hand, run.setUp.id, held.high < work.high]).toEqual([part.hand, run.setUp.id, true]);
          expect([part.hand, run.setUp.id, held.low < (work.low + work.high) / 2]).toEqual([part.hand, run.setUp.id, true]);
        }
        if (kind === 'vice') {
          const [a, b] = stationsOf(part, run.setUp.grip!.between);
          const axis = 'xyz'.indexOf(a.axis) as 0 | 1 | 2;
          const [low, high] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
          const jaws = holding.faces.flatMap(({ tag }, i) => (tag.cut === 'held by' ? [i] : []));
          holding.faceOfTriangle.forEach((face, t) => {
            if (!jaws.includes(face)) return;
            const at = holding.positions[3 * holding.triangles[3 * t]! + axis]!;
            expect(at <= low || at >= high).toBe(true);
          });
        }
      }
  });
});

function stationsOf(part: Part, ids: readonly [string, string]) {
  return ids.map((id) => part.stations.find((station) => station.id === id)!) as [Part['stations'][number], Part['stations'][number]];
}
