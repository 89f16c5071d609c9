import type { Cut, CutFace, Size } from '../../cut.js';
import type { Axis, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { indexOf, pointAt } from '../directions.js';
import { polygonOutline } from '../outlines.js';
import { inWords, joined } from '../phrases.js';
import type { Vector2, Vector3 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

/** One step of a bore: a diameter as far as `to`. */
export interface BoreStep {
  readonly to: Station;
  readonly diameter: Sized;
  readonly texture?: number;
}

/** A stepped bore about an axis, from `from` inward, each step narrower than the one before. */
export interface BoreCut {
  readonly id: string;
  readonly name: string;
  readonly axis: Axis;
  readonly centre: readonly [Station, Station];
  readonly from: Station;
  readonly steps: readonly BoreStep[];
}

/** How far the form reaches out of the entry, mm. */
const above = 0.5;

/** Throws RangeError when a step is not narrower than the one before, or runs the other way. */
export function bore(cut: BoreCut): Cut {
  const last = cut.steps[cut.steps.length - 1];
  if (last === undefined) throw new RangeError(`the ${cut.name} has no steps`);
  const sense = last.to.value > cut.from.value ? 1 : -1;
  const onAxis = (height: number): Vector3 => {
    const point: [number, number, number] = [...pointAt(...cut.centre, cut.from)];
    point[indexOf(cut.axis)] = height;
    return point;
  };
  const corners: Vector2[] = [[0, cut.from.value - sense * above]];
  const names: string[] = ['mouth'];
  const faces: Record<string, CutFace> = { mouth: { stations: [] }, axis: { stations: [] } };
  const sizes: Size[] = [];
  let height = cut.from.value;
  let before = Infinity;
  cut.steps.forEach((step, i) => {
    const radius = step.diameter.value / 2;
    if (radius >= before || (step.to.value - height) * sense <= 0)
      throw new RangeError(`step ${i + 1} of the ${cut.name} does not lie inside the one before`);
    corners.push([radius, i === 0 ? cut.from.value - sense * above : height], [radius, step.to.value]);
    names.push(`step ${i + 1}`, `shoulder ${i + 1}`);
    faces[`step ${i + 1}`] = { stations: [], ...(step.texture === undefined ? {} : { texture: step.texture }) };
    faces[`shoulder ${i + 1}`] = { stations: [step.to.id] };
    sizes.push({ kind: 'diameter', cut: cut.id, from: onAxis(height), to: onAxis(step.to.value), diameter: step.diameter, internal: true });
    height = step.to.value;
    before = radius;
  });
  corners.push([0, last.to.value]);
  names.push('axis');
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'revolution', frame: axisFrame(cut.axis, cut.centre), outline: polygonOutline(corners, names) }],
    faces,
    sizes,
    stations: [cut.from.id, ...cut.steps.map((step) => step.to.id)],
    instruction: [`Bore ${cut.name}: `, ...joined(cut.steps.map((step) => [inWords(step.diameter, 'diameter'), ' to ', step.to.name]))],
  };
}
