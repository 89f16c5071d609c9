import { describe, expect, it } from 'vitest';
import { vectorOf } from '../../engine/part/author/directions.js';
import type { HoleSize } from '../../engine/part/cut.js';
import type { Vector3 } from '../../engine/geometry/vector.js';
import { planOf } from '../../engine/plan/plan.js';
import { resolveValues } from '../../engine/part/resolve.js';
import cover from '../parts/cover.js';
import { printsOf, printedParts, partShown } from '../support/print.js';
import { inch, inPlan, partOfHand, planned } from './planned.js';

const key = (point: readonly number[]): string => point.map((value) => (Math.abs(value) < 5e-7 ? 0 : value).toFixed(5)).join(' ');

describe.each(printedParts)('the holes of the %s', (name) => {
  it('stand where zero, the axes of the machine and the settings of the record put them, for both hands', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      const { record } = print;
      for (const operation of part.operations) {
        const setUp = record.setUps.find(({ id }) => id === operation.setUp)!;
        if (setUp.machine === 'lathe' || setUp.machine === 'bench') continue;
        const sizes = operation.cuts.flatMap((cut) => cut.sizes.filter((size): size is HoleSize => size.kind === 'hole' || size.kind === 'tapping' || size.kind === 'countersink'));
        const wanted = sizes.flatMap(({ points }) => points).map(key).sort();
        const { origin, x, y, z } = setUp.frame;
        const rebuilt = record.operations
          .find(({ number }) => number === operation.number)!
          .settings.filter((setting) => setting.x !== null && setting.y !== null && setting.z !== null)
          .map((setting) => key([0, 1, 2].map((i) => origin[i]! + setting.x! * x[i]! + setting.y! * y[i]! + setting.z! * z[i]!)))
          .sort();
        expect([operation.number, rebuilt]).toEqual([operation.number, wanted]);
      }
    }
  });

  it('are counted on axes that are square, right-handed, and turned as the set-up says', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      for (const { id, machine, frame } of print.record.setUps) {
        const { x, y, z } = frame;
        const setUp = part.setUps.find((each) => each.id === id)!;
        const [up, right] = [vectorOf(setUp.up), vectorOf(setUp.right)];
        const product = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
        expect(product.map((value, i) => Math.abs(value - z[i]!) < 1e-6)).toEqual([true, true, true]);
        const close = (a: readonly number[], b: Vector3): boolean => a.every((value, i) => Math.abs(value - b[i]!) < 1e-6);
        expect([id, close(z, up), machine === 'lathe' || close(x, right)]).toEqual([id, true, true]);
      }
    }
  });
});

describe('coordinates of the crosshead', () => {
  const inches = (plan: Awaited<ReturnType<typeof planned>>): readonly (readonly [number, number])[] =>
    plan.settings.flatMap(({ x, y }) => (x === undefined || y === undefined ? [] : [[Number((x / inch).toFixed(4)), Number((y / inch).toFixed(4))] as const]));

  // Upper side up, front face to the right: the machine's X is the part's z backward, its Y the part's x backward.
  const rows = [-1.4375, -1.1875, -0.9375, -0.6875].flatMap((x) => [[x, -0.1875], [x, 0.1875]]);

  it.each(['right', 'left'] as const)('of its pad screws, %s hand', async (hand) => {
    expect(inches(await planned('crosshead', 90, { hand }))).toEqual(rows);
  });

  it('of its oil hole, on opposite sides of the rod axis on the two hands', async () => {
    expect(inches(await planned('crosshead', 110))).toEqual([[-1.0625, -0.375]]);
    expect(inches(await planned('crosshead', 110, { hand: 'left' }))).toEqual([[-1.0625, 0.375]]);
  });

  it('of its lug screw: below the axis on both hands, so near on one and far on the other', async () => {
    expect(inches(await planned('crosshead', 180))).toEqual([[-1.46875, -0.25]].map(([x, y]) => [Number(x!.toFixed(4)), y]));
    expect(inches(await planned('crosshead', 180, { hand: 'left' })).map(([, y]) => y)).toEqual([0.25]);
  });

  it('refer to the drilling for the tap in the same places', async () => {
    const lines = (await planned('crosshead', 100)).blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : []));
    expect(lines[0]).toBe('Same places as operation 90.');
  });
});

describe('depths', () => {
  const text = async (number: number): Promise<string> => (await planned('crosshead', number)).blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : [])).join(' ');

  it('add the point of the drill: 118 degrees, three tenths of the diameter', async () => {
    // 1.25 mm: 0.625 / tan 59 = 0.3755 mm = .0148 in, and .150 to the full diameter.
    expect(await text(90)).toContain('down .1648 (2 t + 9.3 d): .1500 of full diameter');
  });

  it('of a countersink count from where it touches the edge of the hole: half the difference at 90 degrees', async () => {
    expect(await text(170)).toContain('down .0625 (79.4 d), until the mouth is \u2300.3750');
  });

  it('of a hole right through and of one into another have no figure', async () => {
    expect(await text(160)).toMatch(/right through/);
    expect(await text(110)).toMatch(/breaks into the cross bore/);
  });
});

describe('holes on a circle', () => {
  const part = cover.build(resolveValues(cover, {}, undefined));
  const plan = inPlan(planOf(part, 'mm', undefined), 40);

  it('stand in a table of their own coordinates', () => {
    // 16 mm from the axis, the first at 30 degrees from +x against the way in; the work lies with the joint face up.
    const radii = plan.settings.flatMap(({ x, y }) => (x === undefined || y === undefined ? [] : [Math.hypot(x, y)]));
    expect(radii).toEqual(Array.from({ length: 6 }, () => expect.closeTo(16, 9) as number));
    const grid = plan.blocks.find((block) => block.kind === 'table')!;
    expect(grid.kind === 'table' ? grid.rows.length : 0).toBe(6);
  });

  it('are checked over two pins: the chord of a sixth of the circle is its radius, and one diameter more', () => {
    expect(plan.settings.map(({ text }) => text).join(' ')).toContain('over pins in two neighbouring holes 19.200');
  });

  it('are said to lean where they do', () => {
    const lines = inPlan(planOf(part, 'mm', undefined), 50).blocks.flatMap((block) => (block.kind === 'lines' ? block.lines : []));
    expect(lines.join(' ')).toMatch(/lean in this set-up/);
  });
});

it('says nothing of a part that has no hole on the mill', async () => {
  const part = await partOfHand('crosshead-pin', 'right');
  const texts = planOf(part, 'in', undefined).runs.flatMap(({ operations }) => operations.flatMap(({ settings }) => settings.map(({ x }) => x)));
  expect(texts.every((x) => x === undefined)).toBe(true);
});
