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

const beside = [
  ['crosshead', 100, 'left', { ladder: true }, 3],
  ['crosshead', 170, 'right', { ladder: true }, 3],
  ['crosshead', 190, 'left', { trials: 3 }, 3],
  ['connecting-rod', 10, 'right', { trials: 4 }, 4],
  ['valve-rod-fork', 60, 'right', { trials: 2 }, 2],
] as const;

describe.each(beside)('trials side by side of operation %2$s of the %1$s', (name, number, hand, wishes, trials) => {
  it('are printed whole: every size, the place of each trial, no overlap, a record that holds to the schema', async () => {
    const generator = await generatorOf(name);
    for (const { drawing, record } of await makeTestPiece({ generator, values: resolveValues(generator, {}, undefined), units: 'mm', paper: undefined, scale: undefined, angle: 'third', hand, rehearse: [number], ...wishes })) {
      expect(printRecordSchema.parse(JSON.parse(JSON.stringify(record)))).toEqual(JSON.parse(JSON.stringify(record)));
      expect(record.checks.filter(({ passed }) => !passed)).toEqual([]);
      for (const sheet of drawing.sheets) expect(faultsOf(sheet).filter(({ pair }) => pair.startsWith('text')).map(({ pair, first, second }) => `${sheet.title}: ${pair}: ${first} / ${second}`)).toEqual([]);
      const { beside: stands, likeness } = record.rehearsal!;
      expect(likeness.map(({ trial, alike }) => [trial, alike])).toEqual(Array.from({ length: trials }, (_, i) => [i + 1, true]));
      // The print says how far each later trial stands from the first.
      const lengths = record.dimensions.flatMap(({ measure, nominal }) => (measure === 'length' && nominal !== null ? [nominal] : []));
      for (let trial = 2; trial <= trials; trial += 1) expect(lengths.some((length) => Math.abs(length - (trial - 1) * Math.abs(stands!.pitch)) < 1e-6)).toBe(true);
      // So do the settings: every place of the first trial comes again, so much further.
      const places = record.operations.filter((each) => each.number >= number - 10 && each.number <= number + 9).flatMap(({ settings }) => settings.filter(({ x, y }) => x !== null && y !== null));
      const first = places.filter(({ what }) => !what.includes(', trial '));
      const later = places.filter(({ what }) => what.includes(`, trial ${trials}`));
      if (first.length > 0) {
        expect(later.length).toBe(first.length);
        for (const { x, y } of first) expect(later.some((other) => Math.abs(Math.abs(other.x! - x!) + Math.abs(other.y! - y!) - (trials - 1) * Math.abs(stands!.pitch)) < 1e-6)).toBe(true);
      }
    }
  }, 120_000);
});

it('prints the size of each rung of a ladder at its place, and in an operation of its own', async () => {
  const generator = await generatorOf('crosshead');
  const request = { generator, values: resolveValues(generator, {}, undefined), units: 'in', paper: undefined, scale: undefined, angle: 'third', hand: 'right', ladder: true } as const;
  const [drills] = await makeTestPiece({ ...request, rehearse: [100] });
  const words = (print: MadePrint): string => print.drawing.sheets.flatMap(({ items }) => items.flatMap((item) => (isText(item) ? [item.text] : []))).join('\n');
  // 1.2, 1.25 and 1.3 mm.
  for (const size of ['.0472', '.0492', '.0512']) expect(words(drills!)).toContain(`8x \u2300${size}`);
  expect(drills!.record.operations.filter(({ number }) => number >= 90 && number < 100).map(({ number, cutter }) => [number, cutter])).toEqual([[90, 'drill 1.25 mm'], [91, 'drill 1.2 mm'], [92, 'drill 1.3 mm']]);
  const [mouths] = await makeTestPiece({ ...request, rehearse: [170] });
  // The mouth of 3/8 in less 0.2 and 0.4 mm.
  for (const size of ['.375', '.3671', '.3593']) expect(words(mouths!)).toContain(`\u2300${size} x 90`);
}, 120_000);

it('is mirrored for the other hand where what is rehearsed has one', async () => {
  const [right] = await pieceOf('crosshead', [150], 'right', 'in');
  const [left] = await pieceOf('crosshead', [150], 'left', 'in');
  expect([right!.record.hand, left!.record.hand]).toEqual(['right', 'left']);
  const sizes = (print: MadePrint) => print.record.dimensions.filter(({ measure }) => measure === 'length').map(({ nominal }) => nominal!.toFixed(4)).sort();
  expect(sizes(left!)).toEqual(sizes(right!));
}, 120_000);
