import { readdir } from 'node:fs/promises';
import type { FixtureKind } from '../../engine/plan/fixture/fixture.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { makeFixtures, type FixtureWishes, type MadeFixtureDocument } from '../../engine/sheet/fixture/make-fixture.js';
import { generatorOf } from './print.js';

/** Every built-in kind of fixture. */
export async function builtInKinds(): Promise<readonly FixtureKind[]> {
  const folder = new URL('../../generators/fixtures/', import.meta.url);
  const files = (await readdir(folder)).filter((file) => file.endsWith('.ts')).sort();
  return Promise.all(files.map(async (file) => ((await import(new URL(file, folder).href)) as { readonly default: FixtureKind }).default));
}

const made = new Map<string, Promise<readonly MadeFixtureDocument[]>>();

/** The fixtures of a built-in part: the right hand's set unless asked otherwise. Each made once in a file of tests. */
export function fixturesOf(name: string, options: Partial<FixtureWishes> = {}): Promise<readonly MadeFixtureDocument[]> {
  const key = JSON.stringify([name, options]);
  const known = made.get(key) ?? make(name, options);
  made.set(key, known);
  return known;
}

async function make(name: string, options: Partial<FixtureWishes>): Promise<readonly MadeFixtureDocument[]> {
  const generator = await generatorOf(name);
  const values = resolveValues(generator, {}, undefined);
  return makeFixtures({ generator, values, hand: 'right', units: undefined, paper: undefined, scale: undefined, angle: 'third', ...options }, await builtInKinds());
}
