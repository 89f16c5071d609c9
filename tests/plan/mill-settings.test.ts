import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { mirrorPart } from '../../engine/part/mirror.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { closedPlanes } from '../../engine/plan/cut-planes.js';
import { planOf, type ShopPlan } from '../../engine/plan/plan.js';
import { prepareOperations } from '../../engine/sheet/operations/operation-sheets.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import crosshead from '../../generators/parts/crosshead.js';
import { inch, inPlan, partOfHand } from './planned.js';

let kernel: Kernel;
beforeAll(async () => {
  kernel = await loadKernel();
});

const plans = new Map<string, ShopPlan>();

/** The plan of the crosshead with its work followed from cut to cut; made once a hand. */
async function whole(hand: 'right' | 'left' = 'right'): Promise<ShopPlan> {
  const part = await partOfHand('crosshead', hand);
  const plan = plans.get(hand) ?? prepareOperations(kernel, part, 'in').plan;
  plans.set(hand, plan);
  return plan;
}

const rows = (plan: ShopPlan, number: number): readonly (readonly string[])[] => {
  const block = inPlan(plan, number).blocks.find(({ kind }) => kind === 'table');
  return block?.kind === 'table' ? block.rows : [];
};

describe('the middle of the cutter', () => {
  it('stays its radius inside the walls of a pocket', async () => {
    // .250 by .4375 about the rod axis, cutter 3/16: .125 - .09375 and .21875 - .09375.
    expect(rows(await whole(), 70)).toEqual([
      ['pocket cheeks, X \u2212.1250', 'right of it', 'X \u2212.0313', '\u22121 t + 60.3 d'],
      ['pocket cheeks, X +.1250', 'left of it', 'X +.0313', '39.7 d'],
      ['pocket top and bottom, Y \u2212.2188', 'far side', 'Y \u2212.1250', '\u22122 t + 41.3 d'],
      ['pocket top and bottom, Y +.2188', 'near side', 'Y +.1250', '1 t + 58.8 d'],
      // Faced to 1.625 before: the floor at .750 lies .875 lower. The dial counts down: 19.05 mm up are ten turns back, 0.95 mm forward.
      ['pocket floor, .8750 below the top', 'end', 'Z +.7500', '\u221210 t + 47.5 d'],
    ]);
  });

  it('stays its radius outside a pad, and no figure is given for an end where nothing stands', async () => {
    const around = rows(await whole(), 150).map((row) => row.slice(0, 3));
    expect(around).toEqual([
      ['front of the lug, X \u22121.3125', 'right of it', 'X \u22121.0625'],
      ['bottom and top of the lug, Y \u2212.4375', 'near side', 'Y \u2212.6875'],
      ['bottom and top of the lug, Y \u2212.0625', 'far side', 'Y +.1875'],
      ['lug face', 'end', 'Z +.5625'],
      ['cheek faces, .0625 below the top', 'end', 'Z +.5000'],
    ]);
  });

  it('goes to the other side of the rod axis round the pad of the other hand', async () => {
    const walls = (hand: 'right' | 'left') => whole(hand).then((plan) => inPlan(plan, 150).settings.flatMap(({ y }) => (y === undefined ? [] : [y / inch])));
    expect(await walls('right')).toEqual([-0.6875, 0.1875].map((y) => expect.closeTo(y, 9) as number));
    expect(await walls('left')).toEqual([-0.1875, 0.6875].map((y) => expect.closeTo(y, 9) as number));
  });

  it('always stands its radius from the wall, in the metal that goes, whatever the sizes of the part', () => {
      fc.assert(
      fc.property(fc.integer({ min: 20, max: 25 }), fc.integer({ min: 40, max: 46 }), fc.integer({ min: 50, max: 60 }), fc.constantFrom('right', 'left'), (cheeks, height, groove, hand) => {
        const values = resolveValues(crosshead, { pocketWidth: `${cheeks / 100} in`, pocketHeight: `${height / 100} in`, grooveWidth: `${groove / 100} in` }, undefined);
        const right = crosshead.build(values);
        const part = hand === 'right' ? right : mirrorPart(right);
        const plan = planOf(part, 'mm', undefined);
        for (const number of [70, 80, 120, 150]) {
          const run = plan.runs.find(({ operations }) => operations.some((operation) => operation.number === number))!;
          const radius = inPlan(plan, number).cutters[0]!.diameter! / 2;
          const planes = part.operations.find((operation) => operation.number === number)!.cuts.flatMap((cut) => closedPlanes(part, cut));
          for (const { x, y } of inPlan(plan, number).settings) {
            if (x === undefined && y === undefined) continue;
            const { frame } = run;
            const at = [0, 1, 2].map((i) => frame.origin[i]! + (x ?? 0) * frame.x[i]! + (y ?? 0) * frame.y[i]!);
            const axis = x === undefined ? frame.y : frame.x;
            const off = planes
              .filter(({ normal }) => Math.abs(normal.reduce((sum, value, i) => sum + value * axis[i]!, 0)) > 0.99)
              .map(({ point, normal }) => normal.reduce((sum, value, i) => sum + value * (at[i]! - point[i]!), 0));
            expect(off.some((distance) => Math.abs(distance - radius) < 1e-9)).toBe(true);
          }
        }
      }),
      { seed: 42, numRuns: 25 },
    );
  });
});

describe('a bevel', () => {
  it('is touched on the edge that it takes away: its length times the sine of its angle below', async () => {
    // From .700 to the shoulder at .500, at 30 degrees: .200 sin 30 = .100 = 2.54 mm, one turn and 27 divisions.
    for (const number of [210, 220]) {
      const texts = inPlan(await whole(), number).settings.map(({ text }) => text);
      expect(texts.join(' ')).toContain('touch the edge that stands highest under the cutter, then down .1000 (1 t + 27 d) in all');
    }
  });

  it('lies at one height of its tilted set-up, counted from where rod axis and front face meet', async () => {
    // Height of the start (.500 across, .700 along) over the tilted zero: .500 cos 30 - .700 sin 30.
    const height = inPlan(await whole(), 210).settings.flatMap(({ z }) => (z === undefined ? [] : [z / inch]));
    expect(height).toEqual([expect.closeTo(0.5 * Math.cos(Math.PI / 6) - 0.7 * Math.sin(Math.PI / 6), 9)]);
  });
});

describe('the edges of the work as held', () => {
  it('are those of the bar, of what was cut before, and of the zero', async () => {
    const plan = await whole();
    const edges = Object.fromEntries(plan.runs.map(({ setUp, pickUp }) => [setUp.id, pickUp?.kind === 'table' ? pickUp.rows.map(([, at]) => at) : []]));
    // Bar 1.25 by 1: the lug stands 1/16 proud, and .09375 is left on each side.
    expect(edges['B']).toEqual(['X \u2212.5938', 'X +.6563', 'Y \u2212.5000', 'Y +.5000', 'Z +1.6875']);
    expect(edges['C']).toEqual(['X \u22121.6250', 'X 0', 'Y \u2212.6563', 'Y +.5938', 'Z +.5000']);
    expect(edges['A']).toEqual([]);
  });
});


