import type { Curve2 } from '../../../geometry/curve.js';
import type { Vector2, Vector3 } from '../../../geometry/vector.js';
import { scaleCurve } from '../../../lettering/place-curve.js';
import type { Operation, Part } from '../../../part/part.js';
import type { OperationPlan, RunPlan } from '../../../plan/plan.js';
import type { OperationState } from '../../../plan/states/state.js';
import type { Solid } from '../../../solid/model.js';
import { projectPoint } from '../../../view/camera.js';
import { project } from '../../../view/project.js';
import type { Camera, View, ViewCurve } from '../../../view/model.js';
import type { Item, StrokeItem } from '../../drawing.js';
import type { PaperBox } from '../../frame-box.js';
import { axesSign, type NamedAxes } from '../../operations/axes-sign.js';
import { zeroMark } from '../../operations/zero-mark.js';
import { envelopeOf } from '../../place/envelope.js';
import { movedItems, stroke } from '../../place/pieces.js';
import { boxesMeet, segmentMeetsBox, segmentsCross } from '../../place/plane.js';
import { cutterArrow, shaftOf, type Shaft } from './cutter-arrow.js';
import { cutterSide } from './cutter-side.js';
import { finishedLines } from './finished-lines.js';
import { hullMeetsBox } from './hull.js';
import { newFaces } from './new-faces.js';
import { tints } from './picture-tints.js';
import { threadName } from './thread-curves.js';
import { tintStrokes, type Tint } from './tint.js';

/** What is seen of the finished part: curves of the view, mm of the part, and where what holds the work stands before it. */
export interface FinishedSight {
  readonly solid: Solid;
  readonly edges: readonly Curve2[];
  readonly isCovered: (at: Vector2) => boolean;
}

/** What all pictures of one set-up share: from where they are seen, at which scale, and what holds the work. */
export interface Scene {
  readonly camera: Camera;
  readonly factor: number;
  /** The convex outline of the work as the set-up finds it, with what holds it, and its box; paper mm. */
  readonly hull: readonly Vector2[];
  readonly box: PaperBox;
  readonly holding?: Solid;
  /** The finished part; not set where the set-up does not change the work any more. */
  readonly finished?: FinishedSight;
  /** The work with what holds it, made once a state, and its view. */
  readonly wholeOf: (work: Solid) => Solid;
  readonly viewOf: (work: Solid) => View;
  /** The lines of all threads of the part, each by the name of its operation, as the work lets them be seen. */
  readonly threadsOf: (work: Solid) => readonly ViewCurve[];
}

export interface OperationPicture {
  readonly items: readonly Item[];
  /** Width and height; the items count from the upper left corner. */
  readonly width: number;
  readonly height: number;
  /** From where the cutter comes, in words; undefined where nothing is cut. */
  readonly cutterFrom?: string;
}

/** The work after an operation as it sits on the machine, what is cut now set apart, with zero, cutter and axes. */
export function operationPicture(part: Part, run: RunPlan, plan: OperationPlan, { operation, before, after }: OperationState, scene: Scene): OperationPicture {
  const { camera, factor, holding } = scene;
  const group = `picture ${operation.number}`;
  const whole = scene.wholeOf(after);
  const cut = newFaces(part, operation, after);
  const drawn = [...outlines(scene.viewOf(after), factor, cut.surfaces, group), ...threads(part, operation, scene.threadsOf(after), factor, group)];
  const items: Item[] = [
    ...(before === after ? [] : gone(scene.viewOf(before), factor, group)),
    ...drawn,
    ...toCome(scene, after, drawn, group),
    ...(scene.viewOf(after).curves.some(({ surfaces }) => surfaces.some((surface) => cut.surfaces.has(surface))) ? [] : inside(whole, scene, cut.surfaces, group)),
    ...tinted(whole, scene, (face) => cut.faces.has(face), tints.cut, group),
    ...(holding === undefined ? [] : tinted(whole, scene, (face) => whole.faces[face]!.tag.cut === 'held by', tints.held, group)),
    ...(holding === undefined ? [] : tinted(whole, scene, (face) => whole.faces[face]!.tag.cut === 'packing', tints.packing, group)),
  ];
  const place = (point: Vector3): Vector2 => {
    const [x, y] = projectPoint(camera, point);
    return [x * factor, y * factor];
  };
  const origin = run.zero.length === 0 ? undefined : place(run.frame.origin);
  const side = cutterSide(run.setUp, run.frame, operation, plan.cutters, after, cut.faces);
  const shaft = side === undefined ? undefined : shaftOf(place(side.at), projectPoint(camera, side.into), scene.hull, origin);
  if (shaft !== undefined) items.push(...cutterArrow(group, shaft));
  const { box } = scene;
  const axes = axesBeside(group, run, scene, shaft);
  items.push(...axes.items);
  if (origin !== undefined) items.push(...zeroItems(group, origin, scene, axes.box, shaft));
  const around = envelopeOf([...items, { kind: 'stroke', group, role: 'work', curve: { kind: 'line', from: [box.left, box.bottom], to: [box.right, box.top] } }]);
  return {
    items: movedItems(items, [-around.left, -around.top]),
    width: around.right - around.left,
    height: around.top - around.bottom,
    ...(side === undefined ? {} : { cutterFrom: side.words }),
  };
}

/** Edges that the work had before: what is left of them stands under the outlines drawn after. */
const gone = (view: View, factor: number, group: string): readonly Item[] =>
  view.curves.filter(({ role }) => role !== 'smooth').map((curve): Item => ({ kind: 'stroke', group, role: 'removed', curve: scaleCurve(curve.geometry, factor) }));

