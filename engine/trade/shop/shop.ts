import type { LengthUnit } from '../../units/length.js';
import type { RiskKind } from '../data/chances.js';
import type { Drill } from '../drills.js';
import type { StockSize } from '../stock.js';
import type { Thread } from '../thread.js';

/**
 * A handwheel: what its dial counts in one turn and for one division, mm. A "diameter" dial counts twice what the slide
 * moves.
 */
export interface Dial {
  readonly perTurn: number;
  readonly division: number;
  readonly reads: 'direct' | 'diameter';
}

export type MachineKind = 'lathe' | 'mill' | 'drill';

/** A slide by its name: x, y, z on a mill; cross, top, saddle on a lathe. */
export type SlideName = 'x' | 'y' | 'z' | 'cross' | 'top' | 'saddle';

export interface Machine {
  readonly name: string;
  readonly kind: MachineKind;
  /** Greatest diameter over the bed, mm. */
  readonly swing?: number;
  /** Greatest length between centres, mm. */
  readonly betweenCentres?: number;
  /** Of the motor, watts. */
  readonly power?: number;
  /** mm by slide. */
  readonly travels: Readonly<Partial<Record<SlideName, number>>>;
  /** Spindle speeds in turns a minute, slow to fast; a range has any speed between. */
  readonly speeds: readonly number[] | { readonly from: number; readonly to: number };
  readonly dials: Readonly<Partial<Record<SlideName, Dial>>>;
  readonly readout: boolean;
}

export interface Cutter {
  readonly kind: string;
  /** mm */
  readonly diameter: number;
  readonly material: 'hss' | 'carbide';
  readonly teeth: number;
}

/** Stock on the shelf; `length` in mm where it is known. */
export interface ShelfStock extends StockSize {
  readonly material?: string;
  readonly length?: number;
}

export type PaperName = 'A3' | 'A4' | 'letter' | 'tabloid';

export interface PreferredFits {
  readonly running: string;
  readonly sliding: string;
  readonly locating: string;
  readonly press: string;
}

/**
 * What is in the user's drawers and machines. A list that is not given says nothing: then everything in the tables counts
 * as at hand.
 */
export interface Shop {
  readonly unit: LengthUnit;
  readonly machines: readonly Machine[];
  readonly drills?: readonly Drill[];
  readonly taps?: readonly Thread[];
  readonly dies?: readonly Thread[];
  /** Diameters, mm. */
  readonly reamers?: readonly number[];
  readonly cutters?: readonly Cutter[];
  readonly stock?: readonly ShelfStock[];
  readonly paper: PaperName;
  /** What the file itself says, for prints to follow where nothing else is asked; absent for what it leaves open. */
  readonly said?: { readonly unit?: LengthUnit; readonly paper?: PaperName };
  readonly fits: PreferredFits;
  /** Chances of spoiling the work in place of the table's, 0 to 1. */
  readonly chances?: Readonly<Partial<Record<RiskKind, number>>>;
  /** Minutes of operations by the name of the part and the number of the operation, in place of an estimate. */
  readonly times?: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** What an hour and a kilogram of a material are worth, in one currency; materials by their name in the tables. */
  readonly prices?: { readonly hour: number; readonly materials: Readonly<Record<string, number>> };
}

const direct = (perTurn: number, division: number): Dial => ({ perTurn, division, reads: 'direct' });

/** A typical small lathe and mill, metric, without read-outs: common practice, no one machine. */
export const defaultShop: Shop = {
  unit: 'mm',
  machines: [
    {
      name: 'lathe',
      kind: 'lathe',
      swing: 180,
      betweenCentres: 350,
      power: 450,
      travels: { cross: 90, top: 60, saddle: 300 },
      speeds: [50, 100, 150, 220, 320, 450, 650, 900, 1300, 1900, 2500],
      dials: { cross: { perTurn: 2, division: 0.02, reads: 'direct' }, top: direct(1, 0.02), saddle: direct(20, 0.1) },
      readout: false,
    },
    {
      name: 'mill',
      kind: 'mill',
      power: 450,
      travels: { x: 300, y: 130, z: 250 },
      speeds: [100, 160, 250, 400, 630, 1000, 1600, 2000, 2500],
      dials: { x: direct(2, 0.02), y: direct(2, 0.02), z: direct(2, 0.02) },
      readout: false,
    },
  ],
  paper: 'A4',
  fits: { running: 'H8/f7', sliding: 'H7/g6', locating: 'H7/h6', press: 'H7/p6' },
};
