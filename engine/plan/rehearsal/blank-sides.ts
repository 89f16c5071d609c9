import type { Cut } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Axis, Station } from '../../part/station.js';
import { axes, indexOf } from '../../part/author/directions.js';
import { roomOf } from '../../part/author/stock.js';
import type { Bounds } from './bounds.js';

export type End = 'low' | 'high';

/** One side of a blank: where the metal must reach, and what lies there on the part. */
export interface Side {
  readonly axis: Axis;
  readonly end: End;
  /** Coordinate on the part's axis, mm. */
  readonly at: number;
  /** A face of the part lies there, so that the blank's face must lie there too; none where the metal just ends. */
  readonly station?: Station;
  /** The cut by which the part gets that face; none where it is the bar's own. */
  readonly cut?: Cut;
  /** Where the part's own bar ends on this side. */
  readonly bar: number;
}

/** Facets put a face this near to where it is, mm. */
const same = 1e-3;

/** The six sides of the box that the metal must fill. */
export function sidesOf(part: Part, bounds: Bounds): readonly Side[] {
  const room = roomOf(part.stock);
  const cuts = part.operations.flatMap((operation) => operation.cuts);
  return axes.flatMap((axis) =>
    (['low', 'high'] as const).map((end): Side => {
      const raw = bounds[end][indexOf(axis)];
      const bar = room[end][indexOf(axis)];
      const near = part.stations.filter((station) => station.axis === axis && Math.abs(station.value - raw) < same);
      for (const station of near) {
        const cut = cuts.find(({ faces }) => Object.values(faces).some(({ stations }) => stations.includes(station.id)));
        const ofBar = Object.values(part.stock.faces).some(({ stations }) => stations.includes(station.id));
        if (ofBar) return { axis, end, at: station.value, station, bar };
        if (cut !== undefined) return { axis, end, at: station.value, station, cut, bar };
      }
      return { axis, end, at: outward(raw, end, bar, part.units), bar };
    }),
  );
}

/** Sawn and free sides go out to the next round figure, but not beyond the part's own bar. */
function outward(raw: number, end: End, bar: number, unit: Part['units']): number {
  if (Math.abs(raw - bar) < same) return bar;
  const step = unit === 'in' ? 25.4 / 32 : 0.5;
  const at = end === 'low' ? Math.floor(raw / step + 1e-9) * step : Math.ceil(raw / step - 1e-9) * step;
  return end === 'low' ? Math.max(bar, at) : Math.min(bar, at);
}
