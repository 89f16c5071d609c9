import { dot, type Vector3 } from '../geometry/vector.js';
import { vectorOf } from '../part/author/directions.js';
import type { Operation, Part, SetUp } from '../part/part.js';
import type { Station } from '../part/station.js';

const dominant = (setUp: SetUp): 'x' | 'y' | 'z' => {
  const up = vectorOf(setUp.up).map(Math.abs);
  return (['x', 'y', 'z'] as const)[up.indexOf(Math.max(...up))] ?? 'z';
};

/** Stations of the flat faces that an operation leaves right across the work; of those alone that look along `toward`, if given. */
const facedBy = (operation: Operation, toward?: Vector3): readonly string[] =>
  operation.cuts.flatMap((cut) =>
    cut.forms.some((form) => form.kind === 'half-space' && (toward === undefined || dot(form.normal, toward) > 0)) ? Object.values(cut.faces).flatMap(({ stations }) => stations) : [],
  );

/**
 * The stations from which a set-up counts. Those of the part, but for one case: along the bed of a lathe a face that is not
 * there yet (it is cut in a later set-up) cannot be touched; then the face that this set-up cuts first is its zero.
 */
export function workingZero(part: Part, setUp: SetUp): readonly Station[] {
  const stations = setUp.zero.flatMap((id) => part.stations.find((station) => station.id === id) ?? []);
  if (setUp.machine !== 'lathe') return stations;
  const along = stations.find(({ axis }) => axis === dominant(setUp));
  const start = part.operations.findIndex((operation) => operation.setUp === setUp.id);
  if (along === undefined || start < 0) return stations;
  const there = new Set([...Object.values(part.stock.faces).flatMap((face) => face.stations), ...part.operations.slice(0, start).flatMap((operation) => facedBy(operation))]);
  const tailstock = vectorOf(setUp.up);
  const first = part.operations.slice(start).filter((operation) => operation.setUp === setUp.id).map((operation) => facedBy(operation, tailstock)).find((faces) => faces.length > 0) ?? [];
  if (there.has(along.id) || first.includes(along.id)) return stations;
  const instead = first.flatMap((id) => part.stations.find((station) => station.id === id && station.axis === along.axis) ?? [])[0];
  return instead === undefined ? stations : stations.map((station) => (station === along ? instead : station));
}
