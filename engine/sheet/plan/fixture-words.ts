import type { RunGround } from './plan-ground.js';

/** What holds the work, by the name and the number of its own sheets. */
export function fixtureWords({ fixture }: RunGround): string | undefined {
  if (fixture === undefined) return undefined;
  return `${fixture.title.charAt(0).toLowerCase()}${fixture.title.slice(1)}, sheets F${fixture.need.operations[0]!.number}`;
}
