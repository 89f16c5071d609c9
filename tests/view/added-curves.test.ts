import { beforeAll, describe, expect, it } from 'vitest';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import type { Solid } from '../../engine/solid/model.js';
import { standardCamera } from '../../engine/view/camera.js';
import type { AddedCurve, Curve3 } from '../../engine/view/model.js';
import { project } from '../../engine/view/project.js';
import { block, frameTo, rod } from '../support/forms.js';
import { forms } from '../support/view-forms.js';

let kernel: Kernel;

beforeAll(async () => {
  kernel = await loadKernel();
});

/** A stud of 6 mm diameter along x, from 0 to 20, behind a block that reaches from x = 5 to 11. */
function stud(): Solid {
  const { removed } = forms(block([0, 0, 0], [1, 1, 1]));
  const stock = [
    { cut: 'stock', form: rod(frameTo([0, 0, 0], [1, 0, 0]), 3, 0, 20) },
    { cut: 'stock', form: block([5, -12, -5], [11, -8, 5]) },
    { cut: 'stock', form: block([5, -12, -7], [11, 2, -4]) },
    { cut: 'stock', form: block([5, -1, -5], [11, 1, 0]) },
  ];
  return formsToSolid(kernel, stock, removed);
}

/** The thread's second line, tested at the stud's outline. */
const threadLine = (z: number, drawnFrom = 0, drawnTo = 20): AddedCurve => ({
  role: 'thread',
  name: 'M6',
  drawn: { kind: 'line', from: [drawnFrom, 0, z], to: [drawnTo, 0, z] },
  tested: { kind: 'line', from: [0, 0, z > 0 ? 3 : -3], to: [20, 0, z > 0 ? 3 : -3] },
});

describe('an added curve', () => {
  it('is seen where its tested curve is seen, and cut at the outline that hides it', () => {
    const view = project(stud(), standardCamera('-y'), { added: [threadLine(2.5)] });
    const added = view.curves.filter(({ name }) => name === 'M6');
    expect(added.map(({ visible, role, surfaces }) => [visible, role, surfaces.length])).toEqual([[true, 'thread', 0], [false, 'thread', 0], [true, 'thread', 0]]);
    const ends = added.map(({ geometry }) => (geometry.kind === 'line' ? [geometry.from, geometry.to] : []));
    const expected = [[[0, 2.5], [5, 2.5]], [[5, 2.5], [11, 2.5]], [[11, 2.5], [20, 2.5]]];
    ends.flat().forEach((p, i) => {
      const wanted = expected.flat()[i]!;
      expect(p[0]).toBeCloseTo(wanted[0]!, 9);
      expect(p[1]).toBeCloseTo(wanted[1]!, 9);
    });
  });

  it('runs by the same parameter as its tested curve', () => {
    const view = project(stud(), standardCamera('-y'), { added: [threadLine(2.5, 100, 110)] });
    const first = view.curves.find(({ name }) => name === 'M6')!.geometry;
    expect(first).toMatchObject({ kind: 'line', from: [100, 2.5] });
    if (first.kind === 'line') expect(first.to[0]).toBeCloseTo(102.5, 9);
  });

  it('may be an arc on a face: three quarters of a circle stay so, turned as given', () => {
    const arc: Curve3 = { kind: 'arc', centre: [20, 0, 0], x: [0, 1, 0], y: [0, 0, 1], radius: 2.4, start: 90, sweep: -270 };
    const view = project(stud(), standardCamera('+x'), { added: [{ role: 'thread', name: 'end', drawn: arc, tested: arc }] });
    const shown = view.curves.filter(({ name }) => name === 'end');
    expect(shown).toHaveLength(1);
    expect(shown[0]).toMatchObject({ visible: true, geometry: { kind: 'arc', sweep: -270, start: 90 } });
    expect(project(stud(), standardCamera('-x'), { added: [{ role: 'thread', name: 'end', drawn: arc, tested: arc }], hidden: false }).curves.some(({ name }) => name === 'end')).toBe(false);
  });
});
