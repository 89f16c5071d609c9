import type { Operation, Part } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import type { Sized, Tolerance } from '../../part/tolerance.js';

/** How wide a tolerance is in all, mm; undefined for none, and for one that is open to a side. */
export function widthOf(tolerance: Tolerance | undefined): number | undefined {
  switch (tolerance?.kind) {
    case 'plus-minus':
      return 2 * tolerance.value;
    case 'deviations':
    case 'fit':
      return tolerance.upper - tolerance.lower;
    case 'maximum':
    case 'minimum':
    case undefined:
      return undefined;
  }
}

/** A size whose tolerance an operation must hold by the cutter itself. */
export interface CloseSize {
  readonly what: string;
  readonly size: Sized;
  readonly width: number;
}

/** The station at the other side of a distance, and the distance. */
export function distanceOf(station: Station): { readonly from: string; readonly distance: Sized } | undefined {
  const { placing } = station;
  if (placing.kind === 'from') return { from: placing.station, distance: placing.distance };
  if (placing.kind === 'pair') return { from: placing.other, distance: placing.width };
  if (placing.kind === 'row') return { from: placing.previous, distance: placing.pitch };
  return undefined;
}

/** Toleranced diameters of an operation, and toleranced distances both ends of which it cuts. */
export function closeSizes(part: Part, operation: Operation): readonly CloseSize[] {
  const own = new Set(operation.cuts.flatMap(({ stations }) => stations));
  const diameters = operation.cuts.flatMap(({ name, sizes }) =>
    sizes.flatMap((size): readonly CloseSize[] => {
      if (size.kind !== 'hole' && size.kind !== 'counterbore' && size.kind !== 'diameter') return [];
      const width = widthOf(size.diameter.tolerance);
      return width === undefined ? [] : [{ what: name, size: size.diameter, width }];
    }),
  );
  const distances = part.stations.filter(({ id }) => own.has(id)).flatMap((station): readonly CloseSize[] => {
    const told = distanceOf(station);
    const width = widthOf(told?.distance.tolerance);
    return told === undefined || width === undefined || !own.has(told.from) ? [] : [{ what: station.name, size: told.distance, width }];
  });
  return [...diameters, ...distances];
}

/** The closest tolerance that an operation holds, mm in all; also of distances to what was cut before. */
export function closestTolerance(part: Part, operation: Operation): number | undefined {
  const own = new Set(operation.cuts.flatMap(({ stations }) => stations));
  const distances = part.stations.filter(({ id }) => own.has(id)).flatMap((station) => widthOf(distanceOf(station)?.distance.tolerance) ?? []);
  const widths = [...distances, ...closeSizes(part, operation).map(({ width }) => width)];
  return widths.length === 0 ? undefined : Math.min(...widths);
}
