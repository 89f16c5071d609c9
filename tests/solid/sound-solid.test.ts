import { describe, expect, it } from 'vitest';
import { cutsIn, rectangularStock, sized, stationBook } from '../../engine/part/author/index.js';
import type { Cut } from '../../engine/part/cut.js';
import type { Part } from '../../engine/part/part.js';
import { piecesOf } from '../../engine/solid/connected.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { soundSolid } from '../../engine/solid/sound-solid.js';
import { UserError } from '../../engine/units/user-error.js';

const kernel = await loadKernel();

/** A bar of 10 x 20 x 40 mm with one cut. */
function bar(make: (cut: ReturnType<typeof cutsIn>, at: ReturnType<typeof stationBook>) => Cut): Part {
  const at = stationBook();
  const stock = rectangularStock({ along: 'z', x: [at.datum('x', 'near'), 10], y: [at.datum('y', 'low'), 20], z: [at.datum('z', 'end'), 40] });
  const cuts = [make(cutsIn(stock), at)];
  return { name: 'bar', stock, operations: [{ number: 10, cuts }] } as unknown as Part;
}

const station = (at: ReturnType<typeof stationBook>, axis: 'x' | 'y' | 'z', value: number) => at.datum(axis, `${axis} at ${String(value)}`, value);
const bored = (diameter: number, y: number, z: number) => bar((cut, at) => cut.hole({ id: 'bore', name: 'bore', entry: station(at, 'x', 10), direction: '-x', at: [[station(at, 'y', y), station(at, 'z', z)]], diameter: sized(diameter) }));

it('gives the solid of a part that can be made', () => {
  const solid = soundSolid(kernel, bored(4, 10, 20));
  expect(piecesOf(solid)).toBe(1);
  // Within the facet error of 64 sides: a circle's inscribed polygon has 0.9984 of its area.
  expect(volumeOf(solid)).toBeCloseTo(8000 - Math.PI * 4 * 10, 0);
});

describe('refuses, with the cut that does it,', () => {
  it.each<[string, Part, string]>([
    ['a bore that leaves nothing', bored(100, 10, 20), 'the bar cannot be made: nothing is left of the stock after the cut "bore"'],
    ['a bore that parts the bar', bored(22, 10, 20), 'the bar cannot be made: it falls into 2 pieces after the cut "bore"'],
    ['a bore beside the bar', bored(4, 60, 20), 'the bar cannot be made: the cut "bore" takes nothing away: it lies outside the material or where it is gone already'],
    ['a bore of no diameter', bored(0, 10, 20), 'the bar cannot be made: the cut "bore" has no sound shape, for the outline with "mouth" encloses nothing or runs clockwise'],
    ['a bore finer than the kernel can hold', bored(1e-5, 10, 20), 'the bar cannot be made: the cut "bore" has no sound shape, for its faces do not close round it'],
    [
      'an end with a radius of nothing',
      bar((cut, at) => cut.roundedEnd({ id: 'end', name: 'end', axis: 'x', centre: [station(at, 'y', 10), station(at, 'z', 30)], radius: sized(0), end: '+z' })),
      'the bar cannot be made: the cut "end" has no sound shape, for the arc "round" has no radius',
    ],
  ])('%s', (_, part, sentence) => {
    expect(() => soundSolid(kernel, part)).toThrow(new UserError(sentence));
  });
});

it('counts a hollow as no piece', () => {
  const hollow = bar((cut, at) => cut.hole({ id: 'bore', name: 'bore', entry: station(at, 'x', 10), direction: '-x', at: [[station(at, 'y', 10), station(at, 'z', 20)]], diameter: sized(4), depth: sized(3) }));
  const [operation] = hollow.operations;
  const [bore] = operation!.cuts;
  // The same hole, begun inside the bar.
  const sunk = bore!.forms.map((form) => (form.kind === 'revolution' ? { ...form, frame: { ...form.frame, origin: [8, 10, 20] as const } } : form));
  const solid = soundSolid(kernel, { ...hollow, operations: [{ ...operation!, cuts: [{ ...bore!, forms: sunk }] }] });
  expect(piecesOf(solid)).toBe(1);
});
