import { dot, type Vector3 } from '../../geometry/vector.js';
import type { CentreHoleSize } from '../../part/cut.js';
import type { Operation, Part } from '../../part/part.js';

/** The centre holes that were made before an operation and take a centre that points along `direction`. */
export const centreHoles = (part: Part, operation: Operation, direction: Vector3): readonly CentreHoleSize[] =>
  part.operations
    .filter(({ number }) => number < operation.number)
    .flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))
    .flatMap((size) => (size.kind === 'centre-hole' && dot(size.direction, direction) > 0.999 ? [size] : []));
