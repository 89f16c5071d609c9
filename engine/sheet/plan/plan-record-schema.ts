import * as z from 'zod';
import { printRecordSchema } from '../record-schema.js';
import type { PlanRecord } from './plan-record.js';

const finite = z.number();
const numbered = z.int().positive();
const name = z.string().min(1);
const share = z.number().min(0).max(1);
const hours = z.number().min(0);
const figures = z.record(z.string(), z.union([finite, z.string()]));
const print = printRecordSchema.shape;

const operation = print.operations.element.extend({
  volume: z
    .strictObject({ before: z.number().positive(), removed: finite, left: z.number().positive() })
    .describe('of the work before the operation, taken off by it, and left after it; mm3 as the facets have it'),
  cutterFrom: name.nullable().describe('from where the cutter comes to the work; null where none does'),
  hold: name,
  pack: z.string(),
  readings: z.array(name).describe('what is measured, as printed, with boxes as lines'),
});

const finding = z.strictObject({
  check: name,
  operation: numbered,
  gravity: z.enum(['fatal', 'warning', 'remark']),
  figures: figures.describe('lengths mm, angles degrees; other units in the name'),
  sentence: name,
  source: name,
});

const stake = z.strictObject({
  operation: numbered,
  chance: share.describe('that any of the risks comes true'),
  risks: z.array(z.strictObject({ kind: name, chance: share, because: name, figures, source: name })),
  hoursSoFar: hours.describe('of work in the part when the operation begins'),
  hoursHere: hours,
  materialHours: hours.describe('hours that stand for the material of the blank'),
  materialKilograms: hours,
  atStake: hours.describe('hours lost on average without a rehearsal: chance x (so far + here + material)'),
  atStakeWithAlike: hours.describe('with the operations alike: what a rehearsal is weighed against'),
  alike: z.array(numbered).describe('later operations with the very same risks'),
  rehearsedWith: numbered.nullable().describe('the earlier operation whose rehearsal serves this one'),
  rehearsalCost: hours,
  worthRehearsing: z.boolean(),
  notRehearsed: name.nullable(),
});

/** The shape of the record of a plan (`plan --record`); published as templates/plan-record.schema.json. */
export const planRecordSchema = z
  .strictObject({
    format: z.literal('trialpiece plan record'),
    version: z.literal(1),
    part: name,
    title: name,
    hand: print.hand,
    units: print.units,
    paper: print.paper,
    sheets: print.sheets,
    setUps: z.array(print.setUps.element.extend({ grip: z.strictObject({ kind: name, between: z.tuple([name, name]).describe('stations') }).nullable() })).min(1),
    operations: z.array(operation).min(1),
    volumes: z.strictObject({ stock: z.number().positive(), removed: finite, part: z.number().positive() }).describe('stock, sum of what the operations take off, and what is left; mm3'),
    findings: z.array(finding),
    stops: z.array(z.strictObject({ operation: numbered, when: z.enum(['before', 'after']), kind: z.enum(['measure', 'no return']), sentence: name })).describe('where to stop: to measure before the last cut, or because there is no return'),
    stakes: z.array(stake).describe('that with most at stake first'),
    checks: print.checks,
  })
  .meta({ title: 'Plan record', description: 'What the plan of a part says. Lengths in mm, volumes in mm3, times in hours.' }) satisfies z.ZodType<PlanRecord>;

/** The same as a JSON Schema (draft 2020-12), as text. */
export const planRecordJsonSchema = (): string => `${JSON.stringify(z.toJSONSchema(planRecordSchema), null, 2)}\n`;
