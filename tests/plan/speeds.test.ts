import { describe, expect, it } from 'vitest';
import type { Part } from '../../engine/part/part.js';
import { materialOf } from '../../engine/plan/material.js';
import { planOf } from '../../engine/plan/plan.js';
import { defaultShop } from '../../engine/trade/shop/shop.js';
import { builtInPart } from '../support/built-in-part.js';
import { inch, inPlan, planned, smallInchShop } from './planned.js';

/** The handbook formula v = pi d n, solved for the turns: d in mm, v in metres a minute. */
const turns = (speed: number, diameter: number): number => (speed * 1000) / (Math.PI * diameter);

const lathe = [50, 100, 150, 220, 320, 450, 650, 900, 1300, 1900, 2500];
const mill = [100, 160, 250, 400, 630, 1000, 1600, 2000, 2500];
/** The fastest of a list that is not above. */
const snapped = (list: readonly number[], wanted: number): number => Math.max(...list.filter((speed) => speed <= wanted));

describe('spindle speeds', () => {
  // Free-cutting mild steel with high-speed steel: turning 30 to 46, drilling 24 to 34 m/min (workshop-text ranges, memory).
  it.each([
    ['a drill of 5.8 mm on the lathe', 30, snapped(lathe, turns(29, 5.8))],
    ['a half-inch end mill, milling at nine tenths of turning', 60, snapped(mill, turns(0.9 * 38, inch / 2))],
    ['an end mill of 3/16 in', 70, snapped(mill, turns(0.9 * 38, (3 * inch) / 16))],
    ['a countersink of 3/8 in, at three tenths', 170, snapped(mill, turns(0.3 * 38, (3 * inch) / 8))],
  ])('of %s', async (_, number, wanted) => {
    const [cutter] = (await planned('crosshead', number)).cutters;
    expect(cutter?.speed).toBe(wanted);
  });

  it('of the square bar in the four-jaw chuck count its corners', async () => {
    const [cutter] = (await planned('crosshead', 20)).cutters;
    // The bar is not central about the rod axis: its far corners stand 0.656 across and 0.5 up.
    const swung = 2 * Math.hypot(0.65625, 0.5) * inch;
    expect(cutter?.diameter).toBeCloseTo(swung, 6);
    expect(cutter?.speed).toBe(snapped(lathe, turns(38, swung)));
  });

  it('of a turned diameter count the diameter that is there before', async () => {
    const found = await Promise.all([30, 40, 50, 60].map(async (number) => (await planned('crosshead-pin', number)).cutters[0]?.diameter));
    expect(found.map((mm) => mm! / inch)).toEqual([0.4375, 0.375, 0.25, 0.19].map((value) => expect.closeTo(value, 6) as number));
  });

  it('run a drill under size and then the reamer, slower', async () => {
    const { cutters } = await planned('crosshead', 160);
    expect(cutters.map(({ kind, name }) => [kind, name])).toEqual([['drilling', 'drill C'], ['reaming', 'reamer \u2300.2500']]);
    expect(cutters.map(({ speed }) => speed)).toEqual([snapped(mill, turns(29, 0.242 * inch)), snapped(mill, turns(0.4 * 38, inch / 4))]);
  });

  it.each([[50], [100], [190]])('leave the taps of operation %i to the hand', async (number) => {
    const { cutters } = await planned('crosshead', number);
    expect(cutters.map(({ speed, still }) => [speed, still])).toEqual([[undefined, 'by hand']]);
  });

  it('say where the fastest is too slow, and where the slowest is too fast', async () => {
    const part = await builtInPart('crosshead');
    const only = (speed: number) => ({ ...defaultShop, machines: defaultShop.machines.map((machine) => ({ ...machine, speeds: [speed] })) });
    const remark = (speed: number): string | undefined => inPlan(planOf(part, 'in', only(speed)), 60).cutters[0]?.remark;
    expect(remark(100)).toMatch(/fastest/);
    expect(remark(800)).toBeUndefined();
    expect(remark(5000)).toMatch(/slowest/);
  });

  it('are left out, and said to be, for a material that the tables do not have', async () => {
    const part = await builtInPart('crosshead');
    const strange: Part = { ...part, material: { name: 'moon rock' } };
    const { cutters } = inPlan(planOf(strange, 'in', undefined), 60);
    expect(cutters.map(({ speed, still }) => [speed, still])).toEqual([[undefined, 'material not in the tables']]);
  });

  it('are left out on a machine that the shop does not have', async () => {
    const bare = { ...defaultShop, machines: defaultShop.machines.filter(({ kind }) => kind === 'lathe') };
    expect((await planned('crosshead', 60, { shop: bare })).cutters[0]?.still).toMatch(/machine/);
  });
});

describe('the material of a part', () => {
  it.each([
    [{ name: 'mild steel 11SMn30, bright' }, 'free-cutting mild steel'],
    [{ name: 'silver steel' }, 'silver steel'],
    [{ name: 'cast iron, fine grain' }, materialOf({ name: 'cast iron' })?.name],
    [{ name: 'bar from the box', trade: 'silver steel' }, 'silver steel'],
    [{ name: 'moon rock' }, undefined],
  ])('of %j', (material, wanted) => expect(materialOf(material)?.name).toBe(wanted));
});

describe('end mills', () => {
  it.each([
    ['a face', 60, 0.5],
    ['a pocket by its corners', 70, 0.1875],
    // The groove is half an inch less five thou on each wall.
    ['a groove with metal to leave on its walls', 80, 0.4375],
  ])('of the usual sizes for %s', async (_, number, inches) => {
    expect((await planned('crosshead', number)).cutters[0]?.diameter).toBeCloseTo(inches * inch, 6);
  });

  it.each([
    ['a face', 60, 0.375],
    ['a pocket by its corners: the next smaller, for the corner can be made with it', 70, 0.125],
    ['a groove', 80, 0.375],
  ])('of the shop for %s', async (_, number, inches) => {
    expect((await planned('crosshead', number, { shop: smallInchShop })).cutters[0]?.diameter).toBeCloseTo(inches * inch, 6);
  });
});
