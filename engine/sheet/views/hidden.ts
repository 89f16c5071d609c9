import type { ViewCurve } from '../../view/model.js';
import type { ViewPlan } from './plan.js';

/** Names the faces that lie on a surface of a plan's solid. */
const namesOn = (plan: ViewPlan, surface: number): readonly string[] =>
  plan.solid.faces.filter((face) => face.surface === surface).map(({ tag }) => `${tag.cut} ${tag.face}`);

/**
 * Which hidden curves tell something: those of faces that no chosen view or section shows (drawing rule L13). Only one view
 * shows them, the first that can.
 */
export function hiddenThatTell(plans: readonly ViewPlan[]): (curve: ViewCurve, plan: ViewPlan) => boolean {
  const seen = new Set<string>();
  for (const plan of plans)
    for (const curve of plan.view.curves)
      if (curve.visible) for (const surface of curve.surfaces) for (const name of namesOn(plan, surface)) seen.add(name);
  const front = plans.find((plan) => plan.place === 'front');
  return (curve, plan) =>
    (plan === front || plan.detail !== undefined) &&
    curve.surfaces.some((surface) => {
      const names = namesOn(plan, surface);
      return names.length > 0 && names.every((name) => !seen.has(name));
    });
}
