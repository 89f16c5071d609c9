import { findDrill } from '../trade/drills.js';
import { formatLength } from '../units/format.js';
import { parseLength } from '../units/length.js';
import type { LengthUnit } from '../units/length.js';
import type { Parameter } from './parameters.js';

/** One end of what a parameter may be: the size that is compared (mm, degrees, a count), and how it is written. */
export interface Limit {
  readonly size: number;
  readonly text: string;
}

export interface Limits {
  readonly least: Limit;
  readonly greatest: Limit;
}

/** What a parameter may be; undefined for a choice among words. @throws UserError where the declaration is no size. */
export function limitsOf(parameter: Parameter): Limits | undefined {
  switch (parameter.kind) {
    case 'choice':
      return undefined;
    case 'count':
      return { least: number(parameter.minimum, ''), greatest: number(parameter.maximum, '') };
    case 'angle':
      return { least: number(parameter.minimum, '°'), greatest: number(parameter.maximum, '°') };
    case 'drill':
      return { least: drill(parameter.minimum), greatest: drill(parameter.maximum) };
    case 'length':
    case 'clearance':
    case 'allowance':
    case 'wall':
    case 'thread':
    case 'stock':
      return { least: length(parameter.minimum), greatest: length(parameter.maximum) };
  }
}

/** A limit in words, with the same in the other unit where the user works in that one: "1/8 in (3.175 mm)". */
export function limitText(parameter: Parameter, limit: Limit, unit: LengthUnit): string {
  if (parameter.kind === 'count' || parameter.kind === 'angle' || unit === systemOf(limit.text)) return limit.text;
  return `${limit.text} (${formatLength(limit.size, unit)} ${unit})`;
}

/** The unit that a text of a length (or a thread's name) thinks in: metric where it says so, else inch. */
export const systemOf = (text: string): LengthUnit => (/\d\s*([muµμc]?m|micron|millimetre)|^\s*m\d/iu.test(text) ? 'mm' : 'in');

const number = (size: number, sign: string): Limit => ({ size, text: `${String(size)}${sign}` });
const length = (text: string): Limit => ({ size: parseLength(text, { what: 'limit' }), text });

/** A drill's limit is a drill's name or a length. */
const drill = (text: string): Limit =>
  /^(#|no|[a-z]$)/i.test(text) ? { size: findDrill(text).diameter, text } : length(text);
