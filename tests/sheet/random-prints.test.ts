import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printRecordSchema } from '../../engine/sheet/record-schema.js';
import { UserError } from '../../engine/units/user-error.js';
import { generatorOf, makePrintsOf } from '../support/print.js';
import { faultsOf } from './crossings.js';
import { settingsOf } from './random-values.js';

const runs = { crosshead: 4, 'crosshead-pin': 12, 'expansion-link': 3, 'connecting-rod': 3 } as const;

describe.each(['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod'] as const)('prints of the %s with other sizes', (name) => {
  it('are complete, without overlap, and hold to the schema; or are refused in a sentence', { timeout: 240_000 }, async () => {
    const generator = await generatorOf(name);
    const asked = fc.record({ units: fc.constantFrom('in' as const, 'mm' as const), angle: fc.constantFrom('third' as const, 'first' as const), hand: fc.constantFrom('right' as const, 'left' as const), paper: fc.constantFrom('A3', 'Tabloid') });
    await fc.assert(
      fc.asyncProperty(settingsOf(generator), asked, async (settings, options) => {
        let prints: Awaited<ReturnType<typeof makePrintsOf>>;
        try {
          prints = await makePrintsOf(name, { settings, ...options });
        } catch (error) {
          // Anything else that is thrown is a fault of the program.
          if (!(error instanceof UserError)) throw error;
          expect(error.message).toMatch(/^the print of the [a-z-]+ (cannot|does not) [^\n]{20,400}$/);
          return;
        }
        for (const { record, drawing } of prints) {
          expect(printRecordSchema.parse(record)).toEqual(record);
          expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
          expect(drawing.sheets.flatMap(faultsOf).map(({ pair, first, second }) => `${pair}: ${first} / ${second}`)).toEqual([]);
        }
      }),
      { seed: 7, numRuns: runs[name], endOnFailure: true },
    );
  });
});

describe('prints that once went wrong', () => {
  it.each([
    // Words of a settings table ran into the next title.
    ['crosshead-pin', { pinDiameter: '7.15 mm', headLand: '0.32 mm', bodyWidth: '17.78 mm', barDiameter: '9/16 in', tailLength: '5.62 mm', tailChamfer: '0.47 mm' }, { units: 'mm' as const, paper: 'A4' }],
    // Letters of two axes stood on each other where a set-up leans.
    ['crosshead', { bevelAngle: '39', padDrillDepth: '3.9 mm', rodThreadDepth: '8.03 mm', lugProud: '1.13 mm' }, { units: 'mm' as const, angle: 'first' as const, hand: 'right' as const, paper: 'Tabloid' }],
  ])('%s with %o', async (name, settings, options) => {
    const prints = await makePrintsOf(name, { settings, ...options });
    expect(prints.flatMap(({ drawing }) => drawing.sheets.flatMap(faultsOf)).map(({ pair, first, second }) => `${pair}: ${first} / ${second}`)).toEqual([]);
  });
});
