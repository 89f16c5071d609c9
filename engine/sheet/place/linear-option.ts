import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Home, Side } from '../say/item.js';
import type { Mark } from '../views/marks.js';
import type { Ink, Placing } from './board.js';
import { house } from './house.js';
import { arrowhead, lettering, stroke } from './pieces.js';
import { segmentMeetsBox } from './plane.js';

type LinearHome = Extract<Home, { kind: 'linear' }>;

/** A distance to be placed beside a view: its home, and its text. */
export interface LinearTask {
  readonly id: string;
  readonly text: string;
  /** The other unit, which stands under the dimension line. */
  readonly under?: string;
  /** Width of the text, or of what stands under the line where that is longer, mm. */
  readonly width: number;
  /** From one tier to the next, mm. */
  readonly pitch: number;
  readonly home: LinearHome;
}

/** A place for a distance: which side, which tier, and where its text and lines are then. */
export interface LinearOption extends Placing {
  readonly side: Side;
  readonly tier: number;
  readonly cost: number;
  readonly text: PaperBox;
  readonly drawn: {
    readonly line: readonly [Vector2, Vector2];
    readonly tips: readonly [Vector2, Vector2];
    readonly outside: boolean;
    readonly level: boolean;
    readonly foot: Vector2;
    readonly under: Vector2;
  };
  /** From where to where line and text run along the distance, paper mm. */
  readonly reach: readonly [number, number];
}

/** Where a text may stand along its dimension line, with what each place costs. */
export const places = [
  ['middle', 0],
  ['after', 2],
  ['before', 2.5],
  ['near high', 1],
  ['near low', 1],
  ['lifted', 3],
] as const;

/** Where everything of an option stands; nothing is drawn before an option is chosen. */
export function optionAt(
  task: LinearTask,
  outline: PaperBox,
  scale: number,
  side: Side,
  tier: number,
  place: (typeof places)[number][0],
): LinearOption | undefined {
  const { home, width } = task;
  const [low, high] = [home.low * scale, home.high * scale];
  const sign = side === 'below' || side === 'left' ? -1 : 1;
  const level = home.measured === 'right';
  const base = side === 'below' ? outline.bottom : side === 'above' ? outline.top : side === 'left' ? outline.left : outline.right;
  const line = base + sign * (house.first + task.pitch * tier);
  const at = (along: number, across: number): Vector2 => (level ? [along, across] : [across, along]);
  const room = high - low;
  const outside = room < 2 * house.arrow + 2;
  const tail = house.arrow + 2;
  const fits = width + 2 <= room - (outside ? 0 : 2);
  let centre: number;
  if (place === 'middle' || place === 'lifted') {
    if (fits !== (place === 'middle') || (place === 'lifted' && task.under !== undefined)) return undefined;
    centre = (low + high) / 2;
  } else if (place === 'after') centre = high + (outside ? tail : 1.5) + width / 2 + 0.5;
  else if (place === 'before') centre = low - (outside ? tail : 1.5) - width / 2 - 0.5;
  else {
    if (room < width * 2 + 4) return undefined;
    centre = place === 'near high' ? high - 3 - width / 2 : low + 3 + width / 2;
  }
  const ink: Ink[] = [];
  let inside = 0;
  for (const [coordinate, marks] of [[low, home.lowMarks], [high, home.highMarks]] as const) {
    const start = startOf(marks, sign, scale);
    const end = line + sign * house.overrun;
    if ((end - start) * sign <= 0) return undefined;
    ink.push({ kind: 'extension', a: at(coordinate, start), b: at(coordinate, end) });
    inside += Math.max(0, (base - start) * sign);
  }
  // The dimension line reaches as far as arrows and text need it.
  let from = outside ? low - tail : low;
  let to = outside ? high + tail : high;
  if (place === 'after') to = Math.max(to, centre + width / 2);
  if (place === 'before') from = Math.min(from, centre - width / 2);
  // Another extension line may run through the points of the arrows (a shared face), and nowhere else.
  const stops = [from, low - 0.3, low + 0.3, high - 0.3, high + 0.3, to];
  for (let i = 0; i < stops.length; i += 2)
    if (stops[i + 1]! > stops[i]!) ink.push({ kind: 'dimension', a: at(stops[i]!, line), b: at(stops[i + 1]!, line) });
  for (const point of [low, high]) ink.push({ kind: 'tip', a: at(point - 0.3, line), b: at(point + 0.3, line) });
  // Lifted text stands beyond the ends of its own extension lines, where a short span has room.
  const beyond = house.overrun + house.liftGap;
  const lift = place !== 'lifted' ? house.textGap : sign > 0 === level ? beyond : -beyond - house.height;
  const foot: Vector2 = level ? [centre, line + lift] : [line - lift, centre];
  const half = width / 2 + house.textClear;
  const descent = 0.25 * house.height + house.textClear;
  const rise = house.height + house.textClear;
  const box: PaperBox = level
    ? { left: foot[0] - half, right: foot[0] + half, bottom: foot[1] - descent, top: foot[1] + rise }
    : { left: foot[0] - rise, right: foot[0] + descent, bottom: foot[1] - half, top: foot[1] + half };
  // The text stands clear of its own dimension line; the box against others is cut back to that line.
  const own: PaperBox =
    place === 'lifted' ? box : level ? { ...box, bottom: Math.max(box.bottom, line + 0.05) } : { ...box, right: Math.min(box.right, line - 0.05) };
  const boxes = task.under === undefined ? [own] : [own, underBox(level, line, centre, half)];
  // Its own extension lines must not run through it either.
  if (ink.some((each) => each.kind === 'extension' && boxes.some((filled) => segmentMeetsBox(each.a, each.b, filled)))) return undefined;
  return {
    side,
    tier,
    ink,
    boxes,
    text: box,
    cost: inside * 0.35,
    reach: [Math.min(from, centre - width / 2), Math.max(to, centre + width / 2)],
    drawn: { line: [at(from, line), at(to, line)], tips: [at(low, line), at(high, line)], outside, level, foot, under: level ? [centre, line - house.textGap - house.height] : [line + house.textGap + house.height, centre] },
  };
}

