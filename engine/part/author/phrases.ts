import type { Phrase, PhraseSize } from '../cut.js';
import type { Axis, Station } from '../station.js';
import type { Sized } from '../tolerance.js';
import type { Span } from './room.js';

/** A size inside a phrase. */
export const inWords = (size: Sized, sign?: PhraseSize['sign']): PhraseSize => ({
  length: size.value,
  ...(size.tolerance === undefined ? {} : { tolerance: size.tolerance }),
  ...(sign === undefined ? {} : { sign }),
});

/** The plain name of a station's id. */
export const stationName = (id: string): string => id.slice(2).replace(/, (low|high)$/, '');

/** Where a station is, from what it is placed: "12.5 from front face". A datum is its own name. */
export function placeInWords(station: Station): Phrase {
  const { placing } = station;
  switch (placing.kind) {
    case 'datum':
      return [`on ${station.name}`];
    case 'from':
      return [inWords(placing.distance), ` from ${stationName(placing.station)}`];
    case 'derived':
      return [`at the ${station.name}`];
    case 'row':
      return [`in a row at pitch `, inWords(placing.pitch), ` from ${stationName(placing.first)}`];
    case 'pair':
      return [inWords({ value: placing.width.value / 2, purpose: 'location' }), ` each side of ${stationName(placing.about)}`];
  }
}

/** As `placeInWords`, where only one of a pair is meant. */
const oneSide = (station: Station): Phrase =>
  station.placing.kind === 'pair'
    ? [inWords({ value: station.placing.width.value / 2, purpose: 'location' }), ` from ${stationName(station.placing.about)}`]
    : placeInWords(station);

/** What a span of a cut is: a width midway about a line, a depth from a face, a place. Empty where it is open both ways. */
export function spanInWords(axis: Axis, span: Span): Phrase {
  const [low, high] = span;
  if (low === 'open' && high === 'open') return [];
  if (low !== 'open' && high !== 'open') {
    if (low.placing.kind === 'pair' && low.placing.other === high.id)
      return [inWords(low.placing.width), ` across ${axis.toUpperCase()}, midway about ${stationName(low.placing.about)}`];
    if (high.placing.kind === 'from' && high.placing.station === low.id)
      return [inWords(high.placing.distance), ` along ${axis.toUpperCase()} from ${low.name}, which is `, ...placeInWords(low)];
    if (low.placing.kind === 'from' && low.placing.station === high.id)
      return [inWords(low.placing.distance), ` along ${axis.toUpperCase()} from ${high.name}`];
    return [...placeInWords(low), ' to ', ...placeInWords(high)];
  }
  return [`${axis.toUpperCase()} `, ...oneSide((low === 'open' ? high : low) as Station)];
}

/** Joins phrases with a mark between, leaving out empty ones. */
export const joined = (phrases: readonly Phrase[], mark = '; '): Phrase =>
  phrases.filter((phrase) => phrase.length > 0).flatMap((phrase, i) => (i === 0 ? phrase : [mark, ...phrase]));
