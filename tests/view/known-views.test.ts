import { beforeAll, describe, expect, it } from 'vitest';
import type { Curve2 } from '../../engine/geometry/curve.js';
import type { Form } from '../../engine/part/form.js';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import type { Solid } from '../../engine/solid/model.js';
import { isometricCamera, standardCamera } from '../../engine/view/camera.js';
import type { View, ViewCurve } from '../../engine/view/model.js';
import { project } from '../../engine/view/project.js';
import { blindHole } from '../support/crosshead-forms.js';
import { arc, block, frameTo, line, rod, turned, worldFrame } from '../support/forms.js';
import { curveLength } from '../support/line-agreement.js';
import { forms } from '../support/view-forms.js';

let kernel: Kernel;

beforeAll(async () => {
  kernel = await loadKernel();
});

const solid = (stock: Form, ...removed: Form[]): Solid => {
  const made = forms(stock, ...removed);
  return formsToSolid(kernel, made.stock, made.removed);
};

const cube = block([0, 0, 0], [10, 10, 10]);
const [front, top, right] = [standardCamera('-y'), standardCamera('+z'), standardCamera('+x')];

const shown = (view: View, visible = true): ViewCurve[] => view.curves.filter((curve) => curve.visible === visible);

const count = (curves: readonly ViewCurve[]): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const { geometry } of curves) counts[geometry.kind] = (counts[geometry.kind] ?? 0) + 1;
  return counts;
};

const total = (curves: readonly ViewCurve[]): number => curves.reduce((sum, { geometry }) => sum + curveLength(geometry), 0);

/** Ends of the lines among the curves, each as x, y, x, y to a thousandth, lower end first, in order. */
const lines = (curves: readonly ViewCurve[]): string[] =>
  curves.flatMap(({ geometry }) => (geometry.kind === 'line' ? [geometry] : []))
    .map(({ from, to }) => [from, to].map(([x, y]) => `${fixed(x)},${fixed(y)}`).sort().join(' ')).sort();

const fixed = (x: number): string => (Math.round(x * 1000) / 1000 + 0).toFixed(3);

const arcs = (curves: readonly ViewCurve[]): (Curve2 & { kind: 'arc' })[] =>
  curves.flatMap(({ geometry }) => (geometry.kind === 'arc' ? [geometry] : []));

describe('a cube', () => {
  it('shows nine edges and hides three in an isometric view, each foreshortened by the square root of 2/3', () => {
    const view = project(solid(cube), isometricCamera());
    expect([shown(view).length, shown(view, false).length]).toEqual([9, 3]);
    for (const { geometry } of view.curves) expect(curveLength(geometry)).toBeCloseTo(10 * Math.sqrt(2 / 3), 9);
  });

  it('shows four edges and nothing hidden from the front', () => {
    const view = project(solid(cube), front);
    expect(lines(view.curves)).toEqual(['0.000,0.000 0.000,10.000', '0.000,0.000 10.000,0.000', '0.000,10.000 10.000,10.000', '10.000,0.000 10.000,10.000']);
    expect(view.curves.every(({ visible }) => visible)).toBe(true);
    expect(view.box).toEqual({ low: [0, 0], high: [10, 10] });
  });

  it('leaves hidden curves out when they are not wanted', () => {
    expect(project(solid(cube), isometricCamera(), { hidden: false }).curves).toHaveLength(9);
  });
});

describe('a plain cylinder', () => {
  const pin = rod(frameTo([1, 2, 3], [0, 0, 1]), 4, 0, 10);

  it('is one full circle from its end, with the exact centre and radius', () => {
    const view = project(solid(pin), top);
    expect(view.curves).toHaveLength(1);
    const [circle] = arcs(view.curves);
    expect(circle).toMatchObject({ radius: 4, sweep: 360 });
    expect(circle!.centre[0]).toBeCloseTo(1, 12);
    expect(circle!.centre[1]).toBeCloseTo(2, 12);
  });

  it('is a rectangle from the side, its long sides silhouettes', () => {
    const view = project(solid(pin), front);
    expect(lines(view.curves)).toEqual(['-3.000,13.000 -3.000,3.000', '-3.000,13.000 5.000,13.000', '-3.000,3.000 5.000,3.000', '5.000,13.000 5.000,3.000']);
    expect(view.curves.map(({ role }) => role).sort()).toEqual(['edge', 'edge', 'silhouette', 'silhouette']);
  });

  it('shows one full ellipse and half of the other in an isometric view', () => {
    const view = project(solid(pin), isometricCamera());
    const ellipses = shown(view).flatMap(({ geometry }) => (geometry.kind === 'ellipse' ? [geometry] : []));
    expect(ellipses.map(({ sweep }) => Math.round(Math.abs(sweep))).sort()).toEqual([180, 360]);
    for (const { radiusX, radiusY } of ellipses) {
      expect(radiusX).toBeCloseTo(4, 12);
      expect(radiusY).toBeCloseTo(4 / Math.sqrt(3), 12);
    }
    expect(count(shown(view))).toEqual({ ellipse: 2, line: 2 });
    expect(count(shown(view, false))).toEqual({ ellipse: 1 });
  });
});

