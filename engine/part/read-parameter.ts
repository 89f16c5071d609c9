import { findDrill } from '../trade/drills.js';
import { findThread } from '../trade/threads.js';
import type { Drill } from '../trade/drills.js';
import type { Thread } from '../trade/threads.js';
import { parseAngle } from '../units/angle.js';
import { parseLength } from '../units/length.js';
import type { LengthUnit } from '../units/length.js';
import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import type { Parameter } from './parameters.js';
import { readStock } from './read-stock.js';

/** A setting as read: the value for the part's functions, and the size that the limits judge (mm, degrees or a count). */
export interface Reading {
  readonly value: number | string | Thread | Drill;
  readonly size?: number;
}

/**
 * Reads the text given for a parameter by the parameter's kind.
 * @param name the parameter's, for the sentence of an error.
 * @param unit of a length that is written as a number alone; without it such a length is refused.
 * @throws UserError where the text is no value of that kind.
 */
export function readParameter(name: string, parameter: Parameter, text: string, unit: LengthUnit | undefined): Reading {
  switch (parameter.kind) {
    case 'length':
    case 'clearance':
    case 'allowance':
    case 'wall':
      return measured(readLength(name, text, unit));
    case 'thread': {
      const thread = inParameter(name, () => findThread(text));
      return { value: thread, size: thread.major };
    }
    case 'drill': {
      const drill = inParameter(name, () => findDrill(drillName(text, unit)));
      return { value: drill, size: drill.diameter };
    }
    case 'stock':
      return measured(readStock(name, parameter, readLength(name, text, unit), text));
    case 'angle':
      return measured(parseAngle(text, { what: name }));
    case 'count':
      return measured(readCount(name, text));
    case 'choice':
      return { value: readChoice(name, parameter.options, text) };
  }
}

const measured = (size: number): Reading => ({ value: size, size });

export const readLength = (name: string, text: string, unit: LengthUnit | undefined): number =>
  parseLength(text, { what: name, ...(unit === undefined ? {} : { unit }) });

/** A decimal number alone is a diameter in `unit`; a whole number alone is a number drill. */
function drillName(text: string, unit: LengthUnit | undefined): string {
  if (!/^\s*\d*\.\d+\s*$/.test(text)) return text;
  if (unit === undefined) throw new UserError(`drill "${text}" has no unit: write ${text} mm or ${text} in, or a drill's name such as #53 or F.`);
  return `${text} ${unit}`;
}

function readCount(name: string, text: string): number {
  if (!/^[+-]?\d+$/.test(text)) throw new UserError(`${name} "${text}" is not a whole number: write a count, such as 4.`);
  return Number(text);
}

function readChoice(name: string, options: readonly string[], text: string): string {
  if (options.includes(text)) return text;
  throw new UserError(`${name} "${text}" is not one of its choices: there are ${options.join(', ')}${nearestClause(text, options)}.`);
}

function inParameter<T>(name: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof UserError) throw new UserError(`${name}: ${error.message}`, { cause: error });
    throw error;
  }
}
