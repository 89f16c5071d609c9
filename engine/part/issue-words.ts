import type { z } from 'zod';
import { nearestClause } from '../units/nearest-name.js';

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
  switch (issue.code) {
    case 'invalid_union': {
      const kinds = 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
      return kinds.length === 0 ? `${place}${given} ${issue.message}` : `${place}${given} is not a kind: there are ${kinds.join(', ')}${nearestClause(String(value), kinds)}`;
    }
    case 'invalid_type':
      return `${place}${given} must be ${TYPES[issue.expected] ?? article(issue.expected)}`;
    case 'too_small':
      return typeof value === 'number' ? `${place} is ${String(value)}: it must be ${issue.inclusive === true ? 'at least' : 'more than'} ${String(issue.minimum)}` : Array.isArray(value) && value.length > 0 ? `${place} is too short: there must be at least ${String(issue.minimum)}` : `${place} is empty`;
    case 'too_big':
      return typeof value === 'number' ? `${place} is ${String(value)}: it must be ${issue.inclusive === true ? 'at most' : 'less than'} ${String(issue.maximum)}` : `${place}${given} is too long: at most ${String(issue.maximum)}`;
    case 'invalid_value':
      return `${place}${given} must be one of ${issue.values.join(', ')}${nearestClause(String(value), issue.values.map(String))}`;
    case 'custom':
    case 'invalid_element':
    case 'invalid_format':
    case 'invalid_key':
    case 'not_multiple_of':
      return `${place}${given} ${issue.message}`;
  }
}

const valueAt = (candidate: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((at, key) => (at as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key], candidate);

/** Types by the schema's name for them, where that is no word of ours. */
const TYPES: Readonly<Record<string, string>> = { int: 'a whole number', array: 'a list', tuple: 'a list of numbers', record: 'an object' };

const article = (type: string): string => (/^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`);
