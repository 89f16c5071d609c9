import type { Axis, Station } from '../station.js';
import type { Stock } from '../part.js';
import type { Vector2 } from '../../geometry/vector.js';
import { acrossOf } from './directions.js';
import { polygonOutline } from './outlines.js';
import { axisFrame } from './cuts/pocket.js';
import type { StockFace } from './stock.js';

/** Diameter over the corners of a regular hexagon of a width across flats. */
export const overCorners = (flats: number): number => (flats * 2) / Math.sqrt(3);

const valueOf = (face: StockFace): number => (typeof face === 'number' ? face : face.value);
const stationsOf = (face: StockFace): { readonly stations: readonly string[] } => ({ stations: typeof face === 'number' ? [] : [face.id] });

/**
 * A length of hexagon bar along `along`. Two of its flats lie at the pair of stations `flats`; they stay faces of the part
 * where the bar is not cut there. Throws RangeError for ends or flats in the wrong order, and for flats on the bar's own axis.
 */
export function hexagonStock(spec: {
  readonly along: Axis;
  readonly centre: readonly [Station, Station];
  readonly flats: readonly [Station, Station];
  readonly ends: readonly [StockFace, StockFace];
}): Stock {
  const [low, high] = [valueOf(spec.ends[0]), valueOf(spec.ends[1])];
  const [first, second] = spec.flats;
  const width = second.value - first.value;
  const flatAxis = first.axis;
  if (!(low < high)) throw new RangeError(`the stock runs from ${low} to ${high} along ${spec.along}: the low end comes first`);
  if (!(width > 0) || flatAxis !== second.axis) throw new RangeError('the flats of the hexagon are not a low and a high one of one axis');
  if (flatAxis === spec.along) throw new RangeError(`the flats of the hexagon lie across ${spec.along}, the axis of the bar`);
  const middle = spec.centre.find(({ axis }) => axis === flatAxis)?.value ?? 0;
  if (Math.abs((first.value + second.value) / 2 - middle) > 1e-9) throw new RangeError('the flats of the hexagon are not midway about its centre');
  const [u] = acrossOf(spec.along);
  const corner = overCorners(width) / 2;
  // In (toward the high flat, across it); a corner lies on the axis across.
  const around = [-150, -90, -30, 30, 90, 150].map((degrees) => [(degrees * Math.PI) / 180, degrees] as const);
  const corners = around.map(([angle]): Vector2 => (flatAxis === u ? [corner * Math.cos(angle), corner * Math.sin(angle)] : [corner * Math.sin(angle), corner * Math.cos(angle)]));
  const faces = ['flat 2', 'flat 3', 'high flat', 'flat 5', 'flat 6', 'low flat'];
  return {
    shape: 'hexagon',
    section: [width],
    length: high - low,
    forms: [
      {
        kind: 'prism',
        frame: axisFrame(spec.along, spec.centre),
        outline: polygonOutline(corners, faces),
        low,
        high,
        lowFace: 'low end',
        highFace: 'high end',
      },
    ],
    faces: {
      'low end': stationsOf(spec.ends[0]),
      'high end': stationsOf(spec.ends[1]),
      'low flat': { stations: [first.id] },
      'high flat': { stations: [second.id] },
      'flat 2': { stations: [] },
      'flat 3': { stations: [] },
      'flat 5': { stations: [] },
      'flat 6': { stations: [] },
    },
  };
}
