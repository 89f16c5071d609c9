import type { FaceTag } from '../../solid/model.js';
import type { ViewCurve } from '../../view/model.js';
import type { Part } from '../../part/part.js';
import type { ViewPlan } from './plan.js';

/** Faces of holes: their callouts tell all that hidden lines would. */
function calledOut(part: Part): ReadonlySet<string> {
  const cuts = part.operations.flatMap((operation) => operation.cuts);
  const told = new Set(cuts.filter((cut) => cut.sizes.some((size) => 'points' in size)).map((cut) => cut.id));
  // What is made again is told with the first.
  return new Set(cuts.filter(({ id, repeats }) => told.has(id) || (repeats !== undefined && told.has(repeats.cut))).map(({ id }) => id));
}

/** The faces that lie on a surface of a plan's solid. */
const facesOn = (plan: ViewPlan, surface: number): readonly FaceTag[] => plan.solid.faces.filter((face) => face.surface === surface).map(({ tag }) => tag);

const nameOf = ({ cut, face }: FaceTag): string => `${cut} ${face}`;

/**
 * Which hidden curves tell something: those of faces that no chosen view or section shows (drawing rule L13). Only one view
 * shows them, the first that can.
 */
export function hiddenThatTell(part: Part, plans: readonly ViewPlan[]): (curve: ViewCurve, plan: ViewPlan) => boolean {
  const seen = new Set<string>();
  for (const plan of plans)
    for (const curve of plan.view.curves)
      if (curve.visible) for (const surface of curve.surfaces) for (const tag of facesOn(plan, surface)) seen.add(nameOf(tag));
  const told = calledOut(part);
  const front = plans.find((plan) => plan.place === 'front');
  return (curve, plan) =>
    (plan === front || plan.detail !== undefined) &&
    curve.surfaces.some((surface) => {
      const faces = facesOn(plan, surface).filter(({ cut }) => !told.has(cut));
      return faces.length > 0 && faces.every((tag) => !seen.has(nameOf(tag)));
    });
}
