import { add, scale } from '../geometry/vector.js';
import type { Cut, RadiusSize } from '../part/cut.js';
import { coordinate } from './figures.js';
import { directionOnMachine, toMachine, type MachineFrame } from './machine-frame.js';
import { table, type OperationSettings, type Reader, type Setting } from './setting.js';

/** A cutter leaves a corner as it is drawn when its radius is that of the corner, within this, mm. */
const sameRadius = 0.005;

interface Stop {
  readonly what: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Where the middle of the cutter stops at the round ends of slots, and in the corners that keep the cutter's own radius.
 * @param cutter radius of the end mill, mm.
 */
export function stopSettings(frame: MachineFrame, reader: Reader, cutter: number, cuts: readonly Cut[]): OperationSettings {
  const stops = cuts.flatMap((cut) => cut.sizes.flatMap((size) => (size.kind === 'radius' ? stopsOf(frame, cutter, cut, size) : [])));
  const { known } = frame;
  const cells = ({ what, x, y }: Stop): readonly (string | undefined)[] => [
    what,
    ...(known.x ? [coordinate(x, reader.unit), reader.dial('x', x)] : [undefined, undefined]),
    ...(known.y ? [coordinate(y, reader.unit), reader.dial('y', y)] : [undefined, undefined]),
  ];
  const settings = stops.map(({ what, x, y }): Setting => {
    const places = [...(known.x ? [`X ${coordinate(x, reader.unit)}`] : []), ...(known.y ? [`Y ${coordinate(y, reader.unit)}`] : [])];
    return { what, ...(known.x ? { x } : {}), ...(known.y ? { y } : {}), text: `${what}: middle of the cutter at ${places.join(', ')}` };
  });
  if (stops.length === 0 || !(known.x || known.y)) return { settings: [], blocks: [] };
  return { settings, blocks: [table(['Middle of the cutter', 'X', 'X dial', 'Y', 'Y dial'], stops.map(cells))] };
}

function stopsOf(frame: MachineFrame, cutter: number, cut: Cut, size: RadiusSize): readonly Stop[] {
  if (size.axis === undefined || Math.abs(directionOnMachine(frame, size.axis)[2]) < 1 - 1e-9) return [];
  const spare = size.radius.value - cutter;
  const corner = Object.hasOwn(cut.faces, 'fillet') && Math.abs(spare) <= sameRadius;
  if (!corner && !(size.full === true && spare >= -sameRadius)) return [];
  return size.centres
    .map((centre, i): Stop => {
      const [x, y] = toMachine(frame, corner ? centre : add(centre, scale(size.toward[i]!, Math.max(0, spare))));
      return { what: corner ? `${cut.name}, corner` : `${cut.name}, end`, x, y };
    })
    .sort((a, b) => a.x - b.x || a.y - b.y);
}
