import { dot, type Vector3 } from '../../geometry/vector.js';
import { vectorOf } from '../../part/author/directions.js';
import type { Phrase } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { extentsOf } from '../extents.js';
import { machineAxes, type MachineFrame } from '../machine-frame.js';
import type { OperationState } from '../states/state.js';

/** Clear way from the lowest cut to the jaws, mm: common practice, 1 to 2. */
const clear = 1.5;

/** How the work stands in what holds it. */
export interface StandOut {
  /** The lowest point of what is cut at the gripped faces, along the set-up's `up` in coordinates of the part, mm; absent where no cut comes to the jaws. */
  readonly lowest?: number;
  /** What to pack, and how far the work must stand out. */
  readonly words: Phrase;
}

/** How far the work stands out of the vice or chuck, for all operations of a stretch in one set-up; `states` are theirs. */
export function standOut(part: Part, frame: MachineFrame, states: readonly OperationState[]): StandOut {
  const { setUp } = frame;
  const [a, b] = (setUp.grip?.between ?? []).map((id) => part.stations.find((station) => station.id === id));
  const first = states[0];
  if (first === undefined || a === undefined || b === undefined) return { words: [] };
  const along = vectorOf(`+${a.axis}`);
  const { up, right } = machineAxes(setUp);
  const ends: readonly [number, number] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
  if (setUp.machine === 'lathe') return setUp.grip?.kind === 'between centres' ? { words: [] } : { words: fromChuck(first.before, frame, along, right, ends) };
  if (setUp.grip?.kind !== 'vice' || Math.abs(dot(along, up)) > 0.9) return { words: [] };
  const heights = states.flatMap((state) => newCorners(state).filter((p) => dot(p, along) > ends[1] - 1e-3 || dot(p, along) < ends[0] + 1e-3).map((p) => dot(p, up)));
  const holes = throughHoles(states) ? [' Keep packing clear of the holes that come out below.'] : [];
  const { high, low } = extentsOf(first.before, frame).z;
  if (heights.length === 0) return { words: ['No cut comes to the jaws: grip as low or as high as the work sits well.', ...holes] };
  const lowest = Math.min(...heights);
  if (high === undefined) return { lowest, words: ['Stand the work out so far that the cutter clears the jaws.', ...holes] };
  const deep = high - (lowest - dot(frame.origin, up));
  const grip = low === undefined ? undefined : high - low - deep - clear;
  return {
    lowest,
    words: ['Top at least ', { length: deep + clear }, ' above the jaws: the lowest cut beside them goes ', { length: deep }, ' down.', ...(grip === undefined || grip <= 0 ? [] : [' That leaves at most ', { length: grip }, ' to grip.']), ...holes],
  };
}

function fromChuck(work: Solid, frame: MachineFrame, along: Vector3, right: Vector3, ends: readonly [number, number]): Phrase {
  const high = extentsOf(work, frame).z.high;
  if (high === undefined || Math.abs(dot(along, right)) < 0.9) return [];
  const sense = dot(along, right) > 0 ? 1 : -1;
  const jaws = Math.max(...ends.map((end) => sense * end)) - dot(frame.origin, right);
  const held = ends[1] - ends[0];
  return ['Stick out ', { length: high - jaws }, ' from the jaws; ', { length: held }, ' is gripped.'];
}

function throughHoles(states: readonly OperationState[]): boolean {
  return states.some(({ operation }) => operation.cuts.some((cut) => cut.sizes.some((size) => size.kind === 'hole' && size.depth === undefined && size.into === undefined)));
}

/** Corners of the faces that an operation leaves. */
function newCorners({ operation, after }: OperationState): readonly Vector3[] {
  const { positions, triangles, faceOfTriangle, faces } = after;
  const cuts = new Set(operation.cuts.map(({ id }) => id));
  const found = new Set<number>();
  for (let i = 0; i < triangles.length; i += 1) if (cuts.has(faces[faceOfTriangle[Math.trunc(i / 3)] ?? 0]?.tag.cut ?? '')) found.add(triangles[i] ?? 0);
  return [...found].map((at): Vector3 => [positions[3 * at] ?? 0, positions[3 * at + 1] ?? 0, positions[3 * at + 2] ?? 0]);
}