describe('holes', () => {
  it('show a bore as a circle along its axis and as two hidden lines across it', () => {
    const bored = solid(cube, rod(frameTo([5, 0, 5], [0, 1, 0]), 2, -1, 11));
    expect(arcs(project(bored, front).curves)).toMatchObject([{ radius: 2, sweep: 360 }]);
    expect(shown(project(bored, front), false)).toEqual([]);
    expect(lines(shown(project(bored, top), false))).toEqual(['3.000,0.000 3.000,10.000', '7.000,0.000 7.000,10.000']);
  });

  it('show a countersink as two circles, and its cone hidden from the side', () => {
    const mouth = frameTo([5, 5, 10], [0, 0, 1]);
    const sunk = solid(cube, rod(mouth, 1, -11, 1), turned(mouth, [[0, -4], [5, 1], [0, 1]]));
    const circles = arcs(project(sunk, top).curves).sort((a, b) => a.radius - b.radius);
    expect(circles).toHaveLength(2);
    for (const [i, radius] of [1, 4].entries()) {
      expect(circles[i]!.radius).toBeCloseTo(radius, 9);
      expect(circles[i]!.sweep).toBe(360);
    }
    expect(lines(shown(project(sunk, front), false))).toEqual([
      '1.000,10.000 4.000,7.000', '4.000,0.000 4.000,7.000', '4.000,7.000 6.000,7.000', '6.000,0.000 6.000,7.000', '6.000,7.000 9.000,10.000',
    ]);
  });

  it('show the point of a drilled hole down to the apex', () => {
    const drilled = solid(cube, blindHole([5, 5, 10], [0, 0, -1], 2, 5));
    const depth = fixed(5 - 2 / Math.tan((59 * Math.PI) / 180));
    expect(lines(shown(project(drilled, front), false))).toEqual([
      '3.000,10.000 3.000,5.000', `3.000,5.000 5.000,${depth}`, '3.000,5.000 7.000,5.000', `5.000,${depth} 7.000,5.000`, '7.000,10.000 7.000,5.000',
    ].sort());
  });

  it('show a bore through a shaft of the same size as two crossing straight lines', () => {
    const crossed = solid(rod(worldFrame, 3, -8, 8), rod(frameTo([0, 0, 0], [0, 1, 0]), 3, -4, 4));
    const straight = lines(shown(project(crossed, right))).filter((ends) => ends.includes('0.000,0.000'));
    expect(straight).toEqual(['-3.000,-3.000 0.000,0.000', '-3.000,3.000 0.000,0.000', '0.000,0.000 3.000,-3.000', '0.000,0.000 3.000,3.000'].sort());
  });

  it('show a smaller cross bore as one smooth curve at each side', () => {
    const crossed = solid(rod(worldFrame, 6, -8, 8), rod(frameTo([0, 0, 0], [0, 1, 0]), 2, -7, 7));
    const view = project(crossed, right);
    const splines = shown(view).flatMap(({ geometry }) => (geometry.kind === 'spline' ? [geometry] : []));
    expect(splines).toHaveLength(2);
    for (const { points } of splines) {
      // Seen along x the bore's rim lies at y = sqrt(36 - x x), x x + z z = 4.
      for (let i = 0; i < points.length; i += 3) {
        const [y, z] = points[i]!;
        expect(Math.abs(Math.sqrt(36 - Math.max(0, 4 - z * z)) - Math.abs(y))).toBeLessThan(2e-4);
      }
    }
    expect(count(shown(view, false))).toEqual({ line: 2 });
  });
});

