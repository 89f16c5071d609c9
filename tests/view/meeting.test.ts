import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, scale, unit, type Vector3 } from '../../engine/geometry/vector.js';
import type { Surface } from '../../engine/solid/model.js';
import { offsetFrom } from '../../engine/solid/surface.js';
import { meeting } from '../../engine/view/meeting.js';
import { pointAt } from '../../engine/view/space-curve.js';

const SEED = 31;
const Z: Vector3 = [0, 0, 1];
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const direction = fc.tuple(number(-1, 1), number(-1, 1), number(-1, 1)).filter((v) => Math.hypot(...v) > 0.1).map((v) => unit(v));

/** The curve's points lie on both surfaces. */
function onBoth(a: Surface, b: Surface, near: Vector3, kind: 'line' | 'ellipse'): void {
  const curve = meeting(a, b, near);
  expect(curve?.kind).toBe(kind);
  if (!curve) return;
  const steps = kind === 'line' ? [0.5, 3, 7] : [0, 1, 2.5, 4, 5.5];
  for (const t of steps) {
    const p = pointAt(curve, t);
    const [first, second] = [offsetFrom(a, p).distance, offsetFrom(b, p).distance];
    expect(Math.abs(first)).toBeLessThan(1e-9);
    expect(Math.abs(second)).toBeLessThan(1e-9);
  }
}

describe('two exact surfaces meet', () => {
  it('in a line: planes', () => {
    fc.assert(fc.property(direction, direction, (m, n) => {
      fc.pre(Math.abs(m[0] * n[0] + m[1] * n[1] + m[2] * n[2]) < 0.99);
      onBoth({ kind: 'plane', point: [1, 2, 3], normal: m }, { kind: 'plane', point: [-2, 0, 1], normal: n }, [0, 0, 0], 'line');
    }), { seed: SEED });
  });

  it('in an ellipse: a plane across a cylinder', () => {
    fc.assert(fc.property(direction, number(0.1, 20), (normal, radius) => {
      fc.pre(Math.abs(normal[2]) > 0.05);
      onBoth({ kind: 'plane', point: [1, 2, 3], normal }, { kind: 'cylinder', origin: [4, 5, 6], axis: Z, radius }, [4, 5, 6], 'ellipse');
    }), { seed: SEED });
  });

  it('in a generator: a plane along a cylinder', () => {
    fc.assert(fc.property(number(-0.99, 0.99), fc.boolean(), (share, side) => {
      const plane: Surface = { kind: 'plane', point: [3 * share, 9, 0], normal: [1, 0, 0] };
      onBoth(plane, { kind: 'cylinder', origin: [0, 0, 0], axis: Z, radius: 3 }, [3 * share, side ? 2 : -2, 0], 'line');
    }), { seed: SEED });
  });

  it('in an ellipse: a plane through one half of a cone; not where it would be a parabola or a hyperbola', () => {
    const cone: Surface = { kind: 'cone', apex: [1, 1, 1], axis: Z, halfAngle: 30 };
    fc.assert(fc.property(number(0, 58), number(0, 6), number(0.5, 10), (lean, turn, height) => {
      const [s, c] = [Math.sin((lean * Math.PI) / 180), Math.cos((lean * Math.PI) / 180)];
      const normal: Vector3 = [s * Math.cos(turn), s * Math.sin(turn), c];
      onBoth(cone, { kind: 'plane', point: [1, 1, 1 + height], normal }, [1, 1, 1 + height], 'ellipse');
    }), { seed: SEED });
    for (const lean of [60, 75, 90]) {
      const [s, c] = [Math.sin((lean * Math.PI) / 180), Math.cos((lean * Math.PI) / 180)];
      expect(meeting(cone, { kind: 'plane', point: [3, 1, 4], normal: [s, 0, c] }, [3, 1, 4])).toBeUndefined();
    }
  });

  it('in a generator: a plane through the tip of a cone', () => {
    const cone: Surface = { kind: 'cone', apex: [1, 1, 1], axis: Z, halfAngle: 30 };
    for (const near of [[1, 9, 9], [1, -9, 9]] as const) {
      onBoth({ kind: 'plane', point: [1, 1, 1], normal: unit([1, 0, 0.1]) }, cone, near, 'line');
    }
  });

  it('in circles: surfaces about one axis', () => {
    const about: Surface[] = [
      { kind: 'plane', point: [9, 9, 2], normal: Z },
      { kind: 'cylinder', origin: [1, 2, 0], axis: Z, radius: 5 },
      { kind: 'cone', apex: [1, 2, -3], axis: Z, halfAngle: 45 },
      { kind: 'torus', centre: [1, 2, 1.5], axis: Z, major: 5, minor: 1 },
      { kind: 'sphere', centre: [1, 2, 0], radius: 5.25 },
    ];
    for (const a of about) for (const b of about) if (a.kind < b.kind) onBoth(a, b, [6, 2, 2], 'ellipse');
  });

  it('in the circle where they touch: fillets', () => {
    const torus: Surface = { kind: 'torus', centre: [0, 0, 1], axis: Z, major: 6, minor: 1 };
    onBoth(torus, { kind: 'cylinder', origin: [0, 0, 0], axis: Z, radius: 5 }, [5.01, 0, 1.02], 'ellipse');
    onBoth(torus, { kind: 'plane', point: [0, 0, 0], normal: Z }, [6.02, 0, 0.01], 'ellipse');
    onBoth(torus, { kind: 'cylinder', origin: [6, 0, 1], axis: [0, 1, 0], radius: 1 }, [6, 0, 2], 'ellipse');
    onBoth(torus, { kind: 'sphere', centre: [0, 6, 1], radius: 1 }, [0, 6, 2], 'ellipse');
    onBoth(torus, { kind: 'plane', point: [0, 0, 0], normal: [1, 0, 0] }, [0, 6, 2], 'ellipse');
  });

  it('in generators and ellipses: cylinders', () => {
    const one: Surface = { kind: 'cylinder', origin: [0, 0, 0], axis: Z, radius: 3 };
    for (const side of [-1, 1]) onBoth(one, { kind: 'cylinder', origin: [4, 0, 7], axis: Z, radius: 2 }, [2, side, 0], 'line');
    fc.assert(fc.property(direction, (axis) => {
      fc.pre(Math.abs(axis[2]) < 0.9);
      const other: Surface = { kind: 'cylinder', origin: add([0, 0, 5], scale(axis, 2)), axis, radius: 3 };
      onBoth(one, other, add([0, 0, 5], scale(unit([-axis[1], axis[0], 0]), 3)), 'ellipse');
    }), { seed: SEED });
    expect(meeting(one, { kind: 'cylinder', origin: [0, 0, 0], axis: [1, 0, 0], radius: 2 }, [2, 0, 2])).toBeUndefined();
  });
});
