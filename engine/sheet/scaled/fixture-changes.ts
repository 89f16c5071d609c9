import type { Part } from '../../part/part.js';
import { findingsOfSound } from '../../plan/fixture/check-fixture.js';
import type { Fixture, FixtureKind } from '../../plan/fixture/fixture.js';
import { needsOf } from '../../plan/fixture/needs-of.js';
import { runsOf } from '../../plan/runs.js';
import { fixtureChange, type FixtureChange } from '../../plan/scaled/fixtures.js';
import { statesOf } from '../../plan/states/state.js';
import { handsOfPart } from '../../solid/hands-of-part.js';
import { loadKernel, type Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { chosenKinds } from '../fixture/choosing.js';
import { stakesByOperation } from '../fixture/stakes-by-operation.js';

/** The fixtures that each set-up of a part is given before it is scaled and after, set-up by set-up. */
export async function fixtureChanges(before: Part, after: Part, asked: { readonly unit: LengthUnit; readonly shop: Shop | undefined; readonly kinds: readonly FixtureKind[] }): Promise<readonly FixtureChange[]> {
  const kernel = await loadKernel();
  const [was, now] = [titlesBySetUp(kernel, before, asked), titlesBySetUp(kernel, after, asked)];
  return runsOf(after).flatMap(({ setUp, operations }) => fixtureChange(setUp.id, operations.map(({ number }) => number), was.get(setUp.id) ?? [], now.get(setUp.id) ?? []) ?? []);
}

function titlesBySetUp(kernel: Kernel, part: Part, { unit, shop, kinds }: { readonly unit: LengthUnit; readonly shop: Shop | undefined; readonly kinds: readonly FixtureKind[] }): ReadonlyMap<string, readonly string[]> {
  const comparison = handsOfPart(kernel, part);
  const states = statesOf(kernel, part);
  const needs = needsOf(kernel, part, states, { shop, unit, comparison });
  const stakes = stakesByOperation(part, states, { unit, shop, makers: comparison.makers });
  const sound = (fixture: Fixture): boolean => findingsOfSound(kernel, fixture, states) !== undefined;
  const titles = new Map<string, string[]>();
  for (const need of needs) titles.set(need.setUp.id, [...(titles.get(need.setUp.id) ?? []), ...chosenKinds(kinds, need, stakes, sound).map(({ kind }) => kind.title)]);
  return titles;
}
