import type { Cut } from '../../part/cut.js';
import type { SetUp } from '../../part/part.js';
import type { Station } from '../../part/station.js';

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

function namedBy({ placing }: Station): readonly string[] {
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
