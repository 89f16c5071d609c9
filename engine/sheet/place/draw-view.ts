import type { Curve2 } from '../../geometry/curve.js';
import type { Vector2 } from '../../geometry/vector.js';
import { scaleCurve } from '../../lettering/place-curve.js';
import type { Part } from '../../part/part.js';
import type { ViewCurve } from '../../view/model.js';
import type { Item, LineRole } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { chainOf } from '../say/extremes.js';
import type { Target } from '../say/item.js';
import type { Housed } from '../views/choose-views.js';
import type { ViewPlan } from '../views/plan.js';
import { placeAngle, type AngleTask } from './angles.js';
import { Board, type Ink } from './board.js';
import { centreLines } from './centre-lines.js';
import { breakLines } from './break-lines.js';
import { pitchCircles } from './pitch-circles.js';
import { hatchLines } from './hatching.js';
import { placeLeaders } from './leaders.js';
import { placeLinear } from './linear.js';
import { stroke, textWidth } from './pieces.js';
import { boxAround, unionOf } from './plane.js';
import { sectionMarks } from './section-marks.js';
import { closed } from '../views/breaks.js';
import { clipToDisc } from '../views/clip.js';
import type { Detail } from '../views/details.js';
import { detailMarks } from './detail-marks.js';
import { envelopeOf } from './envelope.js';

/** A view drawn at a scale with all that is said on it; paper mm about the view's own origin. */
export interface DrawnView {
  readonly plan: ViewPlan;
  readonly scale: number;
  readonly items: readonly Item[];
  /** The outline alone, and everything. */
  readonly outline: PaperBox;
  readonly envelope: PaperBox;
  /** Where the text of each item stands. */
  readonly texts: ReadonlyMap<string, PaperBox>;
  /** Items that found no place. */
  readonly failed: readonly string[];
}

export interface ViewDrawing {
  readonly part: Part;
  readonly plan: ViewPlan;
  readonly housed: readonly Housed[];
  readonly scale: number;
  /** Sections whose plane is marked on this view, with their letters. */
  readonly sections: readonly (readonly [string, ViewPlan])[];
  /** Lets lines cross that should not, where nothing else would do. */
  readonly lenient: boolean;
  /** Details that are taken from this view. */
  readonly details: readonly Detail[];
  /** Which hidden curves tell something that nothing else does. */
  readonly keepHidden: (curve: ViewCurve) => boolean;
}

const roleOf = (curve: ViewCurve): LineRole => {
  if (!curve.visible) return 'hidden';
  return curve.role === 'thread' ? 'thread' : curve.role === 'smooth' ? 'smooth' : 'visible';
};

export function drawView(drawing: ViewDrawing): DrawnView {
  const shape = drawShape(drawing);
  const said = sayAll(drawing, shape);
  const items = [...shape.items, ...said.items];
  return {
    plan: drawing.plan,
    scale: drawing.scale,
    items,
    outline: shape.outline,
    envelope: unionOf([shape.outline, envelopeOf(items)]),
    texts: said.texts,
    failed: said.failed,
  };
}

