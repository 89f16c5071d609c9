import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';

/** Side of a cell, mm. */
const cell = 8;
const cellAt = (value: number): number => Math.floor(value / cell);
const keyOf = (x: number, y: number): number => x * 65536 + y;

/** Boxes filed by the cells that they cover. Every placing asks it thousands of times, so it makes nothing while it is asked. */
export class Files {
  readonly boxes: PaperBox[] = [];
  private readonly cells = new Map<number, number[]>();
  private readonly seen: number[] = [];
  private turn = 0;

  add(box: PaperBox): void {
    const index = this.boxes.push(box) - 1;
    this.seen.push(0);
    for (let x = cellAt(box.left); x <= cellAt(box.right); x += 1)
      for (let y = cellAt(box.bottom); y <= cellAt(box.top); y += 1) {
        const list = this.cells.get(keyOf(x, y));
        if (list === undefined) this.cells.set(keyOf(x, y), [index]);
        else list.push(index);
      }
  }

  /** Fills `found` with the indices of all boxes that touch a box, and gives their count. */
  touching(box: PaperBox, found: number[]): number {
    if (this.boxes.length === 0) return 0;
    this.turn += 1;
    let count = 0;
    const right = cellAt(box.right);
    const top = cellAt(box.top);
    for (let x = cellAt(box.left); x <= right; x += 1)
      for (let y = cellAt(box.bottom); y <= top; y += 1) count = this.fileAt(keyOf(x, y), box, found, count);
    return count;
  }

  /** As `touching`, for the cells that a straight piece in the box runs through: a long leader passes few of those in its box. */
  along(a: Vector2, b: Vector2, box: PaperBox, found: number[]): number {
    if (this.boxes.length === 0) return 0;
    this.turn += 1;
    return Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0]) ? this.upward(a, b, box, found) : this.level(a, b, box, found);
  }

  /** Along a piece that is more level than steep, column by column. */
  private level(a: Vector2, b: Vector2, box: PaperBox, found: number[]): number {
    const slope = b[0] === a[0] ? 0 : (b[1] - a[1]) / (b[0] - a[0]);
    let count = 0;
    for (let x = cellAt(box.left), last = cellAt(box.right); x <= last; x += 1) {
      const from = Math.max(box.left, x * cell);
      const to = Math.min(box.right, (x + 1) * cell);
      const y1 = cellAt(held(a[1] + (from - a[0]) * slope, box.bottom, box.top));
      const y2 = cellAt(held(a[1] + (to - a[0]) * slope, box.bottom, box.top));
      for (let y = Math.min(y1, y2), end = Math.max(y1, y2); y <= end; y += 1) count = this.fileAt(keyOf(x, y), box, found, count);
    }
    return count;
  }

  /** Along a steep piece, row by row. */
  private upward(a: Vector2, b: Vector2, box: PaperBox, found: number[]): number {
    const slope = (b[0] - a[0]) / (b[1] - a[1]);
    let count = 0;
    for (let y = cellAt(box.bottom), last = cellAt(box.top); y <= last; y += 1) {
      const from = Math.max(box.bottom, y * cell);
      const to = Math.min(box.top, (y + 1) * cell);
      const x1 = cellAt(held(a[0] + (from - a[1]) * slope, box.left, box.right));
      const x2 = cellAt(held(a[0] + (to - a[1]) * slope, box.left, box.right));
      for (let x = Math.min(x1, x2), end = Math.max(x1, x2); x <= end; x += 1) count = this.fileAt(keyOf(x, y), box, found, count);
    }
    return count;
  }

  private fileAt(key: number, box: PaperBox, found: number[], count: number): number {
    const list = this.cells.get(key);
    if (list === undefined) return count;
    let total = count;
    for (let k = 0; k < list.length; k += 1) {
      const index = list[k]!;
      if (this.seen[index] === this.turn) continue;
      this.seen[index] = this.turn;
      const other = this.boxes[index]!;
      if (box.left <= other.right && other.left <= box.right && box.bottom <= other.top && other.bottom <= box.top) {
        found[total] = index;
        total += 1;
      }
    }
    return total;
  }
}

const held = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));
