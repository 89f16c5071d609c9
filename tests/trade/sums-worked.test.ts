import { describe, expect, it } from 'vitest';
import { reckon, type Json } from '../../engine/trade/sums/index.js';
import { jawPacking } from '../../engine/trade/sums/jaw-packing.js';

const result = (name: string, texts: Readonly<Record<string, string>>) => reckon(name, texts).result;
const number = (value: Json | undefined): number => (typeof value === 'number' ? value : Number.NaN);

/** Worked examples recalled from handbooks and workshop notes (memory); each is arithmetic that can be redone by hand. */
describe('worked examples', () => {
  it('sine packing: 60 mm at 12.5 degrees is 12.986, 50 mm at 9 is 7.822', () => {
    expect(number(result('sine', { angle: '12.5', centres: '60mm' })['height'])).toBeCloseTo(12.986, 3);
    expect(number(result('sine', { angle: '9', centres: '50mm' })['height'])).toBeCloseTo(7.822, 3);
    expect(number(result('sine', { height: '12.986mm', centres: '60mm' })['angle'])).toBeCloseTo(12.5, 2);
  });
  it('a taper of 1 in 10: half angle 2.862 degrees; Morse 2 at .602 in a foot is 1.4333 a side (handbook 1 deg 25 min 50 s)', () => {
    expect(number(result('taper', { large: '20mm', small: '10mm', length: '100mm' })['half'])).toBeCloseTo(2.8624, 4);
    expect(number(result('taper', { large: '1in', small: '0.39800in', length: '12in' })['inchesPerFoot'])).toBeCloseTo(0.602, 6);
    expect(number(result('taper', { large: '1in', small: '0.39800in', length: '12in' })['half'])).toBeCloseTo(1 + 26.2 / 60, 2);
    expect(number(result('taper', { large: '20mm', angle: '5.7248', length: '100mm' })['small'])).toBeCloseTo(10, 3);
  });
  it('rollers of 20 and 10 mm that touch open 38.942 degrees', () => {
    expect(number(result('roller-angle', { large: '20mm', small: '10mm' })['angle'])).toBeCloseTo(2 * (Math.asin(1 / 3) * 180) / Math.PI, 8);
  });
  it('V groove: 8 mm roller in 90 degrees 10 wide stands 4.657; dovetail 20 wide, 5 mm rollers, 60 degrees reads 33.660', () => {
    expect(number(result('v-roller', { width: '10mm', angle: '90', roller: '8mm' })['height'])).toBeCloseTo(4.657, 3);
    expect(number(result('dovetail', { width: '20mm', angle: '60', roller: '5mm' })['measure'])).toBeCloseTo(33.66, 3);
  });
  it('three-jaw packing: throw .313 on 3.375 in is .448 with narrow jaws and .470 with wide ones', () => {
    expect(jawPacking(0.313, 1.6875, 0)).toBeCloseTo(0.448, 3);
    expect(jawPacking(0.313, 1.6875, 1)).toBeCloseTo(0.4695, 4);
  });
  it('press fit of an axle 3/4 in a hub 1-1/2 x 3/4 with half a thou: about 4300 psi in iron, stress 1.67 times that', () => {
    const iron = result('press-fit', { diameter: '3/4in', outside: '1.5in', length: '3/4in', interference: '0.0005in', hub: 'cast iron' });
    expect(number(iron['pressureMPa']) / 0.00689476).toBeGreaterThan(4100);
    expect(number(iron['pressureMPa']) / 0.00689476).toBeLessThan(4500);
    expect(number(iron['hubStressMPa']) / number(iron['pressureMPa'])).toBeCloseTo(5 / 3, 6);
    const steel = result('press-fit', { diameter: '3/4in', outside: '1.5in', length: '3/4in', interference: '0.0005in', hub: 'steel' });
    expect(number(steel['pushForceN']) / 4.44822).toBeGreaterThan(1450);
    expect(number(steel['pushForceN']) / 4.44822).toBeLessThan(1700);
  });
  it('equal materials and a solid shaft: p = i E (1 - (d/D)^2) / (2 d)', () => {
    const { pressureMPa } = result('press-fit', { diameter: '20mm', outside: '40mm', length: '20mm', interference: '0.02mm', hub: 'steel', shaft: 'steel' });
    expect(number(pressureMPa)).toBeCloseTo((0.02 * 206000 * (1 - 0.25)) / (2 * 20), 6);
  });
  it('ring of bronze 30 x 26 x 10 under 500 N a jaw moves about 0.031 in and 0.027 out', () => {
    const ring = result('ring-pinch', { outside: '30mm', bore: '26mm', length: '10mm', material: 'phosphor bronze' });
    expect(number(ring['inward'])).toBeCloseTo(0.0305, 2.7);
    expect(number(ring['outward'])).toBeCloseTo(0.0265, 2.7);
  });
  it('beams: 100 N on 50 mm of 6 mm bar built in at one end: 235.8 MPa; supported at both ends a quarter of that', () => {
    const texts = { force: '100 N', length: '50mm', diameter: '6mm' };
    expect(number(result('bending', texts)['stressMPa'])).toBeCloseTo((32 * 5000) / (Math.PI * 216), 6);
    expect(number(result('bending', { ...texts, case: 'supported' })['stressMPa'])).toBeCloseTo((32 * 1250) / (Math.PI * 216), 6);
    expect(number(result('bending', { ...texts, case: 'supported' })['deflection']) * 16).toBeCloseTo(number(result('bending', texts)['deflection']), 7);
  });
  it('a flat 6 wide on 10 round is 1 deep; the largest hexagon in 10 round is 8.660, square 7.071', () => {
    expect(result('flat', { diameter: '10mm', width: '6mm' })).toMatchObject({ depth: 1, left: 9 });
    expect(number(result('across-flats', { corners: '10mm' })['flats'])).toBeCloseTo(8.66, 2.9);
    expect(number(result('across-flats', { corners: '10mm', sides: '4' })['flats'])).toBeCloseTo(7.071, 2.9);
    expect(number(result('across-flats', { flats: '10mm' })['corners'])).toBeCloseTo(11.54701, 5);
  });
  it('V and round cuts: 60 degrees 2 wide is 1.732 deep; nose of 3 mm radius 4 wide is .764 deep', () => {
    expect(number(result('v-depth', { angle: '60', width: '2mm' })['depth'])).toBeCloseTo(Math.sqrt(3), 8);
    expect(number(result('round-depth', { radius: '3mm', width: '4mm' })['depth'])).toBeCloseTo(3 - Math.sqrt(5), 8);
    expect(number(result('round-depth', { radius: '3mm', depth: '0.763932023mm' })['width'])).toBeCloseTo(4, 6);
  });
  it('100 mm of 10 mm round steel weighs 61.65 g; hexagon and tube by their areas', () => {
    expect(number(result('weight', { material: 'steel', size: '10mm', length: '100mm' })['massKg'])).toBeCloseTo(0.06165, 5);
    expect(number(result('weight', { material: 'steel', section: 'hexagon', size: '10mm', length: '100mm' })['areaMm2'])).toBeCloseTo(86.6025, 4);
    expect(number(result('weight', { material: 'steel', section: 'tube', size: '10mm', bore: '8mm', length: '1mm' })['areaMm2'])).toBeCloseTo(9 * Math.PI, 6);
  });
  it('blind M3 with 6 of full thread, bottoming tap: 6 + 0.75 + 0.5, and the point 0.3 d below', () => {
    expect(result('blind-hole', { thread: 'M3', depth: '6mm', drill: '2.5 mm', thickness: '12mm' })).toMatchObject({ drillDepth: 7.25, point: 0.751075774, wall: 3.998924226 });
  });
  it('end float: cold 0.2, and hot less where the inside grows more', () => {
    const { float, hotFloat } = result('end-float', { between: '50mm', parts: '20mm, 29.8mm', rise: '100 K', inner: 'gunmetal' });
    expect([float, hotFloat]).toEqual([0.2, 0.16886]);
    expect(result('running-clearance', { diameter: '10mm' })['clearance']).toBe(0.03);
  });
  it('finishing allowance: edge finder, vice, 40 mm at 0.05 in 100: 0.01 + 0.02 + 0.02', () => {
    expect(result('allowance', { datum: 'edge-finder', length: '40mm' })).toMatchObject({ worst: 0.05, likely: 0.03, leave: 0.1 });
    expect(() => result('allowance', { datum: 'edge-finder', length: '40mm', leave: '0.04mm' })).toThrow(
      'an allowance of 0.040 mm is too small: pick-up 0.010 mm + run-out 0.000 mm + squareness 0.020 mm + lift 0.020 mm = 0.050 mm.',
    );
    expect(result('allowance', { datum: 'edge-finder', length: '40mm', leave: '0.05mm' })['leave']).toBe(0.05);
  });
  it('read-out: the cutter stands its radius to the side', () => {
    expect(result('readout', { points: '0mm,0mm;10mm,5mm', cutter: '6mm', side: 'left', 'datum-x': '1mm' })['positions']).toEqual([{ x: -4, y: 0 }, { x: 6, y: 5 }]);
    expect(result('readout', { points: '10mm,5mm', cutter: '6mm', side: 'back' })['positions']).toEqual([{ x: 10, y: 8 }]);
  });
  it('handwheel: 1.2345 in on a dial of a tenth is 12 turns and 34.5; backwards past the mark and forward again', () => {
    const { result: sum, steps } = reckon('handwheel', { to: '1.2345in, 0.5in', 'per-turn': '0.1in', division: '0.001in' }, { unit: 'in' });
    expect((sum['settings'] as readonly unknown[])[0]).toMatchObject({ turns: 12, divisions: 34.5, nearestDivision: 35 });
    expect(steps.at(-1)).toBe('.5000 in: go back past it by .0500 in, then forward to 5 turns and 0 divisions');
    const diameter = result('handwheel', { to: '3mm', 'per-turn': '2mm', division: '0.02mm', reads: 'diameter' });
    expect((diameter['settings'] as readonly unknown[])[0]).toMatchObject({ turns: 3, divisions: 0 });
    const sixteenth = result('handwheel', { to: '-0.1in', 'per-turn': '0.0625in', division: '0.001in' });
    expect((sixteenth['settings'] as readonly unknown[])[0]).toMatchObject({ turns: -2, divisions: 25 });
  });
  it('time: 102 mm at 0.1 and 500 a minute takes 2.04 minutes; a 1/8 drill feeds a thou or two a turn', () => {
    expect(result('cut-time', { length: '100mm', feed: '0.1mm', rpm: '500' })).toEqual({ minutes: 2.04 });
    expect(result('feed', { operation: 'drilling', diameter: '1/8in', rpm: '1000' })['perTurn']).toEqual([0.0254, 0.0508]);
  });
  it('power: 1 mm deep at 0.1 mm a turn in cast iron at 20 m/min takes 53 W', () => {
    expect(result('power', { material: 'cast iron', depth: '1mm', width: '0.1mm', travel: '20 m/min' })).toMatchObject({ powerW: 53.333333333, removedMm3PerSecond: 33.333333333 });
  });
  it('shrinking 0.02 and 0.02 to slip on over 20 mm of iron wants 190 K', () => {
    expect(number(result('shrink-heat', { diameter: '20mm', interference: '0.02mm', material: 'cast iron' })['riseK'])).toBeCloseTo(190.476, 3);
  });
  it('a tiny tap in steel: 3/64 for 0-80 leaves hardly a margin, number 55 a good one', () => {
    const { margin, better } = result('tap-torque', { thread: '0-80', material: 'mild steel', drill: '3/64' });
    expect(number(margin)).toBeLessThan(1.2);
    expect(better).toMatchObject({ name: '#55' });
    expect((better as { margin: number }).margin).toBeGreaterThan(2.5);
  });
});
