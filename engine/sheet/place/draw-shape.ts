import type { Curve2 } from '../../geometry/curve.js';
import type { Vector2 } from '../../geometry/vector.js';
import { scaleCurve } from '../../lettering/place-curve.js';
import type { ViewCurve } from '../../view/model.js';
import type { Item, LineRole } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { chainOf } from '../say/extremes.js';
import { closed } from '../views/breaks.js';
import type { Housed } from '../views/choose-views.js';
import { clipToDisc } from '../views/clip.js';
import type { ViewPlan } from '../views/plan.js';
import { arcLines } from './arc-lines.js';
import { Board, type Ink } from './board.js';
import { breakLines } from './break-lines.js';
import { centreLines } from './centre-lines.js';
import { detailMarks } from './detail-marks.js';
import { hatchLines } from './hatching.js';
import { stroke } from './pieces.js';
import { pitchCircles } from './pitch-circles.js';
import { boxAround } from './plane.js';
import { sectionMarks } from './section-marks.js';
import type { ViewDrawing } from './view-drawing.js';

/** A view without what is said on it: its items, the box of its outline, and the board on which the rest is placed. */
export interface Shape {
  readonly items: readonly Item[];
  readonly outline: PaperBox;
  readonly board: Board;
}

const roleOf = (curve: ViewCurve): LineRole => {
  if (!curve.visible) return 'hidden';
  return curve.role === 'edge' || curve.role === 'silhouette' ? 'visible' : curve.role;
};

/** The view without what is said on it: outlines, hatching, centre lines, marks of details and sections. */
export function drawShape(drawing: ViewDrawing): Shape {
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
  for (const curve of arcLines(part, plan, scale)) items.push({ kind: 'stroke', group, role: 'centre', curve });
  for (const curve of pitchCircles(part, plan, scale)) items.push({ kind: 'stroke', group, role: 'centre', curve });
  for (const [name, section] of drawing.sections) {
    const marks = sectionMarks(group, plan, section, name, outline, scale, busyAt(plan, section, housed, scale));
    items.push(...marks.items);
    board.add(marks);
  }
  // A detail's letter gives way to the marks of the sections, which have but one place.
  for (const detail of drawing.details) {
    const marks = detailMarks(group, detail, scale, board);
    items.push(...marks.items);
    board.add(marks);
  }
  return { items, outline, board };
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

const inkOf = (chain: readonly Vector2[], kind: Ink['kind']): readonly Ink[] =>
  chain.slice(1).map((b, i) => ({ kind, a: chain[i]!, b }));

