import { describe, expect, it } from 'vitest';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import type { RecordedView } from '../../engine/sheet/print-record.js';
import { makePrintsOf, printsOf } from '../support/print.js';
import { isStroke, isText } from './crossings.js';
import { piecesOf, type Piece } from './paper-geometry.js';

const textsOf = ({ record }: MadePrint): string[] => record.dimensions.map(({ kind, axis, text }) => `${kind} ${axis ?? ''} ${text.join(' / ')}`).sort();

/** How far a point is from a straight piece. */
function fromPiece([x, y]: readonly [number, number], [a, b]: Piece): number {
  const [u, v] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((x - a[0]) * u + (y - a[1]) * v) / (u * u + v * v || 1)));
  return Math.hypot(x - a[0] - u * t, y - a[1] - v * t);
}

describe('the two hands of the crosshead', () => {
  const both = (): Promise<readonly MadePrint[]> => printsOf('crosshead');

  it('are a right and a left one, each said so', async () => {
    const [right, left] = await both();
    expect([right!.record.hand, left!.record.hand]).toEqual(['right', 'left']);
    expect([right!.fileStem, left!.fileStem]).toEqual(['crosshead-right', 'crosshead-left']);
    for (const [print, letter] of [[right!, 'R'], [left!, 'L']] as const)
      for (const { items } of print.drawing.sheets) expect(items.filter(isText).filter(({ about }) => about === 'field:hand').map(({ text }) => text)).toEqual([letter]);
  });

  it('say the same sizes, thread for thread', async () => {
    const [right, left] = await both();
    expect(textsOf(left!)).toEqual(textsOf(right!));
    expect(textsOf(right!).join('\n')).toMatch(/1\/4x40 ME/);
    // A left-hand thread would carry LH.
    expect(textsOf(left!).join('\n')).not.toMatch(/\bLH\b/);
  });

  it('show threads open on the same side: right-hand on both', async () => {
    const starts = (print: MadePrint): string[] =>
      print.drawing.sheets.flatMap(({ items }) => items.filter(isStroke).flatMap(({ role, curve, group }) => (role === 'thread' && curve.kind === 'arc' && print.record.views.some(({ id }) => id === group) ? [`${curve.start.toFixed(3)} ${curve.sweep.toFixed(3)}`] : [])));
    const [right, left] = await both();
    const all = new Set([...starts(right!), ...starts(left!)]);
    expect(all.size).toBe(1);
  });

  it('show mirrored outlines: what one view has to the left, that of the other hand has to the right', async () => {
    const [right, left] = await both();
    const piecesIn = ({ drawing }: MadePrint, view: RecordedView, flip: 1 | -1): Piece[] =>
      drawing.sheets[view.sheet - 1]!.items
        .filter(isStroke)
        .filter(({ group, role, about }) => group === view.id && role === 'visible' && about === undefined)
        .flatMap(({ curve }) => piecesOf(curve))
        .map((piece) => piece.map(([x, y]) => [(flip * (x - view.origin[0])) / view.scale, (y - view.origin[1]) / view.scale]) as unknown as Piece);
    for (const id of ['front view', 'view from above']) {
      const views = [right!, left!].map(({ record }) => record.views.find((each) => each.id === id)!);
      const [mine, theirs] = [piecesIn(right!, views[0]!, 1), piecesIn(left!, views[1]!, -1)];
      expect(mine.length).toBeGreaterThan(20);
      const strays = mine.flatMap(([from, to]) => [from, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const]).filter((point) => Math.min(...theirs.map((piece) => fromPiece(point, piece))) > 0.02);
      expect([id, strays]).toEqual([id, []]);
    }
  });

  it('mark the same features as those that make the hand', async () => {
    const [right, left] = await both();
    const marked = ({ record }: MadePrint): string[] => record.dimensions.filter(({ text }) => text.some((line) => line.includes('▲'))).map(({ id }) => id).sort();
    expect(marked(right!)).toEqual(marked(left!));
    expect(marked(right!).join('\n')).toMatch(/lug/);
    expect(right!.record.handMakers.map(({ cut }) => cut).sort()).toEqual(left!.record.handMakers.map(({ cut }) => cut).sort());
    const notes = left!.record.notes.flatMap(({ paragraphs }) => paragraphs).join(' ');
    expect(notes).toContain('This sheet shows the left hand.');
    expect(notes).toContain('threads are right-hand on both');
  });

  it('give the hand asked for alone as it stands in both', async () => {
    const [left] = await makePrintsOf('crosshead', { hand: 'left' });
    expect(JSON.stringify(left)).toBe(JSON.stringify((await both())[1]));
  });
});

describe('the crosshead pin', () => {
  it('is not handed, whatever is asked, and says so', async () => {
    const prints = await printsOf('crosshead-pin');
    expect(prints).toHaveLength(1);
    expect(prints[0]!.record.hand).toBe('none');
    expect(prints[0]!.record.handMakers).toEqual([]);
    expect(prints[0]!.record.notes.flatMap(({ paragraphs }) => paragraphs).join(' ')).toContain('This part is not handed');
    for (const { items } of prints[0]!.drawing.sheets) expect(items.filter(isText).some(({ about }) => about === 'field:hand')).toBe(false);
  });

  it('comes out the same, byte for byte, each time', async () => {
    const [again] = await makePrintsOf('crosshead-pin');
    expect(JSON.stringify(again)).toBe(JSON.stringify((await printsOf('crosshead-pin'))[0]));
  });
});
