import type { Curve2 } from '../../../geometry/curve.js';
import type { Vector2 } from '../../../geometry/vector.js';
import type { PaperBox } from '../../frame-box.js';
import { chainOf } from '../../say/extremes.js';

/** Side of a cell, mm on paper. */
const side = 0.2;

/** A piece of paper as cells, of which those are known that some lines run through. */
export class CoveredCells {
  private readonly columns: number;
  private readonly rows: number;
  private readonly cells: Uint8Array;

  constructor(private readonly box: PaperBox) {
    this.columns = Math.ceil((box.right - box.left) / side) + 1;
    this.rows = Math.ceil((box.top - box.bottom) / side) + 1;
    this.cells = new Uint8Array(this.columns * this.rows);
  }

  add(curve: Curve2): void {
    const chain = chainOf(curve);
    for (let i = 1; i < chain.length; i += 1) {
      const [a, b] = [chain[i - 1]!, chain[i]!];
      const steps = Math.max(1, Math.ceil((2 * Math.hypot(b[0] - a[0], b[1] - a[1])) / side));
      for (let k = 0; k <= steps; k += 1) {
        const column = Math.round((a[0] + ((b[0] - a[0]) * k) / steps - this.box.left) / side);
        const row = Math.round((a[1] + ((b[1] - a[1]) * k) / steps - this.box.bottom) / side);
        if (column >= 0 && row >= 0 && column < this.columns && row < this.rows) this.cells[row * this.columns + column] = 1;
      }
    }
  }

  /** True where a line runs within `reach` cells of a point, to each side. */
  near([x, y]: Vector2, reach: number): boolean {
    const [column, row] = [Math.round((x - this.box.left) / side), Math.round((y - this.box.bottom) / side)];
    const [left, right] = [Math.max(0, column - reach), Math.min(this.columns - 1, column + reach)];
    for (let k = Math.max(0, row - reach); k <= Math.min(this.rows - 1, row + reach); k += 1)
      for (let i = left; i <= right; i += 1) if (this.cells[k * this.columns + i] === 1) return true;
    return false;
  }
}
