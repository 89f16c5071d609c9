import type { Drill } from '../trade/drills.js';
import type { Thread } from '../trade/threads.js';
import type { LengthUnit } from '../units/length.js';
import { UserError } from '../units/user-error.js';
import type { PartGenerator } from './generator.js';
import { limitText, limitsOf, systemOf } from './limits.js';
import type { Parameter, Parameters, Values } from './parameters.js';
import { unitSpoken } from './unit-spoken.js';
import type { Problem } from './problem.js';
import { problemSentence } from './problem-sentence.js';
import { readParameter } from './read-parameter.js';
import type { Reading } from './read-parameter.js';
import { holds } from './relation.js';

/**
 * The values of a part's parameters: defaults, and the user's settings over them. Every check is made here, so that what
 * builds the part need not check again.
 * @param settings texts by parameter name, as the user wrote them.
 * @param units of lengths written as a number alone; without it such a length is refused.
 * @param drills what the shop has, for the tapping drills; without it any drill may be chosen.
 * @throws UserError for an unknown parameter, a text that is no value of its kind, a value out of limits, or a relation that
 * does not hold: the first in that order, and how many more there are.
 */
export function resolveValues<P extends Parameters>(
  generator: PartGenerator<P>,
  settings: Readonly<Record<string, string>>,
  units: LengthUnit | undefined,
  drills?: readonly Drill[],
): Values<P> {
  const known = Object.keys(generator.parameters);
  const problems: Problem[] = Object.keys(settings)
    .filter((name) => !known.includes(name))
    .map((name) => ({ code: 'unknown-parameter', name, known, part: generator.name }));
  const values: Record<string, Reading['value']> = {};
  for (const [name, parameter] of Object.entries(generator.parameters)) {
    const written = Object.hasOwn(settings, name) ? settings[name]?.trim() : undefined;
    const outcome =
      written === undefined
        ? judge(`default of ${name}`, parameter, String(parameter.default), undefined)
        : judge(name, parameter, written, units);
    if ('code' in outcome) problems.push(outcome);
    else values[name] = atHand(parameter, outcome.value, drills);
  }
  refuse(problems);
  const resolved = values as Values<P>;
  refuse(brokenRelations(generator, resolved, units ?? unitSpoken(generator.parameters, settings)));
  return resolved;
}

/** A thread takes along the drills that the shop has, so that its tapping drill is one of them. */
const atHand = (parameter: Parameter, value: Reading['value'], drills: readonly Drill[] | undefined): Reading['value'] =>
  parameter.kind === 'thread' && drills !== undefined ? { ...(value as Thread), drillsAtHand: drills } : value;

/** A thread of 0.060 in is not beyond a limit of 0.06 in because its size was reckoned another way; mm, degrees or a count. */
const SAME = 1e-6;

function judge(name: string, parameter: Parameter, text: string, units: LengthUnit | undefined): Reading | Problem {
  let reading: Reading;
  try {
    reading = readParameter(name, parameter, text, units);
  } catch (error) {
    if (error instanceof UserError) return { code: 'unreadable', name, reason: error.message };
    throw error;
  }
  const limits = limitsOf(parameter);
  if (limits === undefined || reading.size === undefined) return reading;
  const allowed = (limit: 'least' | 'greatest'): Problem => ({
    code: 'beyond-limit',
    name,
    written: text,
    limit,
    allowed: limitText(parameter, limits[limit], units ?? systemOf(text)),
  });
  if (reading.size < limits.least.size - SAME) return allowed('least');
  return reading.size > limits.greatest.size + SAME ? allowed('greatest') : reading;
}

const brokenRelations = <P extends Parameters>(generator: PartGenerator<P>, values: Values<P>, unit: LengthUnit): readonly Problem[] =>
  generator
    .relations(values)
    .filter((relation) => !holds(relation))
    .map((relation) => ({ code: 'relation-broken', relation, unit }));

function refuse(problems: readonly Problem[]): void {
  const [first, ...more] = problems;
  if (first === undefined) return;
  const sentence = problemSentence(first);
  if (more.length === 0) throw new UserError(sentence);
  throw new UserError(`${sentence.replace(/\.$/, '')} (and ${String(more.length)} more ${more.length === 1 ? 'problem' : 'problems'}).`);
}
