import { parseLength, type LengthUnit } from '../../units/length.js';
import { UserError } from '../../units/user-error.js';
import { drills, findDrill, type Drill, type DrillSeries } from '../drills.js';

const seriesNames: readonly DrillSeries[] = ['number', 'letter', 'fraction', 'metric'];

/** The drills from one to another of the same series, in steps of `by` (mm) where given. */
function between(first: Drill, last: Drill, by: number | undefined, text: string): readonly Drill[] {
  if (first.series !== last.series) throw new UserError(`drills "${text}" run from a ${first.series} drill to a ${last.series} one: both ends must be of one series.`);
  const [low, high] = [Math.min(first.diameter, last.diameter), Math.max(first.diameter, last.diameter)];
  const span = drills.filter(({ series, diameter }) => series === first.series && diameter >= low - 1e-6 && diameter <= high + 1e-6);
  if (by === undefined) return span;
  return span.filter(({ diameter }) => Math.abs((diameter - low) / by - Math.round((diameter - low) / by)) < 1e-4);
}

/**
 * The drills that an entry of a list means: one name ("#53", "2.05 mm"), a whole series ("number"), or a set ("#1 to #60",
 * "A to Z", "1 to 10 mm by 0.1 mm", "1/16 to 1/2 in by 1/64 in").
 * @param unit the unit of bare numbers.
 * @throws UserError for a drill that is not in the tables.
 */
export function readDrills(text: string, unit: LengthUnit): readonly Drill[] {
  const word = text.trim().toLowerCase().replace(/s$/, '');
  const series = seriesNames.find((name) => name === word);
  if (series !== undefined) return drills.filter((drill) => drill.series === series);
  const set = /^(.+?)\s+to\s+(.+?)(?:\s+by\s+(.+))?$/i.exec(text.trim());
  if (set?.[1] === undefined || set[2] === undefined) return [findDrill(/^\d*\.?\d+$/.test(text.trim()) ? `${text.trim()} ${unit}` : text)];
  const last = set[2];
  const tail = /\s*(mm|in|")$/i.exec(last)?.[1] ?? '';
  const bare = /^(?:\d+[ -])?\d*\.?\d+(?:\/\d+)?$/.test(set[1]);
  const first = bare ? `${set[1]} ${tail}` : set[1];
  const by = set[3] === undefined ? undefined : parseLength(set[3], { unit, what: 'step', sign: 'positive' });
  return between(findDrill(first.trim()), findDrill(last), by, text);
}
