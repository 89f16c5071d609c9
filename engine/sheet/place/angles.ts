import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Board} from './board.js';
import { type Ink, type Placing } from './board.js';
import { house } from './house.js';
import { arrowhead, lettering, stroke, textBox, textWidth } from './pieces.js';

/** An angle to be placed: its corner in paper mm, its legs in degrees. */
export interface AngleTask {
  readonly id: string;
  readonly text: string;
  readonly corner: Vector2;
  readonly from: number;
  readonly to: number;
  /** From where to where along each leg the part's own outline runs, mm from the corner; 0 to 0 for none. */
  readonly drawn: readonly (readonly [number, number])[];
}

export interface PlacedAngle {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

const polar = (corner: Vector2, angle: number, radius: number): Vector2 => [
  corner[0] + radius * Math.cos((angle * Math.PI) / 180),
  corner[1] + radius * Math.sin((angle * Math.PI) / 180),
];

/** Places an angle as an arc about its corner with arrowheads and the figure beside it. */
export function placeAngle(group: string, task: AngleTask, board: Board): PlacedAngle | undefined {
  let best: (Placing & { readonly items: readonly Item[]; readonly text: PaperBox; readonly cost: number }) | undefined;
  for (let radius = 10; radius <= 60; radius += 2.5)
    for (const place of ['middle', 'after', 'before'] as const) {
      const option = optionAt(group, task, radius, place);
      if (option === undefined) continue;
      const cost = option.cost + board.cost(option);
      if (cost < (best?.cost ?? Infinity)) best = { ...option, cost };
    }
  if (best === undefined) return undefined;
  board.add(best);
  return { id: task.id, items: best.items, box: best.text };
}

function optionAt(
  group: string,
  task: AngleTask,
  radius: number,
  place: 'middle' | 'after' | 'before',
): (Placing & { readonly items: readonly Item[]; readonly text: PaperBox; readonly cost: number }) | undefined {
  const { corner, from, to, id } = task;
  const sweep = to - from;
  const arc = (sweep * Math.PI * radius) / 180;
  const width = textWidth(task.text);
  const outside = arc < 2 * house.arrow + 2;
  const tail = ((house.arrow + 2) / radius) * (180 / Math.PI);
  const start = outside ? from - tail : from;
  const end = outside ? to + tail : to;
  if (place === 'middle' && sweep < 8) return undefined;
  const items: Item[] = [];
  const ink: Ink[] = [];
  // An arc nearer to the corner than the outline begins would hang in the air.
  if (task.drawn.some(([begin]) => radius < begin)) return undefined;
  for (const [angle, drawn] of [[from, task.drawn[0]!], [to, task.drawn[1]!]] as const) {
    const begin = drawn[1] + house.gap;
    const stop = radius + house.overrun;
    if (begin >= stop) continue;
    const [a, b] = [polar(corner, angle, begin), polar(corner, angle, stop)];
    items.push(stroke(group, 'extension', a, b, id));
    ink.push({ kind: 'extension', a, b });
  }
  items.push({ kind: 'stroke', group, role: 'dimension', about: id, curve: { kind: 'arc', centre: corner, radius, start, sweep: end - start } });
  // Where the arc meets its legs the ink is left out, so that touching is no crossing.
  const trim = ((0.4 / radius) * 180) / Math.PI;
  const runs: readonly (readonly [number, number])[] = outside ? [[start, from - trim], [from + trim, to - trim], [to + trim, end]] : [[from + trim, to - trim]];
  for (const [first, last] of runs) {
    const steps = Math.max(2, Math.ceil((last - first) / 4));
    const at = (k: number): Vector2 => polar(corner, first + ((last - first) * k) / steps, radius);
    for (let i = 0; i < steps; i += 1) ink.push({ kind: 'dimension', a: at(i), b: at(i + 1) });
  }
  // Arrowheads lie along the chord over their own length, so that they stay on the arc.
  const lean = ((house.arrow / 2 / radius) * 180) / Math.PI;
  items.push(
    arrowhead(group, 'dimension', polar(corner, from, radius), outside ? from + 90 - lean : from - 90 + lean, id),
    arrowhead(group, 'dimension', polar(corner, to, radius), outside ? to - 90 + lean : to + 90 - lean, id),
  );
  const middle = (from + to) / 2;
  const textAngle = place === 'middle' ? middle : place === 'after' ? end + (tail / 2) : start - tail / 2;
  const out = radius + 1.5;
  const c = Math.cos((textAngle * Math.PI) / 180);
  const s = Math.sin((textAngle * Math.PI) / 180);
  // The text's nearest corner keeps off the arc: half its size, as far as the direction asks.
  const centre: Vector2 = [corner[0] + c * (out + Math.abs(c) * (width / 2)), corner[1] + s * (out + Math.abs(s) * (house.height / 2))];
  const label = lettering(group, 'dimension', [centre[0], centre[1] - house.height / 2], task.text, { anchor: 'middle', about: id });
  const box = textBox(label);
  return { items: [...items, label], ink, boxes: [box], text: box, cost: radius * 0.12 + (place === 'middle' ? 0 : 2) + (outside ? 1 : 0) };
}
