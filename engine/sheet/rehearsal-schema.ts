import * as z from 'zod';

const name = z.string().min(1);
const numbered = z.int().positive();
const volume = z.number().nonnegative().describe('mm3');
const hours = z.number().nonnegative().describe('hours');
const share = z.number().min(0).max(1);
const differing = z.strictObject({ missing: volume, extra: volume });

/** The part of a print's record that only a test piece has. */
export const rehearsalSchema = z
  .strictObject({
    of: name.describe('the part whose cuts are rehearsed'),
    operations: z.array(numbered).min(1),
    trials: numbered,
    barLength: z.number().positive().describe('of the bar for all trials, mm'),
    beside: z.strictObject({ axis: name, pitch: z.number().describe('from one trial to the next along the axis, mm') }).nullable().describe('how trials stand side by side; null where each is made by itself'),
    ladder: numbered.nullable().describe('the operation whose sizes the trials step through; null for none'),
    likeness: z
      .array(
        z.strictObject({
          operation: numbered,
          trial: numbered,
          region: volume,
          before: differing,
          after: differing,
          margin: z.number().positive().describe('metal beside and under the cut that is alike, mm'),
          alike: z.boolean(),
          ends: z.array(z.strictObject({ axis: name, end: name, distance: z.number(), follows: z.number() })),
        }),
      )
      .describe('metal of part and piece within the reach of cutter and holder: what the piece lacks and what it has beside, before and after the cut'),
    stakes: z.array(
      z.strictObject({
        operation: numbered,
        chance: share,
        hours,
        atStake: hours,
        rehearsalCost: hours,
        worthRehearsing: z.boolean(),
        risks: z.array(z.strictObject({ kind: name, chance: share, source: name })),
      }),
    ),
    measures: z.array(
      z.strictObject({ operation: numbered, what: name, nominal: z.number(), lower: z.number(), upper: z.number(), measure: z.enum(['length', 'angle']), with: name }),
    ),
    leftOut: z.array(z.strictObject({ operation: numbered, cut: name, gap: z.number().nonnegative().describe('clear of the rehearsed cut, mm') })),
  })
  .describe('of a test piece only');
