import { scale, add, type Vector3 } from '../geometry/vector.js';
import type { ArcSidesSize, ArcSlotSize, Cut } from '../part/cut.js';
import { formatAngle } from '../units/format.js';
import { coordinate, figure } from './figures.js';
import { directionOnMachine, toMachine, type MachineFrame } from './machine-frame.js';
import { table, type OperationSettings, type Reader, type Setting } from './setting.js';

/** Cutter and slot are of one width within this, mm. */
const sameWidth = 0.01;

interface Course {
  readonly what: string;
  readonly radius: number;
  readonly angles: readonly [number, number];
}

/**
 * Cuts that are swung about a centre, under a spindle that stands still on the line of the arc's middle: how far from the
 * pivot it stands, and from which angle to which the work turns. Angles of the work count from the place where that line
 * lies under the spindle, anticlockwise as seen from above.
 * @param cutter radius of the end mill, mm.
 */
export function swingSettings(frame: MachineFrame, reader: Reader, cutter: number, cuts: readonly Cut[]): OperationSettings {
  const found = cuts.flatMap((cut) => cut.sizes.flatMap((size) => (size.kind === 'arc-slot' || size.kind === 'arc-sides' ? [{ cut, size }] : [])));
  const [first] = found;
  // The table turns level: an arc that stands upright in the set-up cannot be swung on it.
  if (first === undefined || Math.abs(directionOnMachine(frame, first.size.axis)[2]) < 1 - 1e-9) return { settings: [], blocks: [] };
  const courses = found.flatMap(({ cut, size }) => coursesOf(frame, cutter, cut, size));
  const narrow = found.some(({ size }) => size.kind === 'arc-slot' && size.width.value - 2 * cutter > sameWidth);
  const [x, y] = toMachine(frame, first.size.centre);
  const pivot = `Pivot at X ${coordinate(x, reader.unit)}, Y ${coordinate(y, reader.unit)}. At 0° the ${first.size.line} lies under the spindle; + turns the work anticlockwise, seen from above. Stops for the whole swing: chord at the spindle.`;
  const rows = courses.map(({ what, radius, angles: [from, to] }) => [what, figure(radius, reader.unit), signed(from), signed(to), figure(chordOf(radius, to - from), reader.unit)]);
  const lines = [pivot, ...(narrow ? ['Ends: first plunge a cutter as wide as the slot at both angles of its middle line.'] : [])];
  const settings = courses.map(({ what, radius, angles: [from, to] }): Setting => ({ what, radius, angles: [from, to], text: `${what}: spindle ${figure(radius, reader.unit)} from the pivot, work from ${signed(from)} to ${signed(to)}` }));
  return { settings, blocks: [{ kind: 'lines', lines }, table(['Swing', 'Spindle from pivot', 'Work from', 'to', 'Chord'], rows)] };
}

/** Between two places of a point of the work so far from the pivot, a swing apart: 2 R sin(a/2), mm. */
const chordOf = (radius: number, swing: number): number => 2 * radius * Math.sin((swing * Math.PI) / 360);

/** "+12.5°", "\u22128.25°". */
const signed = (degrees: number): string => `${degrees > 0 ? '+' : degrees < 0 ? '\u2212' : ''}${formatAngle(Math.abs(degrees))}`;

function coursesOf(frame: MachineFrame, cutter: number, cut: Cut, size: ArcSlotSize | ArcSidesSize): readonly Course[] {
  const angles = workAngles(frame, size);
  if (size.kind === 'arc-sides')
    return [
      { what: `${cut.name}, outer`, radius: size.outer + cutter, angles },
      { what: `${cut.name}, inner`, radius: size.inner - cutter, angles },
    ];
  const spare = size.width.value / 2 - cutter;
  const middle: Course = { what: `${cut.name}, middle line`, radius: size.radius.value, angles };
  if (2 * spare <= sameWidth) return [middle];
  return [middle, { what: `${cut.name}, outer wall`, radius: size.radius.value + spare, angles }, { what: `${cut.name}, inner wall`, radius: size.radius.value - spare, angles }];
}

/** Turning the work brings each end of the arc under the spindle, which stands over the middle: the other way than the end lies. */
function workAngles(frame: MachineFrame, size: ArcSlotSize | ArcSidesSize): readonly [number, number] {
  const zero = directionOnMachine(frame, size.middle);
  const angle = (point: Vector3): number => {
    const [u, v] = directionOnMachine(frame, add(point, scale(size.centre, -1)));
    const turn = Math.atan2(v, u) - Math.atan2(zero[1], zero[0]);
    return (-Math.atan2(Math.sin(turn), Math.cos(turn)) * 180) / Math.PI;
  };
  return size.ends.map(angle).sort((a, b) => a - b) as [number, number];
}
