import type { Vector3 } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Part, SetUp } from '../../part/part.js';
import type { Axis, Station } from '../../part/station.js';
import { axes, indexOf, vectorOf } from '../../part/author/directions.js';
import { roomOf } from '../../part/author/stock.js';
import type { Kernel } from '../../solid/kernel.js';
import { metalWithin } from '../../solid/within.js';
import type { OperationState } from '../states/state.js';
import { workingZero } from '../working-zero.js';
import { boundsOfSolid, joinedBounds, partFrame, type Bounds } from './bounds.js';
import { formsOfRegion, type Region } from './region.js';

/** Least that jaws take hold of, mm (common practice: a diameter, or this). */
export const leastGrip = 10;

/** So far from the cuts a face to set from is not kept for its own sake, mm. */
const farZero = 5;

/** What the rehearsed cuts and the holding need of the metal, along the axes of the part. */
export interface Extent {
  readonly bounds: Bounds;
  /** Set for round and hexagon bars: the radius that the metal in the regions reaches, from the bar's axis. */
  readonly radius?: number;
}

/** What the cuts ask for that the rehearsed ones need first. */
export interface More {
  /** Faces on which they begin. */
  readonly faces: readonly Station[];
  /** Holes among them: a group of holes is drilled whole. */
  readonly holes: readonly HolePlace[];
  /** They are turned: a bar that is not round must be held by its own whole section. */
  readonly wholeSection: boolean;
  /** Operations among them, for length to grip. */
  readonly states: readonly OperationState[];
  readonly generous: Generous;
}

/** How much of the part's own blank a piece takes: the least that will do, its whole length, or all of it. */
export type Generous = 'least' | 'whole length' | 'whole blank';

/** Where a hole is, and how far from its axis metal must stand. */
interface HolePlace {
  readonly point: Vector3;
  readonly direction: Vector3;
  readonly reach: number;
}

/** Wall round a hole that the piece gets by the way, mm (common practice). */
const holeWall = 1.5;

/** The holes of a cut. */
export const holesOf = (cut: Cut): readonly HolePlace[] =>
  cut.sizes.flatMap((size) => (size.kind === 'hole' ? size.points.map((point) => ({ point, direction: size.direction, reach: size.diameter.value / 2 + holeWall })) : []));

const nothingMore: More = { faces: [], holes: [], wholeSection: false, states: [], generous: 'least' };

function including(part: Part, bounds: Bounds, { faces, holes, wholeSection, states, generous }: More): Bounds {
  const low = [...bounds.low] as [number, number, number];
  const high = [...bounds.high] as [number, number, number];
  for (const { axis, value } of faces) {
    const i = indexOf(axis);
    low[i] = Math.min(low[i]!, value);
    high[i] = Math.max(high[i]!, value);
  }
  const room = roomOf(part.stock);
  for (const { point, direction, reach } of holes)
    for (const i of [0, 1, 2] as const) {
      if (Math.abs(direction[i]) > 0.5) continue;
      low[i] = Math.max(room.low[i], Math.min(low[i], point[i] - reach));
      high[i] = Math.min(room.high[i], Math.max(high[i], point[i] + reach));
    }
  if (generous !== 'least') {
    const i = indexOf(longAxis(part));
    [low[i], high[i]] = [room.low[i], room.high[i]];
  }
  if (wholeSection || generous === 'whole blank') {
    for (const axis of axes.filter((each) => each !== longAxis(part))) [low[indexOf(axis)], high[indexOf(axis)]] = [room.low[indexOf(axis)], room.high[indexOf(axis)]];
  }
  const box: Bounds = { low, high };
  // Length to grip once: not again for every operation in the same chuck.
  const gripped = states.filter(({ setUp }) => setUp.machine === 'lathe').map((state) => held(part, state, planes(part, state.setUp, box), box));
  return gripped.reduce((all, each) => joinedBounds(all, each)!, box);
}

