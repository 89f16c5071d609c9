import { describe, expect, it } from 'vitest';
import { planOf } from '../../engine/plan/plan.js';
import { resolveValues } from '../../engine/part/resolve.js';
import type { Part } from '../../engine/part/part.js';
import cover from '../parts/cover.js';
import spindle from '../parts/spindle.js';
import { inch, inPlan, partOfHand, planned, smallInchShop } from './planned.js';

type Planned = Awaited<ReturnType<typeof planned>>;
const rows = ({ blocks }: Planned): readonly (readonly string[])[] => blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []));
const lines = ({ blocks }: Planned): string => blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');

describe('settings on the lathe', () => {
  it('run to the shoulder, not to where its fillet begins', async () => {
    // 12.7 mm toward the chuck on a carriage of 20 mm a turn by 0.1: 127 divisions.
    expect(rows(await planned('crosshead', 20))).toEqual([['boss', '.5625', '\u2212.5000', '127 d']]);
  });

  it('give the cross slide from the round diameter that is there', async () => {
    // (.4375 - .375) / 2 = .03125 in = 0.79375 mm: 39.7 divisions of 0.02.
    expect(rows(await planned('crosshead-pin', 30))[0]!.slice(1, 4)).toEqual(['.4375', '.3750', '39.7 d']);
    expect(rows(await planned('crosshead-pin', 40))[0]!.slice(1, 4)).toEqual(['.3750', '.2500', '79.4 d']);
  });

  it('count whole diameters where the dial reads them', async () => {
    // .4375 - .375 on a dial of .001: 62.5 divisions.
    expect(rows(await planned('crosshead-pin', 30, { shop: smallInchShop }))[0]).toContain('62.5 d');
  });

  it('open a bore outward from the hole', async () => {
    // Register 9/32 = 7.14375 mm from a hole of 5.8 mm: 0.671875 mm on one side.
    expect(rows(await planned('crosshead', 40))[0]!.slice(1, 4)).toEqual(['.2283', '.2813', '33.6 d']);
  });

  it('give both ends of a groove and of a taper, and how the top slide stands', async () => {
    expect(rows(await planned('crosshead-pin', 60))[0]!.slice(-3, -1)).toEqual(['\u2212.2500', '\u2212.3125']);
    const taper = await planned('crosshead-pin', 90);
    expect(rows(taper)[0]!.slice(1, 4)).toEqual(['.2500 to .3750', '\u22121.2188', '\u22121.2813']);
    expect(lines(taper)).toContain('Top slide 45\u00b0 from the axis of the lathe, thin end to the tailstock');
  });

  it('never write "in" where it could be read as inches', async () => {
    // Point of the centre drill and its cone: .1015 deep for a mouth of 3/32.
    expect(lines(await planned('crosshead-pin', 20))).toBe('Tailstock: go .1015 deeper from where the tip touches: the mouth is then \u2300.0938.');
    expect(lines(await planned('crosshead', 30))).toContain('then go .6086 deeper');
  });

  it('count a thread in turns: its length over the pitch', async () => {
    expect(lines(await planned('crosshead-pin', 80))).toContain('.2500 long, 8 turns');
  });

  it('carry diameters and lengths that the record keeps unrounded', async () => {
    const [setting] = (await planned('crosshead-pin', 40)).settings;
    expect(setting).toMatchObject({ diameter: expect.closeTo(inch / 4, 9) as number, z: expect.closeTo(-1.21875 * inch, 9) as number });
  });
});

describe('the zero on the lathe', () => {
  it('is the face that the set-up cuts first where its own is not there yet', async () => {
    // The pin turned about: counted from its head, which is parted off last.
    const part = await partOfHand('crosshead-pin', 'right');
    const head = part.stations.find(({ id }) => id === 'z:head face')!;
    const fromHead: Part = { ...part, setUps: part.setUps.map((setUp) => (setUp.id === 'A' ? { ...setUp, zero: [head.id] } : setUp)) };
    const [run] = planOf(fromHead, 'in', undefined).runs;
    expect(run!.zero).toEqual(['Zero (marked 0): Z tail end.', expect.stringMatching(/^The head face is not there yet: it will be at Z \u22121\.2969\.$/)]);
    expect(rows(inPlan(planOf(fromHead, 'in', undefined), 10))).toEqual([['tail end', '0', '0 d']]);
  });

  it('stays a face that was cut before', () => {
    const part = cover.build(resolveValues(cover, {}, undefined));
    const third = planOf(part, 'mm', undefined).runs[2]!;
    expect(third.zero[0]).toBe('Zero (marked 0): X axis; Y axis; Z joint face.');
  });
});

it('plans parts of several turned steps', () => {
  const part = spindle.build(resolveValues(spindle, {}, undefined));
  // From the threaded end, which is faced first: a shoulder after 12, and the whole 120.
  const steps = rows(inPlan(planOf(part, 'mm', undefined), 20)).map((row) => [row[2], row[row.length - 2]]);
  expect(steps).toEqual([['3.000', '\u221212.000'], ['4.000', '\u2212120.000']]);
});
