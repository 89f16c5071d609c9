import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../../engine/part/resolve.js';
import { factorOf, scaledPart, scaleValues, type SeriesAsked } from '../../../engine/part/scaling/index.js';
import { scaleReport, type ScaleReport } from '../../../engine/plan/scaled/report.js';
import { scaleRecordJsonSchema, scaleRecordSchema } from '../../../engine/sheet/scaled/scale-record-schema.js';
import { builtInGenerator } from '../../support/built-in-generator.js';

async function reportOf(name: string, to: string, series?: SeriesAsked, fixed: Readonly<Record<string, string>> = {}): Promise<ScaleReport> {
  const generator = await builtInGenerator(name);
  const values = resolveValues(generator, {}, undefined);
  const factor = factorOf({ to, engine: generator.build(values).engine });
  const made = scaleValues(generator, values, factor.value, { series, fixed });
  return scaleReport({ original: { generator, values }, generator: scaledPart(generator, factor), ...made, factor, series, shop: undefined, unit: 'in' });
}

describe('the schema of the scale record', () => {
  // Written anew by `npx vitest run tests/sheet/scaled/scale-record.test.ts --update`.
  it('is the one that is published', async () => {
    await expect(scaleRecordJsonSchema()).toMatchFileSnapshot(new URL('../../../templates/scale-record.schema.json', import.meta.url).pathname);
  });

  it('refuses a field too many, a verdict that is none, and a line without its reason', async () => {
    const record = await reportOf('crosshead-pin', '7.25 in');
    const [first, ...more] = record.lines;
    expect(scaleRecordSchema.safeParse(record).success).toBe(true);
    expect(scaleRecordSchema.safeParse({ ...record, mass: 3 }).success).toBe(false);
    expect(scaleRecordSchema.safeParse({ ...record, strength: [{ ...record.strength[0], verdict: 'good' }] }).success).toBe(false);
    expect(scaleRecordSchema.safeParse({ ...record, lines: [{ ...first, because: undefined }, ...more] }).success).toBe(false);
  });
});

it.each<[string, string, SeriesAsked | undefined, Readonly<Record<string, string>>]>([
  ['crosshead', '7.25 in', undefined, {}],
  ['crosshead', '3.5 in', undefined, { padThread: '00-90' }],
  ['crosshead-pin', '0.5', 'metric', {}],
  ['gland-nut', '4', undefined, {}],
  ['connecting-rod', '2', undefined, {}],
  ['valve-rod-fork', '5 in', undefined, {}],
  ['expansion-link', '1.3', undefined, {}],
])('the record of the %s for %s holds to it, also after a journey through a file', async (name, to, series, fixed) => {
  const record = await reportOf(name, to, series, fixed);
  expect(scaleRecordSchema.parse(JSON.parse(JSON.stringify(record)))).toEqual(record);
});
