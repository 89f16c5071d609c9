import type { Vector2, Vector3 } from '../../../geometry/vector.js';
import { scaleCurve } from '../../../lettering/place-curve.js';
import type { Part } from '../../../part/part.js';
import type { OperationPlan, RunPlan } from '../../../plan/plan.js';
import type { OperationState } from '../../../plan/states/state.js';
import type { Solid } from '../../../solid/model.js';
import { mergedSolid } from '../../../solid/merge.js';
import { projectPoint } from '../../../view/camera.js';
import type { Camera, View } from '../../../view/model.js';
import type { Item } from '../../drawing.js';
import type { PaperBox } from '../../frame-box.js';
import { axesSign, type NamedAxes } from '../../operations/axes-sign.js';
import { zeroMark } from '../../operations/zero-mark.js';
import { envelopeOf } from '../../place/envelope.js';
import { movedItems, stroke } from '../../place/pieces.js';
import { boxesMeet, segmentMeetsBox } from '../../place/plane.js';
import { cutterArrow, shaftOf, type Shaft } from './cutter-arrow.js';
import { cutterSide } from './cutter-side.js';
import { newFaces } from './new-faces.js';
import { tints } from './picture-tints.js';
import { tintStrokes, type Tint } from './tint.js';

/** What all pictures of one set-up share: from where they are seen, at which scale, and what holds the work. */
export interface Scene {
  readonly camera: Camera;
  readonly factor: number;
  /** What is seen of the work as the set-up finds it, with what holds it; paper mm. */
  readonly box: PaperBox;
  readonly holding?: Solid;
  /** The view of the work with what holds it, made once a state. */
  readonly viewOf: (work: Solid) => View;
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
  const whole = holding === undefined ? after : mergedSolid([after, holding]);
  const cut = newFaces(part, operation, after);
  const items: Item[] = [
    ...(before === after ? [] : gone(scene.viewOf(before), factor, group)),
    ...outlines(scene.viewOf(after), factor, cut.surfaces, group),
    ...tinted(whole, scene, (face) => cut.faces.has(face), tints.cut, group),
    ...(holding === undefined ? [] : tinted(whole, scene, (face) => whole.faces[face]!.tag.cut === 'held by', tints.held, group)),
    ...(holding === undefined ? [] : tinted(whole, scene, (face) => whole.faces[face]!.tag.cut === 'packing', tints.packing, group)),
  ];
  const place = (point: Vector3): Vector2 => {
    const [x, y] = projectPoint(camera, point);
    return [x * factor, y * factor];
  };
  const side = cutterSide(run.setUp, run.frame, operation, plan.cutters, after, cut.faces);
  const shaft = side === undefined ? undefined : shaftOf(place(side.at), projectPoint(camera, side.into), scene.box);
  if (shaft !== undefined) items.push(...cutterArrow(group, shaft));
  const { box } = scene;
  const sign = axesSign(group, camera, [0, 0], axesOf(run));
  const axes = axesSign(group, camera, axesPlace(sign.box, box), axesOf(run));
  items.push(...axes.items);
  const zero = run.zero.length === 0 ? [] : zeroItems(group, place(run.frame.origin), box, [axes.box], shaft);
  items.push(...zero);
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

const outlines = (view: View, factor: number, cut: ReadonlySet<number>, group: string): readonly Item[] =>
  view.curves.map((curve): Item => {
    const bold = curve.role !== 'smooth' && curve.surfaces.some((surface) => cut.has(surface));
    return { kind: 'stroke', group, role: bold ? 'visible' : 'work', curve: scaleCurve(curve.geometry, factor) };
  });

const tinted = (solid: Solid, { camera, factor }: Scene, wanted: (face: number) => boolean, tint: Tint, group: string): readonly Item[] =>
  tintStrokes(solid, camera, factor, wanted, tint).map(([from, to]) => stroke(group, 'tint', from, to));

const axesOf = ({ setUp, frame }: RunPlan): NamedAxes => (setUp.machine === 'lathe' ? [['X', frame.x], ['Z', frame.z]] : [['X', frame.x], ['Y', frame.y], ['Z', frame.z]]);

const axesPlace = (sign: PaperBox, box: PaperBox): Vector2 => [box.left - (sign.right - sign.left) - 2, box.bottom];

/** The mark of zero with its square beside the picture, where it is clear of the axes and of the cutter's arrow. */
function zeroItems(group: string, at: Vector2, box: PaperBox, taken: readonly PaperBox[], shaft: Shaft | undefined): readonly Item[] {
  const out = 5.5;
  const xs = [box.right + out, box.left - out, box.left + (box.right - box.left) * 0.25, box.left + (box.right - box.left) * 0.75];
  const ys = [box.top, box.top - (box.top - box.bottom) * 0.33, box.bottom + (box.top - box.bottom) * 0.33, box.bottom];
  const beside = xs.slice(0, 2).flatMap((x) => ys.map((y): Vector2 => [x, y]));
  const over = xs.slice(2).flatMap((x) => [box.top + out, box.bottom - out].map((y): Vector2 => [x, y]));
  const squareAt = ([x, y]: Vector2): PaperBox => ({ left: x - 5, right: x + 5, bottom: y - 5, top: y + 5 });
  const clear = (centre: Vector2): boolean => taken.every((each) => !boxesMeet(each, squareAt(centre)) && !segmentMeetsBox(centre, at, each)) && (shaft === undefined || !segmentMeetsBox(shaft[0], shaft[1], squareAt(centre)));
  const far = (centre: Vector2): number => Math.hypot(centre[0] - at[0], centre[1] - at[1]);
  const choices = [...beside, ...over].sort((a, b) => far(a) - far(b));
  return zeroMark(group, choices.find(clear) ?? choices[0]!, at);
}
