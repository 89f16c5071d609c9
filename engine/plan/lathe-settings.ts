import { stationName } from '../part/author/phrases.js';
import type { Cut } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';
import { formatAngle } from '../units/format.js';
import { coordinate, figure } from './figures.js';
import { depthWords } from './hole-depth.js';
import { diameterThere, holeSizes } from './hole-places.js';
import { toMachine, type MachineFrame } from './machine-frame.js';
import { table, type OperationSettings, type Reader, type Setting } from './setting.js';
import { diameterBefore, stockReach, turnedSteps, type TurnedStep } from './turned-steps.js';
import { add, scale, type Vector3 } from '../geometry/vector.js';
import { indexOf } from '../part/author/directions.js';

interface Row {
  readonly setting: Setting;
  readonly cells: readonly (string | undefined)[];
}

/** Diameters and lengths of an operation on the lathe. Lengths are the machine's Z: from zero, minus toward the chuck. */
export function latheSettings(part: Part, frame: MachineFrame, operation: Operation, reader: Reader): OperationSettings {
  const along = (point: Vector3): number => toMachine(frame, point)[2];
  const rows = operation.cuts.flatMap((cut): readonly Row[] => [
    ...faceRows(part, cut, along, reader),
    ...turnedSteps(cut).map((step) => stepRow(part, operation, cut, step, along, reader)),
    ...boreRows(part, operation, cut, along, reader),
  ]);
  const lines = [
    ...operation.cuts.flatMap((cut) => detailLines(cut, along, reader)),
    ...holeSizes(operation).flatMap((size) => (size.kind === 'counterbore' || (size.kind === 'hole' && size.finish === 'bored') ? [] : [depthWords(part, frame, operation, size, reader)])),
  ];
  return {
    settings: [...rows.map(({ setting }) => setting), ...lines.map((text): Setting => ({ what: 'detail', text }))],
    blocks: [
      ...(rows.length === 0 ? [] : [table(['Finished face', 'From \u2300', '\u2300', 'Cross slide', 'From Z', 'To Z', 'Carriage'], rows.map(({ cells }) => cells))]),
      ...(lines.length === 0 ? [] : [{ kind: 'lines' as const, lines }]),
    ],
  };
}

function faceRows(part: Part, cut: Cut, along: (point: Vector3) => number, reader: Reader): readonly Row[] {
  return cut.forms.flatMap((form): readonly Row[] => {
    if (form.kind !== 'half-space') return [];
    const id = cut.faces[form.face]?.stations[0];
    const station = part.stations.find((each) => each.id === id);
    const z = along(form.point);
    const what = station === undefined ? cut.name : stationName(station.id);
    return [{ setting: { what, z, text: `${what}: Z ${coordinate(z, reader.unit)}` }, cells: [what, undefined, undefined, undefined, undefined, coordinate(z, reader.unit), reader.dial('saddle', -z)] }];
  });
}

function stepRow(part: Part, operation: Operation, cut: Cut, step: TurnedStep, along: (point: Vector3) => number, reader: Reader): Row {
  const before = step.internal ? undefined : roundBefore(part, operation, step);
  const ends = [step.from, step.to].map(({ radius, point }) => ({ radius, z: along(point) })).sort((a, b) => b.z - a.z);
  const [right, left] = ends as [(typeof ends)[0], (typeof ends)[0]];
  const tapers = Math.abs(right.radius - left.radius) > 1e-9;
  // A bore begins in free air; a groove in it at its own wall.
  const open = (cut.faces['start']?.stations ?? []).length === 0;
  // The end in free air is no place to set; a cut that starts at the chuck's side has it there.
  const to = open && startsLeft(part, cut, along, left.z, right.z) ? right : left;
  const from = to === left ? right : left;
  const size = tapers ? `${figure(2 * from.radius, reader.unit)} to ${figure(2 * to.radius, reader.unit)}` : figure(2 * to.radius, reader.unit);
  const both = tapers || !open;
  const text = `${cut.name}: \u2300${size}, ${both ? `from Z ${coordinate(from.z, reader.unit)} ` : ''}to Z ${coordinate(to.z, reader.unit)}`;
  return {
    setting: { what: cut.name, diameter: 2 * to.radius, z: to.z, text },
    cells: [cut.name, ...infeed(tapers ? undefined : before, 2 * to.radius, size, reader), both ? coordinate(from.z, reader.unit) : undefined, coordinate(to.z, reader.unit), reader.dial('saddle', -to.z)],
  };
}

function startsLeft(part: Part, cut: Cut, along: (point: Vector3) => number, left: number, right: number): boolean {
  const station = part.stations.find(({ id }) => id === cut.stations[0]);
  if (station === undefined) return false;
  const at = [0, 0, 0] as [number, number, number];
  at[indexOf(station.axis)] = station.value;
  return Math.abs(along(at) - left) < Math.abs(along(at) - right);
}

