import { cross, dot, type Vector3 } from '../../geometry/vector.js';
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
  /** The stretch of the jaws' length that is free where a cut goes down past them, mm along (axis of the gripped faces) x (up). */
  readonly beside?: readonly [number, number];
  /** Corners of the faces that each cut leaves, in coordinates of the part. */
  readonly cuts: readonly (readonly Vector3[])[];
  /** What to pack, and how far the work must stand out. */
  readonly words: Phrase;
}

/** How far the work stands out of the vice or chuck, for all operations of a stretch in one set-up; `states` are theirs. */
export function standOut(part: Part, frame: MachineFrame, states: readonly OperationState[]): StandOut {
  const { setUp } = frame;
  const [a, b] = (setUp.grip?.between ?? []).map((id) => part.stations.find((station) => station.id === id));
  const first = states[0];
  const cuts = states.map(newCorners).filter((corners) => corners.length > 0);
  if (first === undefined || a === undefined || b === undefined) return { words: [], cuts };
  const along = vectorOf(`+${a.axis}`);
  const { up, right } = machineAxes(setUp);
  const ends: readonly [number, number] = [Math.min(a.value, b.value), Math.max(a.value, b.value)];
  if (setUp.machine === 'lathe') return { words: setUp.grip?.kind === 'between centres' ? [] : fromChuck(first.before, frame, along, right, ends), cuts };
  const holes = throughHoles(states) ? ['Keep packing clear of the holes that come out below.'] : [];
  if (setUp.grip?.kind !== 'vice' || Math.abs(dot(along, up)) > 0.9) return { words: holes, cuts };
  const atJaws = cuts.flat().filter((p) => dot(p, along) > ends[1] - 1e-3 || dot(p, along) < ends[0] + 1e-3);
  const spaced = holes.length === 0 ? [] : [` ${holes[0]!}`];
  const { high, low } = extentsOf(first.before, frame).z;
  if (atJaws.length === 0) return { words: ['No cut comes to the jaws: grip as low or as high as the work sits well.', ...spaced], cuts };
  const lowest = Math.min(...atJaws.map((p) => dot(p, up)));
  if (high === undefined || low === undefined) return { lowest, words: ['Stand the work out so far that the cutter clears the jaws.', ...spaced], cuts };
  const deep = high - (lowest - dot(frame.origin, up));
  const grip = high - low - deep - clear;
  const beside = grip < leastShare * (high - low) ? freeBeside(first.before, atJaws, up, cross(along, up), low + dot(frame.origin, up) + leastShare * (high - low)) : undefined;
  if (beside !== undefined) return { beside, words: ['A cut goes down past the jaws: let that end stand out beyond their side by ', { length: clear }, ' at least.', ...spaced], cuts };
  return {
    lowest,
    words: ['Top at least ', { length: deep + clear }, ' above the jaws: the lowest cut beside them goes ', { length: deep }, ' down.', ...(grip <= 0 ? [] : [' That leaves at most ', { length: grip }, ' to grip.']), ...spaced],
    cuts,
  };
}

/** Jaws that would grip less than this share of the height stand beside the cut instead, where they can. */
const leastShare = 0.25;

/** The longer stretch of the work along the jaws that no cut comes down to; undefined where it is under a third of the work. */
function freeBeside(work: Solid, atJaws: readonly Vector3[], up: Vector3, jaws: Vector3, level: number): readonly [number, number] | undefined {
  const [low, high] = reachAlong(work, jaws);
  const cut = atJaws.filter((p) => dot(p, up) < level).map((p) => dot(p, jaws));
  const sides = [[low, Math.min(...cut) - clear], [Math.max(...cut) + clear, high]] as const;
  const best = sides[0][1] - sides[0][0] >= sides[1][1] - sides[1][0] ? sides[0] : sides[1];
  return best[1] - best[0] > (high - low) / 3 ? best : undefined;
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

function reachAlong({ positions }: Solid, direction: Vector3): readonly [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 3) {
    const value = dot([positions[i] ?? 0, positions[i + 1] ?? 0, positions[i + 2] ?? 0], direction);
    [low, high] = [Math.min(low, value), Math.max(high, value)];
  }
  return [low, high];
}
