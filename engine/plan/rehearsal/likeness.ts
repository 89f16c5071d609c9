import type { Kernel } from '../../solid/kernel.js';
import { differenceWithin, metalWithin, type DifferenceWithin } from '../../solid/within.js';
import { scale } from '../../geometry/vector.js';
import type { Matrix3 } from '../../solid/matrix.js';
import type { Solid } from '../../solid/model.js';
import { moveSolid } from '../../solid/transform.js';
import { indexOf } from '../../part/author/directions.js';
import { statesOf, type OperationState } from '../states/state.js';
import { boundsOfSolid, formOfBounds, partFrame } from './bounds.js';
import type { Side } from './blank-sides.js';
import type { TestPiece } from './test-piece.js';
import { shiftOf } from './side-by-side.js';
import { formsOfRegion, type Region } from './region.js';

/** How like the piece is to the part where one operation is rehearsed. */
export interface Likeness {
  readonly operation: number;
  /** Which of the trials that stand side by side; 1 where each is made by itself. */
  readonly trial: number;
  /** Volumes inside the region before the cut and after it, mm3. */
  readonly before: DifferenceWithin;
  readonly after: DifferenceWithin;
  /** Both differences are no more than rounding. */
  readonly alike: boolean;
  /** Metal beside and under the cut that is the same, mm. */
  readonly margin: number;
  /** Sides on which the piece ends and the part goes on: clear distance from the cut, and how much of the part follows, mm. */
  readonly ends: readonly { readonly side: Side; readonly distance: number; readonly follows: number }[];
}

/** A difference up to this share of the region is rounding: places are kept to about a hundred-thousandth of a millimetre. */
const rounding = 1e-5;

/** Curved faces of a smaller blank may be cut into other facets: so much of the facet error over the region's own area. */
const facets = 0.2;

/** Compares part and piece in the regions of all rehearsed operations, for each trial that stands on the blank. */
export function likenessOf(kernel: Kernel, piece: TestPiece): readonly Likeness[] {
  const { beside } = piece;
  const own = statesOf(kernel, piece.nominal ?? piece.part, { segments: piece.segments });
  const trials = Array.from({ length: beside === undefined ? 1 : piece.trials }, (_, i) => i + 1);
  return trials.flatMap((trial) => piece.regions.map((region): Likeness => {
    const real = stateAt(piece.states, region.operation);
    const made = stateAt(own, region.operation);
    const forms = formsOfRegion(region);
    const here = (solid: Solid): Solid => (beside === undefined || trial === 1 ? solid : moveSolid({ matrix: unturned, shift: scale(shiftOf(beside, trial), -1) }, solid));
    const before = differenceWithin(kernel, real.before, here(made.before), forms);
    const after = differenceWithin(kernel, real.after, here(made.after), forms);
    const off = Math.max(before.missing, before.extra, after.missing, after.extra);
    return { operation: region.operation, trial, before, after, alike: off <= rounding * before.region + facets * real.after.facetError * before.region ** (2 / 3), margin: region.margin, ends: endsOf(kernel, piece, region, real) };
  }));
}

/** Moved only, not turned. */
const unturned: Matrix3 = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

const stateAt = (states: readonly OperationState[], number: number): OperationState => states.find(({ operation }) => operation.number === number)!;

function endsOf(kernel: Kernel, piece: TestPiece, { core, frame }: Region, real: OperationState): Likeness['ends'] {
  const cut = boundsOfSolid(metalWithin(kernel, real.before, [{ cut: 'core', form: formOfBounds(core, frame) }]), partFrame);
  const whole = boundsOfSolid(real.before, partFrame);
  if (cut === undefined || whole === undefined) return [];
  return piece.blank.cutOff.flatMap((side) => {
    const i = indexOf(side.axis);
    const [distance, follows] = side.end === 'low' ? [cut.low[i]! - side.at, side.at - whole.low[i]!] : [side.at - cut.high[i]!, whole.high[i]! - side.at];
    return follows <= 1e-3 ? [] : [{ side, distance, follows }];
  });
}
