import type { Axis, Station } from '../station.js';
import type { Stock } from '../part.js';
import type { Vector3 } from '../../geometry/vector.js';
import { acrossOf } from './directions.js';
import { polygonOutline } from './outlines.js';
import { axisFrame } from './cuts/pocket.js';
import type { Room } from './room.js';

/** A face of the stock: at a station where the bar's own face stays as it is, at a bare coordinate where it is cut away. */
export type StockFace = Station | number;

const valueOf = (face: StockFace): number => (typeof face === 'number' ? face : face.value);
const stationsOf = (face: StockFace): { readonly stations: readonly string[] } => ({
  stations: typeof face === 'number' ? [] : [face.id],
});

/** A length of rectangular bar along `axis`, between two faces on each axis. Throws RangeError for faces in the wrong order. */
export function rectangularStock(spec: {
  readonly along: Axis;
  readonly x: readonly [StockFace, StockFace];
  readonly y: readonly [StockFace, StockFace];
  readonly z: readonly [StockFace, StockFace];
}): Stock {
  const [u, v] = acrossOf(spec.along);
  const low = (axis: Axis): number => valueOf(spec[axis][0]);
  const high = (axis: Axis): number => valueOf(spec[axis][1]);
  const outline = polygonOutline(
    [[low(u), low(v)], [high(u), low(v)], [high(u), high(v)], [low(u), high(v)]],
    [`low ${v}`, `high ${u}`, `high ${v}`, `low ${u}`],
  );
  const faces: Record<string, { readonly stations: readonly string[] }> = {};
  for (const axis of ['x', 'y', 'z'] as const) {
    faces[`low ${axis}`] = stationsOf(spec[axis][0]);
    faces[`high ${axis}`] = stationsOf(spec[axis][1]);
  }
  for (const axis of ['x', 'y', 'z'] as const) {
    if (!(low(axis) < high(axis))) throw new RangeError(`the stock runs from ${low(axis)} to ${high(axis)} along ${axis}: the low face comes first`);
  }
  const sides = [high(u) - low(u), high(v) - low(v)].sort((a, b) => b - a);
  return {
    shape: 'rectangular',
    section: sides,
    length: high(spec.along) - low(spec.along),
    forms: [
      {
        kind: 'prism',
        frame: axisFrame(spec.along),
        outline,
        low: low(spec.along),
        high: high(spec.along),
        lowFace: `low ${spec.along}`,
        highFace: `high ${spec.along}`,
      },
    ],
    faces,
  };
}

/** A length of round bar along `axis` about a centre. Throws RangeError for ends in the wrong order, or no diameter. */
export function roundStock(spec: {
  readonly along: Axis;
  readonly centre: readonly [Station, Station];
  readonly diameter: number;
  readonly ends: readonly [StockFace, StockFace];
}): Stock {
  const [low, high] = [valueOf(spec.ends[0]), valueOf(spec.ends[1])];
  const radius = spec.diameter / 2;
  if (!(low < high)) throw new RangeError(`the stock runs from ${low} to ${high} along ${spec.along}: the low end comes first`);
  if (!(radius > 0)) throw new RangeError(`the stock has a diameter of ${spec.diameter}`);
  return {
    shape: 'round',
    section: [spec.diameter],
    length: high - low,
    forms: [
      {
        kind: 'revolution',
        frame: axisFrame(spec.along, spec.centre),
        outline: polygonOutline([[0, low], [radius, low], [radius, high], [0, high]], ['low end', 'side', 'high end', 'axis']),
      },
    ],
    faces: { 'low end': stationsOf(spec.ends[0]), 'high end': stationsOf(spec.ends[1]), side: { stations: [] }, axis: { stations: [] } },
  };
}

/** The box that a stock fills. */
export function roomOf(stock: Stock): Room {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  const include = (point: Vector3, radius: Vector3): void => {
    for (const i of [0, 1, 2] as const) {
      low[i] = Math.min(low[i], point[i] - radius[i]);
      high[i] = Math.max(high[i], point[i] + radius[i]);
    }
  };
  for (const form of stock.forms) {
    if (form.kind === 'half-space') continue;
    const { frame } = form;
    const at = (a: number, b: number, c: number): Vector3 => [
      frame.origin[0] + frame.x[0] * a + frame.y[0] * b + frame.z[0] * c,
      frame.origin[1] + frame.x[1] * a + frame.y[1] * b + frame.z[1] * c,
      frame.origin[2] + frame.x[2] * a + frame.y[2] * b + frame.z[2] * c,
    ];
    for (const segment of form.outline) {
      if (form.kind === 'prism')
        for (const height of [form.low, form.high]) include(at(segment.from[0], segment.from[1], height), [0, 0, 0]);
      else {
        const r = segment.from[0];
        const spread = (i: 0 | 1 | 2): number => r * Math.sqrt(Math.max(0, 1 - frame.z[i] * frame.z[i]));
        include(at(0, 0, segment.from[1]), [spread(0), spread(1), spread(2)]);
      }
    }
  }
  return { low, high };
}

