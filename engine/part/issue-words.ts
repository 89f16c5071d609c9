import type { z } from 'zod';
import { nearestClause } from '../units/nearest-name.js';

/** The words that tell the kinds of a parameter apart. */
export const KINDS = ['length', 'clearance', 'allowance', 'wall', 'thread', 'drill', 'stock', 'angle', 'count', 'choice'];

/**
 * What a schema found wrong, as words for the middle of a sentence: the place, the value there, and what is allowed.
 * @param whole names the candidate where the place is the candidate itself.
 */
export function issueWords(issue: z.core.$ZodIssue, candidate: unknown, whole: string): string {
  const place = issue.path.length === 0 ? whole : issue.path.join('.');
  const value = valueAt(candidate, issue.path);
  if (issue.code === 'unrecognized_keys') {
    return `${place} has ${issue.keys.map((key) => `"${key}"`).join(', ')}, which is not known`;
  }
  if (value === undefined) return `${place} is missing`;
  const given = typeof value === 'string' ? ` "${value}"` : '';
  if (issue.code === 'invalid_union') return `${place}${given} is not a kind: there are ${KINDS.join(', ')}${nearestClause(String(value), KINDS)}`;
  if (issue.code === 'invalid_type') return `${place}${given} must be ${issue.expected === 'int' ? 'a whole number' : article(issue.expected)}`;
  if (issue.code === 'too_small') return typeof value === 'number' ? `${place} is ${String(value)}, too small` : `${place} is empty`;
  if (issue.code === 'invalid_value') return `${place}${given} must be one of ${issue.values.join(', ')}`;
  return `${place}${given} ${issue.message}`;
}

const valueAt = (candidate: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((at, key) => (at as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key], candidate);

const article = (type: string): string => (/^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`);
