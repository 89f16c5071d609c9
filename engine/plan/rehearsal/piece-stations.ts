import type { Cut } from '../../part/cut.js';
import type { SetUp } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import { namedBy } from '../../part/station-problem.js';
import type { Sized } from '../../part/tolerance.js';

/** The stations that some cuts and set-ups name, with all from which these are counted, in the order of the part. */
export function stationsUsed(all: readonly Station[], cuts: readonly Cut[], setUps: readonly SetUp[], blankFaces: readonly string[]): readonly Station[] {
  const byId = new Map(all.map((station) => [station.id, station]));
  const used = new Set<string>();
  const enter = (id: string): void => {
    const station = byId.get(id);
    if (station === undefined || used.has(id)) return;
    used.add(id);
    for (const other of namedBy(station)) enter(other);
  };
  for (const cut of cuts) {
    for (const id of cut.stations) enter(id);
    for (const face of Object.values(cut.faces)) for (const id of [...face.stations, ...(face.bounds ?? [])]) enter(id);
  }
  for (const setUp of setUps) for (const id of [...setUp.zero, ...(setUp.grip?.between ?? [])]) enter(id);
  for (const id of blankFaces) enter(id);
  return all.filter(({ id }) => used.has(id));
}

/**
 * Stations counted anew where the datum of an axis lies on nothing that the piece has: from the face of the piece that is
 * nearest to it. The old datum stays for the zero of the set-ups, so that all settings are those of the part.
 * @param faces stations with a face on the piece.
 */
export function countedAnew(stations: readonly Station[], isThere: (station: Station) => boolean, faces: readonly Station[]): readonly Station[] {
  const lost = stations.filter((station) => station.placing.kind === 'datum' && !isThere(station) && faces.some(({ axis }) => axis === station.axis));
  const instead = new Map(lost.map((datum) => [datum.id, nearestFace(datum, faces)]));
  return stations.map((station): Station => {
    if ([...instead.values()].some((face) => face.id === station.id)) return { ...station, placing: { kind: 'datum' } };
    const { placing } = station;
    const face = placing.kind === 'from' ? instead.get(placing.station) : placing.kind === 'pair' ? instead.get(placing.about) : undefined;
    if (face === undefined || (placing.kind !== 'from' && placing.kind !== 'pair')) return station;
    const distance = station.value - face.value;
    const size: Sized = placing.kind === 'from' ? placing.distance : halved(placing.width);
    return { ...station, placing: { kind: 'from', station: face.id, distance: { ...size, value: Math.abs(distance) }, sense: distance < 0 ? -1 : 1 } };
  });
}

/** One side of a pair has half of what the pair may be off. */
function halved(width: Sized): Sized {
  const { tolerance, purpose } = width;
  if (tolerance?.kind === 'plus-minus') return { value: width.value, purpose, tolerance: { ...tolerance, value: tolerance.value / 2 } };
  if (tolerance?.kind === 'deviations') return { value: width.value, purpose, tolerance: { ...tolerance, upper: tolerance.upper / 2, lower: tolerance.lower / 2 } };
  return { value: width.value, purpose };
}

const nearestFace = (datum: Station, faces: readonly Station[]): Station =>
  faces.filter(({ axis }) => axis === datum.axis).reduce((best, face) => (Math.abs(face.value - datum.value) < Math.abs(best.value - datum.value) ? face : best));
