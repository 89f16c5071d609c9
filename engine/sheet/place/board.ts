import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';
import { boxesMeet, segmentMeetsBox, segmentsCross } from './plane.js';

/** What a straight piece of ink on the board is. Arrowheads count with the line that they end. */
export type InkKind = 'outline' | 'centre' | 'dimension' | 'extension' | 'leader' | 'plane';

export interface Ink {
  readonly kind: InkKind;
  readonly a: Vector2;
  readonly b: Vector2;
}

/** Something that is going to be placed: its lettering as boxes, its lines as ink. */
export interface Placing {
  readonly boxes: readonly PaperBox[];
  readonly ink: readonly Ink[];
}

/**
 * Which lines may cross (drawing rules: extension lines may cross outlines and each other; nothing crosses a dimension line
 * or a leader; a leader may cross an outline or an extension line at a price). Hard crossings are never printed.
 */
const price: Readonly<Record<InkKind, Readonly<Record<InkKind, number>>>> = {
  outline: { outline: 0, centre: 0, dimension: 40, extension: 0, leader: 3, plane: 0 },
  centre: { outline: 0, centre: 0, dimension: 2, extension: 0, leader: 1, plane: 0 },
  dimension: { outline: 40, centre: 2, dimension: Infinity, extension: Infinity, leader: Infinity, plane: Infinity },
  extension: { outline: 0, centre: 0, dimension: Infinity, extension: 0.5, leader: 10, plane: 8 },
  leader: { outline: 3, centre: 1, dimension: Infinity, extension: 10, leader: Infinity, plane: Infinity },
  plane: { outline: 0, centre: 0, dimension: Infinity, extension: 8, leader: Infinity, plane: 0 },
};

const lenientPrice = 150;
const isLineCrossing = (a: InkKind, b: InkKind): boolean =>
  (a === 'dimension' && (b === 'extension' || b === 'leader')) || (b === 'dimension' && (a === 'extension' || a === 'leader'));

/** Side of a cell of the index, mm. */
const cell = 8;

/** Things with boxes, found by where they are. */
class Index<T> {
  private readonly cells = new Map<number, { readonly thing: T; readonly box: PaperBox; seen: number }[]>();
  private turn = 0;

  add(thing: T, box: PaperBox): void {
    const entry = { thing, box, seen: 0 };
    forCells(box, (key) => {
      const list = this.cells.get(key);
      if (list === undefined) this.cells.set(key, [entry]);
      else list.push(entry);
    });
  }

  /** Calls `visit` for each thing whose box touches another, until it gives true; tells whether it did. */
  some(box: PaperBox, visit: (thing: T) => boolean): boolean {
    if (this.cells.size === 0) return false;
    this.turn += 1;
    return forCells(box, (key) => {
      for (const entry of this.cells.get(key) ?? []) {
        if (entry.seen === this.turn) continue;
        entry.seen = this.turn;
        if (boxesTouch(box, entry.box) && visit(entry.thing)) return true;
      }
      return false;
    });
  }
}

/** Visits the cells that a box covers, until one gives true. */
function forCells(box: PaperBox, visit: (key: number) => boolean | void): boolean {
  const [left, right] = [Math.floor(box.left / cell), Math.floor(box.right / cell)];
  const [bottom, top] = [Math.floor(box.bottom / cell), Math.floor(box.top / cell)];
  for (let x = left; x <= right; x += 1) for (let y = bottom; y <= top; y += 1) if (visit(x * 65536 + y) === true) return true;
  return false;
}

/** The paper round one view while it is filled: what stands there already. */
export class Board {
  private readonly boxes = new Index<PaperBox>();
  private readonly inks = new Index<Ink>();

  constructor(
    private readonly under?: Board,
    private readonly lenient = false,
  ) {}

  /**
   * A board over this one, to try something on; what is put on it does not reach this one. A lenient one lets a dimension
   * line and an extension line cross at a high price.
   */
  copy(lenient = false): Board {
    return new Board(this, lenient);
  }

  add(placing: Placing): void {
    for (const box of placing.boxes) this.boxes.add(box, box);
    for (const ink of placing.ink) this.inks.add(ink, around(ink));
  }

  /** What placing something here would cost; Infinity where it may not stand. */
  cost(placing: Placing, lenient = this.lenient): number {
    let total = this.under?.cost(placing, lenient) ?? 0;
    if (total === Infinity) return total;
    for (const box of placing.boxes) {
      if (this.boxes.some(box, (other) => boxesMeet(box, other))) return Infinity;
      if (this.inks.some(box, (ink) => segmentMeetsBox(ink.a, ink.b, box))) return Infinity;
    }
    for (const ink of placing.ink) {
      const mine = around(ink);
      if (this.boxes.some(mine, (box) => segmentMeetsBox(ink.a, ink.b, box))) return Infinity;
      const prices = price[ink.kind];
      const barred = this.inks.some(mine, (other) => {
        const each = lenient && isLineCrossing(ink.kind, other.kind) ? lenientPrice : prices[other.kind];
        if (each > 0 && segmentsCross(ink.a, ink.b, other.a, other.b)) total += each;
        return total === Infinity;
      });
      if (barred) return Infinity;
    }
    return total;
  }
}

const boxesTouch = (a: PaperBox, b: PaperBox): boolean => a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;

const around = ({ a, b }: Ink): PaperBox => ({
  left: Math.min(a[0], b[0]),
  right: Math.max(a[0], b[0]),
  bottom: Math.min(a[1], b[1]),
  top: Math.max(a[1], b[1]),
});
