import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';
import { Files } from './files.js';
import { segmentMeetsBox, segmentsCross } from './plane.js';
import { Sight } from './sight.js';

/** What a straight piece of ink on the board is. Arrowheads count with the line that they end. */
export type InkKind = 'outline' | 'centre' | 'dimension' | 'extension' | 'leader' | 'plane' | 'tip';

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
const prices: Readonly<Record<InkKind, Readonly<Record<InkKind, number>>>> = {
  outline: { outline: 0, centre: 0, dimension: 40, extension: 0, leader: 3, plane: 0, tip: 0 },
  centre: { outline: 0, centre: 0, dimension: 2, extension: 0, leader: 1, plane: 0, tip: 0 },
  dimension: { outline: 40, centre: 2, dimension: Infinity, extension: Infinity, leader: Infinity, plane: Infinity, tip: 0 },
  extension: { outline: 0, centre: 0, dimension: Infinity, extension: 0.5, leader: 10, plane: 8, tip: 0 },
  leader: { outline: 3, centre: 1, dimension: Infinity, extension: 10, leader: Infinity, plane: Infinity, tip: Infinity },
  plane: { outline: 0, centre: 0, dimension: Infinity, extension: 8, leader: Infinity, plane: 0, tip: 0 },
  // Points of arrows: other lines may hold on to the same place, but no leader may run through it.
  tip: { outline: 0, centre: 0, dimension: 0, extension: 0, leader: Infinity, plane: 0, tip: 0 },
};

const kinds: readonly InkKind[] = ['outline', 'centre', 'dimension', 'extension', 'leader', 'plane', 'tip'];
const numberOf = Object.fromEntries(kinds.map((kind, i) => [kind, i])) as Readonly<Record<InkKind, number>>;
const table = kinds.map((a) => kinds.map((b) => prices[a][b]));

const found: number[] = [];

/** The paper round one view while it is filled: what stands there already. */
export class Board {
  private readonly texts = new Files();
  private readonly lines = new Files();
  private readonly inks: Ink[] = [];

  constructor(private readonly under?: Board) {}

  /** A board over this one, to try something on; what is put on it does not reach this one. */
  copy(): Board {
    return new Board(this);
  }

  add(placing: Placing): void {
    for (const box of placing.boxes) this.texts.add(box);
    for (const ink of placing.ink) {
      this.lines.add(around(ink));
      this.inks.push(ink);
    }
  }

  /** What placing something here would cost; Infinity where it may not stand. */
  cost(placing: Placing): number {
    let total = 0;
    for (const ink of placing.ink) {
      total += this.inkCost(ink);
      if (total === Infinity) return total;
    }
    for (const box of placing.boxes) if (this.isTaken(box)) return Infinity;
    return total;
  }

  /** All that pieces may meet which begin as the given one does and end on it: looked up once for all their lengths. */
  sight(longest: Ink): Sight {
    const sight = this.under?.sight(longest) ?? new Sight(longest);
    const { a, b } = longest;
    const box = around(longest);
    const row = table[numberOf[longest.kind]]!;
    for (let count = this.texts.along(a, b, box, found), k = 0; k < count; k += 1) sight.bar(this.texts.boxes[found[k]!]!);
    for (let count = this.lines.along(a, b, box, found), k = 0; k < count; k += 1) {
      const other = this.inks[found[k]!]!;
      sight.cross(other, row[numberOf[other.kind]]!);
    }
    return sight;
  }

  private isTaken(box: PaperBox): boolean {
    if (this.under?.isTaken(box) === true) return true;
    for (let count = this.texts.touching(box, found), k = 0; k < count; k += 1) {
      const other = this.texts.boxes[found[k]!]!;
      if (box.left < other.right && other.left < box.right && box.bottom < other.top && other.bottom < box.top) return true;
    }
    for (let count = this.lines.touching(box, found), k = 0; k < count; k += 1) {
      const ink = this.inks[found[k]!]!;
      if (segmentMeetsBox(ink.a, ink.b, box)) return true;
    }
    return false;
  }

  private inkCost(ink: Ink): number {
    let total = this.under?.inkCost(ink) ?? 0;
    if (total === Infinity) return total;
    const box = around(ink);
    const row = table[numberOf[ink.kind]]!;
    for (let count = this.texts.along(ink.a, ink.b, box, found), k = 0; k < count; k += 1)
      if (segmentMeetsBox(ink.a, ink.b, this.texts.boxes[found[k]!]!)) return Infinity;
    for (let count = this.lines.along(ink.a, ink.b, box, found), k = 0; k < count; k += 1) {
      const other = this.inks[found[k]!]!;
      const each = row[numberOf[other.kind]]!;
      if (each > 0 && segmentsCross(ink.a, ink.b, other.a, other.b)) total += each;
    }
    return total;
  }
}

const around = ({ a, b }: Ink): PaperBox => ({
  left: a[0] < b[0] ? a[0] : b[0],
  right: a[0] < b[0] ? b[0] : a[0],
  bottom: a[1] < b[1] ? a[1] : b[1],
  top: a[1] < b[1] ? b[1] : a[1],
});
