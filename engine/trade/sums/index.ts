import type { LengthUnit } from '../../units/length.js';
import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';
import { defaultShop, type Shop } from '../shop/shop.js';
import { acrossFlats } from './across-flats.js';
import { allowance } from './allowance.js';
import { bending } from './bending.js';
import { blindHole } from './blind-hole.js';
import { boltCircle } from './bolt-circle.js';
import { chord, flatOnRound } from './chord.js';
import { clearanceDrillSum } from './clearance-drill.js';
import { column } from './column.js';
import { countersink } from './countersink.js';
import { roundDepth, vDepth } from './cut-width.js';
import { endFloat, expansionSum, runningClearance } from './end-float.js';
import { equalise } from './equalise.js';
import { cuttingPower, cutTime, feed } from './feed.js';
import { fit } from './fit.js';
import { handwheel } from './handwheel.js';
import { holePattern } from './hole-pattern.js';
import { jawPackingSum } from './jaw-packing.js';
import { dovetail, taperRollers, vRoller } from './over-rollers.js';
import { bearingPressure, screwLoad, shear } from './pin-checks.js';
import { pressFit, shrinkHeat } from './press-fit.js';
import { readArguments } from './read-arguments.js';
import { readout } from './readout.js';
import { ringPinch } from './ring-pinch.js';
import { rollerAngle, sinePacking } from './sine-packing.js';
import { speed } from './speed.js';
import type { Json, Sum, SumResult } from './sum.js';
import { tapDrill, threadPercentage } from './tap-drill.js';
import { tapTorqueSum } from './tap-torque.js';
import { taper } from './taper.js';
import { threadEngagement } from './thread-engagement.js';
import { threeWire } from './three-wire.js';
import { weight } from './weight.js';

export type { Json, Sum, SumArgument, SumContext, SumResult } from './sum.js';

export const sums: readonly Sum[] = [
  tapDrill, threadPercentage, clearanceDrillSum, threadEngagement, tapTorqueSum, blindHole, screwLoad, threeWire,
  fit, pressFit, shrinkHeat, runningClearance, endFloat, expansionSum,
  taper, sinePacking, rollerAngle, taperRollers, dovetail, vRoller,
  countersink, boltCircle, holePattern, chord, flatOnRound, acrossFlats, vDepth, roundDepth,
  speed, feed, cutTime, cuttingPower, weight,
  column, shear, bending, bearingPressure, ringPinch,
  jawPackingSum, allowance, equalise, readout, handwheel,
];

/** @throws UserError for a name that is no sum. */
export function findSum(name: string): Sum {
  const sum = sums.find((candidate) => candidate.name === name.trim().toLowerCase());
  if (sum !== undefined) return sum;
  const names = sums.map((candidate) => candidate.name);
  throw new UserError(`there is no sum "${name.trim()}": choose ${names.join(', ')}${nearestClause(name, names)}.`);
}

export interface ReckonOptions {
  /** Unit of lengths that stand without one; without it they are refused. */
  readonly assume?: LengthUnit;
  /** Unit of the lengths in the working; that of the shop if not given. */
  readonly unit?: LengthUnit;
  readonly shop?: Shop;
}

/**
 * Numbers without the noise of binary sums: nine decimals.
 * @throws UserError for a number beyond all bounds, which only sizes beyond all use can give.
 */
function tidy(value: Json): Json {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new UserError('these sizes give no finite answer: one of them is far too small or too large beside the others.');
  if (typeof value === 'number') return Number(value.toFixed(9)) + 0;
  if (Array.isArray(value)) return value.map(tidy);
  if (typeof value === 'object' && value !== null) return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, tidy(part as Json)]));
  return value;
}

/**
 * Does a sum from what the user wrote.
 * @param texts arguments by name, as written.
 * @throws UserError for an unknown sum or argument, one that is missing or cannot be read, and where there is no answer.
 */
export function reckon(name: string, texts: Readonly<Record<string, string>>, options: ReckonOptions = {}): SumResult {
  const sum = findSum(name);
  const shop = options.shop ?? defaultShop;
  const { result, steps } = sum.compute(readArguments(sum, texts, options.assume), { unit: options.unit ?? shop.unit, shop });
  return { result: tidy(result) as SumResult['result'], steps };
}
