import type { Vector3 } from '../geometry/vector.js';
import type { Operation, Part } from '../part/part.js';
import { coordinate, figure } from './figures.js';
import { depthWords } from './hole-depth.js';
import { holeSizes, placesKey, type AtHoles } from './hole-places.js';
import { directionOnMachine, toMachine, type MachineFrame } from './machine-frame.js';
import { table, type OperationSettings, type Reader, type Setting, type SettingBlock } from './setting.js';

/** The operation before this one, in the same set-up, that bores into just the same places. */
function samePlaces(part: Part, operation: Operation, points: readonly Vector3[]): Operation | undefined {
  const key = placesKey(points);
  const earlier = part.operations.slice(0, part.operations.indexOf(operation));
  return earlier.find((other) => other.setUp === operation.setUp && holeSizes(other).some((size) => placesKey(size.points) === key));
}

/** Where the holes of an operation are on mill or drill, and how deep. */
export function holeSettings(part: Part, frame: MachineFrame, operation: Operation, reader: Reader): OperationSettings {
  const groups = new Map<string, AtHoles[]>();
  for (const size of holeSizes(operation)) groups.set(placesKey(size.points), [...(groups.get(placesKey(size.points)) ?? []), size]);
  const parts = [...groups.values()].map((sizes) => groupSettings(part, frame, operation, sizes, reader));
  return { settings: parts.flatMap(({ settings }) => settings), blocks: parts.flatMap(({ blocks }) => blocks) };
}

function groupSettings(part: Part, frame: MachineFrame, operation: Operation, sizes: readonly AtHoles[], reader: Reader): OperationSettings {
  const [first] = sizes as readonly [AtHoles, ...AtHoles[]];
  const name = operation.cuts.find(({ id }) => id === first.cut)?.name ?? 'hole';
  const way = directionOnMachine(frame, first.direction);
  const upright = Math.abs(way[2]) > 1 - 1e-9;
  const places = inOrder(first.points.map((point) => toMachine(frame, point)));
  const settings = places.map(([x, y, z], i): Setting => {
    const text = [...(frame.known.x ? [`X ${coordinate(x, reader.unit)}`] : []), ...(frame.known.y ? [`Y ${coordinate(y, reader.unit)}`] : [])].join(', ');
    return { what: places.length === 1 ? name : `${name}, hole ${i + 1}`, ...(frame.known.x ? { x } : {}), ...(frame.known.y ? { y } : {}), ...(frame.known.z ? { z } : {}), text };
  });
  const before = samePlaces(part, operation, first.points);
  const blocks: SettingBlock[] =
    before === undefined ? placeBlocks(places, frame, reader) : [{ kind: 'lines', lines: [`${places.length === 1 ? 'Same place' : 'Same places'} as operation ${before.number}.`] }];
  const lines = sizes.map((size) => depthWords(part, frame, operation, size, reader));
  if (!upright) lines.unshift('These holes lean in this set-up: the figures are for their mouths; turn the work until the drill stands along them.');
  const circle = first.pitchCircle;
  if (circle !== undefined && before === undefined && first.kind !== 'countersink' && places.length > 1) lines.push(pinCheck(circle.diameter.value, places.length, first, reader));
  return { settings: [...settings, ...lines.map((text): Setting => ({ what: `${name}, depth`, text }))], blocks: [...blocks, { kind: 'lines', lines }] };
}

/** Over pins in two neighbouring holes of a circle: the chord and one diameter. */
function pinCheck(circle: number, count: number, size: AtHoles, reader: Reader): string {
  const diameter = size.kind === 'tapping' ? size.thread.minor : size.diameter.value;
  const chord = circle * Math.sin(Math.PI / count);
  return `Check: over pins in two neighbouring holes ${figure(chord + diameter, reader.unit)}.`;
}

/** From the left, and at one X from near to far: the table is gone through once. */
const inOrder = (places: readonly Vector3[]): readonly Vector3[] => [...places].sort((a, b) => (Math.abs(a[0] - b[0]) > 1e-6 ? a[0] - b[0] : a[1] - b[1]));

const distinct = (values: readonly number[]): readonly number[] =>
  [...values].sort((a, b) => a - b).filter((value, i, all) => i === 0 || value - all[i - 1]! > 1e-6);

function placeBlocks(places: readonly Vector3[], frame: MachineFrame, reader: Reader): SettingBlock[] {
  const [xs, ys] = [distinct(places.map(([x]) => x)), distinct(places.map(([, y]) => y))];
  const x = (value: number | undefined): readonly (string | undefined)[] => (value === undefined || !frame.known.x ? [undefined, undefined] : [coordinate(value, reader.unit), reader.dial('x', value)]);
  const y = (value: number | undefined): readonly (string | undefined)[] => (value === undefined || !frame.known.y ? [undefined, undefined] : [coordinate(value, reader.unit), reader.dial('y', value)]);
  const heads = ['X', 'X dial', 'Y', 'Y dial'];
  if (xs.length > 1 && ys.length > 1 && places.length > 3 && xs.length * ys.length === places.length) {
    const rows = Array.from({ length: Math.max(xs.length, ys.length) }, (_, i) => [...x(xs[i]), ...y(ys[i])]);
    return [{ kind: 'lines', lines: [`${places.length} holes: at each X, ${ys.length === 2 ? 'both' : `all ${ys.length}`} of Y.`] }, table(heads, rows)];
  }
  if (places.length === 1) return [table(heads, [[...x(places[0]![0]), ...y(places[0]![1])]])];
  return [table(['Hole', ...heads], places.map((place, i) => [String(i + 1), ...x(place[0]), ...y(place[1])]), true)];
}
