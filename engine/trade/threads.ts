import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import { britishAssociation } from './british-association-threads.js';
import { metric } from './metric-threads.js';
import { miniature } from './miniature-threads.js';
import type { Thread, ThreadSeries } from './thread.js';
import { unified } from './unified-threads.js';
import { whitworthForm } from './whitworth-threads.js';

export type { Thread, ThreadClassLimits, ThreadSeries } from './thread.js';

export const threads: readonly Thread[] = [...unified, ...metric, ...miniature, ...britishAssociation, ...whitworthForm];

const withoutSigns = (name: string): string => name.toLowerCase().replace(/[\s"#]+|no\.?|\bin\b/g, '').replace(/×|\*/g, 'x').replace(/^m(\d+(?:\.\d+)?)-/, 'm$1x');

const decimals = (name: string): string => name.replace(/(\d)\.(\d*?)0+(?=\D|$)/g, (_, whole: string, rest: string) => (rest === '' ? whole : `${whole}.${rest}`)).replace(/(^|[^\d])\.(\d)/g, '$10.$2');

const keyOf = (name: string): string => decimals(withoutSigns(name));

/** First writer keeps the name: with a dash a bare size is Unified before Whitworth form, with an x the other way round. */
function byName(): ReadonlyMap<string, Thread> {
  const names = new Map<string, Thread>();
  const enter = (name: string, thread: Thread): void => {
    const key = keyOf(name);
    if (!names.has(key)) names.set(key, thread);
  };
  for (const thread of threads) {
    enter(thread.designation, thread);
    for (const alias of thread.aliases) if (thread.formAngle !== 55 || !/^[\d/]+x\d+$/.test(alias)) enter(alias, thread);
  }
  const model = threads.filter(({ series }) => series === 'model-32' || series === 'model-40');
  const others = threads.filter((thread) => !model.includes(thread));
  for (const thread of [...model, ...others]) {
    for (const alias of thread.aliases) {
      enter(alias.replace(/-(?=[^-]*$)/, 'x'), thread);
      enter(alias.replace('x', '-'), thread);
    }
  }
  return names;
}

const named = byName();

/**
 * The thread of that name: "0-80", "0-80 UNF", "M3", "M3x0.5", "4BA", "1/4x40", "1/4-40 ME", "1/4-20". Case and spaces do
 * not matter. Where one diameter and pitch exist in both forms ("1/4-32"), a dash means the Unified thread and an x the
 * model-engineering one.
 * @throws UserError for a name that is not in the tables.
 */
export function findThread(designation: string): Thread {
  const thread = named.get(keyOf(designation));
  if (thread !== undefined) return thread;
  throw new UserError(`thread "${designation.trim()}" is not in the tables (Unified 0000-160 to 2 in, M1 to M52, S0.5 to S0.9, 0 to 16 BA, Whitworth form to 2 in)${nearestThreadClause(designation)}.`);
}

/** Of a diameter alone all its threads are told; metric threads are near by diameter, others by name. */
function nearestThreadClause(designation: string): string {
  const key = keyOf(designation);
  const same = threads.filter(({ designation: name, aliases }) => [name, ...aliases].some((word) => /^[-x]/.test(keyOf(word).slice(key.length)) && keyOf(word).startsWith(key)));
  if (/^m?[\d./]+$/.test(key) && same.length > 0) return `; ${same.length === 1 ? 'the nearest is' : 'of that diameter there are'} ${same.map(({ designation: name }) => name).join(', ')}`;
  const diameter = /^m(\d+(?:\.\d+)?)/.exec(keyOf(designation))?.[1];
  const [near] = diameter === undefined ? [] : nearestThreads(Number(diameter), 'metric-coarse');
  if (near !== undefined) return `; the nearest is ${near.designation}`;
  return nearestClause(designation, threads.flatMap(({ designation: name, aliases }) => [name, ...aliases]));
}

/** The threads in order of how near their major diameter is to `major` (mm); of one series if given. */
export function nearestThreads(major: number, series?: ThreadSeries): readonly Thread[] {
  return threads
    .filter((thread) => series === undefined || thread.series === series)
    .map((thread, index) => ({ thread, index, off: Math.abs(thread.major - major) }))
    .sort((a, b) => a.off - b.off || a.index - b.index)
    .map(({ thread }) => thread);
}
