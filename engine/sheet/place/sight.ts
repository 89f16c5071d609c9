import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';
import { segmentMeetsBox, segmentsCross } from './plane.js';

/** A straight piece from a point to another, mm. */
interface Piece {
  readonly a: Vector2;
  readonly b: Vector2;
}

/** What stands in the way of a straight piece: texts that bar it, and lines with what it costs to cross each. */
export class Sight {
  private readonly bars: PaperBox[] = [];
  private readonly crossings: (Piece & { readonly price: number })[] = [];

  constructor(private readonly longest: Piece) {}

  /** Takes note of a text, if it stands in the way. */
  bar(box: PaperBox): void {
    if (segmentMeetsBox(this.longest.a, this.longest.b, box)) this.bars.push(box);
  }

  /** Takes note of a line at its price, if it crosses the way. */
  cross({ a, b }: Piece, price: number): void {
    if (price > 0 && segmentsCross(this.longest.a, this.longest.b, a, b)) this.crossings.push({ a, b, price });
  }

  /** What the piece costs when it ends at a point on its way; Infinity where it may not go so far. */
  cost(end: Vector2): number {
    const { a } = this.longest;
    if (this.bars.some((box) => segmentMeetsBox(a, end, box))) return Infinity;
    let total = 0;
    for (const line of this.crossings) if (segmentsCross(a, end, line.a, line.b)) total += line.price;
    return total;
  }
}