const outlines = (view: View, factor: number, cut: ReadonlySet<number>, group: string): readonly StrokeItem[] =>
  view.curves.map((curve): StrokeItem => {
    const bold = curve.role !== 'smooth' && curve.surfaces.some((surface) => cut.has(surface));
    return { kind: 'stroke', group, role: bold ? 'visible' : 'work', curve: scaleCurve(curve.geometry, factor) };
  });

/** The lines of the threads that are cut by then. */
function threads(part: Part, operation: Operation, curves: readonly ViewCurve[], factor: number, group: string): readonly StrokeItem[] {
  const done = new Set(part.operations.slice(0, part.operations.findIndex(({ number }) => number === operation.number) + 1).map(threadName));
  return curves.flatMap(({ name, role, geometry }): readonly StrokeItem[] => (name !== undefined && done.has(name) ? [{ kind: 'stroke', group, role: role === 'thread' ? 'thread' : 'work', curve: scaleCurve(geometry, factor) }] : []));
}

/** What the finished part has where there still is metal. */
function toCome({ finished, factor }: Scene, after: Solid, drawn: readonly StrokeItem[], group: string): readonly Item[] {
  if (finished === undefined || finished.solid === after) return [];
  const isCovered = ([x, y]: Vector2): boolean => finished.isCovered([x / factor, y / factor]);
  return finishedLines(finished.edges, factor, drawn.map(({ curve }) => curve), isCovered, group);
}

/** Edges of what is cut where nothing of it is in sight, as a groove in a bore. */
function inside(whole: Solid, { camera, factor }: Scene, cut: ReadonlySet<number>, group: string): readonly Item[] {
  const curves = project(whole, camera, { hidden: true, smooth: true }).curves.filter(({ role, surfaces }) => role !== 'smooth' && surfaces.some((surface) => cut.has(surface)));
  return curves.map((curve): Item => ({ kind: 'stroke', group, role: 'hidden', curve: scaleCurve(curve.geometry, factor) }));
}

const tinted = (solid: Solid, { camera, factor }: Scene, wanted: (face: number) => boolean, tint: Tint, group: string): readonly Item[] =>
  tintStrokes(solid, camera, factor, wanted, tint).map(([from, to]) => stroke(group, 'tint', from, to));

const axesOf = ({ setUp, frame }: RunPlan): NamedAxes => (setUp.machine === 'lathe' ? [['X', frame.x], ['Z', frame.z]] : [['X', frame.x], ['Y', frame.y], ['Z', frame.z]]);

/** Work and axes stand beside each other up to this width, mm; else the axes stand under the work. */
const besideRoom = 58;

/** The axes of the machine in a corner that the work leaves free, else at its left. */
function axesBeside(group: string, run: RunPlan, { camera, box, hull }: Scene, shaft: Shaft | undefined): ReturnType<typeof axesSign> {
  const sign = axesSign(group, camera, [0, 0], axesOf(run)).box;
  const [width, height] = [sign.right - sign.left, sign.top - sign.bottom];
  const corners: readonly Vector2[] = [
    [box.left, box.bottom],
    [box.left, box.top - height],
    [box.right - width, box.bottom],
    [box.left - 5, box.bottom],
    [box.left - 5, box.bottom - 4],
    ...(box.right - box.left + width < besideRoom ? [[box.left - width - 2, box.bottom] as const] : []),
    [box.left, box.bottom - height - 1],
  ];
  const boxAt = ([x, y]: Vector2): PaperBox => ({ left: x - 1, right: x + width + 1, bottom: y - 1, top: y + height + 1 });
  const free = (corner: Vector2): boolean => !hullMeetsBox(hull, boxAt(corner)) && (shaft === undefined || !segmentMeetsBox(shaft[0], shaft[1], boxAt(corner)));
  return axesSign(group, camera, corners.find(free) ?? [box.left - width - 2, box.bottom], axesOf(run));
}

/** Half the square of the zero mark, with some air. */
const square = 4.5;
/** How far from the work the square may stand. */
const outside = 8;

/** The mark of zero; its square stands as near as it can, off the work, the axes and the cutter's arrow. */
function zeroItems(group: string, at: Vector2, { box, hull }: Scene, taken: PaperBox, shaft: Shaft | undefined): readonly Item[] {
  const squareAt = ([x, y]: Vector2): PaperBox => ({ left: x - square, right: x + square, bottom: y - square, top: y + square });
  const clear = (centre: Vector2): boolean => {
    const own = squareAt(centre);
    return !hullMeetsBox(hull, own) && !boxesMeet(own, taken) && !segmentMeetsBox(centre, at, taken) && (shaft === undefined || (!segmentMeetsBox(shaft[0], shaft[1], own) && !segmentsCross(shaft[0], shaft[1], centre, at)));
  };
  const far = (centre: Vector2): number => Math.hypot(centre[0] - at[0], centre[1] - at[1]);
  const choices: Vector2[] = [];
  for (let x = box.left - outside; x <= box.right + outside; x += 2) for (let y = box.bottom - outside; y <= box.top + outside; y += 2) choices.push([x, y]);
  // Room beside the work is dearer than room over and under it; room within its box costs nothing.
  const cost = (centre: Vector2): number => far(centre) + 2 * Math.max(0, centre[0] + square - box.right, box.left - centre[0] + square) + 1.5 * Math.max(0, centre[1] + square - box.top, box.bottom - centre[1] + square);
  const sorted = choices.filter((centre) => far(centre) > square + 4).sort((a, b) => cost(a) - cost(b));
  const free = sorted.filter((centre) => !hullMeetsBox(hull, squareAt(centre)) && !boxesMeet(squareAt(centre), taken));
  return zeroMark(group, sorted.find(clear) ?? free[0] ?? [box.right + outside, at[1]], at);
}
