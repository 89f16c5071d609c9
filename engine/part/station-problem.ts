import type { Station } from './station.js';

/** As near as a station's value and its placing must agree, mm. */
const SAME = 1e-6;

/**
 * Words for the first station whose place is not what its value says, for the middle of a sentence; undefined for none.
 * A size is printed from the placing and a face is cut from the value: were they two numbers, the print would lie.
 */
export function stationProblem(stations: readonly Station[]): string | undefined {
  const known = new Map(stations.map((station) => [station.id, station]));
  for (const station of stations) {
    const { id, axis, placing } = station;
    for (const name of namedBy(station)) {
      const other = known.get(name);
      if (other === undefined) return `the station "${id}" is placed from the station "${name}", which is not there`;
      if (other.axis !== axis) return `the station "${id}" of the ${axis} axis is placed from the station "${name}" of the ${other.axis} axis`;
    }
    const value = (name: string): number => known.get(name)?.value ?? NaN;
    const says = placedAt(station, value);
    if (says !== undefined && Math.abs(says - station.value) > SAME) {
      return `the station "${id}" is at ${written(station.value)} mm, but its placing says ${written(says)} mm`;
    }
    if (placing.kind === 'pair' && !isPair(station, known.get(placing.other))) return `the stations "${id}" and "${placing.other}" are not a pair of each other`;
    if (circular(station, known)) return `the station "${id}" is placed from itself`;
  }
  return undefined;
}

/** The stations from which a station is counted. */
export function namedBy({ placing }: Station): readonly string[] {
  switch (placing.kind) {
    case 'datum':
      return [];
    case 'from':
    case 'derived':
      return [placing.station];
    case 'row':
      return [placing.first, placing.previous];
    case 'pair':
      return [placing.about, placing.other];
  }
}

/** Where the placing puts a station, mm; undefined where it does not say. */
function placedAt({ value, placing }: Station, at: (id: string) => number): number | undefined {
  switch (placing.kind) {
    case 'datum':
    case 'derived':
      return undefined;
    case 'from':
      return at(placing.station) + placing.sense * placing.distance.value;
    case 'row':
      // The row may run either way.
      return at(placing.previous) + Math.sign(value - at(placing.previous)) * placing.pitch.value;
    case 'pair':
      return at(placing.about) + (Math.sign(value - at(placing.about)) * placing.width.value) / 2;
  }
}

const isPair = (station: Station, other: Station | undefined): boolean =>
  other?.placing.kind === 'pair' && other.placing.other === station.id && station.placing.kind === 'pair' && other.placing.about === station.placing.about;

/** What a station is placed from, without its partner in a pair. */
const basesOf = (station: Station): readonly string[] => (station.placing.kind === 'pair' ? [station.placing.about] : namedBy(station));

function circular(start: Station, known: ReadonlyMap<string, Station>): boolean {
  const seen = new Set<string>();
  const open = [...basesOf(start)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (id === start.id) return true;
    if (seen.has(id)) continue;
    seen.add(id);
    const station = known.get(id);
    if (station !== undefined) open.push(...basesOf(station));
  }
  return false;
}

const written = (value: number): string => String(Math.round(value * 1e6) / 1e6);
