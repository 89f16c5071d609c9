import { clearanceDrill, tappingDrill } from '../../../trade/tapping.js';
import { threads, type Thread } from '../../../trade/threads.js';
import { formatLength } from '../../../units/format.js';
import type { ThreadParameter } from '../../parameters.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { candidates, kin, seriesFor } from '../series.js';
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
  const snapped = nearThread(before, exact, series === undefined ? [[before.series], ...kin(before)] : [seriesFor(before, series)]);
  if (snapped === undefined) {
    const ends = [...threads].sort((a, b) => a.major - b.major);
    const cannot =
      series === undefined
        ? `${name} would be ${exact.toFixed(3)} mm, and the tables of threads run from ${ends[0]!.designation} to ${ends.at(-1)!.designation}`
        : `${name} (${before.designation}) would be ${exact.toFixed(3)} mm, and the series ${series} has no thread near it`;
    return { ...common, value: before, because: 'no such thread', source: before.source, cannot };
  }
  const { option, half } = snapped;
  const thread: Thread = { ...option.thread, ...(before.drillsAtHand === undefined ? {} : { drillsAtHand: before.drillsAtHand }) };
  const area = thread.stressArea / (factor ** 2 * before.stressArea) - 1;
  const strayed = series === undefined && thread.series !== before.series;
  const decisions = [
    ...(strayed ? [`the series of ${before.designation} has nothing near: ${thread.designation} is taken from another`] : []),
    ...(area < -WEAKER ? [weaker(before, thread, exact, area)] : []),
  ];
  return {
    ...common,
    value: thread,
    because: `the nearest ${strayed ? 'of a kindred series' : series === undefined ? 'of its own series' : `of the ${series} series`}; stress area ${signed(100 * area)} % against exact scaling`,
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
  const alternative = next === undefined ? '' : `; ${next.designation} would have ${signed(100 * (next.stressArea / ((exact / before.major) ** 2 * before.stressArea) - 1))} %, and look ${signed(100 * (next.major / exact - 1))} % larger`;
  return `${thread.designation} has ${Math.round(-100 * area)} % less stress area than exact scaling${alternative}`;
}

const signed = (value: number): string => `${value >= 0.5 ? '+' : ''}${value.toFixed(0)}`;

/** What comes with a thread: its drills and hexagon. */
function fittings(thread: Thread): readonly string[] {
  const tapping = tappingDrill(thread);
  const system = thread.series.startsWith('metric') || thread.series === 'british-association' ? 'mm' : 'in';
  return [
    `tapping drill ${tapping.drill.name} (${tapping.percent.toFixed(0)} %)`,
    `clearance drill ${clearanceDrill(thread).drill.name}`,
    ...(thread.acrossFlats === undefined ? [] : [`hexagon ${formatLength(thread.acrossFlats, system)} ${system} across flats`]),
  ];
}
