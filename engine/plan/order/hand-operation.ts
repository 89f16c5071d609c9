import type { Cut } from '../../part/cut.js';
import type { Operation, Part } from '../../part/part.js';
import type { HandComparison } from '../../solid/hand.js';
import type { Solid } from '../../solid/model.js';
import type { Finding } from '../finding.js';
import { keyOf } from '../hole-places.js';
import type { OperationState } from '../states/state.js';
import { commonPractice } from './context.js';

/** The operation from which on a part is of one hand. */
export interface HandOperation {
  readonly operation: Operation;
  /** Its cuts that make the hand. */
  readonly cuts: readonly Cut[];
  /** All operations that make the hand, in order, this one first. */
  readonly all: readonly Operation[];
  /** The last operation that could come before it: where there is none later than it, the one before it in the list. */
  readonly couldFollow: Operation | undefined;
  /** The operation that needs what this one makes, so that it can come no later; undefined where none does. */
  readonly neededBy: Operation | undefined;
  /** Whether it comes as late as the order allows. */
  readonly latest: boolean;
}

/** Share of the difference between the hands under which a cut only goes along with others. */
const counts = 0.02;

/** The first operation with a cut that makes the part handed; undefined for a part that is not handed. */
export function handOperation(part: Part, states: readonly OperationState[], comparison: HandComparison): HandOperation | undefined {
  if (!comparison.handed) return undefined;
  const makers = new Set(comparison.makers.filter(({ volume }) => volume >= counts * comparison.leftOver).map(({ cut }) => cut));
  const all = part.operations.filter(({ cuts }) => cuts.some(({ id }) => makers.has(id)));
  const operation = all[0];
  if (operation === undefined) return undefined;
  const here = part.operations.indexOf(operation);
  const later = part.operations.slice(here + 1);
  // It may pass other operations that make the hand only in company: those are what comes next anyway.
  const bound = later.findIndex((other) => all.includes(other) || dependsOn(part, states, other, operation));
  const free = bound < 0 ? later : later.slice(0, bound);
  const neededBy = bound < 0 ? undefined : later[bound]!;
  return {
    operation,
    cuts: operation.cuts.filter(({ id }) => makers.has(id)),
    all,
    couldFollow: free.at(-1) ?? part.operations[here - 1],
    neededBy: neededBy !== undefined && dependsOn(part, states, neededBy, operation) ? neededBy : undefined,
    latest: free.length === 0,
  };
}

/** Whether an operation needs a face that an earlier one has made: to be held or counted from, or to be cut into. */
function dependsOn(part: Part, states: readonly OperationState[], later: Operation, earlier: Operation): boolean {
  const setUp = part.setUps.find(({ id }) => id === later.setUp)!;
  const made = new Set(earlier.cuts.flatMap(({ faces }) => Object.values(faces).flatMap(({ stations }) => stations)));
  if ([...setUp.zero, ...(setUp.grip?.between ?? [])].some((id) => made.has(id))) return true;
  const places = new Set(earlier.cuts.flatMap(holePlaces));
  if (later.cuts.flatMap(holePlaces).some((place) => places.has(place))) return true;
  const state = states.find(({ operation }) => operation.number === later.number);
  const cuts = new Set(earlier.cuts.map(({ id }) => id));
  return state !== undefined && state.after !== state.before && facetsOf(state.before, cuts) !== facetsOf(state.after, cuts);
}

const holePlaces = ({ sizes }: Cut): readonly string[] => sizes.flatMap((size) => ('points' in size ? size.points.map(keyOf) : []));

/** The area of the faces of some cuts, written to a hundredth of a square millimetre: cut into, it changes. */
function facetsOf({ positions, triangles, faces, faceOfTriangle }: Solid, cuts: ReadonlySet<string>): string {
  let area = 0;
  faceOfTriangle.forEach((face, t) => {
    if (!cuts.has(faces[face]!.tag.cut)) return;
    const [a, b, c] = [3 * triangles[3 * t]!, 3 * triangles[3 * t + 1]!, 3 * triangles[3 * t + 2]!];
    const u = [0, 1, 2].map((i) => positions[b + i]! - positions[a + i]!);
    const v = [0, 1, 2].map((i) => positions[c + i]! - positions[a + i]!);
    area += Math.hypot(u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!) / 2;
  });
  return (Math.round(area * 100) / 100).toFixed(2);
}

/** What is to be said of the operation that makes the hand; nothing for a part that is not handed. */
export function handFindings(part: Part, states: readonly OperationState[], comparison: HandComparison): readonly Finding[] {
  const hand = handOperation(part, states, comparison);
  if (hand === undefined) return [];
  const { operation, cuts, couldFollow, neededBy, latest } = hand;
  const names = cuts.map(({ name }) => name).join(', ');
  const until = latest
    ? `as late as the order allows${neededBy === undefined ? '' : ` (operation ${neededBy.number} needs it)`}`
    : `it could come after operation ${couldFollow?.number ?? operation.number}, so that blanks stay common for longer${couldFollow?.setUp === operation.setUp ? '' : ', at the cost of one more set-up'}`;
  return [
    {
      check: 'hand',
      operation: operation.number,
      gravity: 'remark',
      figures: { operation: operation.number, couldFollow: couldFollow?.number ?? 0, leftOver: Math.round(comparison.leftOver * 10) / 10 },
      sentence: [`From this operation on the part is of one hand (${names}): ${until}`],
      source: commonPractice,
    },
  ];
}
