import type { Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { boundsOf, cutsById } from '../views/marks.js';

/**
 * The stations that the finished part still shows: those on which one of its faces lies, those of the holes and turned
 * features that it has, and the datums from which any of these is counted.
 */
export function shownStations(part: Part, solid: Solid): ReadonlySet<string> {
  const shown = new Set<string>();
  const cuts = cutsById(part);
  const present = new Set<number>(solid.faceOfTriangle);
  const made = new Set<string>();
  solid.faces.forEach(({ tag }, i) => {
    if (!present.has(i)) return;
    made.add(tag.cut);
    const face = tag.cut === 'stock' ? part.stock.faces[tag.face] : cuts.get(tag.cut)?.faces[tag.face];
    for (const station of [...(face?.stations ?? []), ...boundsOf(face)]) shown.add(station);
  });
  const byId = new Map(part.stations.map((station) => [station.id, station]));
  for (const id of made)
    for (const station of cuts.get(id)?.stations ?? []) if (!isFace(part, station)) shown.add(station);
  for (const id of [...shown]) {
    const placing = byId.get(id)?.placing;
    if (placing?.kind === 'pair') shown.add(placing.about);
    if (placing?.kind === 'from' && byId.get(placing.station)?.placing.kind === 'datum') shown.add(placing.station);
    if (placing?.kind === 'row') {
      shown.add(placing.first);
      const first = byId.get(placing.first)?.placing;
      if (first?.kind === 'from' && byId.get(first.station)?.placing.kind === 'datum') shown.add(first.station);
    }
  }
  return shown;
}

/** True for a station that some face lies on or ends at: it counts by that face, not by the cut that names it. */
function isFace(part: Part, station: string): boolean {
  if (Object.values(part.stock.faces).some((face) => face.stations.includes(station))) return true;
  return part.operations.some((operation) =>
    operation.cuts.some((cut) => Object.values(cut.faces).some((face) => face.stations.includes(station) || boundsOf(face).includes(station))),
  );
}
