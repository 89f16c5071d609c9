import { describe, expect, it } from 'vitest';
import { inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const SHOP = `units: in
machines:
  - {name: lathe, kind: lathe, speeds: [200, 400]}
  - {name: mill, kind: mill, speeds: {from: 100, to: 9000}, read-out: true}
taps: [5-40]
`;

interface Record {
  readonly operations: readonly { readonly number: number; readonly speed: number | null; readonly settings: readonly { readonly text: string }[]; readonly lacks: readonly { readonly toGet: string }[] }[];
}

const operation = (text: string, number: number): Record['operations'][number] => (JSON.parse(text) as Record).operations.find((each) => each.number === number)!;

describe('print --shop', () => {
  it('works out speeds, settings and what is to be got for the shop of the file', () =>
    inFolder({ 'mine.yaml': SHOP }, (folder) => {
      const usual = trialpiece(folder, 'print', 'crosshead', '--record');
      const mine = trialpiece(folder, 'print', 'crosshead', '--record', '--shop', 'mine.yaml');
      expect([mine.status, mine.stderr]).toEqual([0, '']);
      // A 1/16 in drill at 29 m/min: 5815 turns; the usual mill has 2500 at most.
      expect(operation(usual.stdout, 110).speed).toBe(2500);
      expect(operation(mine.stdout, 110).speed).toBe(5810);
      expect(operation(mine.stdout, 10).speed).toBe(200);
      expect(operation(mine.stdout, 100).lacks.map(({ toGet }) => toGet)).toEqual(['tap 0-80 UNF']);
      expect(operation(mine.stdout, 90).settings.some(({ text }) => / t \+ /.test(text))).toBe(false);
    }));

  it('draws the tapping drill that the shop has, and says what a better one would give', () =>
    inFolder({ 'mine.yaml': 'drills: ["#55", "#37", "7/32 in", "1/16 in", "1/4 in"]\n' }, (folder) => {
      const { status, stdout } = trialpiece(folder, 'print', 'crosshead', '--record', '--shop', 'mine.yaml');
      expect(status).toBe(0);
      const record = JSON.parse(stdout) as { dimensions: { id: string; text: string[]; nominal: number }[] };
      const pads = record.dimensions.find(({ id }) => id.includes('pad-holes-upper'))!;
      // A No. 55 drill is 0.0520 in (ANSI B94.11M); in 0-80 it leaves 49 % of thread (Machinery's Handbook, tapping drills).
      expect(pads.nominal).toBeCloseTo(0.052 * 25.4, 6);
      expect(pads.text[0]).toContain('#55');
      const lack = operation(stdout, 90).lacks as unknown as readonly { toGet: string; instead: string }[];
      expect(lack[0]!.toGet).toBe('drill 1.25 mm');
      expect(lack[0]!.instead).toMatch(/^the figures are for #55, which the shop has: the thread is 49 % instead of 6\d %$/);
    }));

  it('follows the paper and the units of the file, unless the command names others', () =>
    inFolder({ 'shop.yaml': 'units: mm\npaper: letter\n' }, (folder) => {
      const read = (...words: string[]) => JSON.parse(trialpiece(folder, 'print', 'crosshead-pin', '--record', ...words).stdout) as { units: string; paper: { name: string } };
      expect(read()).toMatchObject({ units: 'mm', paper: { name: 'Letter' } });
      expect(read('--units', 'in', '--paper', 'A4')).toMatchObject({ units: 'in', paper: { name: 'A4' } });
    }));

  it('takes the shop.yaml of the folder where none is named', () =>
    inFolder({ 'shop.yaml': SHOP }, (folder) => {
      const { status, stdout } = trialpiece(folder, 'print', 'crosshead', '--record');
      expect([status, operation(stdout, 110).speed]).toEqual([0, 5810]);
    }));

  it('refuses a file that is not there, and one with a mistake', async () => {
    await expectRefusal(['print', 'crosshead', '--shop', 'lost.yaml'], 'There is no file lost.yaml.');
    await expectRefusal(['print', 'crosshead', '--shop', 'bad.yaml'], /^bad\.yaml, line 1, column \d+: .*units.*\.$/, { 'bad.yaml': 'units: furlong\n' });
  });
});
