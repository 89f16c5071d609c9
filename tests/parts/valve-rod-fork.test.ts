import { beforeAll, describe, expect, it } from 'vitest';
import fork from '../../generators/parts/valve-rod-fork.js';
import type { Values } from '../../engine/part/parameters.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { solidOf } from '../../engine/solid/build.js';
import { compareHands } from '../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { tappingDrill } from '../../engine/trade/tapping.js';
import { UserError } from '../../engine/units/user-error.js';
import { planned } from '../plan/planned.js';
import { faultsOf } from '../sheet/crossings.js';
import { makePrintsOf } from '../support/print.js';
import { builtWith, frustum, integral, staysSound } from './soundness.js';

const { PI, sqrt, tan } = Math;

/** Square body with a half-round end, less slot, holes, recess and the shank's surplus. */
function volumeByFormula(p: Values<typeof fork.parameters>): number {
  const half = p.bar / 2;
  const shank = p.shankDiameter / 2;
  const drill = tappingDrill(p.rodThread).drill.diameter / 2;
  const [pin, oil] = [p.pinDiameter / 2, p.oilHole.diameter / 2];
  const end = (PI / 2) * half * half;
  const body = p.bar * p.bar * (p.pinPosition - p.shankLength) + end * p.bar;
  const slot = p.tongue * (p.bar * p.rootBehind + end);
  const stem = PI * shank * shank * (p.shankLength - p.shankChamfer) + frustum(p.shankChamfer, shank, shank - p.shankChamfer);
  const rodHole = PI * drill * drill * (p.drillDepth + drill / tan((59 * PI) / 180) / 3);
  const crossHole = PI * pin * pin * (p.bar - p.tongue);
  const recess = PI * ((p.headDiameter / 2) ** 2 - pin * pin) * p.headDepth;
  // From the flat top, or the round end beyond the pin's axis, down to the cross hole.
  const depth = (v: number): number => (v < 0 ? half : sqrt(half * half - v * v)) - sqrt(pin * pin - v * v);
  const oilHole = integral((turn) => 2 * (oil * Math.cos(turn)) ** 2 * depth(oil * Math.sin(turn)), -PI / 2, 0) + integral((turn) => 2 * (oil * Math.cos(turn)) ** 2 * depth(oil * Math.sin(turn)), 0, PI / 2);
  return body - slot + stem - rodHole - crossHole - recess - oilHole;
}

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

describe('the valve-rod fork', () => {
  const part = builtWith(fork);
  const values = resolveValues(fork, {}, undefined);

  it('has the volume of its closed formulas', () => {
    const volume = volumeOf(solidOf(kernel, part, { segments: 256 }));
    expect(volume / volumeByFormula(values)).toBeCloseTo(1, 3);
  });

  it('is one sound piece of that volume with other sizes, and so is its mirror image', { timeout: 120_000 }, () => {
    staysSound(kernel, fork, volumeByFormula, 31, 16);
  });

  it('is handed by its last operation alone', () => {
    expect(compareHands(kernel, part)).toMatchObject({ handed: true, makers: [{ cut: 'oil-hole' }] });
    const common = { ...part, operations: part.operations.slice(0, -1) };
    expect(compareHands(kernel, common).handed).toBe(false);
    expect(part.operations.at(-1)!.cuts.map(({ id }) => id)).toEqual(['oil-hole']);
  });

  it('asks for the exact width of the slot less deep than the slot is', () => {
    const slot = part.operations.flatMap(({ cuts }) => cuts).find(({ id }) => id === 'slot')!;
    // From the fork's end: half of 3/8 and 7/32, of half of 3/8 and 5/16.
    expect(slot.finishDepth).toEqual({ depth: { value: expect.closeTo((0.1875 + 0.21875) * 25.4, 9) as number, purpose: 'size' }, under: 0.254, walls: ['x:slot walls, low', 'x:slot walls, high'] });
  });

  it.each([
    ['tongue', '0.34 in', 'each prong is at least two fifths of the tongue'],
    ['headDepth', '0.11 in', 'the prong under the head of the pin keeps a wall'],
    ['rootBehind', '0.22 in', 'the slot is deeper than its exact width'],
    ['sawThickness', '0.12 in', 'the slot may not stay narrower than the saw'],
    ['sawDiameter', '2 in', 'the saw reaches the root before its collar meets the fork'],
    ['rodThread', '1/4x40', 'the shank keeps a wall round the thread'],
    ['drillDepth', '0.75 in', 'metal stays between the drilled hole and the slot'],
    ['shankLength', '0.7 in', 'the body behind the slot can be held'],
    ['oilHole', '2 mm', 'the oil hole keeps half its diameter of metal on both sides'],
  ])('refuses %s %s', (name, text, sentence) => {
    const build = () => builtWith(fork, { [name]: text });
    expect(build).toThrow(UserError);
    expect(build).toThrow(sentence);
  });
});

describe('the saw of the slot', () => {
  it('is set by its lower face for both walls, and by its middle for the root', async () => {
    const { settings, cutters } = await planned('valve-rod-fork', 70);
    // Walls .125 and .250 below the outer face, the saw 3/32 thick; root .8125 from the shank end, the saw 2 1/2 in diameter.
    const at = (axis: 'x' | 'z'): readonly number[] => settings.flatMap((setting) => (setting[axis] === undefined ? [] : [setting[axis] / 25.4]));
    expect(at('x')).toEqual([expect.closeTo(0.8125 + 1.25, 9)]);
    expect(at('z')).toEqual([expect.closeTo(-0.125 - 0.09375, 9), expect.closeTo(-0.25, 9)]);
    expect(cutters.map(({ kind, diameter }) => [kind, diameter])).toEqual([['sawing', 63.5]]);
  });
});

describe.each(['in', 'mm'] as const)('the print in %s', (units) => {
  it('on A4 is complete in both hands, without overlap, and says the finish depth', { timeout: 120_000 }, async () => {
    const prints = await makePrintsOf('valve-rod-fork', { paper: 'A4', units });
    expect(prints.map(({ record }) => record.hand)).toEqual(['right', 'left']);
    for (const { record, drawing } of prints) {
      expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
      expect(record.checks.map(({ name }) => name)).toEqual(expect.arrayContaining(['x', 'y', 'z'].map((axis) => `distances along ${axis} complete and single`)));
      expect(drawing.sheets.flatMap(faultsOf).map(({ pair, first, second }) => `${pair}: ${first} / ${second}`)).toEqual([]);
      const [depth, under] = units === 'in' ? ['.4063', '.010'] : ['10.319', '0.254'];
      expect(record.dimensions.find(({ feature }) => feature.startsWith('slot walls'))!.text[1]).toBe(`to size \u21a7${depth}, deeper \u2212${under}`);
      expect(record.operations.find(({ number }) => number === 70)!.text).toContain(`to size ${depth} deep from the mouth; deeper up to ${under} narrower will do`);
    }
  });
});
