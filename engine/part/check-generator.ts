import { z } from 'zod';
import { UserError } from '../units/user-error.js';
import type { PartGenerator } from './generator.js';
import { issueWords } from './issue-words.js';
import { limitsOf } from './limits.js';
import type { Parameter } from './parameters.js';
import { readParameter } from './read-parameter.js';
import { plainName } from './shapes/part.js';
import { thrownWords } from './thrown-words.js';

const text = z.string().min(1);
const sized = { label: text, default: text, minimum: text, maximum: text };
const counted = { label: text, default: z.number(), minimum: z.number(), maximum: z.number() };

const follows = z.enum(['reamer', 'ground rod', 'end mill', 'corner of an end mill', 'saw diameter', 'saw thickness', 'edge', 'shop']);

const parameter = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['length', 'clearance', 'allowance', 'wall']), ...sized, follows: follows.optional(), with: text.optional(), mate: text.optional() }),
  z.strictObject({ kind: z.literal('thread'), ...sized }),
  z.strictObject({ kind: z.literal('drill'), ...sized }),
  z.strictObject({ kind: z.literal('stock'), form: z.enum(['round', 'rectangular', 'hexagon', 'sheet']), ...sized, section: z.enum(['flat', 'square']).optional(), stays: z.literal(true).optional() }),
  z.strictObject({ kind: z.literal('angle'), ...counted }),
  z.strictObject({ kind: z.literal('count'), ...counted, screws: z.strictObject({ thread: text, pitch: text }).optional() }),
  z.strictObject({ kind: z.literal('choice'), label: text, default: text, options: z.array(text).min(1) }),
]);

const isFunction = z.custom<unknown>((value) => typeof value === 'function', 'must be a function');

const shape = z.strictObject({
  name: plainName,
  title: text,
  summary: text,
  parameters: z.record(z.string().regex(/^[A-Za-z][A-Za-z0-9-]*$/, 'must be a plain name'), parameter),
  relations: isFunction,
  build: isFunction,
  loads: z.strictObject({ engine: z.strictObject({ name: text, bore: z.number().positive(), stroke: z.number().positive(), rod: z.number().positive(), pressure: z.number().positive(), kilograms: z.number().positive() }), checks: isFunction }).optional(),
});

/**
 * The default export of a part's module, checked.
 * @param file names the module in the sentence of an error.
 * @throws UserError where it is not a part: the first thing that is wrong, with its place.
 */
export function checkGenerator(candidate: unknown, file: string): PartGenerator {
  if (candidate === undefined) throw new UserError(`${file} has no default export: end it with export default definePart({ ... }).`);
  if (candidate instanceof Promise) throw new UserError(`${file} does not describe a part: the default export is a promise; write await before it.`);
  const wrong = wordsOfFault(candidate);
  if (wrong !== undefined) throw new UserError(`${file} does not describe a part: ${wrong}.`);
  const generator = candidate as PartGenerator;
  for (const [name, parameter] of Object.entries(generator.parameters)) {
    const odd = wordsOfLimits(parameter);
    if (odd !== undefined) throw new UserError(`${file} does not describe a part: parameters.${name}: ${odd}.`);
    const lost = referenceLost(parameter, generator.parameters);
    if (lost !== undefined) throw new UserError(`${file} does not describe a part: parameters.${name}: ${lost}.`);
  }
  return generator;
}

function wordsOfFault(candidate: unknown): string | undefined {
  try {
    const [issue] = shape.safeParse(candidate).error?.issues ?? [];
    return issue === undefined ? undefined : issueWords(issue, candidate, 'the default export');
  } catch (error) {
    // A property may be a function of the user's own.
    return `reading it throws: ${thrownWords(error)}`;
  }
}

/** What is wrong with the other parameters that one names; undefined where they are what they should be. */
function referenceLost(parameter: Parameter, all: PartGenerator['parameters']): string | undefined {
  const wants = (name: string, field: string, kinds: readonly Parameter['kind'][]): string | undefined => {
    const other = all[name];
    if (other !== undefined && kinds.includes(other.kind)) return undefined;
    return `${field} "${name}" is no parameter of kind ${kinds.join(' or ')}`;
  };
  if (parameter.kind === 'count' && parameter.screws !== undefined) return wants(parameter.screws.thread, 'screws.thread', ['thread']) ?? wants(parameter.screws.pitch, 'screws.pitch', ['length']);
  return 'with' in parameter && parameter.with !== undefined ? wants(parameter.with, 'with', ['length', 'stock', 'thread', 'drill']) : undefined;
}

/** What is wrong with the texts of a parameter; undefined where all can be read. */
function wordsOfLimits(parameter: Parameter): string | undefined {
  try {
    const limits = limitsOf(parameter);
    readParameter('default', parameter, String(parameter.default), undefined);
    return limits !== undefined && limits.least.size > limits.greatest.size ? `minimum "${limits.least.text}" is more than maximum "${limits.greatest.text}"` : undefined;
  } catch (error) {
    if (error instanceof UserError) return error.message.replace(/\.$/, '');
    throw error;
  }
}
