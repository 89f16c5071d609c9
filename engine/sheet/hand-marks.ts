import type { Part } from '../part/part.js';
import type { HandComparison } from '../solid/hand.js';
import { handMark } from './compose/notes-of.js';
import type { PrintItem } from './say/item.js';

/** A cut counts as making the hand when it has at least this share of what the two hands differ by. */
const leastShare = 0.01;

const makersOf = (comparison: HandComparison): ReadonlySet<string> =>
  new Set(comparison.makers.filter(({ volume }) => volume >= leastShare * comparison.leftOver).map(({ cut }) => cut));

/** The features that make the hand, each with the operation that cuts it. */
export function makersInWords(part: Part, comparison: HandComparison): readonly string[] {
  const makers = makersOf(comparison);
  return part.operations.flatMap((operation) =>
    operation.cuts.filter((cut) => makers.has(cut.id)).map((cut) => `${cut.name} (operation ${operation.number})`),
  );
}

/** Puts the mark of the hand after every size that sets or makes a feature which tells the hands apart. */
export function markMakers(part: Part, items: readonly PrintItem[], comparison: HandComparison): readonly PrintItem[] {
  const makers = makersOf(comparison);
  const cuts = part.operations.flatMap((operation) => operation.cuts);
  const byStation = (station: string): boolean => {
    const users = cuts.filter((cut) => cut.stations.includes(station));
    return users.length > 0 && users.every((cut) => makers.has(cut.id));
  };
  return items.map((item) => {
    const makes = item.about.includes(':') ? byStation(item.about) : makers.has(item.about);
    const marked = new Set([...(makes ? [0] : []), ...(item.also ?? []).filter(({ about }) => makers.has(about)).map(({ line }) => line)]);
    // An overall size in brackets makes nothing: it follows from what is marked.
    if (marked.size === 0 || item.texture === true || item.record.reference === true) return item;
    return { ...item, lines: item.lines.map((line, i) => (marked.has(i) ? `${line} ${handMark}` : line)) };
  });
}
