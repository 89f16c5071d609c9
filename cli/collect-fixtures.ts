import type { FixtureKind } from '../engine/plan/fixture/fixture.js';
import { modulesIn } from './modules-in.js';

/** Every kind of fixture in generators/fixtures: a new kind is a new file there. */
export async function collectFixtures(): Promise<readonly FixtureKind[]> {
  const modules = modulesIn(new URL('../generators/fixtures/', import.meta.url));
  return Promise.all(modules.map(async ([, address]) => ((await import(address)) as { default: FixtureKind }).default));
}
