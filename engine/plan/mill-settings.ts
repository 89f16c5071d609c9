import { stationName } from '../part/author/phrases.js';
import type { Cut } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';
import { formatAngle } from '../units/format.js';
import { dot } from '../geometry/vector.js';
import { closedPlanes, type CutPlane } from './cut-planes.js';
import type { Solid } from '../solid/model.js';
import type { Extents } from './extents.js';
import { coordinate, figure } from './figures.js';
import { directionOnMachine, toMachine, type MachineFrame } from './machine-frame.js';
import { highestIn } from './touch.js';
import { table, type OperationSettings, type Reader, type Setting } from './setting.js';

/** Where an axis and the side of the cutter on it have words. */
const sides = { x: ['left of it', 'right of it'], y: ['near side', 'far side'] } as const;

interface Row {
  readonly setting: Setting;
  readonly cells: readonly (string | undefined)[];
}

interface MillCase {
  readonly part: Part;
  readonly frame: MachineFrame;
  readonly reader: Reader;
  /** Radius of the end mill or the saw, mm. */
  readonly radius: number;
  /** Thickness of a saw, which lies level; its settings are those of its lower face. */
  readonly saw?: number;
  readonly extents: Extents | undefined;
  /** The work as the operation finds it, where that is known. */
  readonly before: Solid | undefined;
}

/** Walls and floors of an operation on the mill: where the cutter's middle stands for each, with its radius allowed for. */
export function millSettings(mill: MillCase, operation: Operation): OperationSettings {
  const planes = operation.cuts.flatMap((cut) => closedPlanes(mill.part, cut).map((plane) => ({ plane, cut })));
  const rows = planes.flatMap(({ plane, cut }) => wallRow(mill, plane, cut) ?? floorRow(mill, plane, cut) ?? roofRow(mill, plane, cut) ?? []);
  const seen = new Set<string>();
  const once = rows.filter(({ setting }) => !seen.has(setting.text) && seen.add(setting.text));
  const order = ({ setting }: Row): number => (setting.x !== undefined ? 0 : setting.y !== undefined ? 1 : 2);
  // Walls from the left and from near to far, floors from the top down: the order in which they are cut.
  const placed = ({ setting }: Row): number => setting.x ?? setting.y ?? -(setting.z ?? 0);
  const sorted = [...once].sort((a, b) => order(a) - order(b) || placed(a) - placed(b));
  const oblique = planes.filter(({ plane }) => plane.station === undefined && Math.max(...directionOnMachine(mill.frame, plane.normal).map(Math.abs)) < 1 - 1e-9);
  const rounds = [...planes.flatMap(({ plane, cut }) => touchLine(mill, plane, cut) ?? []), ...operation.cuts.flatMap((cut) => roundRows(mill, cut))];
  const lines = [
    ...oblique.map(({ plane, cut }) => `${cut.name}: the face leans ${formatAngle(leanOf(mill, plane))} from level in this set-up; set the head or the work over.`),
    ...rounds.map(({ text }) => text),
    ...(mill.saw === undefined ? [] : [`Z is that of the saw’s lower face; the saw is ${figure(mill.saw, mill.reader.unit)} thick: measure it, and the first slot it cuts.`]),
  ];
  return {
    settings: [...sorted.map(({ setting }) => setting), ...rounds, ...lines.slice(0, oblique.length).map((text): Setting => ({ what: 'angle', text }))],
    blocks: [
      ...(sorted.length === 0 ? [] : [table(['Finished face', 'Cutter', 'Set', 'Dial'], sorted.map(({ cells }) => cells))]),
      ...(lines.length === 0 ? [] : [{ kind: 'lines' as const, lines }]),
    ],
  };
}

const leanOf = ({ frame }: MillCase, plane: CutPlane): number => (Math.acos(Math.min(1, Math.abs(directionOnMachine(frame, plane.normal)[2]))) * 180) / Math.PI;

const planeName = (plane: CutPlane, cut: Cut): string => (plane.station === undefined ? cut.name : stationName(plane.station.id));

