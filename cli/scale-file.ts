import { existsSync, readFileSync } from 'node:fs';
import { parseDocument, stringify } from 'yaml';
import { z } from 'zod';
import { seriesNames, type SeriesAsked } from '../engine/part/scaling/series.js';
import { nearestClause } from '../engine/units/nearest-name.js';
import { UserError } from '../engine/units/user-error.js';
import { systemReason } from './system-reason.js';

/** What was decided for one part at one size, as its file holds it. */
export interface ScaleFile {
  readonly from?: string | undefined;
  readonly series?: SeriesAsked | undefined;
  /** Texts by parameter, as with --set. */
  readonly set: Readonly<Record<string, string>>;
}

const keys = ['from', 'series', 'set'];

const shape = z.strictObject({
  from: z.string().optional(),
  series: z.enum(seriesNames as [SeriesAsked, ...SeriesAsked[]]).optional(),
  set: z.record(z.string(), z.union([z.string(), z.number()]).transform(String)).default({}),
});

/** The name of the file in which choices for a part at a size are kept, in this folder. */
export const scaleFileName = (part: string, label: string): string => `${part}-${label}.scale.yaml`;

/**
 * The choices of a file, none where there is no such file.
 * @throws UserError where it cannot be read or says something that is not understood.
 */
export function readScaleFile(path: string): ScaleFile {
  if (!existsSync(path)) return { set: {} };
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined;
    if (code === undefined) throw error;
    throw new UserError(`${path} cannot be read: ${code === 'EISDIR' ? 'it is a folder' : systemReason(code)}.`, { cause: error });
  }
  const document = parseDocument(text);
  const [fault] = document.errors;
  if (fault !== undefined) throw new UserError(`${path} is no YAML: ${fault.message.split('\n')[0]?.replace(/:$/, '') ?? 'it does not parse'}.`);
  const read = shape.safeParse(document.toJS() ?? {});
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  if (issue?.code === 'unrecognized_keys') throw new UserError(`${path}: "${issue.keys[0] ?? ''}" is not known there: there are ${keys.join(', ')}${nearestClause(issue.keys[0] ?? '', keys)}.`);
  throw new UserError(`${path}: ${issue?.path.join('.') ?? 'it'} is not understood: ${issue?.message ?? ''}.`);
}

/** What is fixed, in a sentence; undefined where nothing is. */
export function fixedInWords(file: string, { from, series, set }: ScaleFile): string | undefined {
  const fixed = [...(from === undefined ? [] : [`from ${from}`]), ...(series === undefined ? [] : [`series ${series}`]), ...Object.entries(set).map(([name, text]) => `${name}=${text}`)];
  return fixed.length === 0 ? undefined : `Fixed in ${file}: ${fixed.join(', ')}.`;
}

/** The file's text, for people to read and change. */
export function scaleFileText(part: string, to: string, { from, series, set }: ScaleFile): string {
  const head = ` What was decided for the ${part} scaled to ${to}; read again by scale and by --gauge of the other commands.\n Take a line out to let the rule choose again.`;
  const body = { ...(from === undefined ? {} : { from }), ...(series === undefined ? {} : { series }), set: Object.fromEntries(Object.entries(set).sort(([a], [b]) => (a < b ? -1 : 1))) };
  return `${head.split('\n').map((line) => `#${line}\n`).join('')}${stringify(body)}`;
}
