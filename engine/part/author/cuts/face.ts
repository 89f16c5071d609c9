import { axisOf, vectorOf } from '../directions.js';
import { placeInWords } from '../phrases.js';
import type { Cut } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import { scale } from '../../../geometry/vector.js';

/** A flat face right across: all beyond `at` on the side `side` goes. */
export interface FaceCut {
  readonly id: string;
  readonly name: string;
  readonly at: Station;
  readonly side: Direction;
  readonly texture?: number;
  /** Faced first, only to clean up: other things are measured from it in this set-up. */
  readonly clean?: boolean;
  /** First word of the instruction, "Face" unless said. */
  readonly verb?: string;
}

/** Throws RangeError where the side is not along the station's axis. */
export function face(cut: FaceCut): Cut {
  if (axisOf(cut.side) !== cut.at.axis) throw new RangeError(`the face ${cut.name} lies at a station of the ${cut.at.axis} axis, and its side ${cut.side} along another`);
  const normal = vectorOf(cut.side);
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'half-space', point: scale(normal, cut.at.value * (cut.side.startsWith('+') ? 1 : -1)), normal, face: 'face' }],
    faces: { face: { stations: [cut.at.id], ...(cut.texture === undefined ? {} : { texture: cut.texture }) } },
    sizes: [],
    stations: [cut.at.id],
    instruction:
      cut.clean === true
        ? [`Face ${cut.name} clean: it is the zero of this set-up`]
        : cut.at.placing.kind === 'datum'
        ? [`Face ${cut.name} clean: it is the zero of ${cut.at.axis.toUpperCase()}`]
        : [`${cut.verb ?? 'Face'} ${cut.name}: `, ...placeInWords(cut.at)],
  };
}
