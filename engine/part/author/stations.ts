import type { Axis, Station } from '../station.js';
import type { Sized, Tolerance } from '../tolerance.js';

/** What may be said of a distance beside its value. */
export interface SizeOptions {
  readonly tolerance?: Tolerance;
  readonly purpose?: Sized['purpose'];
}

/** A size with its purpose: `functional` where it has a tolerance of its own and nothing else is said, else `fallback`. */
export function sized(value: number, options: SizeOptions = {}, fallback: Sized['purpose'] = 'size'): Sized {
  const purpose = options.purpose ?? (options.tolerance === undefined ? fallback : 'functional');
  return options.tolerance === undefined ? { value, purpose } : { value, purpose, tolerance: options.tolerance };
}

/** Collects the stations of one part while it is built; each name may be used once an axis. */
export interface StationBook {
  /** A datum of the axis, at `value` mm (0 unless said). */
  datum(axis: Axis, name: string, value?: number): Station;
  /** The station at `distance` mm from another along its axis; a negative distance goes the other way. */
  from(station: Station, distance: number, name: string, options?: SizeOptions): Station;
  /** Two stations `width` mm apart, midway about `about`: low and high, by one name or each by its own. */
  pair(about: Station, width: number, name: string | readonly [string, string], options?: SizeOptions): readonly [Station, Station];
  /** Where other sizes put it: not set and not printed. `by` says which sizes. */
  derived(station: Station, distance: number, name: string, by: string): Station;
  /** `count` stations at equal pitch; the first is given and is one of them. */
  row(first: Station, pitch: number, count: number, name: string, options?: SizeOptions): readonly Station[];
  all(): readonly Station[];
}

/** An empty book. Its functions throw RangeError when a name comes twice on one axis. */
export function stationBook(): StationBook {
  const stations: Station[] = [];
  const enter = (station: Station): Station => {
    if (stations.some((other) => other.id === station.id)) throw new RangeError(`the station "${station.id}" stands twice`);
    stations.push(station);
    return station;
  };
  return {
    datum: (axis, name, value = 0) => enter({ id: `${axis}:${name}`, axis, name, value, placing: { kind: 'datum' } }),
    from: (station, distance, name, options) =>
      enter({
        id: `${station.axis}:${name}`,
        axis: station.axis,
        name,
        value: station.value + distance,
        placing: {
          kind: 'from',
          station: station.id,
          distance: sized(Math.abs(distance), options, 'location'),
          sense: distance < 0 ? -1 : 1,
        },
      }),
    pair: (about, width, name, options) => {
      const names = typeof name === 'string' ? ([name, name] as const) : name;
      const ids = typeof name === 'string' ? ([`${about.axis}:${name}, low`, `${about.axis}:${name}, high`] as const) : ([`${about.axis}:${name[0]}`, `${about.axis}:${name[1]}`] as const);
      const half = (side: 0 | 1): Station =>
        enter({
          id: ids[side],
          axis: about.axis,
          name: names[side],
          value: about.value + (side === 0 ? -width / 2 : width / 2),
          placing: { kind: 'pair', about: about.id, other: ids[side === 0 ? 1 : 0], width: sized(width, options, 'size') },
        });
      return [half(0), half(1)];
    },
    derived: (station, distance, name, by) =>
      enter({
        id: `${station.axis}:${name}`,
        axis: station.axis,
        name,
        value: station.value + distance,
        placing: { kind: 'derived', station: station.id, by },
      }),
    row: (first, pitch, count, name, options) => {
      const row = [first];
      for (let index = 1; index < count; index += 1) {
        const previous = row[index - 1]!;
        row.push(
          enter({
            id: `${first.axis}:${name} ${index + 1}`,
            axis: first.axis,
            name: `${name} ${index + 1}`,
            value: first.value + pitch * index,
            placing: { kind: 'row', first: first.id, previous: previous.id, index, count, pitch: sized(Math.abs(pitch), options, 'size') },
          }),
        );
      }
      return row;
    },
    all: () => [...stations],
  };
}