function wallRow({ frame, reader, radius, extents }: MillCase, plane: CutPlane, cut: Cut): Row | undefined {
  const normal = directionOnMachine(frame, plane.normal);
  const axis = (['x', 'y'] as const).find((_, i) => Math.abs(normal[i]!) > 1 - 1e-9);
  if (axis === undefined || !frame.known[axis]) return undefined;
  const index = axis === 'x' ? 0 : 1;
  const side = Math.sign(normal[index]);
  const wall = toMachine(frame, plane.point)[index];
  const end = side > 0 ? extents?.[axis].high : extents?.[axis].low;
  // Nothing stands on the cutter's side of a wall at the end of the work.
  if (end !== undefined && (end - wall) * side < 1e-6) return undefined;
  const centre = wall + side * radius;
  const letter = axis.toUpperCase();
  const words = sides[axis][side > 0 ? 1 : 0];
  const set = `${letter} ${coordinate(centre, reader.unit)}`;
  const name = `${planeName(plane, cut)}, ${letter} ${coordinate(wall, reader.unit)}`;
  return { setting: { what: planeName(plane, cut), [axis]: centre, text: `${name}: ${set}, cutter on its ${words.replace(' of it', '')}` }, cells: [name, words, set, reader.dial(axis, centre)] };
}

/** How far below the highest edge that it takes away a face without a station lies. */
function touchLine({ frame, reader, before }: MillCase, plane: CutPlane, cut: Cut): Setting | undefined {
  if (plane.station !== undefined || before === undefined || directionOnMachine(frame, plane.normal)[2] < 1 - 1e-9) return undefined;
  const edge = highestIn(before, plane.form, plane.normal);
  if (edge === undefined) return undefined;
  const down = edge - dot(plane.point, plane.normal);
  const dial = reader.dial('z', down);
  return { what: `${cut.name}, from the edge`, text: `${cut.name}: touch the edge that stands highest under the cutter, then down ${figure(down, reader.unit)}${dial === undefined ? '' : ` (${dial})`} in all.` };
}

/** The upper wall of a sawn slot, by the lower face of the saw. */
function roofRow({ frame, reader, saw }: MillCase, plane: CutPlane, cut: Cut): Row | undefined {
  if (saw === undefined || directionOnMachine(frame, plane.normal)[2] > -1 + 1e-9 || !frame.known.z) return undefined;
  const wall = toMachine(frame, plane.point)[2];
  const height = wall - saw;
  const name = `${planeName(plane, cut)}, Z ${coordinate(wall, reader.unit)}`;
  const set = `Z ${coordinate(height, reader.unit)}`;
  return { setting: { what: planeName(plane, cut), z: height, text: `${name}: ${set}, saw under it` }, cells: [name, 'under it', set, reader.dial('z', -height)] };
}

function floorRow({ frame, reader, extents, saw }: MillCase, plane: CutPlane, cut: Cut): Row | undefined {
  if (directionOnMachine(frame, plane.normal)[2] < 1 - 1e-9 || !frame.known.z) return undefined;
  const height = toMachine(frame, plane.point)[2];
  const top = extents?.z.high;
  const below = top === undefined || top - height < 1e-6 ? '' : `, ${figure(top - height, reader.unit)} below the top`;
  const set = `Z ${coordinate(height, reader.unit)}`;
  if (saw !== undefined) {
    const name = `${planeName(plane, cut)}, Z ${coordinate(height, reader.unit)}`;
    return { setting: { what: planeName(plane, cut), z: height, text: `${name}: ${set}, saw on it` }, cells: [name, 'on it', set, reader.dial('z', -height)] };
  }
  return { setting: { what: planeName(plane, cut), z: height, text: `${planeName(plane, cut)}: ${set}${below}` }, cells: [`${planeName(plane, cut)}${below}`, 'end', set, reader.dial('z', -height)] };
}

/** A rounded end: about which middle, and on what radius the cutter's own middle goes round. */
function roundRows({ frame, reader, radius }: MillCase, cut: Cut): readonly Setting[] {
  const convex = cut.forms.some((form) => form.kind === 'prism' && form.outline.some(({ face }) => face === 'round'));
  if (!convex) return [];
  return cut.sizes.flatMap((size): readonly Setting[] => {
    const [centre] = size.kind === 'radius' ? size.centres : [];
    if (size.kind !== 'radius' || centre === undefined) return [];
    const [x, y] = toMachine(frame, centre);
    const text = `${cut.name}: about X ${coordinate(x, reader.unit)}, Y ${coordinate(y, reader.unit)}, the middle of the cutter ${figure(size.radius.value + radius, reader.unit)} from there (on the turntable).`;
    return [{ what: cut.name, x, y, text }];
  });
}
