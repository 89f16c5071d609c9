import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Home, Side } from '../say/item.js';
import type { Mark } from '../views/marks.js';
import { Board, type Ink, type Placing } from './board.js';
import { house } from './house.js';
import { arrowhead, lettering, stroke, textBox, textWidth } from './pieces.js';
import { segmentMeetsBox } from './plane.js';

type LinearHome = Extract<Home, { kind: 'linear' }>;

/** A distance to be placed beside a view: its home, and its text. */
export interface LinearTask {
  readonly id: string;
  readonly text: string;
  readonly home: LinearHome;
}

/** A distance as placed. */
export interface PlacedDimension {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

interface Option extends Placing {
  readonly side: Side;
  readonly tier: number;
  readonly items: readonly Item[];
  readonly cost: number;
  readonly text: PaperBox;
}

const mostTiers = 12;

/**
 * Places distances in tiers round a view, shortest nearest: each takes the side, tier and place of its text that cost least
 * and cross nothing they may not. Returns the ids of those that found no place.
 */
export function placeLinear(
  group: string,
  tasks: readonly LinearTask[],
  outline: PaperBox,
  scale: number,
  board: Board,
): { readonly placed: readonly PlacedDimension[]; readonly failed: readonly string[] } {
  const placed: PlacedDimension[] = [];
  const failed: string[] = [];
  const taken: { readonly side: Side; readonly tier: number; readonly low: number; readonly high: number }[] = [];
  const inOrder = [...tasks].sort((a, b) => span(a) - span(b) || (a.id < b.id ? -1 : 1));
  for (const task of inOrder) {
    const best = bestOption(group, task, outline, scale, board, taken);
    if (best === undefined) {
      failed.push(task.id);
      continue;
    }
    board.add(best);
    taken.push({ side: best.side, tier: best.tier, low: task.home.low * scale, high: task.home.high * scale });
    placed.push({ id: task.id, items: best.items, box: best.text });
  }
  return { placed, failed };
}

const span = (task: LinearTask): number => task.home.high - task.home.low;

function bestOption(
  group: string,
  task: LinearTask,
  outline: PaperBox,
  scale: number,
  board: Board,
  taken: readonly { readonly side: Side; readonly tier: number; readonly low: number; readonly high: number }[],
): Option | undefined {
  let best: Option | undefined;
  const { home } = task;
  const sides: readonly Side[] = home.side !== undefined ? [home.side] : home.measured === 'right' ? ['below', 'above'] : ['right', 'left'];
  sides.forEach((side, sideRank) => {
    const [low, high] = [home.low * scale, home.high * scale];
    // A span that holds another on the same side stands outside it (rule D9).
    const least = Math.max(
      0,
      ...taken.filter((other) => other.side === side && other.low >= low - 1e-6 && other.high <= high + 1e-6).map((other) => other.tier + 1),
    );
    for (let tier = least; tier < least + mostTiers; tier += 1)
      for (const [place, placeCost] of [['middle', 0], ['after', 2], ['before', 2.5], ['near high', 1], ['near low', 1]] as const) {
        const option = optionAt(group, task, outline, scale, side, tier, place);
        if (option === undefined) continue;
        const base = option.cost + placeCost + sideRank * 0.4 + tier * 4;
        if (best !== undefined && base >= best.cost) continue;
        const cost = base + board.cost(option);
        if (cost < (best?.cost ?? Infinity)) best = { ...option, cost };
      }
  });
  return best;
}

function optionAt(
  group: string,
  task: LinearTask,
  outline: PaperBox,
  scale: number,
  side: Side,
  tier: number,
  place: 'middle' | 'after' | 'before' | 'near high' | 'near low',
): Option | undefined {
  const { home, text, id } = task;
  const [low, high] = [home.low * scale, home.high * scale];
  const sign = side === 'below' || side === 'left' ? -1 : 1;
  const base = side === 'below' ? outline.bottom : side === 'above' ? outline.top : side === 'left' ? outline.left : outline.right;
  const line = base + sign * (house.first + house.pitch * tier);
  const at = (along: number, across: number): Vector2 => (home.measured === 'right' ? [along, across] : [across, along]);
  const width = textWidth(text);
  const room = high - low;
  const outside = room < 2 * house.arrow + 2;
  const tail = house.arrow + 2;
  const fits = width + 2 <= room - (outside ? 0 : 2 * 1);
  let centre: number;
  if (place === 'middle') {
    if (!fits) return undefined;
    centre = (low + high) / 2;
  } else if (place === 'after') centre = high + (outside ? tail : 1.5) + width / 2 + 0.5;
  else if (place === 'before') centre = low - (outside ? tail : 1.5) - width / 2 - 0.5;
  else {
    if (room < width * 2 + 4) return undefined;
    centre = place === 'near high' ? high - 3 - width / 2 : low + 3 + width / 2;
  }
  const items: Item[] = [];
  const ink: Ink[] = [];
  const put = (kind: Ink['kind'], role: 'dimension' | 'extension', a: Vector2, b: Vector2): void => {
    ink.push({ kind, a, b });
    items.push(stroke(group, role, a, b, id));
  };
  let inside = 0;
  for (const [coordinate, marks] of [[low, home.lowMarks], [high, home.highMarks]] as const) {
    const start = startOf(marks, sign, scale);
    const end = line + sign * house.overrun;
    if ((end - start) * sign <= 0) return undefined;
    put('extension', 'extension', at(coordinate, start), at(coordinate, end));
    inside += Math.max(0, (base - start) * sign);
  }
  // The dimension line reaches as far as arrows and text need it.
  let from = low;
  let to = high;
  if (outside) {
    from -= tail;
    to += tail;
  }
  if (place === 'after') to = Math.max(to, centre + width / 2);
  if (place === 'before') from = Math.min(from, centre - width / 2);
  put('dimension', 'dimension', at(from, line), at(to, line));
  const along = home.measured === 'right' ? 0 : 90;
  items.push(
    arrowhead(group, 'dimension', at(low, line), outside ? along : along + 180, id),
    arrowhead(group, 'dimension', at(high, line), outside ? along + 180 : along, id),
  );
  const label = lettering(group, 'dimension', home.measured === 'right' ? [centre, line + house.textGap] : [line - house.textGap, centre], text, {
    angle: along,
    anchor: 'middle',
    about: id,
  });
  items.push(label);
  const box = textBox(label, house.textClear);
  // The text stands clear of its own dimension line; the box against others is cut back to that line.
  const own = home.measured === 'right' ? { ...box, bottom: Math.max(box.bottom, line + 0.05) } : { ...box, right: Math.min(box.right, line - 0.05) };
  // Its own extension lines must not run through it either.
  if (ink.some((each) => each.kind === 'extension' && segmentMeetsBox(each.a, each.b, own))) return undefined;
  return { side, tier, items, ink, boxes: [own], text: box, cost: inside * 0.15 };
}

/** Where the extension line begins: just off the ink nearest to the side, or at the end of a centre line. */
function startOf(marks: readonly Mark[], sign: 1 | -1, scale: number): number {
  const ends = marks.map((mark) => {
    const end = (sign < 0 ? mark.low : mark.high) * scale;
    return end + sign * (mark.kind === 'axis' ? house.centreOverrun : house.gap);
  });
  return sign < 0 ? Math.min(...ends) : Math.max(...ends);
}
