import { describe, expect, it } from 'vitest';
import { stationBook } from '../../engine/part/author/stations.js';
import type { Station } from '../../engine/part/station.js';
import { stationProblem } from '../../engine/part/station-problem.js';

const at = stationBook();
const face = at.datum('x', 'face');
const shoulder = at.from(face, 10, 'shoulder');
at.from(shoulder, -4, 'groove');
at.pair(face, 6, 'sides');
at.row(shoulder, -2.5, 3, 'hole');
at.derived(face, 3.2, 'end of the taper', 'its angle');
const line = at.datum('y', 'line');
const sound = at.all();

/** The stations with one of them changed. */
const changed = (id: string, change: Partial<Station>): readonly Station[] => sound.map((station) => (station.id === id ? { ...station, ...change } : station));

it('finds nothing in stations of the book, whichever way they run', () => {
  expect(stationProblem(sound)).toBeUndefined();
});

describe('finds', () => {
  const ten = { value: 10, purpose: 'size' } as const;
  it.each<[string, readonly Station[], string]>([
    ['a value that is not what the distance says', changed('x:shoulder', { value: 10.01 }), 'the station "x:shoulder" is at 10.01 mm, but its placing says 10 mm'],
    ['half of a pair off its middle', changed('x:sides, high', { value: 4 }), 'the station "x:sides, high" is at 4 mm, but its placing says 3 mm'],
    ['one of a row off its pitch', changed('x:hole 3', { value: 4 }), 'the station "x:hole 3" is at 4 mm, but its placing says 5 mm'],
    ['a base that is not there', changed('x:groove', { placing: { kind: 'from', station: 'x:gone', distance: ten, sense: 1 } }), 'the station "x:groove" is placed from the station "x:gone", which is not there'],
    ['a base on another axis', changed('x:shoulder', { placing: { kind: 'from', station: line.id, distance: ten, sense: 1 } }), 'the station "x:shoulder" of the x axis is placed from the station "y:line" of the y axis'],
    ['a pair of three', changed('x:sides, low', { placing: { kind: 'pair', about: 'x:face', other: 'x:groove', width: { value: 6, purpose: 'size' } } }), 'the stations "x:sides, low" and "x:groove" are not a pair of each other'],
    [
      'two placed from each other',
      changed('x:face', { placing: { kind: 'from', station: 'x:shoulder', distance: ten, sense: -1 } }),
      'the station "x:face" is placed from itself',
    ],
  ])('%s', (_, stations, words) => {
    expect(stationProblem(stations)).toBe(words);
  });
});
