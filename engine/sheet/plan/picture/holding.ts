import type { Frame } from '../../../geometry/frame.js';
import { cross, dot, scale, subtract, unit, type Vector3 } from '../../../geometry/vector.js';
import { vectorOf } from '../../../part/author/directions.js';
import type { Form } from '../../../part/form.js';
import type { Grip, Part, SetUp } from '../../../part/part.js';
import { machineAxes } from '../../../plan/machine-frame.js';
import type { Solid } from '../../../solid/model.js';
import type { TaggedForm } from '../../../solid/tagged-form.js';
import { apart, block, reachAlong } from './blocks.js';
import { chuckForms } from './chuck.js';

/** The forms of what holds the work, each its own body: jaws and chucks as `held by`, what lies under the work as `packing`. */
export function holdingForms(part: Part, setUp: SetUp, work: Solid, spindle: Vector3, lowestCut: number | undefined): readonly TaggedForm[] {
  const { grip } = setUp;
  if (grip === undefined) return [];
  const [a, b] = grip.between.map((id) => part.stations.find((station) => station.id === id));
  if (a === undefined || b === undefined) return [];
  const along = vectorOf(`+${a.axis}`);
  const ends: readonly [number, number] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
  if (setUp.machine === 'lathe') return chuckForms(grip.kind, setUp, work, spindle, along, ends);
  if (grip.kind === 'vice') return viceForms(setUp, work, along, ends, lowestCut);
  return tableForms(grip, setUp, work, along, ends);
}

const origin: Vector3 = [0, 0, 0];

/** Two jaws at the faces that are gripped, low enough to be clear of the cuts, and what the work stands on. */
function viceForms(setUp: SetUp, work: Solid, across: Vector3, [left, right]: readonly [number, number], lowestCut: number | undefined): readonly TaggedForm[] {
  const { up: above } = machineAxes(setUp);
  const lean = dot(above, across);
  if (Math.abs(lean) > 0.9) return [];
  const up = unit(subtract(above, scale(across, lean)));
  const frame: Frame = { origin, x: across, y: up, z: cross(across, up) };
  const [foot, top] = reachAlong(work, up);
  const [from, to] = reachAlong(work, frame.z);
  const height = top - foot;
  const thick = 0.14 * Math.max(height, to - from, right - left);
  const under = Math.min(0.3 * height, thick);
  const grip = Math.min(foot + 0.4 * height, (lowestCut ?? Infinity) - 0.03 * height);
  const y = [foot - under, Math.max(grip, foot + 0.1 * height)] as const;
  const over = 0.06 * (to - from);
  const z = [from - over, to + over] as const;
  const stands = /parallel|packing/i.test(setUp.holding);
  const inset = 0.04 * (to - from);
  return [
    { cut: 'held by', form: block(frame, [left - thick, left - apart], y, z) },
    { cut: 'held by', form: block(frame, [right + apart, right + thick], y, z) },
    ...(stands ? [{ cut: 'packing', form: block(frame, [left + apart, right - apart], [foot - under, foot - apart], [from + inset, to - inset]) }] : []),
  ];
}

/** The table or the plate of a fixture under the work, and on a table two straps over its ends. */
function tableForms(grip: Grip, setUp: SetUp, work: Solid, along: Vector3, ends: readonly [number, number]): readonly TaggedForm[] {
  const { right, up, near } = machineAxes(setUp);
  if (Math.abs(dot(along, up)) < 0.9) return [];
  const frame: Frame = { origin, x: right, y: scale(near, -1), z: up };
  const [rest, clamped] = (dot(along, up) > 0 ? ends : [-ends[1], -ends[0]]) as readonly [number, number];
  const [x, y] = [reachAlong(work, frame.x), reachAlong(work, frame.y)];
  const size = Math.max(x[1] - x[0], y[1] - y[0]);
  const over = 0.14 * size;
  const plate = block(frame, [x[0] - over, x[1] + over], [y[0] - over / 2, y[1] + over / 2], [rest - 0.1 * size, rest - apart]);
  if (grip.kind !== 'clamps') return [{ cut: 'packing', form: plate }];
  const middle = (y[0] + y[1]) / 2;
  const width = Math.min(0.08 * size, 0.3 * (y[1] - y[0]));
  const thick = 0.06 * size;
  const strap = (from: number, to: number): Form => block(frame, [from, to], [middle - width, middle + width], [clamped + apart, clamped + apart + thick]);
  const heel = (from: number, to: number): Form => block(frame, [from, to], [middle - width, middle + width], [rest, clamped]);
  const lap = 0.08 * size;
  return [
    { cut: 'packing', form: plate },
    { cut: 'held by', form: strap(x[0] - over, x[0] + lap) },
    { cut: 'held by', form: strap(x[1] - lap, x[1] + over) },
    { cut: 'packing', form: heel(x[0] - over, x[0] - over / 2) },
    { cut: 'packing', form: heel(x[1] + over / 2, x[1] + over) },
  ];
}
