import { add, length, scale, subtract, type Vector3 } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Kernel } from '../../solid/kernel.js';
import { metalWithin } from '../../solid/within.js';
import type { Solid } from '../../solid/model.js';
import type { TaggedForm } from '../../solid/tagged-form.js';
import { reachOf } from '../data/reaches.js';
import { machineFrame, type MachineFrame } from '../machine-frame.js';
import { formsOfOperation, type OperationState } from '../states/state.js';
import { workOf, type WorkKind } from '../work.js';
import { boundsOfPoints, boundsOfSolid, formOfBounds, joinedBounds, type Bounds } from './bounds.js';

/** Metal beside and under a cut that must be as on the part, mm: it carries the cut and springs under it (common practice). */
export const leastMargin = 2;

/** What must be alike where an operation is rehearsed: boxes along the axes of the machine that it is done on. */
export interface Region {
  readonly operation: number;
  readonly frame: MachineFrame;
  /** What the cutter takes. */
  readonly core: Bounds;
  /** Metal beside and under it that is kept, mm. */
  readonly margin: number;
  /** The core and its margin; the cutter's way in; the holder's room, where it comes so low. */
  readonly boxes: readonly { readonly what: 'cut' | 'way' | 'holder'; readonly bounds: Bounds }[];
}

/** The boxes of a region as forms of one body. */
export const formsOfRegion = ({ boxes, frame }: Region): TaggedForm[] => boxes.map(({ what, bounds }) => ({ cut: what, form: formOfBounds(bounds, frame) }));

/** Work that comes in along the axis of the spindle on a lathe; all else comes from the side. */
const fromTheEnd: readonly WorkKind[] = ['boring', 'drilling', 'centring', 'reaming', 'tapping', 'countersinking', 'counterboring'];

/**
 * The region of an operation: the cutter through its whole cut with a margin of metal, its way to the cut, and its holder.
 * @returns undefined where the operation takes nothing and threads nothing.
 */
export function regionOf(kernel: Kernel, part: Part, state: OperationState): Region | undefined {
  const { operation, setUp } = state;
  const frame = machineFrame(part, setUp);
  const around = boundsOfSolid(state.before, frame)!;
  const core = coreOf(kernel, part, state, frame);
  if (core === undefined) return undefined;
  const works = workOf(part, setUp, operation);
  const widest = Math.max(0, ...works.map(({ diameter }) => diameter ?? 0), operation.cutter.diameter ?? 0);
  const margin = leastMargin;
  const sides = sidesBeside(kernel, state.before, core, frame);
  const beside = grown(core, sides, ({ metal }) => (metal ? margin : 0));
  const kept = { what: 'cut' as const, bounds: beside };
  if (setUp.machine === 'lathe') return { operation: operation.number, frame, core, margin, boxes: [kept, { what: 'way', bounds: latheWay(beside, around, works.map(({ kind }) => kind)) }] };
  const milling = works.some(({ kind }) => kind === 'milling');
  const cutter = milling ? (operation.cutter.diameter ?? widthOf(core)) : widest;
  const reach = reachOf(milling ? 'milling' : (works[0]?.kind ?? 'drilling'), cutter);
  const top = Math.max(core.high[2], around.high[2]) + 1;
  const swing = milling ? Math.min(cutter, 12.7) : 0;
  // An end mill runs out where the cut is open, and nowhere else.
  const swept = grown(core, sides, ({ open }) => (open ? swing : 0));
  const way = { low: [swept.low[0], swept.low[1], core.low[2]] as const, high: [swept.high[0], swept.high[1], top] as const };
  const nose = core.low[2] + Math.max(reach.stickOut, core.high[2] - core.low[2] + 3);
  const room = reach.holder / 2;
  const holder = { low: [core.low[0] - room, core.low[1] - room, nose] as const, high: [core.high[0] + room, core.high[1] + room, top] as const };
  return {
    operation: operation.number,
    frame,
    core,
    margin,
    boxes: [kept, { what: 'way', bounds: way }, ...(nose < top ? [{ what: 'holder' as const, bounds: holder }] : [])],
  };
}

