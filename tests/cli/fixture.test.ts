import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fixtureRecordSchema, fixtureSetRecordSchema } from '../../engine/sheet/fixture/fixture-record-schema.js';
import { openPdf, textsOf } from '../support/read-pdf.js';
import { everythingIn, inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

describe('fixtures that cannot be made', () => {
  it.each<[string, string[], string | RegExp]>([
    ['a kind that does not serve, with those that do', ['crosshead-pin', '--operation', '100', '--kind', 'dowel-plate'], /^dowel-plate does not serve operation 100 \(".*"\) of the crosshead-pin, for .*; those that serve are .*split-bush.*\.$/],
    ['a kind that is none', ['crosshead-pin', '--operation', '100', '--kind', 'split-brush'], /^there is no kind of fixture called "split-brush": choose .*; the nearest is split-bush\.$/],
    ['a kind without an operation', ['crosshead-pin', '--kind', 'split-bush'], 'the kind split-bush is asked for without an operation: say which with --operation.'],
    ['an operation that does not exist', ['crosshead', '--operation', '95'], /^the crosshead has no operation 95; it has 10, 20, .*; the nearest is 90\.$/],
    ['no number', ['crosshead', '--operation', 'drill'], '--operation "drill" is no whole number from 1 to 999999.'],
    ['an operation given twice', ['crosshead', '--operation', '90', '--operation', '100'], '--operation is given more than once: give it one value.'],
    ['an unknown part', ['crosshed'], /^"crosshed" is not a part: .*; the nearest is crosshead/],
    ['a paper that does not exist', ['gland-nut', '--paper', 'A9'], /"A9"/],
  ])('%s', (_, words, sentence) => expectRefusal(['fixture', ...words], sentence));
});

describe('fixture', () => {
  it('writes one PDF with the whole and its pieces, and the record, the same bytes twice', () =>
    inFolder({}, async (folder) => {
      for (const out of ['one', 'two']) {
        const { status, stderr } = trialpiece(folder, 'fixture', 'crosshead-pin', '--operation', '100', '--kind', 'split-bush', '--out', out);
        expect([status, stderr]).toEqual([0, '']);
      }
      const names = everythingIn(join(folder, 'one'));
      expect(names).toContain('crosshead-pin-fixture-100-split-bush.pdf');
      expect(everythingIn(join(folder, 'two'))).toEqual(names);
      for (const name of names) expect(readFileSync(join(folder, 'one', name)).equals(readFileSync(join(folder, 'two', name)))).toBe(true);
      const record = fixtureRecordSchema.parse(JSON.parse(readFileSync(join(folder, 'one', 'crosshead-pin-fixture-100-split-bush.json'), 'utf8')));
      const pdf = await openPdf(readFileSync(join(folder, 'one', 'crosshead-pin-fixture-100-split-bush.pdf')));
      expect(pdf.numPages).toBe(record.sheets.length);
      const first = (await textsOf(await pdf.getPage(1))).map(({ text }) => text).join('\n');
      for (const words of ['Split bush', 'Pieces', 'How to use it', 'Assembly: page 1 of']) expect(first).toContain(words);
    }));

  it('records a set as a list, the set first, and writes nothing then', () =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'fixture', 'crosshead-pin', '--record');
      expect([status, stderr]).toEqual([0, '']);
      const [set, ...fixtures] = JSON.parse(stdout) as readonly unknown[];
      const { fixtures: listed } = fixtureSetRecordSchema.parse(set);
      expect(fixtures.map((each) => fixtureRecordSchema.parse(each).kind)).toEqual(listed.map(({ kind }) => kind));
      expect(listed.map(({ kind }) => kind)).toContain('split-bush');
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('tells what was found with --check, and ends with 1 where something is fatal', () =>
    inFolder({}, (folder) => {
      for (const part of ['crosshead-pin', 'valve-rod-fork']) {
        const { status, stdout } = trialpiece(folder, 'fixture', part, '--check', '--format', 'pdf', '--out', part);
        const files = everythingIn(join(folder, part)).filter((name) => name.endsWith('.json'));
        const findings = files.flatMap((name) => {
          const read = fixtureRecordSchema.safeParse(JSON.parse(readFileSync(join(folder, part, name), 'utf8')));
          return read.success ? read.data.findings : [];
        });
        for (const { sentence } of findings) expect(stdout).toContain(sentence);
        expect(stdout.includes('Nothing was found amiss.')).toBe(findings.length === 0);
        expect(status).toBe(findings.some(({ gravity }) => gravity === 'fatal') ? 1 : 0);
      }
    }));
});

it('lists the kinds, one a file, each with what it is', () =>
  inFolder({}, (folder) => {
    const { status, stdout } = trialpiece(folder, 'list', 'fixtures');
    const rows = stdout.trimEnd().split('\n');
    expect(status).toBe(0);
    expect(rows.map((row) => row.split(/\s{2,}/)[0])).toEqual(expect.arrayContaining(['split-bush', 'plain-mandrel', 'dowel-plate', 'packing-parallels']));
    for (const row of rows) expect(row).toMatch(/^[a-z-]+ {2,}\S.*$/);
  }));
