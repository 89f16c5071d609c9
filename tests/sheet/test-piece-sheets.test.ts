import { describe, expect, it } from 'vitest';
import { resolveValues } from '../../engine/part/resolve.js';
import { makeTestPiece } from '../../engine/sheet/make-test-piece.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import { printRecordSchema } from '../../engine/sheet/record-schema.js';
import { generatorOf } from '../support/print.js';
import { faultsOf, isText } from './crossings.js';

const cases = [
  ['crosshead', undefined, 'both', 'in'],
  ['crosshead', [170], 'right', 'mm'],
  ['crosshead', [150], 'left', 'in'],
  ['crosshead-pin', [90], 'right', 'in'],
  ['expansion-link', [30], 'right', 'mm'],
  ['connecting-rod', [60], 'right', 'in'],
  ['valve-rod-fork', [70], 'right', 'in'],
  ['gland-nut', [70], 'right', 'mm'],
] as const;

async function pieceOf(name: string, rehearse: readonly number[] | undefined, hand: 'right' | 'left' | 'both', units: 'in' | 'mm'): Promise<readonly MadePrint[]> {
  const generator = await generatorOf(name);
  return makeTestPiece({ generator, values: resolveValues(generator, {}, undefined), units, paper: undefined, scale: undefined, angle: 'third', hand, rehearse });
}

describe.each(cases)('the test piece of the %s for %o, %s hand, in %s', (name, rehearse, hand, units) => {
  it('is printed whole: all sizes, no overlap, boxes to write in, a record that holds to the schema', async () => {
    for (const { drawing, record } of await pieceOf(name, rehearse, hand, units)) {
      expect(printRecordSchema.parse(JSON.parse(JSON.stringify(record)))).toEqual(JSON.parse(JSON.stringify(record)));
      expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
      for (const sheet of drawing.sheets) {
        const faults = faultsOf(sheet).filter(({ pair }) => pair.startsWith('text'));
        expect(faults.map(({ pair, first, second }) => `${sheet.title}: ${pair}: ${first} / ${second}`)).toEqual([]);
      }
      const words = drawing.sheets.flatMap(({ items }) => items.flatMap((item) => (isText(item) ? [item.text] : [])));
      for (const heading of ['What the piece shows', 'What it does not show', 'How it differs from the part', 'Trials', 'Go or no-go: measure after each rehearsed cut']) expect(words).toContain(heading);
      // Boxes for what is found carry the number of the part's own operation.
      for (const number of record.rehearsal!.operations) expect(words.some((text) => text.startsWith(`operation ${String(number)},`))).toBe(true);
    }
  }, 120_000);
});

it('is mirrored for the other hand where what is rehearsed has one', async () => {
  const [right] = await pieceOf('crosshead', [150], 'right', 'in');
  const [left] = await pieceOf('crosshead', [150], 'left', 'in');
  expect([right!.record.hand, left!.record.hand]).toEqual(['right', 'left']);
  const sizes = (print: MadePrint) => print.record.dimensions.filter(({ measure }) => measure === 'length').map(({ nominal }) => nominal!.toFixed(4)).sort();
  expect(sizes(left!)).toEqual(sizes(right!));
}, 120_000);
