import fc from 'fast-check';
import type { PartGenerator } from '../../engine/part/generator.js';
import type { Parameter } from '../../engine/part/parameters.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { UserError } from '../../engine/units/user-error.js';
import { parseLength } from '../../engine/units/length.js';

/** Threads, drills and bars that exist, about the sizes of the built-in parts. */
const threads = ['0-80', '1-72', '2-56', '4-40', '5-40', '6-32', '8-32', '10-32', '1/4x40', '5/16x32', 'M2', 'M3', 'M5', '4BA', '6BA', '8BA'];
const drills = ['#60', '#55', '1/16 in', '#50', '1.5 mm', '2 mm', '5/64 in'];
const flats = ['3/4 in', '7/8 in', '1 in', '1 1/8 in', '1 1/4 in', '1 1/2 in', '1 3/4 in', '2 in'];
const rounds = ['5/16 in', '3/8 in', '7/16 in', '1/2 in', '9/16 in', '5/8 in', '3/4 in'];

/** Another text for one parameter: lengths, angles and counts within 30 % of the default, things of the trade from lists. */
function near(parameter: Parameter): fc.Arbitrary<string> {
  const within = (value: number, digits: number): fc.Arbitrary<number> => fc.integer({ min: Math.ceil(value * 0.7 * 10 ** digits), max: Math.floor(value * 1.3 * 10 ** digits) }).map((whole) => whole / 10 ** digits);
  switch (parameter.kind) {
    case 'thread':
      return fc.constantFrom(...threads);
    case 'drill':
      return fc.constantFrom(...drills);
    case 'stock':
      return fc.constantFrom(...(parameter.form === 'round' ? rounds : flats));
    case 'angle':
      return within(parameter.default, 0).map(String);
    case 'count':
      return within(parameter.default, 0).map(String);
    case 'choice':
      return fc.constantFrom(...parameter.options);
    case 'length':
    case 'clearance':
    case 'allowance':
    case 'wall':
      return within(parseLength(parameter.default), 2).map((value) => `${value} mm`);
  }
}

const allowed = (generator: PartGenerator, settings: Readonly<Record<string, string>>): boolean => {
  try {
    resolveValues(generator, settings, undefined);
    return true;
  } catch (error) {
    if (error instanceof UserError) return false;
    throw error;
  }
};

/** Settings of a part that its limits and relations allow, with some of its parameters away from their defaults. */
export function settingsOf(generator: PartGenerator): fc.Arbitrary<Readonly<Record<string, string>>> {
  const names = Object.keys(generator.parameters);
  return fc
    .uniqueArray(fc.constantFrom(...names), { minLength: 8, maxLength: 16 })
    .chain((chosen) => fc.tuple(...chosen.map((name) => near(generator.parameters[name]!).map((text) => [name, text] as const))))
    .map((entries) => {
      // One after another, each kept only where all relations still hold with it: far from the defaults, and still a part.
      let settings: Readonly<Record<string, string>> = {};
      for (const [name, text] of entries) {
        const more = { ...settings, [name]: text };
        if (allowed(generator, more)) settings = more;
      }
      return settings;
    });
}
