import type { Operation } from '../part/part.js';
import type { Cutter, Shop } from '../trade/shop/shop.js';
import { parseLength, type LengthUnit } from '../units/length.js';
import { endMills } from './data/end-mills.js';
import { closedPlanes } from './cut-planes.js';
import { dot } from '../geometry/vector.js';
import type { MachineFrame } from './machine-frame.js';
import type { Part } from '../part/part.js';

/** The largest cutter that a small mill drives in steel, mm. */
const largest = 12.7;

export interface EndMill {
  readonly cutter: Cutter;
  /** What it must enter, mm; absent where nothing bounds it. */
  readonly room?: number;
  /** The diameter that would be best but is not in the shop, mm. */
  readonly lacking?: number;
}

/** The end mills of a shop, small to large; of those that do milling of walls and floors. */
const ownEndMills = (shop: Shop): readonly Cutter[] | undefined =>
  shop.cutters === undefined ? undefined : shop.cutters.filter(({ kind }) => /end mill|slot/i.test(kind)).sort((a, b) => a.diameter - b.diameter);

const usual = (unit: LengthUnit): readonly Cutter[] =>
  endMills[unit].map((text) => ({ kind: 'end mill', diameter: parseLength(text, { unit }), material: 'hss', teeth: 4 }));

/**
 * The narrowest that an operation leaves for its end mill: between two walls that face each other, less what is left on
 * each, and twice the radius of its corners, mm. Infinity where nothing bounds it.
 */
export function roomForMill(part: Part, frame: MachineFrame, operation: Operation): number {
  const left = operation.leave?.find((piece) => typeof piece !== 'string');
  const leave = left === undefined || typeof left === 'string' ? 0 : left.length;
  let room = Infinity;
  for (const cut of operation.cuts) {
    const walls = closedPlanes(part, cut).filter(({ normal }) => Math.abs(dot(normal, frame.z)) < 1e-9);
    for (const a of walls)
      for (const b of walls) {
        if (a.form !== b.form || dot(a.normal, b.normal) > -1 + 1e-9) continue;
        const gap = dot(b.point, a.normal) - dot(a.point, a.normal);
        if (gap > 1e-9) room = Math.min(room, gap - 2 * leave);
      }
    for (const size of cut.sizes) {
      if (size.kind === 'radius' && size.axis !== undefined && walls.length > 0) room = Math.min(room, 2 * size.radius.value);
      if (size.kind === 'arc-slot') room = Math.min(room, size.width.value - 2 * leave);
      if (size.kind === 'hole') room = Math.min(room, size.diameter.value);
    }
  }
  return room;
}

/**
 * The end mill for an operation: of the diameter that it names, else the largest usual one that enters; where the shop does
 * not have it, the largest of the shop that does the same work.
 */
export function chooseEndMill(shop: Shop, unit: LengthUnit, room: number, named: number | undefined): EndMill {
  const own = ownEndMills(shop);
  const bound = Number.isFinite(room) ? { room } : {};
  const most = Math.min(room, largest);
  const wanted: Cutter = named === undefined ? usualUpTo(unit, most) : { kind: 'end mill', diameter: named, material: 'hss', teeth: 2 };
  if (own === undefined) return { cutter: wanted, ...bound };
  // A face asks for no diameter of its own: any end mill of the shop does it.
  const limit = named ?? most;
  const use = own.filter(({ diameter }) => diameter <= limit + 0.005).at(-1);
  if (use === undefined) return { cutter: wanted, lacking: wanted.diameter, ...bound };
  const lacks = named !== undefined && use.diameter < named - 0.005;
  return { cutter: use, ...(lacks ? { lacking: named } : {}), ...bound };
}

function usualUpTo(unit: LengthUnit, most: number): Cutter {
  const usualOnes = usual(unit);
  return usualOnes.filter(({ diameter }) => diameter <= most + 1e-6).at(-1) ?? { ...usualOnes[0]!, diameter: most };
}
