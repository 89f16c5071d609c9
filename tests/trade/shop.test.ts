import { describe, expect, it } from 'vitest';
import { chooseCutter, chooseReamer, chooseStock, chooseTap, chooseTappingDrill } from '../../engine/trade/shop/choices.js';
import { checkShop, readShop } from '../../engine/trade/shop/read-shop.js';
import { defaultShop } from '../../engine/trade/shop/shop.js';
import { findMachine, snapSpeed } from '../../engine/trade/shop/spindle.js';
import { reckon } from '../../engine/trade/sums/index.js';
import { findThread } from '../../engine/trade/threads.js';

const drawer = `
units: in
paper: letter
machines:
  - name: Lathe
    kind: lathe
    swing: 7
    speeds: [100, 300, 900]
    dials:
      cross: {per-turn: 0.1, division: 0.001, reads: diameter}
  - {name: Mill, kind: mill, speeds: {from: 100, to: 2500}, read-out: true}
drills: ["#1 to #60", A to Z, 1/16 to 1/2 in by 1/64 in, 3 mm]
taps: [0-80, 4BA, 1/4x40]
reamers: [1/8, 3/16 in, 6 mm]
cutters: [{diameter: 1/8, teeth: 2}]
stock: [{form: round, size: 1/2, material: brass}]
fits: {running: RC4}
`;

describe('a shop file', () => {
  const shop = readShop(drawer);
  it('counts bare numbers in its unit and keeps written units', () => {
    expect(shop.unit).toBe('in');
    expect(shop.machines[0]).toMatchObject({ name: 'Lathe', dials: { cross: { perTurn: 2.54, division: 0.0254, reads: 'diameter' } }, readout: false });
    expect(shop.machines[0]?.swing).toBeCloseTo(177.8, 9);
    expect(shop.machines[1]).toMatchObject({ speeds: { from: 100, to: 2500 }, readout: true });
    expect(shop.reamers).toEqual([3.175, 4.7625, 6]);
    expect(shop.stock?.[0]).toMatchObject({ form: 'round bar', size: 12.7, material: 'free-cutting brass' });
  });
  it('spreads sets of drills', () => {
    expect(shop.drills).toHaveLength(60 + 26 + 29 + 1);
    expect(shop.drills?.map(({ name }) => name)).toEqual(expect.arrayContaining(['#60', 'Z', '1/16 in', '1/2 in', '3 mm']));
    expect(readShop('drills: [1 to 3 mm by 0.1 mm]').drills).toHaveLength(21);
    expect(readShop('drills: [3, 0.25 in]').drills?.map(({ name }) => name)).toEqual(['3 mm', '1/4 in']);
    expect(readShop('drills: [metric]').drills?.every(({ series }) => series === 'metric')).toBe(true);
  });
  it('is the default shop where it says nothing', () => {
    expect(readShop('')).toEqual(defaultShop);
    expect(readShop('# only a remark\n')).toEqual(defaultShop);
    expect(shop.fits).toEqual({ ...defaultShop.fits, running: 'RC4' });
  });
});

/** Each fault with the one sentence that answers it, line and column counted from one. */
describe('faults of a shop file', () => {
  it.each([
    ['unitz: mm', 'line 1, column 1: a shop has no "unitz": allowed are units, paper, machines, drills, taps, dies, reamers, cutters, stock, fits, chances, times, prices; the nearest is units.'],
    ['paper: A4\nunits: cm', 'line 2, column 8: units is "cm": allowed are mm, in; the nearest is mm.'],
    ['machines:\n  - name: L\n    kind: lath\n    speeds: [1]\n', 'line 3, column 11: machines 1, kind is "lath": allowed are lathe, mill, drill; the nearest is lathe.'],
    ['machines:\n  - name: L\n    kind: lathe\n    speeds: [1, fast]\n', 'line 4, column 17: machines 1, speeds 2 is "fast": it must be a number.'],
    ['machines: [{name: L, kind: lathe}]', 'line 1, column 12: machines 1, speeds is missing.'],
    ['machines: [{name: L, kind: lathe, speeds: []}]', 'line 1, column 43: machines 1, speeds is empty.'],
    ['machines: [{name: L, kind: lathe, speeds: {from: 5, to: 1}}]', 'line 1, column 43: machines 1, speeds: the slowest speed must come first'],
    ['machines: [{name: L, kind: lathe, speeds: [-5]}]', 'line 1, column 44: machines 1, speeds 1 is "-5": it must be more than 0.'],
    ['machines:\n - {name: a, kind: mill, speeds: [1], travels: {w: 5}}', 'line 2, column 49: machines 1, travels has no "w": allowed are x, y, z, cross, top, saddle; the nearest is x.'],
    ['machines:\n - {name: a, kind: mill, speeds: [1], dials: {x: {per-turn: 2}}}', 'machines 1, dials, x, division is missing.'],
    ['drills:\n  - #53', 'line 2, column 5: drills 1 is nothing (names that begin with # need quotes): it must be a text or a number.'],
    ['drills:\n  - "#81"', 'line 2, column 5: drills 1: drill "#81" is not in the tables: allowed are #1 to #80'],
    ['drills: [3.01]', 'line 1, column 10: drills 1: drill "3.01 mm" is not in the tables; the nearest is 3 mm.'],
    ['drills: [A to 3 mm]', 'line 1, column 10: drills 1: drills "A to 3 mm" run from a letter drill to a metric one: both ends must be of one series.'],
    ['taps: [0-81]', 'line 1, column 8: taps 1: thread "0-81" is not in the tables'],
    ['reamers: [6, -3]', 'line 1, column 14: reamers 2: length "-3" must be more than nought.'],
    ['stock: [{form: blob, size: 3}]', 'line 1, column 16: stock 1, form: stock form "blob" is not in the table: allowed are round bar'],
    ['fits: {running: H7/H6}', 'line 1, column 17: fits, running: fit "H7/H6" needs one hole class'],
    ['- a', 'line 1, column 1: the file is a list: it must be a group of keys.'],
    ['a: [b', 'line 1, column 6: Flow sequence'],
    ['units: mm\nunits: in', 'line 2, column 1: "units" stands here a second time: a key may stand once.'],
  ])('%j', (text, sentence) => {
    const { problems, shop } = checkShop(text);
    expect(shop).toBeUndefined();
    expect(problems.filter((problem) => problem.includes(sentence)), problems.join(' | ')).toHaveLength(1);
    for (const problem of problems) expect(problem).not.toContain('\n');
  });
  it('are all listed by the check, and the first is thrown with the name of the file', () => {
    expect(checkShop('unitz: mm\npaper: B4').problems).toHaveLength(2);
    expect(() => readShop('taps: [0-81]\nreamers: [0]', 'my.yaml')).toThrow(/^my\.yaml, line 1, column 8: taps 1: .* \(and 1 more\)\.$/);
  });
});

