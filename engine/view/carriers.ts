import type { Shadow } from './shadow.js';
import type { Strand } from './strand.js';

/** A strand's place on a carrier: its stretch in the carrier's own parameter s, and the strand's parameter t from s. */
export interface Member {
  readonly strand: Strand;
  readonly from: number;
  readonly to: number;
  readonly toParameter: (s: number) => number;
  /** Tells the stretches of one parent apart that lie folded on each other. */
  readonly fold: number;
}

/**
 * A curve of the view's plane without ends, on which one or more strands lie: a line (s in mm along (dx, dy) of length
 * one from its foot (x, y) nearest to the origin), an ellipse (centre + a cos s + b sin s, counter-clockwise, a the
 * greater half axis), or the course of one spline.
 */
export type Carrier = { readonly members: Member[] } & (
  | { readonly kind: 'line'; readonly x: number; readonly y: number; readonly dx: number; readonly dy: number }
  | { readonly kind: 'ellipse'; readonly x: number; readonly y: number; readonly ax: number; readonly ay: number; readonly bx: number; readonly by: number }
  | { readonly kind: 'spline'; readonly shadow: Shadow & { readonly kind: 'spline' } }
);

export type LineCarrier = Carrier & { readonly kind: 'line' };
export type EllipseCarrier = Carrier & { readonly kind: 'ellipse' };
export type SplineCarrier = Carrier & { readonly kind: 'spline' };

/** Curves nearer than this all along lie on one carrier, mm. */
const SAME = 2e-5;
const ANGLE_CELL = 2e-6;
const OFFSET_CELL = 1e-4;
const STRIDE = 2 ** 27;
export const FULL = 2 * Math.PI;

/** Finds the carrier on which a curve of the plane lies, or starts a new one. */
export class Carriers {
  readonly all: Carrier[] = [];
  readonly #lines = new Map<number, LineCarrier[]>();
  readonly #ellipses = new Map<number, EllipseCarrier[]>();

  /** The carrier of the line through two points. */
  line(x0: number, y0: number, x1: number, y1: number): LineCarrier {
    const size = Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2);
    let [dx, dy] = [(x1 - x0) / size, (y1 - y0) / size];
    if (dx < -1e-7 || (dx < 1e-7 && dy < 0)) [dx, dy] = [-dx, -dy];
    const offset = x0 * dy - y0 * dx;
    const [turn, away] = [Math.round(Math.atan2(dy, dx) / ANGLE_CELL), Math.round(offset / OFFSET_CELL)];
    for (let i = turn - 1; i <= turn + 1; i += 1) {
      for (let j = away - 1; j <= away + 1; j += 1) {
        for (const known of this.#lines.get(i * STRIDE + j) ?? []) {
          const gap0 = (x0 - known.x) * known.dy - (y0 - known.y) * known.dx;
          const gap1 = (x1 - known.x) * known.dy - (y1 - known.y) * known.dx;
          if (Math.abs(gap0) < SAME && Math.abs(gap1) < SAME) return known;
        }
      }
    }
    const made: LineCarrier = { kind: 'line', members: [], x: offset * dy, y: -offset * dx, dx, dy };
    this.#keep(this.#lines, turn * STRIDE + away, made);
    return made;
  }

  /** The carrier of the ellipse with the greater half axis a and the lesser b, b to the left of a. */
  ellipse(x: number, y: number, ax: number, ay: number, bx: number, by: number): EllipseCarrier {
    const [column, row] = [Math.round(x / OFFSET_CELL), Math.round(y / OFFSET_CELL)];
    const [major, minor] = [Math.sqrt(ax * ax + ay * ay), Math.sqrt(bx * bx + by * by)];
    for (let i = column - 1; i <= column + 1; i += 1) {
      for (let j = row - 1; j <= row + 1; j += 1) {
        for (const known of this.#ellipses.get(i * STRIDE + j) ?? []) {
          const knownMajor = Math.sqrt(known.ax ** 2 + known.ay ** 2);
          const knownMinor = Math.sqrt(known.bx ** 2 + known.by ** 2);
          if (Math.abs(x - known.x) > SAME || Math.abs(y - known.y) > SAME) continue;
          if (Math.abs(knownMajor - major) > SAME || Math.abs(knownMinor - minor) > SAME) continue;
          const turned = Math.abs(ax * known.ay - ay * known.ax) / knownMajor;
          if ((turned * (major - minor)) / major < SAME) return known;
        }
      }
    }
    const made: EllipseCarrier = { kind: 'ellipse', members: [], x, y, ax, ay, bx, by };
    this.#keep(this.#ellipses, column * STRIDE + row, made);
    return made;
  }

  spline(shadow: Shadow & { kind: 'spline' }): SplineCarrier {
    const made: SplineCarrier = { kind: 'spline', members: [], shadow };
    this.all.push(made);
    return made;
  }

  #keep<T extends Carrier>(map: Map<number, T[]>, key: number, made: T): void {
    const list = map.get(key);
    if (list) list.push(made);
    else map.set(key, [made]);
    this.all.push(made);
  }
}
