import { z } from 'zod';
import { UserError } from '../units/user-error.js';
import type { PartGenerator } from './generator.js';
import { issueWords } from './issue-words.js';

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
  throw new UserError(`${file} does not describe a part: ${issueWords(issue, candidate, 'the default export')}.`);
}