/** The view without what is said on it: outlines, hatching, centre lines, marks of details and sections. */
function drawShape(drawing: ViewDrawing): Shape {
  const { part, plan, scale, housed } = drawing;
  const group = plan.id;
  const items: Item[] = [];
  const board = new Board();
  const outlinePoints: Vector2[] = [];
  for (const curve of plan.view.curves) {
    if (!curve.visible && (plan.section !== undefined || !drawing.keepHidden(curve))) continue;
    const geometry = scaleCurve(curve.geometry, scale);
    items.push({ kind: 'stroke', group, role: roleOf(curve), curve: geometry });
    const chain = chainOf(geometry);
    outlinePoints.push(...chain);
    board.add({ boxes: [], ink: inkOf(chain, 'outline') });
  }
  const disc = plan.detail === undefined ? undefined : discOnPaper(plan.detail, scale);
  if (disc !== undefined) {
    const circle: Curve2 = { kind: 'arc', centre: disc.centre, radius: disc.radius, start: 0, sweep: 360 };
    items.push({ kind: 'stroke', group, role: 'break', curve: circle });
    outlinePoints.push(...chainOf(circle));
  }
  const outline = boxAround(outlinePoints);
  const within = (from: Vector2, to: Vector2): readonly (readonly [Vector2, Vector2])[] =>
    disc === undefined
      ? [[from, to]]
      : clipToDisc({ kind: 'line', from, to }, disc.centre, disc.radius).flatMap((each) => (each.kind === 'line' ? [[each.from, each.to] as const] : []));
  for (const [from, to] of hatchLines(plan, scale)) for (const [a, b] of within(from, to)) items.push(stroke(group, 'hatch', a, b));
  const place = ([u, v]: Vector2): Vector2 => [closed(plan.gap, u / scale) * scale, v];
  for (const line of centreLines(part, plan, scale))
    for (const [a, b] of within(place(line.from), place(line.to))) {
      items.push(stroke(group, 'centre', a, b));
      board.add({ boxes: [], ink: [{ kind: 'centre', a, b }] });
    }
  items.push(...breakLines(plan, scale));
  for (const curve of pitchCircles(part, plan, scale)) items.push({ kind: 'stroke', group, role: 'centre', curve });
  for (const detail of drawing.details) {
    const marks = detailMarks(group, detail, scale, board);
    items.push(...marks.items);
    board.add(marks);
  }
  for (const [name, section] of drawing.sections) {
    const marks = sectionMarks(group, plan, section, name, outline, scale, busyAt(plan, section, housed, scale));
    items.push(...marks.items);
    board.add(marks);
  }
  return { items, outline, board };
}

/** How often the order is changed before a callout without a place is given up. */
const turns = 4;

/**
 * Places all that is said: distances, then angles, then callouts. Where a callout finds no place, it goes before the
 * distances in the next turn; the turn with the fewest failures counts.
 */
function sayAll(drawing: ViewDrawing, shape: Shape): Said {
  let first: ReadonlySet<string> = new Set();
  let best: Said | undefined;
  for (let turn = 0; turn < turns; turn += 1) {
    const said = sayOnce(drawing, shape, first);
    if (best === undefined || said.failed.length < best.failed.length) best = said;
    const more = said.failed.filter((id) => !first.has(id) && drawing.housed.some(({ item, home }) => item.id === id && home.kind !== 'linear'));
    // Where much is amiss another order will not mend it.
    if (more.length === 0 || said.failed.length > 3) break;
    first = new Set([...first, ...more]);
  }
  return best!;
}

function sayOnce({ plan, scale, housed, lenient }: ViewDrawing, shape: Shape, first: ReadonlySet<string>): Said {
  const group = plan.id;
  const board = shape.board.copy(lenient);
  const items: Item[] = [];
  const texts = new Map<string, PaperBox>();
  const failed: string[] = [];
  const keep = (placed: readonly { readonly id: string; readonly items: readonly Item[]; readonly box: PaperBox }[]): void => {
    for (const each of placed) {
      items.push(...each.items);
      texts.set(each.id, each.box);
    }
  };
  const leaders = (wanted: (id: string) => boolean, pointed: ReadonlySet<string>): void => {
    const result = placeLeaders(
      group,
      housed.flatMap(({ item, home }) => {
        const targets = home.kind === 'leader' ? home.targets : home.kind === 'linear' && pointed.has(item.id) ? home.instead! : [];
        if (targets.length === 0 || !wanted(item.id)) return [];
        return [{ id: item.id, lines: item.lines, texture: item.texture === true, targets: targets.slice(0, 10).map((target) => scaledTarget(target, scale)) }];
      }),
      shape.outline,
      plan.section !== undefined,
      board,
    );
    keep(result.placed);
    failed.push(...result.failed);
  };
  const angles = (wanted: (id: string) => boolean): void => {
    for (const { item, home } of housed) {
      if (home.kind !== 'angle' || !wanted(item.id)) continue;
      const task: AngleTask = {
        id: item.id,
        text: item.lines[0]!,
        corner: [home.corner[0] * scale, home.corner[1] * scale],
        from: home.from,
        to: home.to,
        drawn: [home.from, home.to].map((leg) => drawnAlong(plan, home.corner, leg).map((each) => each * scale) as [number, number]),
      };
      const placed = placeAngle(group, task, board);
      if (placed === undefined) failed.push(item.id);
      else keep([placed]);
    }
  };
  angles((id) => first.has(id));
  leaders((id) => first.has(id), new Set());
  const tooLong = (item: Housed['item'], home: Housed['home']): boolean =>
    home.kind === 'linear' && home.instead !== undefined && textWidth(item.lines[0]!) + 2 > (home.high - home.low) * scale;
  const linear = placeLinear(
    group,
    housed.flatMap(({ item, home }) => (home.kind === 'linear' && !tooLong(item, home) ? [{ id: item.id, text: item.lines[0]!, width: textWidth(item.lines[0]!), home }] : [])),
    shape.outline,
    scale,
    board,
    lenient,
  );
  keep(linear.placed);
  const pointed = new Set(
    housed.filter(({ item, home }) => home.kind === 'linear' && home.instead !== undefined && (tooLong(item, home) || linear.failed.includes(item.id))).map(({ item }) => item.id),
  );
  failed.push(...linear.failed.filter((id) => !pointed.has(id)));
  angles((id) => !first.has(id));
  leaders((id) => !first.has(id), pointed);
  return { items, texts, failed };
}

