import { threads, type Thread, type ThreadSeries } from '../../trade/threads.js';
import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';

/** Series of threads by the word with which they are asked for. */
const words = {
  unified: ['unified-coarse', 'unified-fine', 'unified-extra-fine', 'unified-constant', 'unified-special'],
  metric: ['metric-coarse', 'metric-fine', 'miniature'],
  ba: ['british-association'],
  whitworth: ['whitworth', 'whitworth-fine'],
  bsw: ['whitworth'],
  bsf: ['whitworth-fine'],
  model: ['model-40', 'model-32', 'brass-26'],
} as const satisfies Readonly<Record<string, readonly ThreadSeries[]>>;

export type SeriesAsked = keyof typeof words;

export const seriesNames = Object.keys(words) as readonly SeriesAsked[];

/** @throws UserError for a word that stands for no series. */
export function seriesAsked(word: string): SeriesAsked {
  const found = seriesNames.find((name) => name === word.trim().toLowerCase());
  if (found !== undefined) return found;
  throw new UserError(`series "${word.trim()}" is not known: there are ${seriesNames.join(', ')}${nearestClause(word, seriesNames)}.`);
}

/** Diameters of ISO 262, first choice, mm: what is sold everywhere. */
const firstChoice = [1, 1.2, 1.6, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 30, 36, 42, 48];

/** Whether a thread is one that shops have: metric ones of the first choice, BA to 10 and the even ones beyond (common practice). */
function usual(thread: Thread): boolean {
  if (thread.series.startsWith('metric')) return firstChoice.includes(thread.major);
  if (thread.series !== 'british-association') return true;
  const number = parseInt(thread.designation, 10);
  return number <= 10 || number % 2 === 0;
}

/**
 * The threads among which a thread is looked for, small to large, one a diameter: its own series, or of the series asked for
 * those whose pitch comes nearest to its own made larger: coarse stays coarse, and fine fine.
 */
export function candidates(like: Thread, series: readonly ThreadSeries[], factor = 1): readonly Thread[] {
  const own = series.includes(like.series);
  const pool = threads.filter((thread) => series.includes(thread.series) && (usual(thread) || (own && !usual(like))));
  if (own) return pool.filter((thread) => thread.series === like.series).sort(byMajor);
  const off = ({ pitch }: Thread): number => Math.abs(Math.log(pitch / (like.pitch * factor)));
  const majors = [...new Set(pool.map(({ major }) => major))];
  return majors.map((major) => pool.filter((thread) => thread.major === major).sort((a, b) => off(a) - off(b) || b.pitch - a.pitch)[0]!).sort(byMajor);
}

const byMajor = (a: Thread, b: Thread): number => a.major - b.major;

/** The lists in which a thread is looked for, one after the other: its own series, then where that ends what was asked for or its kin. */
export function seriesFor(like: Thread, asked: SeriesAsked | undefined): readonly (readonly ThreadSeries[])[] {
  if (asked === undefined) return [[like.series], ...kin(like)];
  const wanted: readonly ThreadSeries[] = words[asked];
  return wanted.includes(like.series) ? [[like.series], wanted.filter((series) => series !== like.series)] : [wanted];
}

/** Where a thread's own series ends: the series that the trade goes on with, the nearest kin first. */
function kin(like: Thread): readonly (readonly ThreadSeries[])[] {
  const order: Readonly<Record<string, readonly SeriesAsked[]>> = {
    'british-association': ['model', 'whitworth', 'metric'],
    metric: ['metric', 'ba'],
    unified: ['unified', 'ba', 'metric'],
    other: ['model', 'bsf', 'bsw', 'ba', 'unified', 'metric'],
  };
  const family = like.series.startsWith('metric') ? 'metric' : like.series.startsWith('unified') ? 'unified' : like.series === 'british-association' ? like.series : 'other';
  return order[family]!.map((word) => words[word].filter((series) => series !== like.series));
}

/** Threads of the same diameter in the series that are nearest kin: a finer pitch or a coarser one, the nearest pitch first. */
export function otherPitches(like: Thread): readonly Thread[] {
  const family = Object.values(words).find((series) => (series as readonly ThreadSeries[]).includes(like.series) && series.length > 1) as readonly ThreadSeries[] | undefined;
  const off = ({ pitch }: Thread): number => Math.abs(Math.log(pitch / like.pitch));
  return threads.filter((thread) => family?.includes(thread.series) === true && thread.designation !== like.designation && Math.abs(thread.major - like.major) < 1e-6).sort((a, b) => off(a) - off(b));
}
