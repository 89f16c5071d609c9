import type { Drill } from './drills.js';

export type ThreadSeries =
  | 'unified-coarse'
  | 'unified-fine'
  | 'unified-extra-fine'
  | 'unified-constant'
  | 'unified-special'
  | 'metric-coarse'
  | 'metric-fine'
  | 'miniature'
  | 'british-association'
  | 'whitworth'
  | 'whitworth-fine'
  | 'brass-26'
  | 'model-32'
  | 'model-40';

/** Limits of a size that a thread class sets, mm. */
export interface ThreadClassLimits {
  /** The class as the standard writes it: "2B", "6H", "2A", "6g". */
  readonly name: string;
  readonly of: 'minorInternal' | 'pitchDiameterInternal' | 'pitchDiameterExternal' | 'majorExternal';
  readonly min: number;
  readonly max: number;
}

/** A screw thread; every size is millimetres, basic (without allowance) and rounded as its standard prints it. */
export interface Thread {
  /** The name to print: "0-80 UNF", "M3x0.5", "4 BA", "1/4 BSW", "1/4x40 ME". */
  readonly designation: string;
  /** Other ways in which it is written. */
  readonly aliases: readonly string[];
  readonly series: ThreadSeries;
  readonly major: number;
  readonly pitch: number;
  readonly threadsPerInch?: number;
  readonly pitchDiameter: number;
  /** Diameter at the crests of the nut: basic for 60 degree threads, the core for rounded forms. */
  readonly minorInternal: number;
  /** Diameter at the roots of the screw. */
  readonly minorExternal: number;
  /** Included angle of the form, degrees. */
  readonly formAngle: 60 | 55 | 47.5;
  /** Depth of the screw's thread on one side, on which a thread percentage is counted for this form. */
  readonly depth: number;
  /** Area in tension, mm2. */
  readonly stressArea: number;
  readonly classes: readonly ThreadClassLimits[];
  /** Across the flats of the usual hexagon of its screws and nuts. */
  readonly acrossFlats?: number;
  readonly source: string;
  /** Set where a shop has listed its drills: from these its tapping drill is chosen, as far as one of them serves. */
  readonly drillsAtHand?: readonly Drill[];
}
