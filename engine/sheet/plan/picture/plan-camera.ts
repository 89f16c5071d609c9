import { add, cross, dot, scale, subtract, unit } from '../../../geometry/vector.js';
import type { SetUp } from '../../../part/part.js';
import { machineAxes } from '../../../plan/machine-frame.js';
import type { Camera } from '../../../view/model.js';
import { machineCamera } from '../../operations/picture.js';

/**
 * How the person at the machine sees the work. Mill, drill and bench: over its near right corner. Lathe: from before and
 * somewhat above, with the tailstock's end in sight and the axis of the spindle level on paper, the chuck at left.
 */
export function planCamera(setUp: SetUp): Camera {
  if (setUp.machine !== 'lathe') return machineCamera(setUp);
  const { right, up, near } = machineAxes(setUp);
  const toward = scale(unit(add(add(scale(right, 0.5), scale(up, 0.35)), near)), -1);
  const level = unit(subtract(right, scale(toward, dot(right, toward))));
  return { toward, up: cross(level, toward) };
}
