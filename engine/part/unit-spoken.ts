import type { LengthUnit } from '../units/length.js';
import { systemOf } from './limits.js';
import type { Parameters } from './parameters.js';

const WITHOUT_LENGTH = ['angle', 'count', 'choice', 'thread'];

/** The unit to speak to the user in: that of the first length that the settings give, else of the part's first length. */
export function unitSpoken(parameters: Parameters, settings: Readonly<Record<string, string>>): LengthUnit {
  const lengths = Object.entries(parameters).filter(([, { kind }]) => !WITHOUT_LENGTH.includes(kind));
  const [name, first] = lengths.find(([given]) => Object.hasOwn(settings, given)) ?? lengths[0] ?? [];
  return systemOf((name === undefined ? undefined : settings[name]) ?? String(first?.default ?? ''));
}
