import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Side } from '../say/item.js';
import { Board } from './board.js';
import { choicesFor, type Choices, type Leaning } from './linear-choices.js';
import { drawOption, places, type LinearOption, type LinearTask } from './linear-option.js';

/** A distance as placed. */
export interface PlacedDimension {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

const mostTiers = 12;

interface Taken {
  readonly side: Side;
  readonly tier: number;
  readonly low: number;
  readonly high: number;
}

interface Trial {
  readonly options: readonly { readonly task: LinearTask; readonly option: LinearOption }[];
  readonly failed: readonly string[];
  readonly cost: number;
}

/** How many times the whole is tried, each time with other leanings; a fixed count, so that the result is the same anywhere. */
const trials = 24;
/** After so many trials without a failure the best is good enough. */
const contented = 3;

/**
 * Places distances in tiers round a view, shortest nearest: each takes the side, tier and place of its text that cost least
 * and cross nothing they may not. Since an early choice can block a later one, the whole is tried several times with
 * different leanings and the best is kept. Returns the ids of those that found no place.
 */
export function placeLinear(
  group: string,
  tasks: readonly LinearTask[],
  outline: PaperBox,
  scale: number,
  board: Board,
  leaning: Leaning = 'usual',
): { readonly placed: readonly PlacedDimension[]; readonly failed: readonly string[] } {
  const inOrder = [...tasks].sort((a, b) => span(a) - span(b) || (a.id < b.id ? -1 : 1));
  const choices = inOrder.map((task, i) => choicesFor(task, inOrder.slice(i + 1), outline, scale, board, leaning));
  let best: Trial | undefined;
  for (let k = 0; k < trials; k += 1) {
    const trial = attempt(choices, scale, leaningOf(k));
    if (best === undefined || trial.failed.length < best.failed.length || (trial.failed.length === best.failed.length && trial.cost < best.cost)) best = trial;
    if (best.failed.length === 0 && k + 1 >= contented) break;
    if (best.failed.length === 0 && tasks.length < 2) break;
  }
  for (const { option } of best!.options) board.add(option);
  return { placed: best!.options.map(({ task, option }) => ({ id: task.id, items: drawOption(group, task, option), box: option.text })), failed: best!.failed };
}

/** Leanings of a trial: an extra cost for each choice, none in the first; whole-number noise, the same on any machine. */
function leaningOf(trial: number): (choice: number) => number {
  if (trial === 0) return () => 0;
  let state = (trial * 2654435761) >>> 0;
  return () => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (state % 1000) / 80;
  };
}

function attempt(all: readonly Choices[], scale: number, lean: (choice: number) => number): Trial {
  const options: { task: LinearTask; option: LinearOption }[] = [];
  const failed: string[] = [];
  const taken: Taken[] = [];
  // What the trial itself has placed; what was there before is in the choices already.
  const board = new Board();
  let cost = 0;
  for (const choices of all) {
    const { task } = choices;
    const option = bestOption(choices, scale, board, taken, lean);
    if (option === undefined) {
      failed.push(task.id);
      continue;
    }
    board.add(option);
    cost += option.cost;
    taken.push({ side: option.side, tier: option.tier, low: task.home.low * scale, high: task.home.high * scale });
    options.push({ task, option });
  }
  return { options, failed, cost };
}

const span = (task: LinearTask): number => task.home.high - task.home.low;

function bestOption({ task, sides }: Choices, scale: number, board: Board, taken: readonly Taken[], lean: (choice: number) => number): LinearOption | undefined {
  let best: { readonly option: LinearOption; readonly leaned: number } | undefined;
  const { home } = task;
  const [low, high] = [home.low * scale, home.high * scale];
  for (const { side, at } of sides) {
    // A span that holds another on the same side stands outside it (rule D9).
    const least = Math.max(
      0,
      ...taken.filter((other) => other.side === side && other.low >= low - 1e-6 && other.high <= high + 1e-6).map((other) => other.tier + 1),
    );
    const leanings = places.map((_, k) => lean(k));
    // A further tier costs more than any place on a nearer one, so climbing ends two tiers above the first that is free.
    let climbed = 0;
    for (let tier = least; tier < least + mostTiers && climbed < 3; tier += 1) {
      if (best !== undefined && best.option.side === side) climbed += 1;
      for (const choice of at(tier)) {
        const leaned = choice.cost + leanings[choice.place]!;
        if (best !== undefined && leaned >= best.leaned) continue;
        const before = choice.crossing();
        if (before === Infinity) continue;
        const crossing = before + board.cost(choice.option);
        if (leaned + crossing < (best?.leaned ?? Infinity)) best = { option: { ...choice.option, cost: choice.cost + crossing }, leaned: leaned + crossing };
      }
    }
  }
  return best?.option;
}
