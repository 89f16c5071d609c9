import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Target } from '../say/item.js';
import { dotDiameter } from '../../../templates/arrow.js';
import { Board, type Placing } from './board.js';
import { house } from './house.js';
import { raysOf, shrunk, type Ray } from './leader-rays.js';
import { arrowhead, dot, lettering, stroke, textWidth } from './pieces.js';
import { boxAround, grown } from './plane.js';
import { textureBox, textureSign } from './texture-sign.js';

/** A callout to be placed: lines of text at the end of a leader to one of its targets. Targets in paper mm. */
export interface LeaderTask {
  readonly id: string;
  readonly lines: readonly string[];
  readonly texture: boolean;
  readonly targets: readonly Target[];
}

export interface PlacedLeader {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

interface Option extends Placing {
  readonly cost: number;
  /** Settles ties. */
  readonly rank: number;
  readonly text: PaperBox;
  readonly draw: () => readonly Item[];
}

/** Lengths of a leader, mm. */
const lengths = [8, 11, 14, 18, 22, 27, 32, 38, 45, 53, 62, 72];
/** So many of the lengths are short. */
const short = 6;
/** How many of the cheapest places of each callout are kept in play. */
const kept = 40;

/**
 * Places callouts by regret: the one that would lose most by waiting goes first. Returns the ids of those that found no
 * place.
 */
export function placeLeaders(
  group: string,
  tasks: readonly LeaderTask[],
  outline: PaperBox,
  hatched: boolean,
  keepIt: 'narrow' | 'low',
  board: Board,
): { readonly placed: readonly PlacedLeader[]; readonly failed: readonly string[] } {
  const open = new Map(
    tasks.map((task) => {
      const options = optionsOf(group, task, outline, hatched, keepIt, board);
      return [task.id, options] as const;
    }),
  );
  const placed: PlacedLeader[] = [];
  const failed: string[] = [];
  while (open.size > 0) {
    let pick: { id: string; regret: number } | undefined;
    for (const [id, options] of open) {
      const regret = options.length === 0 ? -1 : options.length === 1 ? 1e6 : options[1]!.cost - options[0]!.cost - options.length * 1e-3;
      if (pick === undefined || regret > pick.regret || (regret === pick.regret && id < pick.id)) pick = { id, regret };
    }
    const { id } = pick!;
    const option = open.get(id)![0];
    open.delete(id);
    if (option === undefined) {
      failed.push(id);
      continue;
    }
    // Two arrows on one spot could not be told apart: the spot is taken with the rest.
    const taken: Placing = { ink: option.ink, boxes: [...option.boxes, grown(boxAround([option.ink[0]!.a]), 0.8)] };
    board.add(taken);
    placed.push({ id, items: option.draw(), box: option.text });
    const just = new Board();
    just.add(taken);
    for (const [other, options] of open)
      open.set(
        other,
        options
          .map((each) => ({ ...each, cost: each.cost + just.cost(each) }))
          .filter((each) => Number.isFinite(each.cost))
          .sort((a, b) => a.cost - b.cost),
      );
  }
  return { placed, failed };
}

/** The cheapest places that the board has for a callout, cheapest first. */
function optionsOf(group: string, task: LeaderTask, outline: PaperBox, hatched: boolean, keepIt: 'narrow' | 'low', board: Board): readonly Option[] {
  const options: Option[] = [];
  // Nothing dearer than the last of those kept need be looked at.
  let limit = Infinity;
  const keep = (option: Option): void => {
    options.push(option);
    if (options.length < 2 * kept) return;
    options.sort(cheapestFirst);
    options.length = kept;
    limit = options[kept - 1]!.cost;
  };
  const block = blockOf(task);
  const rays = raysOf(task.targets, hatched);
  const barred = new Set<Ray>();
  /** Looks at the leaders of some lengths on a way, shortest first. */
  const look = (ray: Ray, some: readonly number[]): void => {
    const { target, angle, direction, tip, inside, leaning, rank } = ray;
    const reaches = some.map((length) => length + inside).filter((reach) => leaning + reach * 0.12 < limit);
    if (reaches.length === 0) return;
    const side = direction[0] >= 0 ? 1 : -1;
    const start = shrunk(tip, direction, 0.4);
    const point = { kind: 'tip' as const, a: shrunk(tip, direction, 0.05), b: start };
    const atTip = board.cost({ boxes: [], ink: [point] });
    if (atTip === Infinity) {
      barred.add(ray);
      return;
    }
    const sight = board.sight({ kind: 'leader', a: start, b: shrunk(tip, direction, reaches[reaches.length - 1]!) });
    for (const reach of reaches) {
      if (leaning + reach * 0.12 >= limit) break;
      const elbow = shrunk(tip, direction, reach);
      const crossing = sight.cost(elbow) + atTip;
      // What bars the way of a short leader bars a longer one.
      if (crossing === Infinity) {
        barred.add(ray);
        break;
      }
      const leader = { kind: 'leader' as const, a: start, b: elbow };
      const shoulderEnd: Vector2 = [elbow[0] + side * house.shoulder, elbow[1]];
      const box = blockBox(task, block, shoulderEnd, side);
      const own =
        leaning +
        reach * 0.12 +
        (boxInside(box, outline) ? 14 : 0) +
        spread(box, outline, hatched ? evenly : weights[keepIt]) +
        insideLength(tip, elbow, outline) * 0.15 +
        crossing;
      if (own >= limit) continue;
      // No line may pass between the shoulder and its text.
      const shoulder = { kind: 'leader' as const, a: elbow, b: [shoulderEnd[0] + side * toText, elbow[1]] as Vector2 };
      const cost = own + board.cost({ boxes: [box], ink: [shoulder] });
      if (cost >= limit) continue;
      keep({
        ink: [leader, shoulder, point],
        boxes: [box],
        text: box,
        cost,
        rank: rank + reach * 1e-6,
        draw: () => [
          stroke(group, 'leader', tip, elbow, task.id),
          stroke(group, 'leader', elbow, shoulderEnd, task.id),
          target.end === 'arrow' ? arrowhead(group, 'leader', tip, angle + 180, task.id) : dot(group, 'leader', tip, dotDiameter),
          ...drawBlock(group, task, block, shoulderEnd, side),
        ],
      });
    }
  };
  // Short leaders on all ways first: the long ones are then mostly dearer than what is known already.
  for (const some of [lengths.slice(0, short), lengths.slice(short)]) for (const ray of rays) if (!barred.has(ray)) look(ray, some);
  return options.sort(cheapestFirst).slice(0, kept);
}

const cheapestFirst = (a: Option, b: Option): number => a.cost - b.cost || a.rank - b.rank;

/** How far a text reaches beyond the belt round the view in which texts cost nothing, mm: sheets are narrower than texts are long. */
const belt = 22;
const spread = (box: PaperBox, outline: PaperBox, [level, upright]: readonly [number, number]): number =>
  level * (Math.max(0, outline.left - belt - box.left) + Math.max(0, box.right - outline.right - belt)) +
  upright * (Math.max(0, outline.bottom - belt - box.bottom) + Math.max(0, box.top - outline.top - belt));

/** Cost of a millimetre of spread, level and upright. A section stands by itself and may spread. */
const weights = { narrow: [0.3, 0.3], low: [0.1, 1.2] } as const;
const evenly = [0.12, 0.12] as const;

/** How much of a leader runs over the view, mm. */
function insideLength(tip: Vector2, elbow: Vector2, outline: PaperBox): number {
  let inside = 0;
  const steps = 12;
  for (let i = 0; i < steps; i += 1) {
    const t = (i + 0.5) / steps;
    const [x, y] = [tip[0] + (elbow[0] - tip[0]) * t, tip[1] + (elbow[1] - tip[1]) * t];
    if (x > outline.left && x < outline.right && y > outline.bottom && y < outline.top) inside += 1 / steps;
  }
  return inside * Math.hypot(elbow[0] - tip[0], elbow[1] - tip[1]);
}

const boxInside = (box: PaperBox, outline: PaperBox): boolean =>
  box.left < outline.right && box.right > outline.left && box.bottom < outline.top && box.top > outline.bottom;

interface Block {
  readonly width: number;
}

function blockOf(task: LeaderTask): Block {
  return { width: Math.max(...task.lines.map((line) => textWidth(line))) };
}

/** From the end of a shoulder to its text, mm. */
const toText = 1;

/** The box of a callout's text at the end of its shoulder. */
function blockBox(task: LeaderTask, block: Block, at: Vector2, side: 1 | -1): PaperBox {
  if (task.texture) return textureBox(block.width, at, side);
  const left = side > 0 ? at[0] + toText : at[0] - toText - block.width;
  return {
    left: left - house.textClear,
    right: left + block.width + house.textClear,
    top: at[1] + house.height / 2 + house.textClear,
    bottom: at[1] - house.height / 2 - (task.lines.length - 1) * house.linePitch - 0.25 * house.height - house.textClear,
  };
}

function drawBlock(group: string, task: LeaderTask, block: Block, at: Vector2, side: 1 | -1): readonly Item[] {
  if (task.texture) return textureSign(group, task.id, task.lines[0]!, block.width, at, side);
  const left = side > 0 ? at[0] + toText : at[0] - toText - block.width;
  return task.lines.map((line, i) => lettering(group, 'dimension', [left, at[1] - house.height / 2 - i * house.linePitch], line, { about: task.id }));
}
