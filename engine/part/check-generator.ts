import { z } from 'zod';
import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import type { PartGenerator } from './generator.js';

const text = z.string().min(1);
const sized = { label: text, default: text, minimum: text, maximum: text };
const counted = { label: text, default: z.number(), minimum: z.number(), maximum: z.number() };

const parameter = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['length', 'clearance', 'allowance', 'wall']), ...sized }),
  z.strictObject({ kind: z.literal('thread'), ...sized }),
  z.strictObject({ kind: z.literal('drill'), ...sized }),
  z.strictObject({ kind: z.literal('stock'), form: z.enum(['round', 'rectangular', 'hexagon', 'sheet']), ...sized }),
  z.strictObject({ kind: z.literal('angle'), ...counted }),
  z.strictObject({ kind: z.literal('count'), ...counted }),
  z.strictObject({ kind: z.literal('choice'), label: text, default: text, options: z.array(text).min(1) }),
]);

const isFunction = z.custom<unknown>((value) => typeof value === 'function', 'must be a function');

const shape = z.strictObject({
  name: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be small letters and digits, words joined by hyphens'),
  title: text,
  summary: text,
  parameters: z.record(z.string().regex(/^[A-Za-z][A-Za-z0-9-]*$/, 'must be a plain name'), parameter),
  relations: isFunction,
  build: isFunction,
});

const KINDS = ['length', 'clearance', 'allowance', 'wall', 'thread', 'drill', 'stock', 'angle', 'count', 'choice'];

/**
 * The default export of a part's module, checked.
 * @param file names the module in the sentence of an error.
 * @throws UserError where it is not a part: the first thing that is wrong, with its place.
 */
export function checkGenerator(candidate: unknown, file: string): PartGenerator {
  if (candidate === undefined) throw new UserError(`${file} has no default export: end it with export default definePart({ ... }).`);
  const result = shape.safeParse(candidate);
  if (result.success) return candidate as PartGenerator;
  const issue = result.error.issues[0];
  if (issue === undefined) throw new TypeError('a failed check with no issue');
  throw new UserError(`${file} does not describe a part: ${issueWords(issue, candidate)}.`);
}

function issueWords(issue: z.core.$ZodIssue, candidate: unknown): string {
  const place = issue.path.length === 0 ? 'the default export' : issue.path.join('.');
  const value = valueAt(candidate, issue.path);
  if (issue.code === 'unrecognized_keys') {
    return `${place} has ${issue.keys.map((key) => `"${key}"`).join(', ')}, which is not known`;
  }
  if (value === undefined) return `${place} is missing`;
  const given = typeof value === 'string' ? ` "${value}"` : '';
  if (issue.code === 'invalid_union') return `${place}${given} is not a kind: there are ${KINDS.join(', ')}${nearestClause(String(value), KINDS)}`;
  if (issue.code === 'invalid_type') return `${place}${given} must be ${article(issue.expected)}`;
  if (issue.code === 'too_small') return `${place} is empty`;
  if (issue.code === 'invalid_value') return `${place}${given} must be one of ${issue.values.join(', ')}`;
  return `${place}${given} ${issue.message}`;
}

const valueAt = (candidate: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((at, key) => (at as Readonly<Record<PropertyKey, unknown>> | undefined)?.[key], candidate);

const article = (type: string): string => (/^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`);