/** The metal that the regions have just before their operations, in a box, with the faces from which is set and by which is held. */
export function extentOf(kernel: Kernel, part: Part, rehearsed: readonly { readonly state: OperationState; readonly region: Region }[], more: More = nothingMore): Extent {
  let bounds: Bounds | undefined;
  let radius = 0;
  const lengthwise = longAxis(part);
  for (const { state, region } of rehearsed) {
    const metal = metalWithin(kernel, state.before, formsOfRegion(region));
    const box = boundsOfSolid(metal, partFrame);
    if (box === undefined) continue;
    radius = Math.max(radius, radiusOf(metal.positions, lengthwise, part));
    const whole = joinedBounds(box, planes(part, state.setUp, box))!;
    bounds = joinedBounds(bounds, state.setUp.machine === 'lathe' ? whole : held(part, state, whole));
  }
  if (bounds === undefined) throw new RangeError('nothing of the part lies where it is rehearsed');
  bounds = including(part, bounds, { ...more, states: [...rehearsed.map(({ state }) => state), ...more.states] });
  return { bounds, ...(part.stock.shape === 'rectangular' ? {} : { radius }) };
}

/** The axis along which a part's bar runs. */
export function longAxis(part: Part): Axis {
  const form = part.stock.forms.find(({ kind }) => kind !== 'half-space');
  const along = form === undefined || form.kind === 'half-space' ? [0, 0, 1] : form.frame.z;
  return axes[along.map(Math.abs).indexOf(Math.max(...along.map(Math.abs)))]!;
}

function radiusOf(positions: ArrayLike<number>, along: Axis, part: Part): number {
  const form = part.stock.forms[0];
  const centre = form === undefined || form.kind === 'half-space' ? [0, 0, 0] : form.frame.origin;
  const [u, v] = [0, 1, 2].filter((i) => i !== indexOf(along)) as [number, number];
  let most = 0;
  for (let i = 0; i < positions.length; i += 3) most = Math.max(most, Math.hypot(positions[i + u]! - centre[u]!, positions[i + v]! - centre[v]!));
  return most;
}

/** The planes of the stations from which a set-up counts and by which it holds; a datum that is a line is no face. */
function planes(part: Part, setUp: SetUp, box: Bounds): Bounds {
  const low = [...box.low] as [number, number, number];
  const high = [...box.high] as [number, number, number];
  for (const station of facesOf(part, setUp)) {
    const i = indexOf(station.axis);
    const away = Math.max(low[i]! - station.value, station.value - high[i]!);
    // A zero that is far off need not be there: where the piece's end is from it is told, and the figures stay the same.
    if (setUp.machine !== 'lathe' && away > farZero && setUp.grip?.between.includes(station.id) !== true) continue;
    low[i] = Math.min(low[i]!, station.value);
    high[i] = Math.max(high[i]!, station.value);
  }
  return { low, high };
}

/**
 * The stations with a face that a set-up needs: those of its zero that are more than lines, and those on which clamps or a
 * fixture seat the work. A vice takes the blank by whatever sides it has.
 */
export function facesOf(part: Part, setUp: SetUp): readonly Station[] {
  const withFace = new Set([
    ...Object.values(part.stock.faces).flatMap(({ stations }) => stations),
    ...part.operations.flatMap(({ cuts }) => cuts.flatMap(({ faces }) => Object.values(faces).flatMap(({ stations }) => stations))),
  ]);
  const seated = setUp.grip?.kind === 'clamps' || setUp.grip?.kind === 'fixture' ? setUp.grip.between : [];
  const wanted = [...workingZero(part, setUp).map(({ id }) => id).filter((id) => withFace.has(id)), ...seated];
  return [...new Set(wanted)].flatMap((id) => part.stations.find((station) => station.id === id) ?? []);
}

/** The box with length to grip: toward the spindle on a lathe, downward in a vice, as far as the part itself has it. */
function held(part: Part, { setUp, before }: OperationState, box: Bounds, from: Bounds = box): Bounds {
  const there = boundsOfSolid(before, partFrame)!;
  const up = vectorOf(setUp.up);
  const i = up.map(Math.abs).indexOf(Math.max(...up.map(Math.abs)));
  if (Math.abs(up[i]!) < 1 - 1e-9) return box;
  const grip = setUp.machine === 'lathe' ? Math.max(leastGrip, Math.min(...part.stock.section)) : leastGrip;
  const low = [...box.low] as [number, number, number];
  const high = [...box.high] as [number, number, number];
  if (up[i]! > 0) low[i] = Math.max(there.low[i]!, Math.min(low[i]!, setUp.machine === 'lathe' ? from.low[i]! - grip : high[i]! - grip));
  else high[i] = Math.min(there.high[i]!, Math.max(high[i]!, setUp.machine === 'lathe' ? from.high[i]! + grip : low[i]! + grip));
  return { low, high };
}