/** The box of what stands under a dimension line. */
function underBox(level: boolean, line: number, centre: number, half: number): PaperBox {
  const far = house.textGap + house.height + 0.25 * house.height + house.textClear;
  return level
    ? { left: centre - half, right: centre + half, top: line - 0.05, bottom: line - far }
    : { left: line + 0.05, right: line + far, bottom: centre - half, top: centre + half };
}

/** The items of a chosen option. */
export function drawOption(group: string, task: LinearTask, { ink, drawn }: LinearOption): readonly Item[] {
  const { id, text } = task;
  const along = drawn.level ? 0 : 90;
  return [
    ...ink.filter(({ kind }) => kind === 'extension').map(({ a, b }) => stroke(group, 'extension', a, b, id)),
    stroke(group, 'dimension', drawn.line[0], drawn.line[1], id),
    arrowhead(group, 'dimension', drawn.tips[0], drawn.outside ? along : along + 180, id),
    arrowhead(group, 'dimension', drawn.tips[1], drawn.outside ? along + 180 : along, id),
    lettering(group, 'dimension', drawn.foot, text, { angle: along, anchor: 'middle', about: id }),
    ...(task.under === undefined ? [] : [lettering(group, 'dimension', drawn.under, task.under, { angle: along, anchor: 'middle', about: id })]),
  ];
}

/** Where the extension line begins: just off the ink nearest to the side, or at the end of a centre line. */
function startOf(marks: readonly Mark[], sign: 1 | -1, scale: number): number {
  const ends = marks.map((mark) => {
    const end = (sign < 0 ? mark.low : mark.high) * scale;
    return end + sign * (mark.kind === 'axis' ? house.centreOverrun : house.gap);
  });
  return sign < 0 ? Math.min(...ends) : Math.max(...ends);
}
