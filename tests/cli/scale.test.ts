import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { scaleRecordSchema } from '../../engine/sheet/scaled/scale-record-schema.js';
import { everythingIn, inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const GAUGES = 'gauge 0, gauge 1, 2-1/2 in, 3-1/2 in, 4-3/4 in, 5 in, 7-1/4 in, 7-1/2 in, 10-1/4 in, 15 in';

describe('what cannot be scaled', () => {
  it.each<[string, string[], string | RegExp]>([
    ['nothing to scale to', ['crosshead'], 'scale needs --to, a gauge, a scale or a factor, as in trialpiece scale crosshead --to "7.25 in".'],
    ['an unknown gauge', ['crosshead', '--to', '8 in'], `--to "8 in" is no gauge that is known: there are ${GAUGES}; the nearest is 7-1/2 in; or write a gauge (5 in), a scale (1-1/16 in/ft) or a factor (1.45).`],
    ['a series that is none', ['crosshead', '--to', '7.25in', '--series', 'metrik'], 'series "metrik" is not known: there are unified, metric, ba, whitworth, bsw, bsf, model; the nearest is metric.'],
    ['a series with no size near', ['crosshead', '--to', '10.25in', '--series', 'ba'], /^at 2\.05 times its size the crosshead cannot be made: rodThread \(1\/4x40 ME\) would be 13\.018 mm, and the series ba has no thread near it: its largest is 0 BA; lugThread .*; fix what you can with --set\.$/],
    ['a factor that makes it impossible', ['gland-nut', '--to', '0.3'], /^at 0\.3 times its size the gland-nut cannot be made: .* \(\.\d+ in\) must be at most .* \(\.\d+ in\), it is short by \.\d+ in, and no small change of its other sizes mends it\.$/],
    ['a report that is none', ['crosshead', '--to', '7.25in', '--report', 'pdf'], '--report "pdf" is not known: there are json, table, sheet.'],
    ['a scale where the gauge has two', ['crosshead', '--to', '1.5in/ft'], /^--from "5 in": the gauge 5 in is built in several scales/],
  ])('%s', (_, words, sentence) => expectRefusal(['scale', ...words], sentence));

  it.each(['print', 'plan', 'test-piece', 'fixture', 'pack'])('%s refuses an unknown gauge as scale does', (command) => expectRefusal([command, 'crosshead', '--gauge', '8 in'], /^--to "8 in" is no gauge that is known: .*; the nearest is 7-1\/2 in; /));

  it.each<[string, string, RegExp]>([
    ['an unknown key', 'serie: metric\n', /^crosshead-7\.25in\.scale\.yaml: "serie" is not known there: there are from, series, set; the nearest is series\.$/],
    ['no YAML', 'set: {a\n', /^crosshead-7\.25in\.scale\.yaml is no YAML: .*\.$/],
    ['an unknown parameter', 'set:\n  lenght: 2 in\n', /^crosshead has no parameter "lenght": .*; the nearest is length\.$/],
    ['a value that is none', 'set:\n  padThread: M99\n', /^padThread: thread "M99" is not in the tables/],
  ])('a file of choices with %s', (_, text, sentence) => expectRefusal(['scale', 'crosshead', '--to', '7.25in', '--report', 'table'], sentence, { 'crosshead-7.25in.scale.yaml': text }));
});

interface Line {
  readonly parameter: string;
  readonly chosen: { readonly name?: string; readonly size?: number };
  readonly fixed?: boolean;
}
interface Report {
  readonly format: string;
  readonly to: string;
  readonly factor: { readonly value: number };
  readonly lines: readonly Line[];
}

const report = (folder: string, ...words: readonly string[]): Report => {
  const { status, stdout, stderr } = trialpiece(folder, 'scale', ...words, '--report', 'json');
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return JSON.parse(stdout) as Report;
};
const line = ({ lines }: Report, name: string): Line => lines.find(({ parameter }) => parameter === name)!;

describe('scale', () => {
  it('writes only the record with --report json', () =>
    inFolder({}, (folder) => {
      const made = report(folder, 'crosshead-pin', '--to', '7.25in');
      expect(made).toMatchObject({ format: 'trialpiece scale record', to: 'Tormentil, 7.25 in gauge', factor: { value: 1.45 } });
      expect(line(made, 'pinDiameter').chosen.size).toBeCloseTo(9.525, 9);
      expect(scaleRecordSchema.parse(made)).toEqual(made);
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('tells on the screen what is to be decided first, and writes nothing with --report table', () =>
    inFolder({}, (folder) => {
      const { status, stdout } = trialpiece(folder, 'scale', 'crosshead-pin', '--to', '7-1/4 in', '--report', 'table');
      expect(status).toBe(0);
      expect(stdout).toMatch(/^Scaling\n {2}From Tormentil, 5 inch gauge to Tormentil, 7\.25 in gauge: 1\.45 times as large, by gauge\.\n/);
      expect(stdout.indexOf('To be decided')).toBeLessThan(stdout.indexOf('Parameters, lengths in in'));
      expect(stdout).toContain('tailThread: 1/4-28 UNF has 13 % less stress area than exact scaling');
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('keeps what is set in a file beside, reads it again, and so do the other commands', () =>
    inFolder({}, (folder) => {
      const file = 'crosshead-pin-7.25in.scale.yaml';
      expect(line(report(folder, 'crosshead-pin', '--to', '7.25in', '--set', 'tailThread=5/16-24'), 'tailThread')).toMatchObject({ chosen: { name: '5/16-24 UNF' }, fixed: true });
      expect(readFileSync(join(folder, file), 'utf8')).toBe(
        '# What was decided for the crosshead-pin scaled to 7.25in; read again by scale and by --gauge of the other commands.\n# Take a line out to let the rule choose again.\nset:\n  tailThread: 5/16-24\n',
      );
      expect(line(report(folder, 'crosshead-pin', '--to', '7-1/4 in'), 'tailThread').chosen.name).toBe('5/16-24 UNF');
      report(folder, 'crosshead-pin', '--to', '7.25in', '--set', 'tailLength=0.6 in');
      expect(readFileSync(join(folder, file), 'utf8')).toContain('set:\n  tailLength: 0.6 in\n  tailThread: 5/16-24\n');
      expect(trialpiece(folder, 'scale', 'crosshead-pin', '--to', '7.25in', '--report', 'table').stdout).toContain(`\nFixed in ${file}: tailLength=0.6 in, tailThread=5/16-24.\n`);
      const printed = trialpiece(folder, 'print', 'crosshead-pin', '--gauge', '7.25 in', '--record');
      expect(printed.stderr).toBe('');
      expect(printed.stdout).toContain('5/16-24 UNF');
      expect(printed.stdout).toContain('"part": "crosshead-pin-7-25"');
    }));

  it('writes prints, plan, fixtures and report of the scaled part, under a name of its own', () =>
    inFolder({}, (folder) => {
      const { status, stdout } = trialpiece(folder, 'scale', 'crosshead-pin', '--to', '7.25in', '--format', 'pdf');
      expect(status).toBe(0);
      const files = readdirSync(join(folder, 'out')).sort();
      expect(files).toEqual(
        ['-fixture-100-split-bush', '-fixtures', '-plan', '-scaling', ''].flatMap((what) => ['json', 'pdf'].map((ending) => `crosshead-pin-7-25${what}.${ending}`)),
      );
      for (const file of files) expect(stdout).toContain(join('out', file));
      expect(existsSync(join(folder, 'crosshead-pin-7.25in.scale.yaml'))).toBe(false);
    }));

  it('metric threads are kept to by the series asked for', () =>
    inFolder({}, (folder) => {
      const made = report(folder, 'crosshead-pin', '--to', '7.25in', '--series', 'metric');
      // 4.826 x 1.45 = 6.998: 6 and 8 are of the first choice of ISO 262.
      expect(line(made, 'tailThread').chosen.name).toMatch(/^M(6|8)x/);
      expect(readFileSync(join(folder, 'crosshead-pin-7.25in.scale.yaml'), 'utf8')).toContain('series: metric\n');
    }));

  it('the same bytes each time', () =>
    inFolder({}, (folder) => {
      expect(report(folder, 'valve-rod-fork', '--to', '3.5in')).toEqual(report(folder, 'valve-rod-fork', '--to', '3.5in'));
    }));
});
