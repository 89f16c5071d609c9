/** Ways in which an operation can spoil the work, as they are named in plans and in a shop file. */
export const riskKinds = [
  'small tap',
  'small drill',
  'cutter beside a wall',
  'angled set-up',
  'uncertain datum',
  'blind depth',
  'break-through',
  'handed position',
  'thin wall',
  'parting',
  'hardening',
  'narrow slot',
  'reamed fit',
  'close size',
  'conical seat',
  'long overhang',
  'thread to a shoulder',
  'swung cut',
] as const;

export type RiskKind = (typeof riskKinds)[number];

/** How likely a kind of risk spoils the work in the case that the rule names, and how its figures raise or lower that. */
export interface ChanceRow {
  /** 0 to 1, for somebody who does such a cut for the first time. */
  readonly chance: number;
  readonly per: 'operation' | 'hole';
  readonly rule: string;
  readonly source: string;
}

const source = 'common practice';

/** What is certain is not told by this table: no chance is raised above this. */
export const greatestChance = 0.9;

/** Estimates of the trade, not counted anywhere: each can be set in the shop file. */
export const chanceRows: Readonly<Record<RiskKind, ChanceRow>> = {
  'small tap': { chance: 0.01, per: 'hole', rule: 'for a tap that twists off at 0.3 N m and is loaded to half of that; more as the margin shrinks and the tap is weaker than a hand feels; half as much again with under three pitches below the thread of a blind hole', source },
  'small drill': { chance: 0.005, per: 'hole', rule: 'for a drill of 1.5 mm going three diameters deep; more in proportion to depth over diameter and to thinness', source },
  'cutter beside a wall': { chance: 0.06, per: 'operation', rule: 'at 0.5 mm of clearance, or round a pad that must stay; by the root of how much it shrinks or grows, nothing from 3 mm and the radius of the cutter on', source },
  'angled set-up': { chance: 0.1, per: 'operation', rule: 'for work packed up at an angle; four fifths of it for a hole that leans', source },
  'uncertain datum': { chance: 0.08, per: 'operation', rule: 'where pick-up and lift can use up the whole tolerance; more in proportion, nothing below half of it; a third of it where metal is left, measured and then taken', source },
  'blind depth': { chance: 0.04, per: 'operation', rule: 'with 1 mm of metal left beyond; more in proportion as it is thinner, nothing from 1.5 mm on', source },
  'break-through': { chance: 0.04, per: 'operation', rule: 'for a hole that crosses a gap; half as much again where it comes out on a slope or a round', source },
  'handed position': { chance: 0.06, per: 'operation', rule: 'for a cut that makes the hand of the part', source },
  'thin wall': { chance: 0.05, per: 'operation', rule: 'with a wall of 1 mm left; more in proportion as it is thinner, nothing from 1.5 mm on', source },
  parting: { chance: 0.06, per: 'operation', rule: 'for 12 mm of diameter; in proportion to the diameter', source },
  hardening: { chance: 0.08, per: 'operation', rule: 'for a part five times as long as thick; in proportion to that', source },
  'narrow slot': { chance: 0.05, per: 'operation', rule: 'for a cutter that goes in four of its diameters; in proportion to that, and more for one under 3 mm', source },
  'reamed fit': { chance: 0.04, per: 'operation', rule: 'for a tolerance of 0.015 mm; more in proportion as it is closer', source },
  'close size': { chance: 0.04, per: 'operation', rule: 'for a tolerance of 0.02 mm; more in proportion as it is closer, nothing from 0.06 mm on', source },
  'conical seat': { chance: 0.05, per: 'operation', rule: 'for a seat of 90 degrees, whose mouth grows by twice what the cutter sinks; more for a flatter one', source },
  'long overhang': { chance: 0.06, per: 'operation', rule: 'at one and a half times the overhang that is free of chatter: three diameters, seven with a centre; in proportion beyond', source },
  'thread to a shoulder': { chance: 0.08, per: 'operation', rule: 'for a thread cut with a tool in a bore of 8 mm; more in proportion as it is smaller, half of it for a tap', source },
  'swung cut': { chance: 0.08, per: 'operation', rule: 'for a slot 5 mm wide along an arc; more in proportion as it is narrower, half of it for outer sides', source },
};