/** From the cut out of the work: along the bed for work from the end, else outward all round, for the work turns. */
function latheWay(beside: Bounds, around: Bounds, kinds: readonly WorkKind[]): Bounds {
  if (kinds.length > 0 && kinds.every((kind) => fromTheEnd.includes(kind)))
    return { low: beside.low, high: [beside.high[0], beside.high[1], Math.max(beside.high[2], around.high[2]) + 1] };
  const out = Math.max(...[0, 1].flatMap((i) => [-around.low[i]!, around.high[i]!])) + 1;
  return { low: [-out, -out, beside.low[2]], high: [out, out, beside.high[2]] };
}

const widthOf = ({ low, high }: Bounds): number => Math.min(high[0] - low[0], high[1] - low[1]);

/** Whether metal stands beside a side of a box, and whether the side is open. */
interface Beside {
  readonly metal: boolean;
  readonly open: boolean;
}

/** By axis of the frame: the low side and the high side. */
type SidesBeside = readonly (readonly [Beside, Beside])[];

/** How thick a layer beside a cut is looked at, mm, and which share of it tells metal from air. */
const layer = { thick: 0.2, metal: 0.01, open: 0.6 } as const;

function sidesBeside(kernel: Kernel, before: Solid, { low, high }: Bounds, frame: MachineFrame): SidesBeside {
  return [0, 1, 2].map((axis) =>
    ([0, 1] as const).map((end): Beside => {
      const from = [...low] as [number, number, number];
      const to = [...high] as [number, number, number];
      if (end === 0) [from[axis], to[axis]] = [low[axis]! - layer.thick, low[axis]!];
      else [from[axis], to[axis]] = [high[axis]!, high[axis]! + layer.thick];
      const whole = [0, 1, 2].reduce((product, i) => product * (to[i]! - from[i]!), 1);
      const metal = whole <= 0 ? 0 : metalWithin(kernel, before, [{ cut: 'layer', form: formOfBounds({ low: from, high: to }, frame) }]).volume / whole;
      return { metal: metal > layer.metal, open: metal < layer.open };
    }),
  ) as unknown as SidesBeside;
}

/** A box grown on each side by what the side asks for. */
function grown({ low, high }: Bounds, sides: SidesBeside, by: (side: Beside) => number): Bounds {
  return {
    low: low.map((value, i) => value - by(sides[i]![0])) as unknown as Vector3,
    high: high.map((value, i) => value + by(sides[i]![1])) as unknown as Vector3,
  };
}

/** What the cutter takes: the chips, and the threads, which are not cut in the solid. */
function coreOf(kernel: Kernel, part: Part, { operation, before, removed }: OperationState, frame: MachineFrame): Bounds | undefined {
  const chips = removed > 0 ? boundsOfSolid(metalWithin(kernel, before, formsOfOperation(operation)), frame) : undefined;
  const threads = operation.cuts.flatMap((cut) => threadPoints(part, cut));
  return joinedBounds(chips, boundsOfPoints(threads, frame));
}

/** Points round the threads of a cut: where they begin and end, and out to their diameter. */
function threadPoints(part: Part, cut: Cut): Vector3[] {
  return cut.sizes.flatMap((size): Vector3[] => {
    if (size.kind === 'external-thread' || size.kind === 'internal-thread') return aroundLine(size.from, size.to, size.thread.major / 2);
    if (size.kind !== 'tapping') return [];
    const deep = size.depth?.value ?? depthOfHoles(part, size.points) ?? 0;
    return size.points.flatMap((point) => aroundLine(point, add(point, scale(size.direction, deep)), size.thread.major / 2));
  });
}

/** How deep the holes at some points are: of a blind hole its depth, of one right through the length of the form that cuts it. */
function depthOfHoles(part: Part, points: readonly Vector3[]): number | undefined {
  for (const cut of part.operations.flatMap(({ cuts }) => cuts))
    for (const size of cut.sizes) {
      if (size.kind !== 'hole' || !size.points.some((point) => points.some((other) => length(subtract(point, other)) < 1e-6))) continue;
      const form = cut.forms.find(({ kind }) => kind === 'revolution');
      const heights = form?.kind === 'revolution' ? form.outline.map(({ from }) => from[1]) : [];
      return size.depth?.value ?? (heights.length === 0 ? undefined : Math.max(...heights) - Math.min(...heights));
    }
  return undefined;
}

const aroundLine = (from: Vector3, to: Vector3, radius: number): Vector3[] =>
  [from, to].flatMap(([x, y, z]) => [-radius, radius].flatMap((r): Vector3[] => [[x + r, y, z], [x, y + r, z], [x, y, z + r]]));
