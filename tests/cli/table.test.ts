import { describe, expect, it } from 'vitest';
import { json, wordsOf } from './json.js';
import { inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const inch = 25.4;

describe('table --json', () => {
  it('of a thread', async () => {
    const row = (await json('table', 'threads', '0-80')) as Record<string, unknown>;
    // ASME B1.1: 0.0600 in, 80 to the inch, pitch diameter 0.0519, 2B minor 0.0465 to 0.0514 in; stress area 0.00180 in2.
    expect(row).toMatchObject({ major: 1.524, pitch: 0.3175, tpi: 80, minorInternal: { min: 1.1811, max: 1.30556 } });
    expect(row['pitchDiameter']).toBeCloseTo(0.0519 * inch, 6);
    expect((row['stressArea'] as number) / inch ** 2).toBeCloseTo(0.0018, 5);
    expect(row['source']).toMatch(/^ASME B1\.1/);
  });

  it('of a thread without a class has no limits', async () => {
    // BS 93: 4 BA is 3.6 mm by 0.66 mm, effective 3.205, core 2.81 mm.
    expect(await json('table', 'threads', '4BA')).toMatchObject({ major: 3.6, pitch: 0.66, tpi: null, pitchDiameter: 3.205, minorInternal: { basic: 2.81 } });
  });

  it.each([
    ['#53', 0.0595 * inch],
    ['No. 53', 0.0595 * inch],
    ['f', 0.257 * inch],
    ['1/16 in', inch / 16],
    ['1/16', inch / 16],
    ['2.05 mm', 2.05],
    ['2.05mm', 2.05],
  ])('of the drill %s', async (name, diameter) => {
    expect(((await json('table', 'drills', name)) as { diameter: number }).diameter).toBeCloseTo(diameter, 6);
  });

  it.each([
    ['stock', 'size'],
    ['screws', 'kind'],
    ['gauges', 'gauge'],
    ['tempering', 'lowCelsius'],
    ['fits', 'upTo'],
    ['reamers', 'diameter'],
    ['centre-drills', 'pilot'],
  ])('of %s is a list, each row with its name, its sizes and its source', async (name, size) => {
    const rows = (await json('table', name)) as readonly Record<string, unknown>[];
    expect(rows.length).toBeGreaterThan(15);
    for (const row of rows) {
      expect(typeof row['name'], JSON.stringify(row)).toBe('string');
      expect(String(row['source']).length).toBeGreaterThan(8);
      expect(row).toHaveProperty(size);
    }
  });

  it.each(['stock "1/4 in"', 'screws M3', 'gauges "5 in"', 'tempering "light straw"'])('of %s is a list too', async (line) => {
    const rows = await json('table', ...wordsOf(line));
    expect(Array.isArray(rows) && rows.length).toBeGreaterThan(0);
  });
});

describe('table', () => {
  const shown = (line: string, check: (text: string) => void) =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'table', ...wordsOf(line));
      expect([status, stderr]).toEqual([0, '']);
      check(stdout);
    });

  it('sets columns even, lengths in the unit asked for, with the source below', () =>
    shown('centre-drills --units in', (text) => {
      const lines = text.split('\n');
      const heading = lines.find((line) => line.startsWith('name')) ?? '';
      expect(heading).toMatch(/^name +pilot in +body in/);
      const row = lines.find((line) => line.startsWith('No. 2 ')) ?? '';
      // ASME B94.11M: number 2 has a pilot of 5/64 and a body of 3/16 in.
      expect(row).toMatch(/^No\. 2 +\.078\d? +\.1875/);
      expect(row.length).toBe(heading.length);
      expect(text).toMatch(/\nSource 1: ASME B94\.11M plain type/);
    }));

  it('shows one row line by line', () =>
    shown('threads 0-80', (text) => {
      expect(text).toMatch(/^0-80 UNF\n\n/);
      expect(text).toMatch(/\nmajor +1\.524 mm\n/);
      expect(text).toMatch(/\n2B pitch diameter internal +1\.3183 to 1\.3767 mm\n/);
      expect(text).toMatch(/\nSource: ASME B1\.1/);
    }));

  it('takes a row of several words', () => shown('materials silver steel', (text) => expect(text).toMatch(/^silver steel\n/)));

  it('numbers the sources where rows differ', () =>
    shown('drills', (text) => {
      expect(text).toMatch(/\n#53 +1\.5113 +number +1\n/);
      expect(text).toContain('\nSource 1: ANSI B94.11M');
    }));

  it('gives the limits of a fit in micrometres, or in inches', async () => {
    await shown('fits g6', (text) => expect(text).toMatch(/\ng6 +6 +10 +-5 +-14\n/));
    await shown('fits g6 --units in', (text) => expect(text).toMatch(/\ng6 +\.2362 +\.3937 +-\.00020 +-\.00055\n/));
  });
});

describe('a table that cannot be shown', () => {
  it.each<[string, string | RegExp]>([
    ['thread', /^there is no table "thread": choose threads, .*; the nearest is threads\.$/],
    ['__proto__', /^there is no table "__proto__": choose .*\.$/],
    ['constructor', /^there is no table "constructor": choose .*\.$/],
    ['""', /^there is no table "": choose .*\.$/],
    ['threads 0-81', /^thread "0-81" is not in the tables .*; the nearest is 0-80\.$/],
    ['threads constructor', /^thread "constructor" is not in the tables .*\.$/],
    ['threads __proto__', /^thread "__proto__" is not in the tables .*\.$/],
    ['drills "#99"', /^drill "#99" is not in the tables.*; the nearest is #80\.$/],
    ['drills 5', 'drill "5" has no unit: write 5 mm or 5 in, or #5 for the number drill.'],
    ['fits H99', /^tolerance class "H99" does not exist: .*; the nearest is H9\.$/],
    ['fits H7/', /^tolerance class "" does not exist: .*\.$/],
    ['materials kryptonite', /^material "kryptonite" is not in the table: .*\.$/],
    ['stock titanium', /^table stock has no row "titanium".*\.$/],
    ['screws toString', /^table screws has no row "toString".*\.$/],
    ['screws "("', /^table screws has no row "\(".*\.$/],
    ['threads ""', 'The row is empty: name a row, or leave it out for the whole table.'],
    ['threads --units cm', '--units "cm" is not known: there are in, mm; the nearest is mm.'],
    ['threads --units', '--units needs a value after it.'],
    ['threads --units in --units mm', '--units is given more than once: give it one value.'],
    ['threads --jsn', /^--jsn is not an option of table: .*; the nearest is --json\.$/],
  ])('%s', (line, sentence) => expectRefusal(['table', ...wordsOf(line)], sentence));
});