/** The round diameter that a turning cut finds, mm; undefined where the bar is not round yet. */
function roundBefore(part: Part, operation: Operation, { from, to, axis }: TurnedStep): number | undefined {
  const middle = scale(add(from.point, to.point), 0.5);
  const diameter = diameterBefore(part, operation, middle, axis);
  const bar = 2 * stockReach(part, middle, axis);
  return part.stock.shape !== 'round' && Math.abs(diameter - bar) < 1e-9 ? undefined : diameter;
}

/** The diameter that is there, the one wanted, and how far the cross slide goes from where the tool touches: ".4375", ".3750", "39.7 d". */
function infeed(before: number | undefined, diameter: number, shown: string, reader: Reader): readonly (string | undefined)[] {
  if (before === undefined || Math.abs(before - diameter) < 1e-6) return [undefined, shown, undefined];
  return [figure(before, reader.unit), shown, reader.dial('cross', Math.abs(before - diameter) / 2)];
}

/** Bores whose sizes are those of holes: registers and bored holes. */
function boreRows(part: Part, operation: Operation, cut: Cut, along: (point: Vector3) => number, reader: Reader): readonly Row[] {
  return cut.sizes.flatMap((size): readonly Row[] => {
    const bored = size.kind === 'counterbore' || (size.kind === 'hole' && size.finish === 'bored');
    if (!bored) return [];
    const diameter = size.diameter.value;
    const entry = along(size.points[0]!);
    const z = size.depth === undefined ? undefined : entry - size.depth.value;
    const shown = figure(diameter, reader.unit);
    const end = z === undefined ? 'right through' : `to Z ${coordinate(z, reader.unit)}`;
    return [
      {
        setting: { what: cut.name, diameter, ...(z === undefined ? {} : { z }), text: `${cut.name}: \u2300${shown} ${end}` },
        cells: [cut.name, ...infeed(diameterThere(part, operation, size), diameter, shown, reader), undefined, z === undefined ? 'through' : coordinate(z, reader.unit), z === undefined ? undefined : reader.dial('saddle', -z)],
      },
    ];
  });
}

/** Chamfers, tapers, centre holes and threads. */
function detailLines(cut: Cut, along: (point: Vector3) => number, reader: Reader): readonly string[] {
  const tapers = turnedSteps(cut).flatMap(({ from, to }) => {
    const run = Math.abs(along(to.point) - along(from.point));
    const rise = Math.abs(to.radius - from.radius);
    if (rise < 1e-9 || run < 1e-9) return [];
    const angle = formatAngle((Math.atan(rise / run) * 180) / Math.PI);
    return [`Top slide ${angle} from the axis of the lathe, ${from.radius > to.radius === along(from.point) < along(to.point) ? 'thin end to the tailstock' : 'thin end to the chuck'}; lock the carriage.`];
  });
  const sizes = cut.sizes.flatMap((size): readonly string[] => {
    switch (size.kind) {
      case 'chamfer':
        if (size.face !== undefined)
          return [`Chamfer ${cut.name}: ${formatAngle(size.face.angle)} to the face, ${formatAngle(size.angle)} from the axis of the lathe; in until the circle on the face is \u2300${figure(size.face.diameter.value, reader.unit)}.`];
        return [`Chamfer ${cut.name}: ${figure(size.leg.value, reader.unit)} along the axis from where the tool touches, at ${formatAngle(size.angle)}.`];
      case 'centre-hole': {
        const depth = Math.max(...cut.forms.flatMap((form) => (form.kind === 'revolution' ? form.outline.map(({ to }) => to[1]) : [])));
        return [`Tailstock: go ${figure(depth, reader.unit)} deeper from where the tip touches: the mouth is then \u2300${figure(size.outside, reader.unit)}.`];
      }
      case 'external-thread':
        return [`Thread from the end to Z ${coordinate(along(size.to), reader.unit)}: ${figure(Math.abs(along(size.from) - along(size.to)), reader.unit)} long, ${Math.ceil((2 * Math.abs(along(size.from) - along(size.to))) / size.thread.pitch) / 2} turns.`];
      case 'internal-thread': {
        const length = Math.abs(along(size.from) - along(size.to));
        return [`Full thread from the mouth to Z ${coordinate(along(size.to), reader.unit)}: ${figure(length, reader.unit)} long, ${Math.ceil((2 * length) / size.thread.pitch) / 2} turns.`];
      }
      case 'hole':
      case 'tapping':
      case 'countersink':
      case 'counterbore':
      case 'diameter':
      case 'radius':
      case 'arc-slot':
      case 'arc-sides':
      case 'angle':
        return [];
    }
  });
  return [...tapers, ...sizes];
}
