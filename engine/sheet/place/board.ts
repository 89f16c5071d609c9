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
  extension: { outline: 0, centre: 0, dimension: Infinity, extension: 0.5, leader: 6, plane: 8 },
  leader: { outline: 3, centre: 1, dimension: Infinity, extension: 6, leader: Infinity, plane: Infinity },
  plane: { outline: 0, centre: 0, dimension: Infinity, extension: 8, leader: Infinity, plane: 0 },
};

/** The paper round one view while it is filled: what stands there already. */
export class Board {
  private readonly boxes: PaperBox[] = [];
  private readonly inks: (Ink & { readonly box: PaperBox })[] = [];

  add(placing: Placing): void {
    this.boxes.push(...placing.boxes);
    for (const ink of placing.ink) this.inks.push({ ...ink, box: around(ink) });
  }

  /** What placing something here would cost; Infinity where it may not stand. */
  cost(placing: Placing, limit = Infinity): number {
    let total = 0;
    for (const box of placing.boxes) {
      for (const other of this.boxes) if (boxesMeet(box, other)) return Infinity;
      for (const ink of this.inks) if (boxesTouch(box, ink.box) && segmentMeetsBox(ink.a, ink.b, box)) return Infinity;
    }
    for (const ink of placing.ink) {
      const mine = around(ink);
      for (const box of this.boxes) if (boxesTouch(mine, box) && segmentMeetsBox(ink.a, ink.b, box)) return Infinity;
      for (const other of this.inks) {
        const each = price[ink.kind][other.kind];
        if (each === 0 || !boxesTouch(mine, other.box) || !segmentsCross(ink.a, ink.b, other.a, other.b)) continue;
        total += each;
        if (total > limit) return Infinity;
      }
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
