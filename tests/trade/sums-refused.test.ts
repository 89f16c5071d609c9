import { describe, expect, it } from 'vitest';
import { reckon } from '../../engine/trade/sums/index.js';
import { UserError } from '../../engine/units/user-error.js';

/** Mistakes of the user, each with the sentence that answers it. */
const mistakes: readonly (readonly [sum: string, texts: Readonly<Record<string, string>>, sentence: RegExp])[] = [
  ['tapdrill', {}, /^there is no sum "tapdrill": choose tap-drill, .*; the nearest is tap-drill\.$/],
  ['tap-drill', {}, /^tap-drill needs thread: the thread, such as 0-80, M3 or 4BA\.$/],
  ['tap-drill', { thread: '0-80', engagment: '50' }, /^tap-drill has no argument "engagment": it takes thread, engagement, series; the nearest is engagement\.$/],
  ['tap-drill', { thread: '0-81' }, /^thread "0-81" is not in the tables .*; the nearest is 0-80\.$/],
  ['tap-drill', { thread: '0-80', engagement: '150' }, /^engagement 150 is outside 20 to 100 per cent; 60 to 75 is usual\.$/],
  ['tap-drill', { thread: '0-80', series: 'numbr' }, /^series "numbr" is not allowed: choose any, number, letter, fraction, metric; the nearest is number\.$/],
  ['fit', { size: '8', class: 'H7' }, /^size "8" has no unit: write 8 mm or 8 in/],
  ['fit', { size: '-8mm', class: 'H7' }, /^size "-8mm" must be more than nought\.$/],
  ['fit', { size: '8mm', class: 'H7/G6' }, /^fit "H7\/G6" needs one hole class \(upper case\) and one shaft class/],
  ['three-wire', { thread: 'M6', wire: '0.3mm' }, /^wire 0\.300 mm is too thin for M6x1: it lies below the crests; the best wire is 0\.577 mm\.$/],
  ['three-wire', { thread: 'M6', wire: '2mm' }, /^wire 2\.000 mm is too thick for M6x1: it rests on the crests/],
  ['sine', { centres: '100mm' }, /^sine needs either angle or height, and not both\.$/],
  ['sine', { centres: '100mm', height: '120mm' }, /^packing must be under the centre distance 100\.000 mm\.$/],
  ['sine', { centres: '100mm', angle: '95' }, /^angle 95 is not under 90 degrees\.$/],
  ['taper', { large: '10mm', small: '12mm', length: '5mm' }, /^the small diameter 12\.000 mm must be under the large one 10\.000 mm\.$/],
  ['taper', { large: '10mm', angle: '90', length: '50mm' }, /^the taper comes to a point before its end/],
  ['roller-angle', { large: '10mm', small: '12mm' }, /^the small roller 12\.000 mm must be under the large one/],
  ['countersink', { angle: '90', diameter: '3mm', hole: '4mm' }, /^the hole 4\.000 mm is not smaller than the countersink 3\.000 mm\.$/],
  ['bolt-circle', { holes: '0', diameter: '40mm' }, /^holes "0" must be a whole number above nought\.$/],
  ['bolt-circle', { holes: '2.5', diameter: '40mm' }, /^holes "2\.5" must be a whole number above nought\.$/],
  ['bolt-circle', { holes: '1000000', diameter: '40mm' }, /^holes "1000000" is too many: at most 1000\.$/],
  ['hole-pattern', { points: '1mm;2mm' }, /^points "1mm" is not a point: write x,y pairs with a semicolon between/],
  ['chord', { holes: '1', diameter: '40mm' }, /^chord needs two holes or more\.$/],
  ['flat', { diameter: '10mm', width: '12mm' }, /^the flat does not fit on a bar of 10\.000 mm\.$/],
  ['across-flats', { flats: '10mm', round: '9mm' }, /^a bar of 9\.000 mm is too small for 10\.000 mm across the flats\.$/],
  ['round-depth', { radius: '2mm', width: '5mm' }, /^a nose of 2\.000 mm radius cuts at most 4\.000 mm wide\.$/],
  ['v-depth', { angle: '60', width: '1mm', flat: '2mm' }, /^the width must be more than the flat of the cutter 2\.000 mm\.$/],
  ['v-roller', { angle: '90', width: '5mm', roller: '20mm' }, /^a roller of 20\.000 mm rests on the edges of a groove 5\.000 mm wide/],
  ['dovetail', { kind: 'female', angle: '60', width: '5mm', roller: '10mm' }, /^two rollers of 10\.000 mm do not fit in the dovetail\.$/],
  ['speed', { material: 'kryptonite', diameter: '5mm' }, /^material "kryptonite" is not in the table: allowed are free-cutting mild steel/],
  ['speed', { material: 'brass', diameter: '5mm', machine: 'shaper' }, /^the shop has no machine "shaper": it has lathe, mill/],
  ['column', { length: '100mm', diameter: '5mm' }, /^column needs the material, or both yield and modulus/],
  ['column', { length: '100mm', material: 'steel' }, /^give either the diameter of a round section, or the width and the depth/],
  ['shear', { force: '120', diameter: '5mm' }, /^force "120" has no unit: allowed are N, kN, lbf, lb, kgf, kg\.$/],
  ['press-fit', { diameter: '20mm', outside: '18mm', length: '5mm', interference: '0.01mm', hub: 'steel' }, /^the hub's outside 18\.000 mm must be over the fit 20\.000 mm\.$/],
  ['ring-pinch', { outside: '20mm', bore: '20mm', length: '5mm', material: 'brass' }, /^the bore must be under the outside diameter\.$/],
  ['jaw-packing', { throw: '20mm', diameter: '10mm' }, /^a throw of 20 mm is too much for work of 5 mm radius\.$/],
  ['blind-hole', { thread: 'M3', depth: '6mm', thickness: '8mm' }, /would leave -0\.031 mm of the 8\.000 mm, and 1\.000 mm is wanted: at most 4\.969 mm of full thread fits with this tap\.$/],
  ['tap-torque', { thread: 'M3', material: 'steel', drill: '3 mm' }, /^drill 3 mm leaves no thread of M3x0\.5: choose one under 3 mm\.$/],
  ['weight', { material: 'steel', section: 'flat', size: '3mm', length: '10mm' }, /^a flat needs its width\.$/],
  ['allowance', { datum: 'guesswork' }, /^datum "guesswork" is not allowed: choose screwed-on, spigot/],
];

describe('a mistake is answered in one sentence', () => {
  it.each(mistakes)('%s %j', (sum, texts, sentence) => {
    let fault: unknown;
    try {
      reckon(sum, texts);
    } catch (error) {
      fault = error;
    }
    expect(fault).toBeInstanceOf(UserError);
    expect((fault as Error).message).toMatch(sentence);
    expect((fault as Error).message).not.toContain('\n');
  });
});

describe('bare lengths', () => {
  it('are read in the unit that the caller assumes', () => {
    expect(reckon('sine', { angle: '30', centres: '5' }, { assume: 'in' }).result['height']).toBe(63.5);
    expect(reckon('sine', { angle: '30', centres: '5' }, { assume: 'mm' }).result['height']).toBe(2.5);
  });
});
