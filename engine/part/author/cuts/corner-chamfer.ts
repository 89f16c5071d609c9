import type { Cut } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { inWords } from '../phrases.js';
import { turnedChamfer } from './turned-details.js';

/** The corners of a bar that is not round, turned off at an end: a cone that leaves a circle on the end face. */
export interface CornerChamferCut {
  readonly id: string;
  readonly name: string;
  readonly centre: readonly [Station, Station];
  /** The end face. */
  readonly at: Station;
  /** Along the axis, out of the material. */
  readonly outward: Direction;
  /** Diameter over the corners, mm. */
  readonly across: number;
  /** Of the circle on the end face. */
  readonly circle: Sized;
  /** To the end face, 30 unless said. */
  readonly angle?: number;
}

/** Throws RangeError where the circle is not inside the corners. */
export function cornerChamfer(cut: CornerChamferCut): Cut {
  const angle = cut.angle ?? 30;
  const bite = (cut.across - cut.circle.value) / 2;
  if (!(bite > 0)) throw new RangeError(`the circle of the ${cut.name} is not inside the corners`);
  // Along the axis the cone falls off by the tangent of its angle to the face for each mm outward.
  const leg: Sized = { value: bite * Math.tan((angle * Math.PI) / 180), purpose: 'size' };
  const turned = turnedChamfer({ ...cut, diameter: cut.across, leg, angle: 90 - angle });
  return {
    ...turned,
    sizes: turned.sizes.map((size) => (size.kind === 'chamfer' ? { ...size, face: { diameter: cut.circle, angle } } : size)),
    instruction: [`Chamfer ${cut.name}: ${angle}° to the face, until the circle on it is `, inWords(cut.circle, 'diameter')],
  };
}
