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
