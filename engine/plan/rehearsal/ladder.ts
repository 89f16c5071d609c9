import type { TappingSize } from '../../part/cut.js';
import type { Operation, Part } from '../../part/part.js';
import { drills, type Drill } from '../../trade/drills.js';
import { threadPercents } from '../../trade/thread-percent.js';
import { findThread } from '../../trade/threads.js';
import type { Shop } from '../../trade/shop/shop.js';
import { UserError } from '../../units/user-error.js';

/** One rung: the drill to try, and how much of the thread it leaves. */
export interface Rung {
  readonly drill: Drill;
  readonly percent: number;
  readonly basis: string;
  readonly chosen: boolean;
}

/** Drills to try for a tapped hole. */
export interface DrillLadder {
  readonly kind: 'drills';
  readonly operation: number;
  readonly thread: string;
  readonly rungs: readonly Rung[];
}

/** Depths to try for a conical mouth: each leaves a diameter that is measured, which tells where the cone touched. */
export interface DepthLadder {
  readonly kind: 'depths';
  readonly operation: number;
  readonly name: string;
  readonly angle: number;
  /** Travel from where the cone's point would touch, and the diameter at the mouth that it leaves, mm. */
  readonly rungs: readonly { readonly travel: number; readonly diameter: number }[];
}

export type Ladder = DrillLadder | DepthLadder;

/** A thread below this is stripped too easily, above it the tap is too tight; per cent (common practice). */
const usable = { least: 45, most: 85 } as const;

/** Two drills nearer than this are one to the tap, mm. */
const apart = 0.02;

/**
 * What to try where a size is what is tried. For a tapped hole: the drill of the part, and the next usable ones to either side,
 * of the shop or of the tables. For a conical mouth: depths that come nearer to the diameter.
 */
export const laddersOf = (part: Part, operation: Operation, shop: Shop | undefined): readonly Ladder[] => [...drillLadders(part, operation, shop), ...depthLadders(operation)];

function drillLadders(part: Part, operation: Operation, shop: Shop | undefined): readonly DrillLadder[] {
  const tapped = operation.cuts.flatMap(({ sizes }) => sizes.filter((size): size is TappingSize => size.kind === 'tapping'));
  return tapped.flatMap((size): DrillLadder[] => {
    const hole = holeUnder(part, size);
    const thread = threadOf(size.thread.designation);
    if (hole === undefined || thread === undefined) return [];
    const percentOf = (diameter: number) => threadPercents(thread, diameter)[0]!;
    const fitting = (shop?.drills ?? drills)
      .filter(({ diameter }) => diameter < thread.major && percentOf(diameter).percent >= usable.least && percentOf(diameter).percent <= usable.most)
      .sort((a, b) => a.diameter - b.diameter);
    const smaller = fitting.filter(({ diameter }) => diameter < hole.diameter - apart).at(-1);
    const larger = fitting.find(({ diameter }) => diameter > hole.diameter + apart);
    const rungs = [smaller, hole, larger].flatMap((drill): Rung[] => (drill === undefined ? [] : [{ drill, ...percentOf(drill.diameter), chosen: drill === hole }]));
    return [{ kind: 'drills', operation: operation.number, thread: size.thread.designation, rungs }];
  });
}

/** So much under the diameter wanted a trial stops first, and second, mm: a mouth that is too wide cannot be mended. */
const shortBy = [0.4, 0.2, 0] as const;

function depthLadders({ number, cuts }: Operation): readonly DepthLadder[] {
  return cuts.flatMap((cut) =>
    cut.sizes.flatMap((size): DepthLadder[] => {
      if (size.kind !== 'countersink') return [];
      // Height of a cone over its point: D / (2 tan(angle / 2)).
      const travel = (diameter: number): number => diameter / 2 / Math.tan((size.angle * Math.PI) / 360);
      return [{ kind: 'depths', operation: number, name: cut.name, angle: size.angle, rungs: shortBy.map((short) => ({ diameter: size.diameter.value - short, travel: travel(size.diameter.value - short) })) }];
    }),
  );
}

function threadOf(designation: string) {
  try {
    return findThread(designation);
  } catch (error) {
    if (error instanceof UserError) return undefined;
    throw error;
  }
}

/** The drill of the holes into which a thread is tapped. */
function holeUnder(part: Part, { points }: TappingSize): Drill | undefined {
  for (const size of part.operations.flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))) {
    if (size.kind !== 'hole' || !size.points.some((point) => points.some((other) => point.every((value, i) => Math.abs(value - other[i]!) < 1e-6)))) continue;
    const { value } = size.diameter;
    return drills.find(({ name }) => name === size.tool) ?? { ...drills[0]!, name: size.tool ?? String(value), diameter: value };
  }
  return undefined;
}
