import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { everythingIn, inFolder, PARTS, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const ROOT_FILE = { out: 'a file of the user' };

describe('what cannot be printed', () => {
  it.each<[string, string[], string | RegExp]>([
    ['an unknown part', ['crosshed'], `"crosshed" is not a part: there are ${PARTS}; the nearest is crosshead; a file of your own is given with its path, as in ./crosshed.ts.`],
    ['an unknown parameter', ['crosshead-pin', '--set', 'pinDiametre=6 mm'], /^crosshead-pin has no parameter "pinDiametre": it has .*; the nearest is pinDiameter\.$/],
    ['not a number', ['crosshead-pin', '--set', 'pinDiameter=thick'], /^pinDiameter "thick" is not a length: .*\.$/],
    ['no unit', ['crosshead-pin', '--set', 'pinDiameter=6'], /^pinDiameter "6" has no unit: write 6 mm or 6 in .*\.$/],
    ['a wrong unit', ['crosshead-pin', '--set', 'pinDiameter=6 kg'], /^pinDiameter "6 kg" has the unknown unit "kg": .*\.$/],
    ['out of limits', ['crosshead-pin', '--set', 'pinDiameter=30 mm'], 'pinDiameter "30 mm" is more than this part allows: at most 1 in (25.4 mm).'],
    ['an exponent', ['crosshead-pin', '--set', 'pinDiameter=1e-3 in'], 'pinDiameter "1e-3 in" is written with an exponent: write the number out, such as 0.001 in or 2500 mm.'],
    ['a bar beyond its limits', ['crosshead-pin', '--set', 'barDiameter=1000 mm'], 'barDiameter "1000 mm" is more than this part allows: at most 2 in (50.8 mm).'],
    ['a thread that is none', ['crosshead-pin', '--set', 'tailThread=10-33'], /^tailThread: thread "10-33" is not in the tables .*; the nearest is 10-32.*\.$/],
    ['a broken relation', ['crosshead-pin', '--set', 'tailThread=1/4-20'], /^the thread passes through the cross bore: thread diameter \(\.2500 in\) must be less than pin diameter \(\.2500 in\)/],
    ['an unknown paper', ['crosshead-pin', '--paper', 'A44'], /"A44".*; the nearest is A4\.$/],
    ['an unknown scale', ['crosshead-pin', '--scale', '3:1'], /^there is no scale "3:1"; .*; the nearest is 4:1\.$/],
    ['a sheet too small', ['crosshead', '--paper', 'A4', '--scale', '20:1'], /20:1.*A4|A4.*20:1/],
  ])('%s', (_, words, sentence) => expectRefusal(['print', ...words], sentence));

  it('a folder that is a file', () =>
    expectRefusal(['print', 'crosshead-pin'], 'The folder out cannot be written: a file of that name is in the way; nothing was written.', ROOT_FILE));
});

describe('print', () => {
  it('writes an SVG for each sheet, a PDF and the record, lists them, and gives the same bytes twice', () =>
    inFolder({}, (folder) => {
      const runs = ['one', 'two'].map((out) => trialpiece(folder, 'print', 'crosshead-pin', '--out', out));
      for (const { status, stderr } of runs) expect([status, stderr]).toEqual([0, '']);
      const names = everythingIn(join(folder, 'one'));
      expect(runs[0]?.stdout.trim().split('\n').sort()).toEqual(names.map((name) => join('one', name)));
      for (const ending of [/\.svg$/, /\.pdf$/, /\.json$/]) expect(names.some((name) => ending.test(name))).toBe(true);
      expect(everythingIn(join(folder, 'two'))).toEqual(names);
      for (const name of names) {
        expect(readFileSync(join(folder, 'one', name)).equals(readFileSync(join(folder, 'two', name)))).toBe(true);
      }
    }));

  it('writes just the formats asked for, and the record', () =>
    inFolder({}, (folder) => {
      expect(trialpiece(folder, 'print', 'crosshead-pin', '--format', 'pdf').status).toBe(0);
      expect(everythingIn(join(folder, 'out')).map((name) => name.replace(/.*\./, ''))).toEqual(['json', 'pdf']);
    }));

  it('writes with --record the record to standard output and nothing else', () =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'print', 'crosshead-pin', '--record');
      expect([status, stderr]).toEqual([0, '']);
      expect(JSON.parse(stdout)).toMatchObject({ version: expect.anything() as unknown });
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('gives a list of two records for both hands', () =>
    inFolder({}, (folder) => {
      const { status, stdout } = trialpiece(folder, 'print', 'crosshead', '--hand', 'both', '--record');
      expect(status).toBe(0);
      expect(JSON.parse(stdout)).toHaveLength(2);
    }));

  it('takes both ways of giving several settings', () =>
    inFolder({}, (folder) => {
      const together = trialpiece(folder, 'print', 'crosshead-pin', '--record', '--set', 'pinDiameter=7 mm', 'headDiameter=10 mm');
      const apart = trialpiece(folder, 'print', 'crosshead-pin', '--set', 'pinDiameter=7 mm', '--set=headDiameter=10mm', '--record');
      expect([together.status, together.stderr]).toEqual([0, '']);
      expect(apart.stdout).toBe(together.stdout);
    }));
});
