import { add, dot, scale, type Vector3 } from '../../geometry/vector.js';
import type { Part } from '../../part/part.js';
import type { Axis } from '../../part/station.js';
import { indexOf, vectorOf } from '../../part/author/directions.js';
import { roomOf } from '../../part/author/stock.js';
import { formsToSolid, stockForms } from '../../solid/build.js';
import type { Kernel } from '../../solid/kernel.js';
import { metalWithin } from '../../solid/within.js';
import { boundsOfSolid, partFrame, type Bounds } from './bounds.js';
import type { Region } from './region.js';

/**
 * How far apart trials stand so that no cut of one comes into the reach of cutter and holder of another, nor into the metal
 * beside and under it; up to the next round figure. A cut that runs along the whole blank is one for all.
 */
export function pitchOf(kernel: Kernel, piece: Part, regions: readonly Region[], axis: Axis): number {
  const i = indexOf(axis);
  const bar = formsToSolid(kernel, stockForms(piece), [], { segments: 32 });
  const room = roomOf(piece.stock);
  const chips = piece.operations.flatMap(({ cuts }) =>
    cuts.flatMap((cut): Bounds[] => {
      if (cut.forms.length === 0) return [];
      const taken = boundsOfSolid(metalWithin(kernel, bar, cut.forms.map((form) => ({ cut: cut.id, form })), 32), partFrame);
      return taken === undefined || (taken.low[i] < room.low[i] + 1e-3 && taken.high[i] > room.high[i] - 1e-3) ? [] : [taken];
    }),
  );
  const reaches = regions.flatMap((region) => region.boxes.map(({ bounds }) => reachAlong(region, bounds, axis)));
  const least = Math.max(0, ...chips.flatMap(({ low, high }) => reaches.flatMap(([from, to]) => [to - low[i], high[i] - from])));
  const step = piece.units === 'in' ? 25.4 / 32 : 0.5;
  return Math.ceil(least / step - 1e-9) * step;
}

/** From where to where a box along the axes of a machine reaches along an axis of the part. */
function reachAlong({ frame }: Region, { low, high }: Bounds, axis: Axis): readonly [number, number] {
  const along = vectorOf(`+${axis}`);
  const values = [0, 1, 2, 3, 4, 5, 6, 7].map((corner) => {
    const pick = (i: 0 | 1 | 2): number => ((corner >> i) & 1 ? high[i] : low[i]);
    const offset: Vector3 = add(add(scale(frame.x, pick(0)), scale(frame.y, pick(1))), scale(frame.z, pick(2)));
    return dot(add(frame.origin, offset), along);
  });
  return [Math.min(...values), Math.max(...values)];
}
