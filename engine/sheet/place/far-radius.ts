import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Board, Ink, Placing } from './board.js';
import { house } from './house.js';
import type { Leaning } from './linear-choices.js';
import { arrowhead, lettering, stroke, textWidth } from './pieces.js';

/** A radius whose centre lies off the view: its arc in paper mm, from which angle to which it is seen. */
export interface FarRadiusTask {
  readonly id: string;
  readonly lines: readonly string[];
  readonly centre: Vector2;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

export interface PlacedFarRadius {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

/** Where along the arc the line may stand, as shares of it; the middle last, where a line of symmetry runs. */
const places = [0.3, 0.7, 0.2, 0.8, 0.4, 0.6, 0.1, 0.9, 0.25, 0.75, 0.35, 0.65, 0.15, 0.85, 0.45, 0.55, 0.05, 0.95, 0.5];
const lengths = [16, 20, 25, 31, 38, 46, 55, 65, 76];
/** The jog: how far it leaps across (to either side) and along, mm, and how far before the elbow it stands. */
const jog = { across: 3, along: 1.5, before: 5 } as const;

const polar = (from: Vector2, angle: number, distance: number): Vector2 => [
  from[0] + distance * Math.cos((angle * Math.PI) / 180),
  from[1] + distance * Math.sin((angle * Math.PI) / 180),
];

interface Option extends Placing {
  readonly cost: number;
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

/**
 * Places a radius with its centre off the paper: a line that aims at the centre, with a jog in it to tell that it does not
 * reach there, and the text at its end (ISO 129-1, from memory).
 */
export function placeFarRadius(group: string, task: FarRadiusTask, outline: PaperBox, board: Board, leaning: Leaning = 'usual'): PlacedFarRadius | undefined {
  let best: Option | undefined;
  places.forEach((place, rank) => {
    const share = leaning === 'usual' ? place : 1 - place;
    const angle = task.from + share * (task.to - task.from);
    // A level or upright leader could be taken for an outline or an extension line.
    if (Math.abs(Math.sin((angle * Math.PI) / 90)) < 0.03) return;
    for (const length of lengths) {
      if (length + 5 > task.radius) break;
      for (const leap of [1, -1] as const) {
        const option = optionAt(group, task, angle, length, leap);
        const inside = option.box.left < outline.right && option.box.right > outline.left && option.box.bottom < outline.top && option.box.top > outline.bottom;
        const cost = rank * 0.4 + length * 0.12 + (inside ? 14 : 0) + board.cost(option);
        if (cost < (best?.cost ?? Infinity)) best = { ...option, cost };
      }
    }
  });
  if (best === undefined) return undefined;
  board.add(best);
  return { id: task.id, items: best.items, box: best.box };
}

function optionAt(group: string, { id, lines, centre, radius }: FarRadiusTask, angle: number, length: number, leap: 1 | -1): Omit<Option, 'cost'> {
  const tip = polar(centre, angle, radius);
  const way = angle + 180;
  const before = polar(tip, way, length - jog.before - jog.along);
  const aside = angle + leap * 90;
  const after = polar(polar(before, way, jog.along), aside, jog.across);
  const elbow = polar(after, way, jog.before);
  const side = Math.cos((way * Math.PI) / 180) >= 0 ? 1 : -1;
  const shoulder: Vector2 = [elbow[0] + side * house.shoulder, elbow[1]];
  const width = Math.max(...lines.map((line) => textWidth(line)));
  const left = side > 0 ? shoulder[0] + 1 : shoulder[0] - 1 - width;
  const box: PaperBox = {
    left: left - house.textClear,
    right: left + width + house.textClear,
    top: shoulder[1] + house.height / 2 + house.textClear,
    bottom: shoulder[1] - house.height / 2 - (lines.length - 1) * house.linePitch - 0.25 * house.height - house.textClear,
  };
  const course: readonly (readonly [Vector2, Vector2])[] = [[tip, before], [before, after], [after, elbow], [elbow, shoulder]];
  const ink = course.map(([a, b], i): Ink => ({ kind: 'leader', a: i === 0 ? polar(a, way, 0.4) : a, b }));
  return {
    ink: [...ink, { kind: 'tip', a: polar(tip, way, 0.05), b: polar(tip, way, 0.4) }],
    boxes: [box],
    box,
    items: [
      ...course.map(([a, b]) => stroke(group, 'leader', a, b, id)),
      arrowhead(group, 'leader', tip, angle, id),
      ...lines.map((line, i) => lettering(group, 'dimension', [left, shoulder[1] - house.height / 2 - i * house.linePitch], line, { about: id })),
    ],
  };
}