describe('spindle speeds', () => {
  it('snap down to what the machine has', () => {
    expect(snapSpeed([100, 300, 900], 299)).toBe(100);
    expect(snapSpeed([900, 100, 300], 300)).toBe(300);
    expect(snapSpeed([100, 300], 50)).toBe(100);
    expect(snapSpeed({ from: 100, to: 2500 }, 1234)).toBe(1230);
    expect(snapSpeed({ from: 100, to: 2500 }, 9999)).toBe(2500);
  });
  it('are those of the first machine of the kind, or of the one named', () => {
    expect(findMachine(readShop(drawer), undefined, ['mill']).name).toBe('Mill');
    expect(findMachine(readShop(drawer), 'lathe', ['mill']).name).toBe('Lathe');
    expect(() => findMachine(readShop('machines: []'), undefined, ['lathe'])).toThrow('the shop has no lathe.');
    expect(reckon('speed', { material: 'brass', diameter: '1/2 in' }, { shop: readShop(drawer) }).result).toMatchObject({ snapped: 900, machine: 'Lathe' });
  });
});

describe('choices from what the shop has', () => {
  const shop = readShop(drawer);
  it('a tapping drill, with what the second-best costs', () => {
    const thread = findThread('0-80');
    const choice = chooseTappingDrill(shop, thread, 60);
    expect(choice).toMatchObject({ have: false, toGet: 'drill 1.3 mm', cost: 'with #55 the thread comes out at 49 % instead of 54 %.' });
    expect(choice.use.drill.name).toBe('#55');
    expect(chooseTappingDrill(readShop('drills: [1.3 mm]'), thread, 60)).toMatchObject({ have: true });
    expect(chooseTappingDrill(defaultShop, thread, 60).have).toBe(true);
    expect(chooseTappingDrill(readShop('drills: [1/2 in]'), thread, 60)).toMatchObject({ have: false, cost: 'the shop has no drill for this thread.' });
  });
  it('which the sum of the tapping drill keeps to', () => {
    const { result, steps } = reckon('tap-drill', { thread: '0-80', engagement: '60' }, { shop });
    expect(result).toMatchObject({ drill: { name: '#55' }, toGet: { name: '1.3 mm' } });
    expect(steps.at(-1)).toBe('1.3 mm (54.3 %) is to be got: with #55 the thread comes out at 49 % instead of 54 %.');
  });
  it('a tap or a die', () => {
    expect(chooseTap(shop, findThread('0-80')).have).toBe(true);
    expect(chooseTap(shop, findThread('M3.5'))).toMatchObject({ have: false, toGet: 'tap M3.5x0.6', use: { designation: '4 BA' } });
    expect(chooseTap(shop, findThread('M3.5')).cost).toMatch(/^4 BA has \d+ % more area in tension, and its screw must be got too\.$/);
    expect(chooseTap(readShop('dies: []'), findThread('M3'), 'dies').cost).toBe('the shop has no dies.');
  });
  it('a reamer and a cutter', () => {
    expect(chooseReamer(shop, 6).have).toBe(true);
    expect(chooseReamer(shop, 8)).toEqual({ best: 8, use: 6, have: false, toGet: 'reamer 8 mm', cost: 'after the 6 mm reamer 2.000 mm is left to bore.' });
    expect(chooseCutter(shop, 3.175).have).toBe(true);
    expect(chooseCutter(shop, 4)).toMatchObject({ have: false, use: { diameter: 3.175 }, cost: 'the 3.175 mm cutter goes down each side, 0.413 mm off the middle.' });
  });
  it('stock from the shelf where it holds the part', () => {
    expect(chooseStock(shop, 'round', 12.7).have).toBe(true);
    expect(chooseStock(shop, 'round', 10)).toMatchObject({ have: false, use: { size: 12.7 }, toGet: 'round bar 7/16 in', cost: 'from the shelf 2.70 mm must come off the size.' });
    expect(chooseStock(shop, 'round', 20)).toMatchObject({ have: false, cost: 'nothing on the shelf holds it.' });
    expect(chooseStock(defaultShop, 'hexagon', 6.2).use.name).toBe('7 mm');
  });
});
