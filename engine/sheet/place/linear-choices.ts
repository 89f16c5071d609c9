import type { PaperBox } from '../frame-box.js';
import type { Side } from '../say/item.js';
import type { Board } from './board.js';
import { optionAt, places, type LinearOption, type LinearTask } from './linear-option.js';

/** A place for a distance, with all of its cost that is the same in every trial. */
export interface Choice {
  readonly option: LinearOption;
  /** Index into the places of a text. */
  readonly place: number;
  readonly cost: number;
  /** What it costs to cross what stood on the board before the distances; worked out when first asked. */
  readonly crossing: () => number;
}

/** The places that a distance may take, side by side and tier by tier; each worked out when first asked. */
export interface Choices {
  readonly task: LinearTask;
  readonly sides: readonly { readonly side: Side; readonly at: (tier: number) => readonly Choice[] }[];
}

/** Which sides of a view distances like better: right and below, as is usual, or the others. */
export type Leaning = 'usual' | 'turned';

/** The places of a distance beside a view, given those that are placed after it. */
export function choicesFor(task: LinearTask, later: readonly LinearTask[], outline: PaperBox, scale: number, board: Board, leaning: Leaning): Choices {
  const { home } = task;
  const usual: readonly Side[] = home.side !== undefined ? [home.side] : home.measured === 'right' ? ['below', 'above'] : ['right', 'left'];
  const sides = leaning === 'usual' ? usual : [...usual].reverse();
  const [low, high] = [home.low * scale, home.high * scale];
  return {
    task,
    sides: sides.map((side, sideRank) => {
      // Where extension lines of later ones may run, line and text are in the way.
      const blocked = later
        .filter((other) => other.home.measured === home.measured && mayStand(other, side))
        .flatMap((other) => [other.home.low * scale, other.home.high * scale])
        .filter((at) => at < low - 1e-6 || at > high + 1e-6);
      const choicesAt = (tier: number): readonly Choice[] =>
        places.flatMap(([name, placeCost], place) => {
          const option = optionAt(task, outline, scale, side, tier, name);
          if (option === undefined) return [];
          const inWay = blocked.filter((at) => at > option.reach[0] && at < option.reach[1]).length;
          return [{ option, place, cost: option.cost + placeCost + sideRank * 0.4 + tier * 4 + inWay * 8, crossing: once(() => board.cost(option)) }];
        });
      const known: (readonly Choice[])[] = [];
      return { side, at: (tier: number) => (known[tier] ??= choicesAt(tier)) };
    }),
  };
}

const mayStand = (task: LinearTask, side: Side): boolean => task.home.side === undefined || task.home.side === side;

function once(reckon: () => number): () => number {
  let known: number | undefined;
  return () => (known ??= reckon());
}
