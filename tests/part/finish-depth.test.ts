import { describe, expect, it } from 'vitest';
import { cutsIn, rectangularStock, sized, stationBook } from '../../engine/part/author/index.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import { checkPart } from '../../engine/part/check-part.js';
import type { Cut } from '../../engine/part/cut.js';
import type { Part } from '../../engine/part/part.js';
import { holeItems } from '../../engine/sheet/say/hole-item.js';
import { phraseText } from '../../engine/sheet/say/texts.js';
import { finishLines, finishOfWalls } from '../../engine/sheet/say/finish-words.js';

const speech = { unit: 'mm', other: false } as const;
const at = stationBook();
const x = at.datum('x', 'middle');
const y = at.datum('y', 'middle');
const top = at.datum('z', 'top');
const [left, right] = at.pair(x, 6, 'groove walls');
const floor = at.from(top, -8, 'floor');
const stock = rectangularStock({ along: 'x', x: [-20, 20], y: [-10, 10], z: [-20, top] });
const cut = cutsIn(stock);
const finishTo = { depth: sized(2.5), under: 0.2 } as const;
const hole = { id: 'hole', name: 'port', entry: top, direction: '-z', at: [[x, y]], diameter: sized(5), finish: 'milled' } as const;
const groove = { id: 'groove', name: 'groove', tool: '-z', x: [left, right], y: ['open', 'open'], z: [floor, top] } as const;
const words = ({ instruction }: Cut): string => phraseText(instruction, speech);

const withCuts = (cuts: readonly Cut[]): Part => ({
  name: 'block',
  title: 'Block',
  engine: 'Tormentil',
  units: 'mm',
  quantity: 1,
  material: { name: 'gunmetal' },
  stock,
  stations: at.all(),
  setUps: [{ id: 'A', machine: 'mill', holding: 'vice', up: '+z', right: '+x', zero: [x.id, y.id, top.id] }],
  operations: [{ number: 10, title: 'Mill', setUp: 'A', cutter: { name: 'end mill' }, cuts }],
  notes: [],
  cautions: [],
  attitude: { kind: 'milled', front: '-y', up: '+z' },
  handAxis: 'x',
  hand: 'right',
  texture: 3.2,
});

describe('a cut that is finished less deep than it is', () => {
  it.each([
    ['a pocket', () => cut.pocket(groove), () => cut.pocket({ ...groove, finishTo }), [left.id, right.id]],
    ['a hole', () => cut.hole({ ...hole, depth: sized(8) }), () => cut.hole({ ...hole, depth: sized(8), finishTo }), []],
    ['a hole right through', () => cut.hole(hole), () => cut.hole({ ...hole, finishTo }), []],
    ['a counterbore', () => cut.counterbore({ id: 'c', name: 'seat', holes: hole, diameter: sized(8), depth: sized(4) }), () => cut.counterbore({ id: 'c', name: 'seat', holes: hole, diameter: sized(8), depth: sized(4), finishTo }), []],
  ])('%s takes away the same, carries the depth and says it', (_, whole, finished, walls) => {
    const { finishDepth, instruction, ...rest } = finished();
    const { instruction: plain, ...same } = whole();
    expect(rest).toEqual(same);
    expect(finishDepth).toEqual({ depth: { value: 2.5, purpose: 'size' }, under: 0.2, walls });
    expect(phraseText(instruction, speech)).toBe(`${phraseText(plain, speech)}; to size 2.5 deep from the mouth; deeper up to 0.2 narrower will do`);
  });

  it('may not be finished to its whole depth or more', () => {
    expect(() => cut.pocket({ ...groove, finishTo: { ...finishTo, depth: sized(8) } })).toThrow(new RangeError('the groove is finished 8 deep, and is itself 8'));
    expect(() => cut.hole({ ...hole, depth: sized(2), finishTo })).toThrow(RangeError);
  });

  it('keeps it on the other hand', () => {
    const part = withCuts([cut.pocket({ ...groove, finishTo })]);
    expect(checkPart(part, 'block')).toBe(part);
    expect(mirrorPart(part).operations[0]!.cuts[0]!.finishDepth).toEqual(part.operations[0]!.cuts[0]!.finishDepth);
    expect(() => checkPart(withCuts([{ ...cut.pocket(groove), finishDepth: { depth: sized(2), under: 0.1, walls: ['x:nowhere'] } }]), 'block')).toThrow('stands on the station "x:nowhere"');
  });
});

describe('on the print', () => {
  it('a callout of a hole says it after the size', () => {
    const [item] = holeItems(withCuts([cut.hole({ ...hole, depth: sized(8), finishTo })]), speech);
    expect(item!.lines.join(' | ')).toBe('\u23005 \u21a78 flat bottom | to size \u21a72.5, deeper \u22120.2');
  });

  it('the distance of the walls says it, and no other distance', () => {
    const part = withCuts([cut.pocket({ ...groove, finishTo })]);
    const size = sized(6);
    const between = { id: 'w', axis: 'x', from: left, to: right, size, reference: false } as const;
    expect(finishLines(finishOfWalls(part, between), speech).join(' ')).toBe('to size \u21a72.5, deeper \u22120.2');
    expect(finishOfWalls(part, { ...between, reference: true })).toBeUndefined();
    expect(finishOfWalls(part, { ...between, from: x })).toBeUndefined();
  });
});

describe('an open slot', () => {
  const root = at.from(top, -12, 'root');
  const [low, high] = at.pair(y, 3, 'slot walls');
  const slot = { id: 'slot', name: 'slot', walls: [low, high], into: '-z', root, mouth: top } as const;

  it('is sawn unless said, with its depth from the mouth', () => {
    expect(words(cut.openSlot({ ...slot, finishTo }))).toBe('Saw slot: 3 across Y, midway about middle; root 12 from top; to size 2.5 deep from the mouth; deeper up to 0.2 narrower will do');
    expect(words(cut.openSlot({ ...slot, by: 'end mill' }))).toMatch(/^Mill slot: /);
  });

  it('lies between its walls, right through across it', () => {
    const [form] = cut.openSlot(slot).forms;
    expect(form).toMatchObject({ kind: 'prism', low: -12, high: 2 });
    const corners = form?.kind === 'prism' ? form.outline.map(({ from }) => from) : [];
    expect([Math.min(...corners.map(([u]) => u)), Math.max(...corners.map(([u]) => u))]).toEqual([-22, 22]);
    expect([Math.min(...corners.map(([, v]) => v)), Math.max(...corners.map(([, v]) => v))]).toEqual([-1.5, 1.5]);
  });

  it('refuses a root at its mouth or above it, and stations on the wrong axes', () => {
    expect(() => cut.openSlot({ ...slot, mouth: root })).toThrow(new RangeError('the slot has no depth'));
    expect(() => cut.openSlot({ ...slot, into: '-y' })).toThrow(new RangeError('the slot has its walls, root and mouth on the wrong axes'));
    expect(() => cut.openSlot({ ...slot, finishTo: { depth: sized(12), under: 0.1 } })).toThrow(RangeError);
  });
});
