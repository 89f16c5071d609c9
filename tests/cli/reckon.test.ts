import { describe, expect, it } from 'vitest';
import { sums } from '../../engine/trade/sums/index.js';
import { json, wordsOf } from './json.js';
import { inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const shown = (line: string, check: (text: string) => void, files: Readonly<Record<string, string>> = {}) =>
  inFolder(files, (folder) => {
    const { status, stdout, stderr } = trialpiece(folder, ...wordsOf(line));
    expect([status, stderr]).toEqual([0, '']);
    check(stdout);
  });

describe('reckon shows its working', () => {
  it('with what was given, what was taken as usual, the steps and the source', () =>
    shown('reckon sine --angle 15 --centres 5in --units in', (text) => {
      expect(text).toMatch(/^sine: packing under one roller/);
      expect(text).toMatch(/\nGiven\n {2}angle +15\n {2}centres +5in\n/);
      // 5 sin 15 = 1.2941.
      expect(text).toContain('\n  h = 5.0000 in x sin 15° = 1.2941 in\n');
      expect(text).toMatch(/\nSource: h = L sin A\n$/);
    }));

  it('and says which values are the usual ones', () => shown('reckon tap-drill --thread M3', (text) => expect(text).toMatch(/\n {2}engagement +65 \(usual\)\n/)));

  it('takes a bare length in the unit given, and results stay millimetres', async () =>
    expect(await json('reckon', ...wordsOf('sine --angle 30 --centres 5 --units in'))).toMatchObject({ height: 63.5 }));

  it('takes negative values, and options before the sum', async () =>
    expect(await json('reckon', ...wordsOf('--x -5mm --y -.25in bolt-circle --holes 1 --diameter 10mm'))).toMatchObject({ holes: [{ x: 0, y: -6.35 }] }));
});

describe('the shop', () => {
  const shop = { 'shop.yaml': 'drills: ["#56", "#55"]\n' };
  it('in this folder decides what there is', () => shown('reckon tap-drill --thread 0-80 --engagement 60', (text) => expect(text).toMatch(/drill #5[56] = .*\n[\s\S]*1\.3 mm .*is to be got/), shop));
  it('is another where it is named', () => shown('reckon tap-drill --thread 0-80 --shop other.yaml', (text) => expect(text).toContain('drill #55 = '), { ...shop, 'other.yaml': 'drills: ["#55"]\n' }));
  it('must be in order', () => expectRefusal(wordsOf('reckon sine --angle 15 --centres 100mm'), 'shop.yaml, line 1, column 8: units is "cm": allowed are mm, in; the nearest is mm.', { 'shop.yaml': 'units: cm\n' }));
});

describe('help', () => {
  it('of reckon lists every sum with an example and what it gives', () =>
    shown('reckon --help', (text) => {
      for (const { name, summary } of sums) expect(text.replace(/\s+/g, ' ')).toContain(`${name}: ${summary}`);
      expect(text).toContain('reckon countersink --angle 90 --diameter 0.119in --hole 0.0625in\n      gives depth, fromPoint\n');
    }));

  it('of a sum tells its arguments, how they are written, and an example', () =>
    shown('reckon tap-drill --help', (text) => {
      expect(text).toMatch(/--thread +the thread, .*\(thread: 0-80, M3, 4BA, 1\/4x40; needed\)/);
      expect(text).toMatch(/--engagement +percentage of thread wanted \(number; usual: 65\)/);
      expect(text).toMatch(/--series +drills to choose from \(any, number, letter, fraction, metric; usual: any\)/);
      expect(text).toContain('trialpiece reckon tap-drill --thread 0-80 --engagement 60');
      expect(text).toContain('Gives: drill, engagement,');
    }));
});

describe('a sum that cannot be done', () => {
  it.each<[string, string | RegExp]>([
    ['', 'reckon needs <sum>, as in trialpiece reckon tap-drill --thread 0-80.'],
    ['""', /^there is no sum "": choose tap-drill, .*\.$/],
    ['tapdrill', /^there is no sum "tapdrill": .*; the nearest is tap-drill\.$/],
    ['__proto__', /^there is no sum "__proto__": .*\.$/],
    ['constructor --x 1', /^there is no sum "constructor": .*\.$/],
    ['tap-drill', 'tap-drill needs thread: the thread, such as 0-80, M3 or 4BA.'],
    ['tap-drill --thread', '--thread needs a value after it.'],
    ['tap-drill --thread=', '--thread needs a value after it.'],
    ['tap-drill --thread " "', '--thread needs a value after it.'],
    ['tap-drill --thread 0-80 --thread 2-56', '--thread is given more than once: give it one value.'],
    ['tap-drill --thred 0-80', /^--thred is not an option of reckon tap-drill: .*; the nearest is --thread\.$/],
    ['tap-drill --thread 0-80 --__proto__ 1', /^--__proto__ is not an option of reckon tap-drill: .*\.$/],
    ['tap-drill --thread 0-80 --constructor=1', /^--constructor is not an option of reckon tap-drill: .*\.$/],
    ['tap-drill --thread toString', /^thread "toString" is not in the tables .*\.$/],
    ['tap-drill --thread 0-81', /^thread "0-81" is not in the tables .*; the nearest is 0-80\.$/],
    ['tap-drill --thread 0-80 --engagement abc', /^engagement "abc" is not a number .*\.$/],
    ['tap-drill --thread 0-80 --engagement -60', 'engagement "-60" must be more than nought.'],
    ['tap-drill --thread 0-80 --engagement 0.6', 'engagement 0.6 is outside 20 to 100 per cent; 60 to 75 is usual.'],
    ['tap-drill --thread 0-80 --engagement Infinity', /^engagement "Infinity" is not a number .*\.$/],
    ['tap-drill 0-80', '"0-80" is one word too many: reckon tap-drill takes just <sum>; a value of several words needs quotes.'],
    ['sine --angle abc --centres 100mm', 'angle "abc" is not an angle: write degrees, such as 15, 5.75 deg or 5° 45\'.'],
    ['sine --angle -15 --centres 100mm', 'angle "-15" must be more than nought.'],
    ['sine --angle 15 --centres 100', /^centres "100" has no unit: write 100 mm or 100 in .*\.$/],
    ['sine --angle 15 --centres 100,5mm', 'centres "100,5" is not a number: write the decimals behind a point, not a comma.'],
    ['sine --angle 15 --centres 1/0in', 'centres "1/0" divides by nought.'],
    ['sine --angle 15 --centres 99999999999999999999mm', 'centres "99999999999999999999mm" is too long for these sums: at most 1000 m.'],
    ['sine --angle 15 --centres 0.0000000001mm', 'centres "0.0000000001mm" is too short for these sums: at least 0.001 um.'],
    ['sine --angle 0.00000000001 --centres 5mm', 'angle "0.00000000001" is out of reach of these sums: from 1e-9 to 1000000000.'],
    ['sine --angle 15 --centres 100mm --json=maybe', '--json takes no value: write --json alone.'],
    ['sine --angle 15 --centres 100mm --json yes', /^"yes" is one word too many: /],
    ['sine --angle 15 --centres 100mm -- 3', 'The word -- has no use here: leave it out.'],
    ['sine -a 15', /^-a is not an option of reckon sine: /],
    ['sine --angle 15 --centres 100mm --units cm', '--units "cm" is not known: there are in, mm; the nearest is mm.'],
    ['sine --angle 15 --centres 100mm --shop nowhere.yaml', 'There is no file nowhere.yaml.'],
    ['bolt-circle --holes 2.5 --diameter 40mm', 'holes "2.5" must be a whole number above nought.'],
    ['bolt-circle --holes -3 --diameter 40mm', 'holes "-3" must be a whole number above nought.'],
    ['equalise --left -1mm --right 3mm --target 3mm', 'left "-1mm" must not be negative.'],
    ['countersink --angle 180 --diameter 3mm', 'angle 180° is not under 180 degrees.'],
    ['fit --size 501mm --class H7/g6', 'size 501 mm is outside the range of the table of tolerance classes: over 0 up to 250 mm.'],
    ['fit --size 8mm --class H7/g66', /^tolerance class "g66" does not exist: .*; the nearest is g6\.$/],
    ['fit --size 8mm --class H01', /^tolerance class "H01" does not exist: /],
    ['tap-drill --thread 1/4', /; of that diameter there are 1\/4-20 UNC, 1\/4-28 UNF, 1\/4-32 UNEF, 1\/4 BSW, .*\.$/],
    ['tap-drill --thread M5.5', /; the nearest is M5\.5x0\.5\.$/],
    ['thread-percentage --thread 0-80 --drill "#40"', 'a hole of 2.4892 mm leaves no thread of 0-80 UNF: it must lie between nought and 1.524 mm.'],
    ['weight --material brass --size 10mm --length 1m --bore 5mm', 'a round bar has no bore: leave it out, or give the section tube.'],
    ['bending --force 5N --length 10mm --width 3mm --depth 4mm --bore 1mm', /^a rectangular section has no bore: /],
    ['chord --diameter 40mm --holes 100 --plug 5mm', 'plugs of 5.000 mm run into each other: the holes are 1.256 mm apart.'],
    ['flat --diameter 10mm --depth 10mm', 'the flat does not fit on a bar of 10.000 mm.'],
    ['fit --size 8mm --class __proto__', /^tolerance class "__proto__" does not exist: .*\.$/],
    ['speed --material constructor --diameter 12mm', /^material "constructor" is not in the table: .*\.$/],
    ['speed --material steel --diameter 12mm --tool wood', 'tool "wood" is not allowed: choose hss, carbide.'],
    ['shear --force 600 --diameter 4mm', 'force "600" has no unit: allowed are N, kN, lbf, lb, kgf, kg.'],
    ['shear --force "600 toString" --diameter 4mm', /^force "600 toString" has the unknown unit "toString": .*\.$/],
    ['column --length 100mm --diameter 5mm --material steel --ends toString', 'ends "toString" is not allowed: choose pinned, fixed-pinned, fixed, free.'],
    ['readout --points ";;"', 'points has 0 points: from 1 to 1000 are allowed.'],
    ['three-wire --thread 0-80 --measured 1mm', /^a measure of 1\.000 mm is not one of 0-80 UNF over wires of 0\.183 mm: about 1\.593 mm is expected\.$/],
    ['blind-hole --thread M3 --depth 6mm --point 400', 'the point angle of a drill is at most 180 degrees.'],
    ['taper-rollers --roller 6mm --blocks 25mm --small 12mm --angle 200', 'angle 200° is not under 180 degrees.'],
    ['taper-rollers --roller 6mm --blocks 25mm --low 30mm --high 29mm', /^the measure on the blocks must be more than that on the table/],
    ['handwheel --to 12mm --per-turn 3mm --division 4mm', 'the division 4.000 mm must not be more than the turn 3.000 mm.'],
  ])('%s', (line, sentence) => expectRefusal(['reckon', ...wordsOf(line)], sentence));

  it('is told in a line, however long the word and whatever stands in it', async () => {
    await expectRefusal(['reckon', 'tap-drill', '--thread', `\u001b[31m${'x'.repeat(5000)}`], /^thread " \[31mx{60,80}\.\.\." is not in the tables/);
  });
});
