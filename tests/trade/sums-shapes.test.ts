import { describe, expect, it } from 'vitest';
import { reckon, sums, type Json } from '../../engine/trade/sums/index.js';

const result = (name: string, texts: Readonly<Record<string, string>>) => reckon(name, texts).result;
const number = (value: Json | undefined): number => (typeof value === 'number' ? value : Number.NaN);

/** The results that other programs read, by name and shape. */
describe('the agreed shapes', () => {
  it('tap-drill', () => {
    const sum = result('tap-drill', { thread: '0-80', engagement: '60' });
    expect(sum['thread']).toMatchObject({ major: 1.524, pitch: 0.3175, minorBasic: 1.1811 });
    const { name, diameter } = sum['drill'] as { name: string; diameter: number };
    const { percent, basis } = sum['engagement'] as { percent: number; basis: string };
    expect([name, diameter, basis]).toEqual(['1.3 mm', 1.3, '1.299 P (three quarters of the sharp V)']);
    expect(percent).toBeCloseTo((100 * (1.524 - 1.3)) / (1.299038 * 0.3175), 6);
  });
  it('fit, in whole micrometres', () => {
    expect(result('fit', { size: '8mm', class: 'H7/g6' })).toMatchObject({ hole: { upper: 15, lower: 0 }, shaft: { upper: -5, lower: -14 }, clearance: { max: 29, min: 5 } });
    expect(result('fit', { size: '8mm', class: 'H7/p6' })).toMatchObject({ clearance: { max: 0, min: -24 } });
    expect(result('fit', { size: '8mm', class: 'g6' })).not.toHaveProperty('hole');
    expect(result('fit', { size: '1/2 in', class: 'RC4' })).toMatchObject({ hole: { upper: 25, lower: 0 }, shaft: { upper: -15, lower: -33 }, clearance: { max: 58, min: 15 } });
    expect(result('fit', { size: '20 mm', class: 'js6' })).toMatchObject({ shaft: { upper: 6.5, lower: -6.5 } });
  });
  it('three-wire, sine, countersink, speed, column', () => {
    expect(number(result('three-wire', { thread: '1/4-20', wire: '0.032in' })['overWires']) / 25.4).toBeCloseTo(0.2702, 4);
    expect(result('sine', { angle: '15', centres: '100mm' })['height']).toBe(25.88190451);
    expect(result('countersink', { angle: '90', diameter: '0.119in', hole: '0.0625in' })).toEqual({ depth: 0.71755, fromPoint: 1.5113 });
    expect(result('speed', { material: 'silver steel', diameter: '12mm', tool: 'hss' })).toMatchObject({ rpm: 464.201917351, snapped: 450 });
    expect(result('column', { length: '100 mm', diameter: '4 mm', material: 'steel' })).toMatchObject({ regime: 'Johnson' });
  });
  it('bolt-circle, counter-clockwise from +x', () => {
    const { holes } = result('bolt-circle', { holes: '6', diameter: '40mm', start: '30' });
    expect((holes as readonly unknown[]).slice(0, 3)).toEqual([{ x: 17.320508076, y: 10 }, { x: 0, y: 20 }, { x: -17.320508076, y: 10 }]);
  });
  it('equalise', () => {
    expect(result('equalise', { left: '3.40mm', right: '3.46mm', target: '3.30mm' })).toMatchObject({ left: { remove: 0.1 }, right: { remove: 0.16 }, possible: true });
    expect(result('equalise', { left: '3.20mm', right: '3.46mm', target: '3.30mm' })).toMatchObject({
      left: { remove: 0 }, right: { remove: 0.06 }, possible: false, saves: 'width', offCentre: 0.1, keepCentre: { left: 0, right: 0.26, widthUnder: 0.2 },
    });
    expect(result('equalise', { left: '3.20mm', right: '3.36mm', target: '3.30mm' })).toMatchObject({ left: { remove: 0 }, right: { remove: 0 }, possible: false, saves: 'centre', keepCentre: { right: 0.16 } });
    expect(result('equalise', { left: '3.28mm', right: '3.36mm', target: '3.30mm', tolerance: '0.02mm' })).toMatchObject({ left: { remove: 0 }, right: { remove: 0.06 }, possible: true });
  });
});

describe('every sum', () => {
  it('has a name of its own, a source, and arguments that read their own defaults', () => {
    expect(new Set(sums.map(({ name }) => name)).size).toBe(sums.length);
    for (const sum of sums) {
      expect(sum.source.length, sum.name).toBeGreaterThan(8);
      expect(sum.arguments.length, sum.name).toBeGreaterThan(0);
      expect(new Set(sum.arguments.map(({ name }) => name)).size, sum.name).toBe(sum.arguments.length);
      for (const argument of sum.arguments) {
        if (argument.default !== undefined) expect(argument.required, `${sum.name} ${argument.name}`).toBeUndefined();
        if (argument.choices !== undefined && argument.default !== undefined) expect(argument.choices).toContain(argument.default);
      }
    }
  });
  it.each(sums.map((sum) => [sum.name, sum] as const))('%s has an example that comes out, in both units, with its steps', (name, { example }) => {
    for (const unit of ['mm', 'in'] as const) {
      const { result, steps } = reckon(name, example, { unit });
      expect(Object.keys(result).length).toBeGreaterThan(0);
      expect(steps.length).toBeGreaterThan(0);
      expect(`${JSON.stringify(result)} ${steps.join(' ')}`).not.toMatch(/NaN|Infinity|undefined|\[object/);
    }
    expect(reckon(name, example, { unit: 'in' }).result).toEqual(reckon(name, example, { unit: 'mm' }).result);
  });

  it('refuses sizes beyond a workshop instead of answering with no number', () => {
    expect(() => reckon('weight', { material: 'steel', size: '2000 m', length: '1 m' })).toThrow('size "2000 m" is too long for these sums: at most 1000 m.');
    expect(() => reckon('sine', { angle: '15', centres: '0.0000001 mm' })).toThrow('centres "0.0000001 mm" is too short for these sums: at least 0.001 um.');
  });

  it('divides a dial of the inch by thousandths, also one of 62-1/2 or 125 in a turn', () => {
    for (const turn of ['0.1in', '0.0625in', '0.125in']) expect(reckon('handwheel', { to: '1in', 'per-turn': turn }).result['division']).toBe(0.0254);
    expect(reckon('handwheel', { to: '1in', 'per-turn': '2mm' }).result['division']).toBe(0.02);
    expect(() => reckon('handwheel', { to: '1in', slide: 'x', machine: 'lathe' })).toThrow('lathe has no dial known for its slide x: give per-turn, what the dial counts in a turn.');
  });
});
