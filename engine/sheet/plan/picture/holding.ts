import type { Frame } from '../../../geometry/frame.js';
import { cross, dot, scale, subtract, unit, type Vector3 } from '../../../geometry/vector.js';
import { vectorOf } from '../../../part/author/directions.js';
import type { Grip, Part, SetUp } from '../../../part/part.js';
import type { StandOut } from '../../../plan/bench/stand-out.js';
import { machineAxes } from '../../../plan/machine-frame.js';
import type { Solid } from '../../../solid/model.js';
import type { TaggedForm } from '../../../solid/tagged-form.js';
import { apart, block, reachAlong } from './blocks.js';
import { chuckForms } from './chuck.js';
import { strapPlaces } from './straps.js';

/** The forms of what holds the work, each its own body: jaws and chucks as `held by`, what lies under the work as `packing`. */
export function holdingForms(part: Part, setUp: SetUp, work: Solid, spindle: Vector3, stand: StandOut): readonly TaggedForm[] {
  const { grip } = setUp;
  if (grip === undefined) return [];
  const [a, b] = grip.between.map((id) => part.stations.find((station) => station.id === id));
  if (a === undefined || b === undefined) return [];
  const along = vectorOf(`+${a.axis}`);
  const ends: readonly [number, number] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
  if (setUp.machine === 'lathe') return chuckForms(grip.kind, setUp, work, spindle, along, ends);
  if (grip.kind === 'vice') return viceForms(setUp, work, along, ends, stand);
  return tableForms(grip, setUp, work, along, ends, stand.cuts);
}

const origin: Vector3 = [0, 0, 0];

/** Two jaws at the faces that are gripped, low enough to be clear of the cuts, and what the work stands on. */
function viceForms(setUp: SetUp, work: Solid, across: Vector3, [left, right]: readonly [number, number], { lowest, beside }: StandOut): readonly TaggedForm[] {
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
  const grip = Math.min(foot + 0.4 * height, (lowest ?? Infinity) - 0.03 * height);
  const y = [foot - under, Math.max(grip, foot + 0.1 * height)] as const;
  const over = 0.06 * (to - from);
  const z = beside === undefined ? ([from - over, to + over] as const) : ([beside[0] <= from ? from - over : beside[0], beside[1] >= to ? to + over : beside[1]] as const);
  const stands = /parallel|packing/i.test(setUp.holding);
  const inset = 0.04 * (to - from);
  return [
    { cut: 'held by', form: block(frame, [left - thick, left - apart], y, z) },
    { cut: 'held by', form: block(frame, [right + apart, right + thick], y, z) },
    ...(stands ? [{ cut: 'packing', form: block(frame, [left + apart, right - apart], [foot - under, foot - apart], [from + inset, to - inset]) }] : []),
  ];
}

/** The table or the plate of a fixture under the work, and on a table two straps where no cut is. */
function tableForms(grip: Grip, setUp: SetUp, work: Solid, along: Vector3, ends: readonly [number, number], cuts: readonly (readonly Vector3[])[]): readonly TaggedForm[] {
  const { right, up, near } = machineAxes(setUp);
  if (Math.abs(dot(along, up)) < 0.9) return [];
  const frame: Frame = { origin, x: right, y: scale(near, -1), z: up };
  const [rest, clamped] = (dot(along, up) > 0 ? ends : [-ends[1], -ends[0]]) as readonly [number, number];
  const [x, y] = [reachAlong(work, frame.x), reachAlong(work, frame.y)];
  const size = Math.max(x[1] - x[0], y[1] - y[0]);
  const over = 0.14 * size;
  const plate = block(frame, [x[0] - over, x[1] + over], [y[0] - over, y[1] + over], [rest - 0.1 * size, rest - apart]);
  if (grip.kind !== 'clamps') return [{ cut: 'packing', form: plate }];
  const thick = 0.06 * size;
  const busy = cuts.map((corners) => ({ x: spanOf(corners, frame.x), y: spanOf(corners, frame.y) }));
  return strapPlaces({ x, y }, over, busy).flatMap(({ strap, heel }): readonly TaggedForm[] => [
    { cut: 'held by', form: block(frame, strap.x, strap.y, [clamped + apart, clamped + apart + thick]) },
    { cut: 'packing', form: block(frame, heel.x, heel.y, [rest, clamped]) },
  ]).concat({ cut: 'packing', form: plate });
}

const spanOf = (points: readonly Vector3[], direction: Vector3): readonly [number, number] => {
  const values = points.map((p) => dot(p, direction));
  return [Math.min(...values), Math.max(...values)];
};
