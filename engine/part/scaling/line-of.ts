import type { Thread } from '../../trade/threads.js';
import { nearDecimals } from './near-decimals.js';
import type { Parameter } from '../parameters.js';
import type { Move } from './mend.js';
import { inWords, unitOf } from './options.js';
import { nameOf, sizeOf, type Outcome, type ParameterValue } from './rule.js';
import { areaWords, fittings } from './rules/thread.js';
import type { Amount, ScaleLine } from './scale-line.js';
import type { Row } from './screws.js';

/** All that is known of a parameter when the part has been scaled. */
export interface LineTask {
  readonly name: string;
  readonly parameter: Parameter;
  readonly before: ParameterValue;
  readonly outcome: Outcome;
  /** By its own rule, and by what it keeps to. */
  readonly ruled: ParameterValue;
  readonly chosen: ParameterValue;
  readonly moves: readonly Move[];
  readonly fixed: boolean;
  readonly factor: number;
  /** The row of screws that it counts or spaces, where that was looked at again, and whether such rows were changed. */
  readonly row: Row | undefined;
  readonly counted: boolean;
}

const measures: Readonly<Partial<Record<Parameter['kind'], ScaleLine['measure']>>> = { angle: 'angle', count: 'count', choice: 'word' };

const amount = (value: ParameterValue): Amount => {
  const [size, name] = [sizeOf(value), nameOf(value)];
  return { ...(size === undefined ? {} : { size }), ...(name === undefined ? {} : { name }) };
};

/** The line of the report for one parameter. */
export function lineOf(task: LineTask): ScaleLine {
  const { name, parameter, before, outcome, ruled, chosen, moves, fixed } = task;
  const size = sizeOf(chosen);
  const deviation = size === undefined ? 0 : nearDecimals(size - outcome.exact, 6);
  const kept = 'with' in parameter && parameter.with !== undefined && ruled !== outcome.value;
  const mended = [...new Set(moves.map(({ relation }) => relation.says))];
  const decisions = [...(outcome.decision === undefined || mended.length > 0 && parameter.kind === 'thread' ? [] : [outcome.decision]), ...rowWords(task), ...mendedWords(task)];
  const mate = 'mate' in parameter ? parameter.mate : undefined;
  return {
    parameter: name,
    label: parameter.label,
    kind: parameter.kind,
    measure: measures[parameter.kind] ?? 'length',
    before: amount(before),
    exact: parameter.kind === 'choice' ? amount(before) : { size: outcome.exact },
    chosen: amount(chosen),
    rule: kept ? `with ${parameter.with!}` : outcome.rule,
    because: kept ? `keeps its proportion to ${parameter.with!}` : countedAgain(task) ?? movedFrom(task) ?? outcome.because,
    source: kept ? 'geometry' : outcome.source,
    deviation,
    percent: outcome.exact === 0 ? 0 : nearDecimals((100 * deviation) / outcome.exact, 4),
    ...(outcome.half === undefined || mended.length > 0 ? {} : { half: outcome.half }),
    knockOn: mended.length > 0 && parameter.kind === 'thread' ? fittings(chosen as Thread) : (outcome.knockOn ?? []),
    ...(mended.length === 0 ? {} : { mended }),
    ...(decisions.length === 0 ? {} : { decision: decisions.join('; ') }),
    ...(mate === undefined ? {} : { mate }),
    ...(fixed ? { fixed } : {}),
  };
}

const countedAgain = ({ row, counted, before, ruled, chosen }: LineTask): string | undefined => (counted && row !== undefined && chosen !== ruled && chosen !== before ? 'worked out again with the row of screws, for strength' : undefined);

/** Of what has sizes of its own, what its rule took before relations moved it. */
function movedFrom({ parameter, before, ruled, chosen, moves, factor }: LineTask): string | undefined {
  if (moves.length === 0 || (parameter.kind !== 'thread' && parameter.kind !== 'stock' && parameter.kind !== 'drill')) return undefined;
  const was = nameOf(ruled) ?? inWords(ruled as number, unitOf(parameter));
  return parameter.kind === 'thread' ? `${was} alone; ${areaWords(before as Thread, chosen as Thread, factor)}` : `${was} alone`;
}

/** What is said of a row of screws that exact scaling would have made stronger. */
function rowWords({ name, row, counted, before, chosen }: LineTask): readonly string[] {
  if (row?.name !== name) return [];
  const weak = `their threads together have ${Math.round(100 * row.short)} % less stress area than exact scaling`;
  if (counted && chosen !== before) return [`${String(chosen)} instead of ${String(before)}, for ${weak}; set ${name}=${String(before)} to keep the look`];
  return [`${row.count} would hold as much, for ${weak}, but ${row.room ? 'relations leave no place for them' : `at a pitch of ${row.pitch.toFixed(2)} mm a spanner and nut of ${row.least.toFixed(2)} mm have no room`}`];
}

/** A length moved by more than this part of its size is looked at. */
const MOVED_FAR = 0.03;

/** Where faces, a thread, or a length by much were moved, a person should look. */
function mendedWords({ parameter, moves, ruled, chosen }: LineTask): readonly string[] {
  if (moves.length === 0) return [];
  const far = parameter.kind === 'length' && Math.abs(sizeOf(chosen)! / sizeOf(ruled)! - 1) > MOVED_FAR;
  const bought = parameter.kind === 'thread' || (parameter.kind === 'stock' && parameter.stays === true);
  if (bought) return [`moved from ${nameOf(ruled) ?? inWords(ruled as number, unitOf(parameter))}, the nearest, for otherwise it would not hold that ${moves[0]!.relation.says}`];
  return far ? [`moved ${(100 * (sizeOf(chosen)! / sizeOf(ruled)! - 1)).toFixed(1)} %, so that ${moves[0]!.relation.says}`] : [];
}
