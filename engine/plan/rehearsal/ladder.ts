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

export interface Ladder {
  readonly operation: number;
  readonly thread: string;
  readonly rungs: readonly Rung[];
}

/** A thread below this is stripped too easily, above it the tap is too tight; per cent (common practice). */
const usable = { least: 45, most: 85 } as const;

/** Two drills nearer than this are one to the tap, mm. */
const apart = 0.02;

/**
 * The drills to try for a tapped hole: that of the part, and the next usable ones to either side, of the shop or of the
 * tables. Empty where an operation taps nothing.
 */
export function laddersOf(part: Part, operation: Operation, shop: Shop | undefined): readonly Ladder[] {
  const tapped = operation.cuts.flatMap(({ sizes }) => sizes.filter((size): size is TappingSize => size.kind === 'tapping'));
  return tapped.flatMap((size): Ladder[] => {
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
    return [{ operation: operation.number, thread: size.thread.designation, rungs }];
  });
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
