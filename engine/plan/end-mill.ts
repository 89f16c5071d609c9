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
  /** Whether the shop has it. */
  readonly have: boolean;
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
      if (size.kind === 'hole') room = Math.min(room, size.diameter.value);
    }
  }
  return room;
}

/** The end mill for an operation: the one that it names, else the largest of the shop (or of those usual) that enters. */
export function chooseEndMill(shop: Shop, unit: LengthUnit, room: number, named: number | undefined): EndMill {
  const own = ownEndMills(shop);
  const bound = Number.isFinite(room) ? { room } : {};
  const wanted = named ?? undefined;
  if (wanted !== undefined) {
    const same = own?.find(({ diameter }) => Math.abs(diameter - wanted) < 0.005);
    return { cutter: same ?? { kind: 'end mill', diameter: wanted, material: 'hss', teeth: 2 }, have: own === undefined || same !== undefined, ...bound };
  }
  const fits = ({ diameter }: Cutter): boolean => diameter <= Math.min(room, largest) + 1e-6;
  const best = own?.filter(fits).at(-1);
  if (best !== undefined) return { cutter: best, have: true, ...bound };
  const usualOnes = usual(unit);
  const cutter = usualOnes.filter(fits).at(-1) ?? { ...usualOnes[0]!, diameter: Math.min(room, largest) };
  return { cutter, have: own === undefined, ...bound };
}
