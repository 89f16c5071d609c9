import { formatLength } from '../units/format.js';
import type { LengthUnit } from '../units/length.js';
import { nearestClause } from '../units/nearest-name.js';
import { roundedText } from '../units/rounding.js';
import type { Problem } from './problem.js';
import type { Relation } from './relation.js';

/** The problem as one sentence: what, where, what is allowed, the nearest valid choice. */
export function problemSentence(problem: Problem): string {
  switch (problem.code) {
    case 'unknown-parameter':
      return `${problem.part} has no parameter "${problem.name}": it has ${problem.known.join(', ')}${nearestClause(problem.name, problem.known)}.`;
    case 'unreadable':
      return problem.reason;
    case 'beyond-limit': {
      const [is, bound] = problem.limit === 'least' ? ['less', 'at least'] : ['more', 'at most'];
      return `${problem.name} "${problem.written}" is ${is} than this part allows: ${bound} ${problem.allowed}.`;
    }
    case 'relation-broken':
      return relationSentence(problem.relation, problem.unit);
  }
}

const MUST_BE = {
  '<': 'must be less than',
  '<=': 'must be at most',
  '=': 'must be equal to',
  '>=': 'must be at least',
  '>': 'must be more than',
} as const;

function relationSentence(relation: Relation, unit: LengthUnit): string {
  const { left, right, measure } = relation;
  const [a, b] = valueTexts(left.value, right.value, measure, unit);
  return `${withoutStop(relation.says)}: ${left.text} (${a}) ${MUST_BE[relation.is]} ${right.text} (${b}).`;
}

/** Both values, with as many decimals as it takes to tell them apart. */
function valueTexts(left: number, right: number, measure: Relation['measure'], unit: LengthUnit): readonly [string, string] {
  const write = (value: number, decimals: number): string => {
    if (!Number.isFinite(value)) return 'no number';
    if (measure === 'length') return `${formatLength(value, unit, decimals)} ${unit}`;
    return measure === 'angle' ? `${roundedText(value, decimals)}°` : roundedText(value, decimals);
  };
  const least = measure === 'length' ? (unit === 'in' ? 4 : 3) : measure === 'angle' ? 2 : 0;
  for (let decimals = least; decimals < 9; decimals += 1) {
    const texts = [write(left, decimals), write(right, decimals)] as const;
    if (texts[0] !== texts[1]) return texts;
  }
  return [write(left, least), write(right, least)];
}

const withoutStop = (sentence: string): string => sentence.trim().replace(/\.$/, '');
