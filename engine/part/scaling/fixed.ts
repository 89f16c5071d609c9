import type { LengthUnit } from '../../units/length.js';
import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';
import type { Parameters } from '../parameters.js';
import { readParameter } from '../read-parameter.js';
import type { ParameterValue } from './rule.js';

/**
 * The values that the user fixed for the scaled part, by name. Limits of the part as it was do not bind another size of it.
 * @throws UserError for an unknown parameter, or a text that is no value of its kind.
 */
export function fixedValues(part: string, parameters: Parameters, settings: Readonly<Record<string, string>>, unit: LengthUnit | undefined): ReadonlyMap<string, ParameterValue> {
  const known = Object.keys(parameters);
  return new Map(
    Object.entries(settings).map(([name, text]) => {
      const parameter = parameters[name];
      if (parameter === undefined || !known.includes(name)) throw new UserError(`${part} has no parameter "${name}": it has ${known.join(', ')}${nearestClause(name, known)}.`);
      return [name, readParameter(name, parameter, text.trim(), unit).value] as const;
    }),
  );
}