describe('a bore into round and hollow faces', () => {
  it('is a full circle along its axis, with exact centre and radius, though its rims are no circles', () => {
    // The rim on the rod and the one in the bore along the rod coincide in the view; each begins elsewhere.
    const crossed = solid(rod(worldFrame, 6, -8, 8), rod(worldFrame, 4, -9, 9), rod(frameTo([0.5, 0, 1], [0, 1, 0]), 1.7, -7, 7));
    for (const camera of [front, standardCamera('+y')]) {
      const circles = arcs(project(crossed, camera).curves);
      expect(circles).toHaveLength(1);
      expect(circles[0]!.sweep).toBe(360);
      expect(circles[0]!.radius).toBeCloseTo(1.7, 12);
      expect(Math.abs(circles[0]!.centre[0])).toBeCloseTo(0.5, 12);
      expect(circles[0]!.centre[1]).toBeCloseTo(1, 12);
    }
  });
});

describe('faces that touch smoothly', () => {
  const rounded = (): Solid => solid({
    kind: 'prism', frame: worldFrame, low: 0, high: 6, lowFace: 'low', highFace: 'high',
    outline: [
      line([0, 0], [10, 0], 'a'), line([10, 0], [10, 7], 'b'), arc([10, 7], [7, 10], [7, 7], 'left', 'round'),
      line([7, 10], [0, 10], 'c'), line([0, 10], [0, 0], 'd'),
    ],
  });

  it('meet in no line, unless asked for, nor where their normals agree from the side', () => {
    const side = lines(project(rounded(), right).curves);
    expect(side).toHaveLength(6);
    expect(side.filter((ends) => ends.includes('7.000,0.000') && ends.includes('7.000,6.000'))).toEqual([]);
    const picture = project(rounded(), isometricCamera([1, 1, 1]));
    expect(shown(picture).map(({ role }) => role)).not.toContain('smooth');
    expect(count(shown(picture))).toEqual({ ellipse: 2, line: 8 });
    const full = project(rounded(), isometricCamera([1, 1, 1]), { smooth: true });
    expect(shown(full).filter(({ role }) => role === 'smooth')).toHaveLength(2);
  });

  it('draw the tangent line where a face stands edge-on and it is the outline', () => {
    // From the right the flat face y = 10 is edge-on; it is the left end of the view.
    const view = project(rounded(), right);
    expect(view.box).toEqual({ low: [0, 0], high: [10, 6] });
    expect(lines(view.curves)).toContain('10.000,0.000 10.000,6.000');
  });
});

describe('what stands before', () => {
  it('hides the part of an edge behind a step, to the exact place', () => {
    const stepped = solid(block([0, 0, 0], [10, 10, 10]), block([4, 5, 2], [11, 11, 11]), block([-1, -1, 6], [11, 5, 11]));
    const view = project(stepped, front);
    // The far step's floor, z = 2, and its wall, x = 4, lie behind the near wall up to z = 6.
    expect(lines(shown(view, false))).toEqual(['10.000,2.000 4.000,2.000', '4.000,2.000 4.000,6.000'].sort());
    expect(lines(shown(view))).toContain('4.000,10.000 4.000,6.000');
  });

  it('draws no line where two cuts end in one plane', () => {
    const pocketed = solid(cube, block([2, -1, 5], [5, 11, 11]), block([5, -1, 5], [8, 11, 11]));
    const drawn = lines(project(pocketed, top).curves);
    expect(drawn).toHaveLength(10);
    expect(drawn.filter((ends) => ends.includes('5.000,'))).toEqual([]);
  });

  it('draws coincident lines of a row of holes once, under what is seen not at all', () => {
    const holes = [0, 1, 2].flatMap((i) => [0, 1, 2].map((j) => rod({ ...worldFrame, origin: [5 + 10 * i, 5 + 10 * j, 0] }, 2, -1, 7)));
    const view = project(solid(block([0, 0, 0], [30, 30, 6]), ...holes), front);
    expect(shown(view)).toHaveLength(4);
    expect(total(shown(view, false))).toBeCloseTo(6 * 6, 9);
    expect(shown(view, false)).toHaveLength(6);
  });
});
