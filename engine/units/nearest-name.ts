import { closest, distance } from 'fastest-levenshtein';

const plain = (name: string): string => name.toLowerCase().replace(/[\s._-]+/g, '');

/** The name most like `word` (case, spaces and dashes aside); undefined where nothing is near. The first of equals. */
export function nearestName(word: string, names: readonly string[]): string | undefined {
  if (names.length === 0) return undefined;
  const plainNames = names.map(plain);
  const best = closest(plain(word), plainNames);
  if (distance(plain(word), best) > Math.max(2, Math.ceil(plain(word).length / 2))) return undefined;
  return names[plainNames.indexOf(best)];
}

/** "; the nearest is 0-80" or nothing: the tail of a sentence about an unknown name. */
export function nearestClause(word: string, names: readonly string[]): string {
  const name = nearestName(word, names);
  return name === undefined ? '' : `; the nearest is ${name}`;
}
