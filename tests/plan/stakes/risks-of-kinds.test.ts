import { describe, expect, it } from 'vitest';
import type { Part } from '../../../engine/part/part.js';
import { builtIn, numberOf, riskAt, stakesIn } from './staked.js';

const inch = 25.4;
const [link, nut, fork] = await Promise.all(['expansion-link', 'gland-nut', 'valve-rod-fork'].map(builtIn)) as [Part, Part, Part];

/** The number of the operation with a size of a kind. */
const withSize = (part: Part, kind: string): number => part.operations.find(({ cuts }) => cuts.some(({ sizes }) => sizes.some((size) => size.kind === kind)))!.number;

describe('tricky cuts of their own kind', () => {
  it('a slot swung about a centre, with its radius and width', () => {
    const size = link.operations.flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes)).find(({ kind }) => kind === 'arc-slot');
    if (size?.kind !== 'arc-slot') throw new Error('no curved slot');
    const risk = riskAt(stakesIn(link), withSize(link, 'arc-slot'), 'swung cut');
    expect(risk?.figures).toMatchObject({ radius: size.radius.value, width: size.width.value });
    expect(risk?.chance).toBeCloseTo((0.08 * 5) / size.width.value, 9);
  });
  it('a thread in a bore that ends at a shoulder, worse with a tool than with a tap', () => {
    const operation = withSize(nut, 'internal-thread');
    const screwCut: Part = {
      ...nut,
      operations: nut.operations.map((each) => ({ ...each, cuts: each.cuts.map((cut) => ({ ...cut, sizes: cut.sizes.map((size) => (size.kind === 'internal-thread' ? { ...size, method: 'screw-cut' as const } : size)) })) })),
    };
    const [tapped, cut] = [nut, screwCut].map((part) => riskAt(stakesIn(part), operation, 'thread to a shoulder')!);
    expect(tapped?.figures['method']).toBe('tap');
    expect(cut!.chance).toBeCloseTo(2 * tapped!.chance, 9);
  });
  it('a saw in a narrow slot, as deep as the slot is from the end of the fork', () => {
    const operation = fork.operations.find(({ cutter }) => cutter.width !== undefined)!;
    const risk = riskAt(stakesIn(fork), operation.number, 'narrow slot')!;
    expect(risk.figures['cutter']).toBe(operation.cutter.width);
    expect((risk.figures['depth'] as number) / inch).toBeGreaterThan(0.3);
    expect(risk.figures['depthOverCutter']).toBeCloseTo((risk.figures['depth'] as number) / operation.cutter.width!, 9);
  });
  it('what is parted off is not turned to chips', async () => {
    const pin = await builtIn('crosshead-pin');
    const stake = stakesIn(pin).find(({ operation }) => operation === numberOf(pin, 'head-face'))!;
    expect(stake.hoursHere).toBeLessThan(0.7);
  });
});
