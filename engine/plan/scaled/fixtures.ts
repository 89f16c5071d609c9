/** Fixtures that a set-up is given at both sizes, by their titles. */
export interface FixtureChange {
  readonly setUp: string;
  readonly operations: readonly number[];
  readonly before: readonly string[];
  readonly after: readonly string[];
  readonly verdict: 'still worth making' | 'others are worth making' | 'no longer worth making' | 'worth making now';
}

/** What became of the fixtures of a set-up; undefined where it is given none at either size. */
export function fixtureChange(setUp: string, operations: readonly number[], before: readonly string[], after: readonly string[]): FixtureChange | undefined {
  if (before.length === 0 && after.length === 0) return undefined;
  const same = before.length === after.length && before.every((title) => after.includes(title));
  const verdict = after.length === 0 ? 'no longer worth making' : before.length === 0 ? 'worth making now' : same ? 'still worth making' : 'others are worth making';
  return { setUp, operations, before, after, verdict };
}
