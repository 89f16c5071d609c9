import { barToBuy, type BarToBuy } from '../../part/bar-to-buy.js';
import type { PartGenerator } from '../../part/generator.js';
import type { Parameters, Values } from '../../part/parameters.js';
import type { Part } from '../../part/part.js';
import type { Factor, ScaleLine, SeriesAsked } from '../../part/scaling/index.js';
import { solidOf } from '../../solid/build.js';
import { loadKernel } from '../../solid/kernel.js';
import { volumeOf } from '../../solid/measure.js';
import { soundSolid } from '../../solid/sound-solid.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { materialOf } from '../material.js';
import { planOf } from '../plan.js';
import type { Lack } from '../to-get.js';
import { compareStrength, type StrengthRow } from '../strength/compare.js';
import { asksOf, type Ask } from './asks.js';
import { cautionsOf } from './cautions.js';
import { fitChanges, type FitChange } from './fits.js';
import type { FixtureChange } from './fixtures.js';
import { machineChanges, machineNeeds, type MachineChange } from './machines.js';
import { rehearsalChanges, stakesAlone, type RehearsalChange } from './rehearsals.js';
import { tapChanges, type TapChange } from './taps.js';

/** A part at both sizes. */
export interface ReportTask {
  readonly original: { readonly generator: PartGenerator; readonly values: Values<Parameters> };
  /** The same part, which says for which size it is. */
  readonly generator: PartGenerator;
  readonly values: Values<Parameters>;
  readonly lines: readonly ScaleLine[];
  readonly factor: Factor;
  readonly series: SeriesAsked | undefined;
  readonly shop: Shop | undefined;
  readonly unit: LengthUnit;
}

/** Everything that scaling does to a part, for people and for programs. Lengths mm, other units in the names. */
export interface ScaleReport {
  readonly format: 'trialpiece scale record';
  readonly version: 1;
  readonly part: string;
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly factor: Factor;
  readonly series: SeriesAsked | null;
  /** What a person must decide. */
  readonly asks: readonly Ask[];
  /** Those that ask for a decision first, then those that a relation moved or a list put aside, by how much; then the rest. */
  readonly lines: readonly ScaleLine[];
  readonly fits: readonly FitChange[];
  readonly strength: readonly StrengthRow[];
  /** Kilograms of the finished part; null where the tables do not have its material. */
  readonly kilograms: { readonly before: number; readonly after: number } | null;
  readonly work: {
    readonly machines: readonly MachineChange[];
    readonly taps: readonly TapChange[];
    readonly rehearsals: readonly RehearsalChange[];
    /** Where kinds of fixtures are known: what each set-up is given at both sizes. */
    readonly fixtures?: readonly FixtureChange[];
    readonly buy: BarToBuy;
    /** What the new size needs that the shop does not list; empty where no list says what it has. */
    readonly toGet: readonly Lack[];
  };
  readonly cautions: readonly string[];
}

/** Works out what scaling does to a part and to the work on it. Throws UserError where the scaled part is no sound solid. */
export async function scaleReport(task: ReportTask): Promise<ScaleReport> {
  const { original, generator, lines, factor, shop, unit } = task;
  const kernel = await loadKernel();
  const [before, after] = [original.generator.build(original.values), generator.build(task.values)];
  soundSolid(kernel, after);
  const blank = (part: Part) => solidOf(kernel, part, { through: 0 });
  const density = materialOf(after.material)?.density;
  const mass = (part: Part): number => volumeOf(solidOf(kernel, part)) * 1e-9 * (density ?? 0);
  const fixed = new Set(lines.filter((line) => line.fixed === true).map(({ parameter }) => parameter));
  const strength = compareStrength({ generator: original.generator, before: original.values, after: task.values, factor: factor.value, fixed });
  const [was, now] = [before, after].map((part) => stakesAlone(kernel, part, unit, shop));
  const machines = machineChanges(machineNeeds(before, blank(before), unit, shop), machineNeeds(after, blank(after), unit, shop));
  const buy = barToBuy(after);
  return {
    format: 'trialpiece scale record',
    version: 1,
    part: original.generator.name,
    title: after.title,
    from: before.engine,
    to: after.engine,
    factor,
    series: task.series ?? null,
    asks: asksOf(lines, strength, machines, buy, unit),
    lines: inOrder(lines),
    fits: fitChanges(before, after),
    strength,
    kilograms: density === undefined ? null : { before: mass(before), after: mass(after) },
    work: {
      machines,
      taps: tapChanges(before, after),
      rehearsals: rehearsalChanges(after, was!, now!),
      buy,
      toGet: planOf(after, unit, shop).toGet,
    },
    cautions: cautionsOf(after, strength, factor.value),
  };
}

/** What needs a person first; within that the greatest departures first, then in the order of the part. */
export function inOrder(lines: readonly ScaleLine[]): readonly ScaleLine[] {
  const rank = (line: ScaleLine): number => (line.decision !== undefined ? 0 : line.mended !== undefined ? 1 : line.half !== undefined ? 2 : 3);
  return lines
    .map((line, i) => ({ line, i }))
    .sort((a, b) => rank(a.line) - rank(b.line) || (rank(a.line) < 3 ? Math.abs(b.line.percent) - Math.abs(a.line.percent) : 0) || a.i - b.i)
    .map(({ line }) => line);
}
