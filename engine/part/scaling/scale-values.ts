import { formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import { UserError } from '../../units/user-error.js';
import type { PartGenerator } from '../generator.js';
import type { Parameter, Parameters, Values } from '../parameters.js';
import { problemSentence } from '../problem-sentence.js';
import { unitSpoken } from '../unit-spoken.js';
import { chooseBar } from './choose-bar.js';
import { fixedValues } from './fixed.js';
import { freedomOf } from './freedom.js';
import { brokenAmong, gapOf } from './gap.js';
import { lineOf } from './line-of.js';
import { mend, type Mended, type ValuesByName } from './mend.js';
import { exactly, sizeOf, type Outcome, type ParameterValue } from './rule.js';
import { applyRule } from './rules/index.js';
import { WEAKER } from './rules/thread.js';
import type { ScaleLine } from './scale-line.js';
import { rowsToCount, type Row } from './screws.js';
import type { SeriesAsked } from './series.js';

export interface ScaleChoices {
  /** The series of all threads; each thread's own if not given. */
  readonly series?: SeriesAsked | undefined;
  /** Texts by parameter name that the user fixed for the scaled part. */
  readonly fixed?: Readonly<Record<string, string>> | undefined;
  /** Of fixed lengths written as a number alone; without it such a length is refused. */
  readonly unit?: LengthUnit | undefined;
}

export interface Scaled<P extends Parameters = Parameters> {
  readonly values: Values<P>;
  /** One a parameter, in the order of the part. */
  readonly lines: readonly ScaleLine[];
}

/**
 * The values of a part made another size, and what became of each: first every parameter by its own rule, then what keeps to
 * another, then bar, which is bought with both its sides, then rows of screws that came out weak, and at last relations, where one is broken, by the least change of what may
 * be moved. Rules and mates know of one parameter only, so that a size which two parts share comes out alike in both.
 * @param values of the part as it was.
 * @param factor how many times larger, over nought.
 * @throws UserError for a fixed value that is none, for what cannot be made at that size, and where no change mends a
 * relation: it says which, and by how much it is short.
 */
export function scaleValues<P extends Parameters>(generator: PartGenerator<P>, values: Values<P>, factor: number, choices: ScaleChoices = {}): Scaled<P> {
  const before = values as ValuesByName;
  const parameters: Parameters = generator.parameters;
  const fixed = fixedValues(generator.name, parameters, choices.fixed ?? {}, choices.unit);
  const alone = new Map(Object.entries(parameters).map(([name, parameter]) => [name, outcomeOf(name, parameter, before[name]!, factor, choices.series, fixed)] as const));
  refuseImpossible(generator.name, factor, [...alone.values()]);
  const relationsOf = (changed: ValuesByName) => generator.relations(changed as Values<P>);
  const settled = (outcomes: ReadonlyMap<string, Outcome>): ValuesByName => withNeighbours(parameters, before, Object.fromEntries([...outcomes].map(([name, { value }]) => [name, value])), fixed);
  const names = new Set(fixed.keys());
  const bar = factor === 1 ? undefined : chooseBar({ parameters, ruled: settled(alone), outcomes: alone, fixed: names, broken: (changed) => brokenAmong(relationsOf(changed)).length });
  const outcomes = new Map([...alone].map(([name, outcome]) => [name, bar?.outcomes[name] ?? outcome] as const));
  const ruled = settled(outcomes);
  const mended = (start: ValuesByName): Mended | undefined => mend(relationsOf, start, freedomOf(parameters, start, factor, names, { bar }));
  const rows = rowsToCount(parameters, before, ruled, factor, WEAKER).filter(({ name, pitchName }) => !fixed.has(name) && !fixed.has(pitchName));
  const counted = mendedRows(rows, ruled, mended);
  const result = counted ?? mended(ruled);
  if (result === undefined) throw impossible(generator.name, relationsOf(ruled), factor, choices.unit ?? unitSpoken(parameters, {}));
  const lines = [...outcomes].map(([name, outcome]) =>
    lineOf({
      name,
      parameter: parameters[name]!,
      before: before[name]!,
      outcome,
      ruled: ruled[name]!,
      chosen: result.values[name]!,
      moves: result.moves.filter((move) => move.name === name),
      fixed: fixed.has(name),
      factor,
      row: rows.find((row) => row.name === name || row.pitchName === name),
      counted: counted !== undefined,
    }),
  );
  return { values: result.values as Values<P>, lines };
}

function outcomeOf(name: string, parameter: Parameter, value: ParameterValue, factor: number, series: SeriesAsked | undefined, fixed: ReadonlyMap<string, ParameterValue>): Outcome {
  const still = factor === 1 && !(parameter.kind === 'thread' && series !== undefined);
  const outcome: Outcome = still ? { value, exact: sizeOf(value) ?? 0, rule: 'same size', because: 'the same size changes nothing', source: 'geometry' } : applyRule({ name, parameter, value, factor, series });
  const own = fixed.get(name);
  if (own === undefined) return outcome;
  return { value: own, exact: outcome.exact, rule: 'as set', because: 'fixed by you', source: 'as set' };
}

/** What keeps to another size follows it, whatever became of that. */
function withNeighbours(parameters: Parameters, before: ValuesByName, values: ValuesByName, fixed: ReadonlyMap<string, ParameterValue>): ValuesByName {
  const followed = Object.entries(parameters).flatMap(([name, parameter]) => {
    const other = 'with' in parameter ? parameter.with : undefined;
    if (other === undefined || fixed.has(name) || before[other] === undefined || sizeOf(before[other]) === 0) return [];
    return [[name, exactly(((before[name] as number) * sizeOf(values[other]!)!) / sizeOf(before[other])!)] as const];
  });
  return { ...values, ...Object.fromEntries(followed) };
}

/** The values with more screws in their rows, where there is room for them and relations can be kept. */
function mendedRows(rows: readonly Row[], values: ValuesByName, mended: (start: ValuesByName) => Mended | undefined): Mended | undefined {
  const roomy = rows.filter(({ room }) => room);
  if (roomy.length === 0) return undefined;
  return mended({ ...values, ...Object.fromEntries(roomy.flatMap(({ name, count, pitchName, pitch }) => [[name, count] as const, [pitchName, pitch] as const])) });
}

const times = (factor: number): string => `${Number(factor.toPrecision(4))} times its size`;

function refuseImpossible(part: string, factor: number, outcomes: readonly Outcome[]): void {
  const all = outcomes.flatMap(({ cannot }) => cannot ?? []);
  if (all.length === 0) return;
  throw new UserError(`at ${times(factor)} the ${part} cannot be made: ${all.join('; ')}; fix what you can with --set.`);
}

function impossible(part: string, relations: ReturnType<PartGenerator['relations']>, factor: number, unit: LengthUnit): UserError {
  const relation = relations[brokenAmong(relations)[0]!]!;
  const sentence = problemSentence({ code: 'relation-broken', relation, unit }).replace(/\.$/, '');
  const short = -gapOf(relation);
  const by = relation.measure === 'length' ? `${formatLength(short, unit, unit === 'in' ? 4 : 3)} ${unit}` : String(Number(short.toPrecision(3)));
  return new UserError(`at ${times(factor)} the ${part} cannot be made: ${sentence}, it is short by ${by}, and no small change of its other sizes mends it.`);
}
