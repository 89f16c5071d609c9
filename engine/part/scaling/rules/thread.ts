import { clearanceDrill, tappingDrill } from '../../../trade/tapping.js';
import { threads, type Thread } from '../../../trade/threads.js';
import { formatLength } from '../../../units/format.js';
import type { ThreadParameter } from '../../parameters.js';
import { signedWhole } from '../near-decimals.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { candidates, seriesFor, type SeriesAsked } from '../series.js';
import { nearestOf, type Snapped } from '../snap.js';

/** A thread with so much less area in tension than exact scaling would leave is asked about, part of one: common practice. */
export const WEAKER = 0.1;

/**
 * The standard thread nearest in diameter, in the thread's own series or the one asked for; where its own ends, in the series
 * that the trade goes on with. Its hexagon, tapping and clearance drills go with it.
 */
export function threadRule({ name, value, factor, series }: RuleTask<ThreadParameter>): Outcome {
  const before = value as Thread;
  const exact = exactly(before.major * factor);
  const common = { exact, rule: 'thread' };
  const snapped = nearThread(before, exact, seriesFor(before, series));
  if (snapped === undefined) {
    const ends = [...threads].sort((a, b) => a.major - b.major);
    const cannot =
      series === undefined
        ? `${name} would be ${exact.toFixed(3)} mm, and the tables of threads run from ${ends[0]!.designation} to ${ends.at(-1)!.designation}`
        : `${name} (${before.designation}) would be ${exact.toFixed(3)} mm, and the series ${series} has no thread near it: ${endOf(before, series, exact)}`;
    return { ...common, value: before, because: 'no such thread', source: before.source, cannot };
  }
  const { option, half } = snapped;
  const thread: Thread = { ...option.thread, ...(before.drillsAtHand === undefined ? {} : { drillsAtHand: before.drillsAtHand }) };
  const area = areaAgainstExact(before, thread, factor);
  const strayed = series === undefined && thread.series !== before.series;
  const decisions = [
    ...(strayed ? [`the series of ${before.designation} has nothing near: ${thread.designation} is taken from another`] : []),
    ...(area < -WEAKER ? [weaker(before, thread, exact, area)] : []),
  ];
  return {
    ...common,
    value: thread,
    because: `the nearest ${strayed ? 'of a kindred series' : series === undefined ? 'of its own series' : `of the ${series} series`}; ${areaWords(before, thread, factor)}`,
    source: thread.source,
    half,
    knockOn: fittings(thread),
    ...(decisions.length === 0 ? {} : { decision: decisions.join('; ') }),
  };
}

/** The thread of the first series that has one near. */
export function nearThread(like: Thread, exact: number, series: readonly (readonly Thread['series'][])[]): Snapped<{ readonly size: number; readonly thread: Thread }> | undefined {
  for (const each of series) {
    const found = nearestOf(candidates(like, each, exact / like.major).map((thread) => ({ size: thread.major, thread })), exact);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Threads to choose from about one, for a look at the next larger. */
const nextLarger = (thread: Thread): Thread | undefined => candidates(thread, [thread.series]).find(({ major }) => major > thread.major + 1e-6);

function weaker(before: Thread, thread: Thread, exact: number, area: number): string {
  const next = nextLarger(thread);
  const alternative = next === undefined ? '' : `; ${next.designation} would have ${signedWhole(100 * (next.stressArea / ((exact / before.major) ** 2 * before.stressArea) - 1))} %, and look ${Math.round(100 * (next.major / exact - 1))} % larger`;
  return `${thread.designation} has ${Math.round(-100 * area)} % less stress area than exact scaling${alternative}`;
}

/** Stress area against exact scaling, less one. */
const areaAgainstExact = (before: Thread, thread: Thread, factor: number): number => thread.stressArea / (factor ** 2 * before.stressArea) - 1;

export const areaWords = (before: Thread, thread: Thread, factor: number): string => `stress area ${signedWhole(100 * areaAgainstExact(before, thread, factor))} % against exact scaling`;

/** The end of a series beyond which a thread was looked for. */
function endOf(before: Thread, series: SeriesAsked, exact: number): string {
  const all = seriesFor(before, series).flatMap((each) => candidates(before, each, exact / before.major)).sort((a, b) => a.major - b.major);
  const small = exact < all[0]!.major;
  return `its ${small ? 'smallest' : 'largest'} is ${(small ? all[0]! : all.at(-1)!).designation}`;
}

/** No larger tap or die is commonly held, mm: common practice. */
const LARGEST_TAP = 25.4;

/** What comes with a thread: its drills and hexagon, and how one so large is cut. */
export function fittings(thread: Thread): readonly string[] {
  const tapping = tappingDrill(thread);
  const system = thread.threadsPerInch === undefined ? 'mm' : 'in';
  return [
    `tapping drill ${tapping.drill.name} (${tapping.percent.toFixed(0)} %)`,
    `clearance drill ${clearanceDrill(thread).drill.name}`,
    ...(thread.acrossFlats === undefined ? [] : [`hexagon ${formatLength(thread.acrossFlats, system)} ${system} across flats`]),
    ...(thread.major > LARGEST_TAP + 1e-6 ? ['larger than taps and dies that are commonly held: cut in the lathe'] : []),
  ];
}
