import { describe, expect, it } from 'vitest';
import { layoutText, measureText, type SignRun } from '../../engine/lettering/index.js';
import type { Vector2 } from '../../engine/geometry/vector.js';

const height = 3.5;

function signOf(character: string): SignRun {
  const run = layoutText(character, height, 'normal').runs[0];
  if (run?.kind !== 'sign') throw new Error(`${character} is not a sign`);
  return run;
}

/** Ends of the lines and the four sides of the circles. */
const reach = (run: SignRun): readonly Vector2[] =>
  run.strokes.flatMap((stroke): readonly Vector2[] => {
    if (stroke.kind === 'line') return [stroke.from, stroke.to];
    if (stroke.kind !== 'arc') throw new Error('a sign is made of lines and circles');
    const [x, y] = stroke.centre;
    return [[x - stroke.radius, y], [x + stroke.radius, y], [x, y - stroke.radius], [x, y + stroke.radius]];
  });

function extent(run: SignRun): { width: number; height: number } {
  const points = reach(run);
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return { width: Math.max(...xs) - Math.min(...xs), height: Math.max(...ys) - Math.min(...ys) };
}

// Multiples of the letter height h: ASME Y14.5M-1994, figure of drafting symbols, from memory.
describe('signs in the proportions of the standard', () => {
  it.each([
    ['counterbore', '⌴', 2, 1],
    ['countersink', '⌵', 2, 1],
    ['depth', '↧', 0.8, 1],
    ['diameter', '⌀', 0.8, 1.5 * Math.sin(Math.PI / 3)],
  ])('%s', (name, character, width, tall) => {
    const run = signOf(character);
    expect(run.name).toBe(name);
    expect(extent(run).width).toBeCloseTo(width * height, 9);
    expect(extent(run).height).toBeCloseTo(tall * height, 9);
  });

  it('strokes are a tenth of the height', () => {
    expect(signOf('⌀').thickness).toBeCloseTo(0.35, 9);
  });

  it('the countersink includes 90 degrees', () => {
    const [left, right] = signOf('⌵').strokes;
    if (left?.kind !== 'line' || right?.kind !== 'line') throw new Error('two lines');
    const down: Vector2 = [left.to[0] - left.from[0], left.to[1] - left.from[1]];
    const up: Vector2 = [right.to[0] - right.from[0], right.to[1] - right.from[1]];
    expect(down[0] * up[0] + down[1] * up[1]).toBeCloseTo(0, 9);
  });
});

describe('layoutText', () => {
  it('sets letters and signs one after the other, without gap or overlap', () => {
    const { runs, width } = layoutText('4× ⌀5.5 ↧12 ⌴⌀9', height, 'normal');
    expect(runs.map((run) => run.text)).toEqual(['4× ', '⌀', '5.5 ', '↧', '12 ', '⌴', '⌀', '9']);
    let x = 0;
    for (const run of runs) {
      expect(run.x).toBeCloseTo(x, 9);
      x += run.width;
    }
    expect(x).toBeCloseTo(width, 9);
  });

  it('keeps the strokes of a sign within the room that it takes', () => {
    for (const character of '⌀⌴⌵↧') {
      const run = layoutText(`12${character}`, height, 'normal').runs[1];
      if (run?.kind !== 'sign') throw new Error('a sign');
      const xs = reach(run).map((p) => p[0]);
      expect(Math.min(...xs) - run.thickness / 2).toBeGreaterThanOrEqual(run.x);
      expect(Math.max(...xs) + run.thickness / 2).toBeLessThanOrEqual(run.x + run.width);
    }
  });

  it('counts the reach of the diameter sign above and below', () => {
    const { ascent, descent } = measureText('⌀12', height, 'normal');
    expect(ascent).toBeGreaterThan(height * 1.14);
    expect(descent).toBeGreaterThan(height * 0.14);
  });
});