interface Shape {
  readonly items: readonly Item[];
  readonly outline: PaperBox;
  readonly board: Board;
}

interface Said {
  readonly items: readonly Item[];
  readonly texts: ReadonlyMap<string, PaperBox>;
  readonly failed: readonly string[];
}

const discOnPaper = (disc: NonNullable<ViewPlan['detail']>, scale: number): { readonly centre: Vector2; readonly radius: number } => ({
  centre: [disc.centre[0] * scale, disc.centre[1] * scale],
  radius: disc.radius * scale,
});

/** Where extension lines will run past the ends of a section's plane, along the axis that the plane is square to. */
function busyAt(plan: ViewPlan, section: ViewPlan, housed: readonly Housed[], scale: number): readonly number[] {
  const measured = plan.right[1] === section.section!.axis ? 'right' : 'up';
  return housed.flatMap(({ home }) => (home.kind === 'linear' && home.measured === measured ? [home.low * scale, home.high * scale] : []));
}

const scaledTarget = (target: Target, scale: number): Target => ({
  ...target,
  at: [target.at[0] * scale, target.at[1] * scale],
  radius: target.radius * scale,
});

export const inkOf = (chain: readonly Vector2[], kind: Ink['kind']): readonly Ink[] =>
  chain.slice(1).map((b, i) => ({ kind, a: chain[i]!, b }));

/** From where to where from a corner, along a direction, the visible outline runs; 0 to 0 where it does not. Model mm. */
function drawnAlong(plan: ViewPlan, corner: Vector2, angle: number): readonly [number, number] {
  const radians = (angle * Math.PI) / 180;
  const direction: Vector2 = [Math.cos(radians), Math.sin(radians)];
  let far = 0;
  let near = Infinity;
  for (const { geometry, visible } of plan.view.curves) {
    if (!visible || geometry.kind !== 'line') continue;
    const ends = [geometry.from, geometry.to].map((point) => along(point, corner, direction));
    if (ends.some(({ off }) => off > 1e-4)) continue;
    if (ends.every(({ distance }) => distance < 1e-6)) continue;
    far = Math.max(far, ...ends.map(({ distance }) => distance));
    near = Math.max(0, Math.min(near, ...ends.map(({ distance }) => distance)));
  }
  return far === 0 ? [0, 0] : [near, far];
}

const along = (point: Vector2, corner: Vector2, direction: Vector2): { readonly distance: number; readonly off: number } => {
  const [x, y] = [point[0] - corner[0], point[1] - corner[1]];
  return { distance: x * direction[0] + y * direction[1], off: Math.abs(x * direction[1] - y * direction[0]) };
};

