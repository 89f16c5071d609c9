import { beforeAll, describe, expect, it } from 'vitest';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { cameraFrom, isometricCamera, standardCamera } from '../../engine/view/camera.js';
import type { Solid } from '../../engine/solid/model.js';
import type { Camera, View } from '../../engine/view/model.js';
import { project } from '../../engine/view/project.js';
import { crossheadForms, drilledBlock } from '../support/crosshead-forms.js';
import { exactLines } from '../support/exact-hidden-lines.js';
import { coverOf, polylineOf, uncovered, type Polyline } from '../support/line-agreement.js';
import { formsToShape } from '../support/open-cascade-forms.js';
import { loadOpenCascade, type OpenCascade, type Shape } from '../support/open-cascade.js';
import { manifoldForms, shaftForms, type Forms } from '../support/view-forms.js';

/** Samples stand this far apart, mm, and agree within the tolerance. */
const STEP = 0.1;
const TOLERANCE = 0.02;

const BODIES: Readonly<Record<string, () => Forms>> = {
  'drilled block': drilledBlock,
  crosshead: crossheadForms,
  shaft: shaftForms,
  'crossing bores': manifoldForms,
};

const CAMERAS: Readonly<Record<string, Camera>> = {
  front: standardCamera('-y'),
  above: standardCamera('+z'),
  right: standardCamera('+x'),
  isometric: isometricCamera(),
  'oblique from below': cameraFrom([-0.7, -0.4, -0.6]),
  'nearly level': cameraFrom([0.9, 0.2, 0.15]),
};

let kernel: Kernel;
let oc: OpenCascade;

beforeAll(async () => {
  [kernel, oc] = await Promise.all([loadKernel(), loadOpenCascade()]);
});

const made = new Map<() => Forms, { readonly solid: Solid; readonly shape: Shape }>();

/** A body in our kernel and in the exact one, built once. */
function bothOf(body: () => Forms): { readonly solid: Solid; readonly shape: Shape } {
  const known = made.get(body);
  if (known) return known;
  const { stock, removed } = body();
  const both = { solid: formsToSolid(kernel, stock, removed), shape: formsToShape(oc, stock, removed) };
  made.set(body, both);
  return both;
}

const drawn = (view: View, visible: boolean): Polyline[] =>
  view.curves.filter((curve) => curve.visible === visible).map(({ geometry }) => polylineOf(geometry, STEP));

interface Lines {
  readonly visible: readonly Polyline[];
  readonly hidden: readonly Polyline[];
}

/** Lengths, mm, on which ours and the exact kernel's lines differ; smooth edges may stand where we draw an outline. */
function differences(ours: Lines, exact: Lines & { readonly smooth: readonly Polyline[] }): Record<string, number> {
  const cover = (...sets: (readonly Polyline[])[]) => coverOf(sets.flat(), TOLERANCE);
  return {
    missing: uncovered(exact.visible, cover(ours.visible)).size,
    extra: uncovered(ours.visible, cover(exact.visible, exact.smooth)).size,
    missingHidden: uncovered(exact.hidden, cover(ours.visible, ours.hidden)).size,
    extraHidden: uncovered(ours.hidden, cover(exact.hidden, exact.visible, exact.smooth)).size,
  };
}

const ours = (view: View): Lines => ({ visible: drawn(view, true), hidden: drawn(view, false) });

const NONE = { missing: 0, extra: 0, missingHidden: 0, extraHidden: 0 };

describe.each(Object.entries(BODIES))('%s', (_name, body) => {
  it.each(Object.entries(CAMERAS))('shows the exact kernel\'s lines: %s', (_view, camera) => {
    const { solid, shape } = bothOf(body);
    const exact = exactLines(oc, shape, camera, STEP);
    const view = project(solid, camera);
    const length = exact.visible.flatMap((line) => line.slice(1)).length * STEP;
    expect(length).toBeGreaterThan(40);
    expect(differences(ours(view), exact)).toEqual(NONE);
  });
});

describe('the comparison can fail', () => {
  const camera = isometricCamera();
  const given = (): { view: View; exact: ReturnType<typeof exactLines> } => {
    const { solid, shape } = bothOf(manifoldForms);
    return { view: project(solid, camera), exact: exactLines(oc, shape, camera, STEP) };
  };

  it('sees every tenth curve left out, and every tenth shown as its opposite', () => {
    const { view, exact } = given();
    const fewer = { ...view, curves: view.curves.filter((_, i) => i % 10 !== 3) };
    expect(differences(ours(fewer), exact)['missing']).toBeGreaterThan(5);
    const flipped = { ...view, curves: view.curves.map((curve, i) => (i % 10 === 3 ? { ...curve, visible: !curve.visible } : curve)) };
    const found = differences(ours(flipped), exact);
    expect(found['missing']! + found['extra']!).toBeGreaterThan(5);
  });

  it('sees all lines moved by 0.05 mm', () => {
    const { view, exact } = given();
    const moved = (lines: readonly Polyline[]): Polyline[] => lines.map((line) => line.map(([x, y]) => [x + 0.04, y + 0.03] as const));
    const { visible, hidden } = ours(view);
    expect(differences({ visible: moved(visible), hidden: moved(hidden) }, exact)['missing']).toBeGreaterThan(40);
  });

  it('sees a view from one degree beside', () => {
    const { exact } = given();
    const beside = project(bothOf(manifoldForms).solid, cameraFrom([1, -1.0349, 1]));
    expect(differences(ours(beside), exact)['missing']).toBeGreaterThan(40);
  });
});
