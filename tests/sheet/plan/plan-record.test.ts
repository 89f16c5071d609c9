import { describe, expect, it } from 'vitest';
import { mirrorPart } from '../../../engine/part/mirror.js';
import { planRecordJsonSchema, planRecordSchema } from '../../../engine/sheet/plan/plan-record-schema.js';
import { solidOf } from '../../../engine/solid/build.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { volumeOf } from '../../../engine/solid/measure.js';
import { builtInPart } from '../../support/built-in-part.js';
import { plansOf } from '../../support/plan.js';

const parts = ['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod', 'valve-rod-fork', 'gland-nut'];

describe('the schema of the plan record', () => {
  // Written anew by `npx vitest run tests/sheet/plan/plan-record.test.ts --update`.
  it('is the one that is published', async () => {
    await expect(planRecordJsonSchema()).toMatchFileSnapshot(new URL('../../../templates/plan-record.schema.json', import.meta.url).pathname);
  });

  it('refuses a field too many', async () => {
    const [plan] = await plansOf('crosshead-pin');
    expect(planRecordSchema.safeParse(plan!.record).success).toBe(true);
    expect(planRecordSchema.safeParse({ ...plan!.record, mass: 3 }).success).toBe(false);
  });
});

describe.each(parts)('the record of the plan of the %s', (name) => {
  it('holds to the schema, also after a journey through a file', async () => {
    for (const { record } of await plansOf(name)) expect(planRecordSchema.parse(JSON.parse(JSON.stringify(record)))).toEqual(record);
  });

  it('takes off in all what the stock has more than the part, made in one go', async () => {
    const kernel = await loadKernel();
    const right = await builtInPart(name);
    for (const { record } of await plansOf(name)) {
      const part = record.hand === 'left' ? mirrorPart(right) : right;
      const [stock, finished] = [solidOf(kernel, part, { through: 0 }), solidOf(kernel, part)];
      expect(record.volumes.stock).toBeCloseTo(volumeOf(stock), 3);
      // Facets that meet other facets in another order: less than a ten-thousandth of the part.
      expect(Math.abs(volumeOf(stock) - record.volumes.removed - volumeOf(finished)) / volumeOf(finished)).toBeLessThan(5e-4);
      let left = record.volumes.stock;
      for (const { number, volume } of record.operations) {
        expect([number, volume.before]).toEqual([number, left]);
        expect([number, volume.removed >= 0]).toEqual([number, true]);
        expect(volume.left).toBeCloseTo(volume.before - volume.removed, 3);
        left = volume.left;
      }
      expect(left).toBe(record.volumes.part);
    }
  });

  it('ranks what is at stake, and passes every check', async () => {
    for (const { record } of await plansOf(name)) {
      for (const check of record.checks) expect([check.name, check.passed]).toEqual([check.name, true]);
      for (const { atStake, chance, hoursSoFar, hoursHere, materialHours } of record.stakes) expect(atStake).toBeCloseTo(chance * (hoursSoFar + hoursHere + materialHours), 4);
      const weights = record.stakes.map((stake) => (stake.rehearsedWith === null ? stake.atStakeWithAlike : stake.atStake));
      expect(weights).toEqual([...weights].sort((a, b) => b - a));
    }
  });
});

it('says of the crosshead what facing its front end takes off: 1 1/4 by 1 by 1/16 inch', async () => {
  const inch = 25.4;
  for (const { record } of await plansOf('crosshead')) expect(record.operations[0]!.volume.removed).toBeCloseTo(1.25 * 1 * (1 / 16) * inch ** 3, 3);
});

it('is alike for both hands but for the hand', async () => {
  const [right, left] = await plansOf('crosshead');
  const volumes = (plan: typeof right) => plan!.record.operations.map(({ volume }) => volume.removed);
  expect(left!.record.operations.map(({ cutterFrom }) => cutterFrom)).toEqual(right!.record.operations.map(({ cutterFrom }) => cutterFrom));
  volumes(left).forEach((removed, i) => expect(removed).toBeCloseTo(volumes(right)[i]!, 3));
});
