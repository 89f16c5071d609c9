import * as z from 'zod';
import { seriesNames, type SeriesAsked } from '../../part/scaling/index.js';
import type { ScaleReport } from '../../plan/scaled/report.js';

const finite = z.number();
const positive = z.number().positive();
const notNegative = z.number().min(0);
const numbered = z.int().positive();
const name = z.string().min(1);
const names = z.array(name);
const share = z.number().min(0).max(1);
const way = z.enum(['gauge', 'scale', 'factor']);

const factor = z.strictObject({
  value: positive,
  by: way,
  says: name,
  ways: z.array(z.strictObject({ by: way, factor: positive, says: name, percent: finite.describe('against the factor taken') })).min(1),
  title: name.describe('for the line of the engine on the prints'),
  label: name.describe('for the names of files'),
});

const amount = z.strictObject({ size: finite.exactOptional(), name: name.exactOptional() });

const line = z.strictObject({
  parameter: name,
  label: name,
  kind: z.enum(['length', 'clearance', 'allowance', 'wall', 'thread', 'drill', 'stock', 'angle', 'count', 'choice']),
  measure: z.enum(['length', 'angle', 'count', 'word']),
  before: amount,
  exact: amount.describe('exactly scaled; the value before where the kind does not scale'),
  chosen: amount,
  rule: name,
  because: name,
  source: name,
  deviation: finite.describe('chosen less exact, in the measure'),
  percent: finite.describe('deviation of the exact size'),
  half: notNegative.exactOptional().describe('half of the step of the list, where it was put to the nearest of a list'),
  knockOn: names.describe('what changes with it'),
  mended: names.exactOptional().describe('the relations that moved it from what its rule said'),
  decision: name.exactOptional().describe('what a person must decide'),
  mate: name.exactOptional().describe('the pair that shares it'),
  fixed: z.literal(true).exactOptional().describe('set where the user fixed it'),
});

const fitAt = z.strictObject({ size: positive, lower: finite, upper: finite });

const figures = z.strictObject({ figure: finite, allowed: finite, safety: finite.describe('how many times the load could grow') });

const strength = z.strictObject({
  what: name,
  kind: z.enum(['column', 'shear', 'pin-bending', 'bearing', 'slide', 'screw', 'stripping', 'own-weight']),
  by: z.enum(['steam', 'own weight']),
  material: name,
  unit: z.enum(['MPa', 'N']),
  asked: positive.describe('the least safety that common practice asks'),
  source: name,
  before: figures,
  exact: figures,
  after: figures,
  exactChange: finite.describe('of the safety by exact scaling, per cent'),
  change: finite.describe('of the safety by all choices, per cent'),
  verdict: z.enum(['holds', 'weaker', 'fails']),
  proposal: z
    .strictObject({ parameter: name, to: finite, name: name.exactOptional(), safety: finite, looks: finite.describe('against the exactly scaled size, per cent'), mate: name.exactOptional() })
    .exactOptional(),
});

const machine = z.strictObject({
  setUp: name,
  machine: name,
  what: name.describe('swing, between centres, travel, or power in watts'),
  needs: notNegative,
  has: notNegative,
  fits: z.boolean(),
  neededBefore: notNegative,
  fitted: z.boolean(),
});

const tap = z.strictObject({ operation: numbered, thread: name, torqueNm: notNegative, strengthNm: positive, margin: positive, felt: z.boolean().describe('stronger than a hand feels') });
const stake = z.strictObject({ chance: share, hoursAtStake: notNegative, rehearsalHours: notNegative, worth: z.boolean() });

const work = z.strictObject({
  machines: z.array(machine),
  taps: z.array(z.strictObject({ operation: numbered, before: tap, after: tap, verdict: z.enum(['becomes safe', 'becomes risky', 'stays safe', 'stays risky']) })),
  rehearsals: z.array(z.strictObject({ operation: numbered, title: z.string(), before: stake, after: stake, verdict: z.enum(['still worth it', 'no longer worth it', 'worth it now']) })),
  fixtures: z
    .array(z.strictObject({ setUp: name, operations: z.array(numbered), before: names, after: names, verdict: z.enum(['still worth making', 'others are worth making', 'no longer worth making', 'worth making now']) }))
    .exactOptional(),
  buy: z.strictObject({
    section: z.array(positive).min(1).max(2).describe('of the blank, small side first'),
    length: positive,
    material: name,
    sold: name.exactOptional().describe('the least bar of the lists that holds it; missing where none does'),
    asSold: z.boolean().describe('whether it is sold in the very size'),
  }),
  toGet: z.array(z.strictObject({ toGet: name, instead: name })),
});

/** The shape of the record of a scaling (`scale --report json`); published as templates/scale-record.schema.json. */
export const scaleRecordSchema = z
  .strictObject({
    format: z.literal('trialpiece scale record'),
    version: z.literal(1),
    part: name,
    title: name,
    from: name,
    to: name,
    factor,
    series: z.enum(seriesNames as [SeriesAsked, ...SeriesAsked[]]).nullable(),
    asks: z.array(z.strictObject({ about: name, ask: name })).describe('what a person must decide'),
    lines: z.array(line).describe('one a parameter: those that need a decision first, then those that were moved or put to a list, by how much'),
    fits: z.array(z.strictObject({ cut: name, class: name, before: fitAt, after: fitAt })),
    strength: z.array(strength),
    kilograms: z.strictObject({ before: positive, after: positive }).nullable(),
    work,
    cautions: names,
  })
  .meta({ title: 'Scale record', description: 'What became of a part that was made another size. Lengths in mm, angles in degrees, times in hours.' }) satisfies z.ZodType<ScaleReport>;

/** The same as a JSON Schema (draft 2020-12), as text. */
export const scaleRecordJsonSchema = (): string => `${JSON.stringify(z.toJSONSchema(scaleRecordSchema), null, 2)}\n`;
