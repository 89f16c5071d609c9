import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, dot, length, scale, subtract, type Vector3 } from '../../engine/geometry/vector.js';
import { cameraFrom, depthOf, isometricCamera, projectPoint, rightOf, standardCamera } from '../../engine/view/camera.js';

const SEED = 20;

describe('standard cameras', () => {
  it('look at the part from the named side, with x to the right from the front and from above', () => {
    expect(projectPoint(standardCamera('-y'), [1, 2, 3])).toEqual([1, 3]);
    expect(projectPoint(standardCamera('+z'), [1, 2, 3])).toEqual([1, 2]);
    expect(projectPoint(standardCamera('+x'), [1, 2, 3])).toEqual([2, 3]);
    expect(projectPoint(standardCamera('-x'), [1, 2, 3])).toEqual([-2, 3]);
    expect(projectPoint(standardCamera('+y'), [1, 2, 3])).toEqual([-1, 3]);
    expect(projectPoint(standardCamera('-z'), [1, 2, 3])).toEqual([-1, 2]);
  });

  it('count depth away from the eye', () => {
    expect(depthOf(standardCamera('+z'), [0, 0, 5])).toBeLessThan(depthOf(standardCamera('+z'), [0, 0, 1]));
  });

  it('take another direction up the sheet, but not the line of sight', () => {
    expect(projectPoint(standardCamera('-y', '+x'), [1, 2, 3])).toEqual([-3, 1]);
    expect(() => standardCamera('-y', '+y')).toThrow(RangeError);
    expect(() => standardCamera('-y', '+y')).toThrow('a view from -y cannot have +y upward');
  });
});

describe('an isometric camera', () => {
  it('shortens the three axes alike, to the square root of 2/3, and sets them 120 degrees apart', () => {
    const camera = isometricCamera();
    const axes = ([[1, 0, 0], [0, 1, 0], [0, 0, 1]] as const).map((axis) => projectPoint(camera, axis));
    for (const [x, y] of axes) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(2 / 3), 12);
    expect(axes[2]).toEqual([expect.closeTo(0, 12), expect.closeTo(Math.sqrt(2 / 3), 12)]);
    expect(Math.atan2(axes[0]![1], axes[0]![0])).toBeCloseTo(-Math.PI / 6, 12);
  });
});

it('gives right, up and toward at right angles, toward being up cross right, from any side', () => {
  const far = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })) as [fc.Arbitrary<number>, fc.Arbitrary<number>, fc.Arbitrary<number>]);
  fc.assert(fc.property(far, (eye) => {
    fc.pre(Math.hypot(eye[0], eye[1]) > 1e-3);
    const camera = cameraFrom(eye);
    const right = rightOf(camera);
    expect(length(right)).toBeCloseTo(1, 9);
    expect(dot(camera.up, camera.toward)).toBeCloseTo(0, 9);
    expect(length(subtract(cross(camera.up, right), camera.toward))).toBeCloseTo(0, 9);
    expect(dot(camera.toward, scale(eye as Vector3, -1))).toBeGreaterThan(0);
  }), { seed: SEED, numRuns: 200 });
});
