import { describe, expect, it } from 'vitest';
import { json, wordsOf } from './json.js';

const reckoned = (line: string) => json('reckon', ...wordsOf(line)) as Promise<Record<string, unknown>>;
const inch = 25.4;
const close = (value: unknown, wanted: number, digits = 6) => expect(value as number).toBeCloseTo(wanted, digits);

/** The results that other programs read, from the words of the command line to the text of the JSON. */
describe('the agreed results', () => {
  it('tap-drill', async () => {
    const { drill, engagement, thread } = await reckoned('tap-drill --thread 0-80 --engagement 60');
    expect(drill).toMatchObject({ name: '1.3 mm', diameter: 1.3 });
    expect(engagement).toMatchObject({ basis: '1.299 P (three quarters of the sharp V)' });
    // Handbook rule: percent = 76.98 tpi (D - d), inches.
    close((engagement as { percent: number }).percent, 76.98 * 80 * (0.06 - 1.3 / inch), 1);
    // ASME B1.1: 0-80 UNF is 0.0600 in, its least minor diameter in a 2B nut 0.0465 in.
    expect(thread).toMatchObject({ major: 1.524, pitch: 0.3175, minorBasic: 1.1811 });
  });

  // ISO 286-2 Tables: 6 to 10 mm, H7 +15/0, g6 -5/-14, p6 +24/+15; up to 3 mm, H7 +10/0, s6 +20/+14; 30 to 50 mm, P7 -17/-42.
  it.each([
    ['8mm', 'H7/g6', { hole: { upper: 15, lower: 0 }, shaft: { upper: -5, lower: -14 }, clearance: { max: 29, min: 5 } }],
    ['8mm', 'H7/p6', { hole: { upper: 15, lower: 0 }, shaft: { upper: 24, lower: 15 }, clearance: { max: 0, min: -24 } }],
    ['2mm', 'H7/s6', { hole: { upper: 10, lower: 0 }, shaft: { upper: 20, lower: 14 }, clearance: { max: -4, min: -20 } }],
    ['40mm', 'P7/h6', { hole: { upper: -17, lower: -42 }, shaft: { upper: 0, lower: -16 }, clearance: { max: -1, min: -42 } }],
  ])('fit of %s %s', async (size, name, wanted) => {
    expect(await reckoned(`fit --size ${size} --class ${name}`)).toMatchObject(wanted);
  });

  it('fit of a lone class gives its side only', async () => {
    const hole = await reckoned('fit --size 8mm --class H7');
    expect(hole).toMatchObject({ hole: { upper: 15, lower: 0 } });
    for (const side of ['shaft', 'clearance']) expect(hole).not.toHaveProperty(side);
    const shaft = await reckoned('fit --size 8mm --class g6');
    expect(shaft).toMatchObject({ shaft: { upper: -5, lower: -14 } });
    for (const side of ['hole', 'clearance']) expect(shaft).not.toHaveProperty(side);
  });

  it('fit of an inch class, in whole micrometres', async () => {
    // ANSI B4.1, RC4 at 0.40 to 0.71 in: hole +1.0/0, shaft -0.6/-1.3 thou.
    expect(await reckoned('fit --size 1/2in --class RC4')).toMatchObject({ hole: { upper: 25, lower: 0 }, shaft: { upper: -15, lower: -33 }, clearance: { max: 58, min: 15 } });
  });

  it('three-wire', async () => {
    // M = E - 0.866025 P + 3 W (handbook), E of 1/4-20 is 0.2175 in.
    close((await reckoned('three-wire --thread 1/4-20 --wire 0.032in'))['overWires'], (0.2175 - 0.866025 / 20 + 3 * 0.032) * inch, 4);
  });

  it('sine', async () => close((await reckoned('sine --angle 15 --centres 100mm'))['height'], 25.881905));

  it('bolt-circle, counter-clockwise from +x', async () => {
    const { holes } = (await reckoned('bolt-circle --holes 6 --diameter 40mm --start 30')) as { holes: readonly { x: number; y: number }[] };
    expect(holes).toHaveLength(6);
    for (const [index, [x, y]] of [[17.320508, 10], [0, 20], [-17.320508, 10], [-17.320508, -10], [0, -20], [17.320508, -10]].entries()) {
      close(holes[index]?.x, x ?? 0);
      close(holes[index]?.y, y ?? 0);
      expect(Object.keys(holes[index] ?? {})).toEqual(['x', 'y']);
    }
  });

  it('countersink, from the rim of the hole and from the point', async () => {
    const { depth, fromPoint } = await reckoned('countersink --angle 90 --diameter 0.119in --hole 0.0625in');
    close(depth, ((0.119 - 0.0625) / 2) * inch);
    close(fromPoint, (0.119 / 2) * inch);
  });

  it('equalise', async () => {
    expect(await reckoned('equalise --left 3.40mm --right 3.46mm --target 3.30mm')).toMatchObject({ left: { remove: 0.1 }, right: { remove: 0.16 }, possible: true });
    expect(await reckoned('equalise --left 3.20mm --right 3.46mm --target 3.30mm')).toMatchObject({ left: { remove: 0 }, right: { remove: 0.06 }, possible: false, saves: 'width' });
    expect(await reckoned('equalise --left 3.20mm --right 3.36mm --target 3.30mm')).toMatchObject({ possible: false, saves: 'centre', keepCentre: { right: 0.16, widthUnder: 0.2 } });
    expect(await reckoned('equalise --left 3.28mm --right 3.36mm --target 3.30mm --tolerance 0.02mm')).toMatchObject({ left: { remove: 0 }, right: { remove: 0.06 }, possible: true });
  });

  it('speed', async () => {
    const { rpm, snapped } = await reckoned('speed --material "silver steel" --diameter 12mm --tool hss');
    // 15 to 20 m/min: 1000 x 17.5 / (pi x 12).
    close(rpm, 464.2019, 3);
    expect(snapped).toBe(450);
  });

  it('column, short and long', async () => {
    expect(await reckoned('column --length 100mm --diameter 4mm --yield 400MPa --modulus 207GPa')).toMatchObject({ regime: 'Johnson' });
    const { criticalLoad, regime } = await reckoned('column --length 300mm --diameter 4mm --yield 400MPa --modulus 207GPa');
    // Euler: pi^2 E I / L^2 with I = pi d^4 / 64.
    expect(regime).toBe('Euler');
    close(criticalLoad, (Math.PI ** 2 * 207000 * ((Math.PI * 4 ** 4) / 64)) / 300 ** 2, 5);
  });

  it('shear, in two planes', async () => close((await reckoned('shear --force 600N --diameter 4mm --planes 2'))['stressMPa'], 600 / (2 * Math.PI * 2 ** 2)));

  it('bearing-pressure', async () => close((await reckoned('bearing-pressure --force 600N --diameter 8mm --length 12mm'))['pressureMPa'], 6.25));

  it('tap-torque has a margin and a kinder drill', async () => {
    const sum = (await reckoned('tap-torque --thread 0-80 --material "silver steel" --drill 3/64in')) as { margin: number; torqueNm: number; strengthNm: number; better: { diameter: number; margin: number } };
    close(sum.margin, sum.strengthNm / sum.torqueNm, 4);
    expect(sum.better.diameter).toBeGreaterThan((3 / 64) * inch);
    expect(sum.better.margin).toBeGreaterThan(sum.margin);
  });
});
