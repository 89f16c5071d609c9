/**
 * Minutes for what is not cutting, at the pace of a first part on small machines without helpers: common practice, estimated,
 * counted nowhere.
 */
export const handlingSource = 'common practice';

/** To take the work into a set-up and have it true. */
export const holdingMinutes = {
  'three-jaw chuck': 4,
  'four-jaw chuck': 25,
  collet: 3,
  'split bush': 12,
  'between centres': 10,
  vice: 10,
  'angle packing': 30,
  clamps: 25,
  fixture: 12,
  bench: 5,
} as const;

export type HoldingKind = keyof typeof holdingMinutes;

export const handlingMinutes = {
  /** To find a zero on a mill with an edge finder, an axis. */
  zeroAcross: 4,
  /** To touch the work for a zero along the spindle. */
  zeroAlong: 2,
  /** To put in a cutter and set speed. */
  cutter: 2.5,
  /** To read the print, clean and deburr, an operation. */
  operation: 5,
  /** To measure: a check, and as much again where a fit or a tolerance under 0.06 mm is asked for. */
  check: 4,
  /** To come back and set the next pass. */
  passOnLathe: 0.3,
  passOnMill: 0.5,
  /** To find the place of a hole by dials, or with a read-out, and to spot it. */
  holeByDials: 1,
  holeByReadout: 0.5,
  spot: 0.5,
  /** To lift a drill and clear it, once for each diameter of depth. */
  peck: 0.1,
  /** To start a tap square, and a turn of it with half a turn back; thin taps take twice as long. */
  tapStart: 1.5,
  tapTurn: 0.12,
  dieStart: 3,
  dieTurn: 0.15,
  /** To withdraw a screw-cutting tool, run back and set the next pass. */
  screwPass: 0.8,
  chamfer: 1,
  centre: 1.5,
  countersink: 1.5,
  counterbore: 2,
  /** To find the bar, mark it out and hold it for sawing. */
  blank: 15,
} as const;

/** Work that takes no metal or next to none, by a word in its title. */
export const uncutMinutes: readonly (readonly [word: RegExp, minutes: number])[] = [
  [/harden|quench/i, 75],
  [/temper|anneal|case/i, 45],
  [/lap|stone|polish/i, 40],
];
export const otherUncutMinutes = 20;

/** Screw-cutting in small bores: the depth of a pass, mm on the radius; passes without more depth; turns a minute. */
export const screwCutting = { depth: 0.05, spring: 3, turns: 60 } as const;

/** A slitting saw fed by hand, mm a minute. */
export const slitting = 12;

/** A hacksaw or a small bandsaw, mm2 of section a minute. */
export const sawing = 80;

/** A tap below this takes twice as long a turn, mm. */
export const thinTap = 2;
