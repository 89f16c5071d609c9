import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import crosshead from '../../generators/parts/crosshead.js';
import { checkGenerator } from '../../engine/part/check-generator.js';
import { describeParameters, describeRelations } from '../../engine/part/describe.js';
import { resolveValues } from '../../engine/part/resolve.js';

const folder = new URL('../../generators/parts/', import.meta.url);
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.slice(0, -3));

it('there are parts', () => {
  expect(names).toEqual(expect.arrayContaining(['crosshead', 'crosshead-pin']));
});

describe.each(names)('the built-in part %s', async (name) => {
  const module = (await import(new URL(`${name}.ts`, folder).href)) as { readonly default: unknown };
  const generator = checkGenerator(module.default, name);

  it('is named as its file', () => {
    expect(generator.name).toBe(name);
  });

  it('has defaults that all its limits and relations allow, and builds with them', () => {
    const part = generator.build(resolveValues(generator, {}, undefined));
    expect(part.name).toBe(name);
    expect(part.operations.length).toBeGreaterThan(0);
  });

  it('tells its parameters and relations', () => {
    expect(describeParameters(generator).map((parameter) => parameter.name)).toEqual(Object.keys(generator.parameters));
    expect(describeRelations(generator, 'mm').join('\n')).not.toMatch(/NaN|undefined|no number/);
  });
});

it('the pad holes of a crosshead do not meet those of the other groove', () => {
  expect(() => resolveValues(crosshead, { padDrillDepth: '0.5 in' }, undefined)).toThrow(/^the pad holes of one groove stay clear of those of the other: /);
});
