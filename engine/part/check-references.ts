import { cross, dot, length } from '../geometry/vector.js';
import { vectorOf } from './author/directions.js';
import type { Form } from './form.js';
import type { Part } from './part.js';
import { stationProblem } from './station-problem.js';

/** As near as directions and points must agree. */
const SAME = 1e-6;

/** Words for the first thing in a part that contradicts another, for the middle of a sentence; undefined for none. */
export function contradictionIn(part: Part): string | undefined {
  return doubled(part) ?? stationProblem(part.stations) ?? setUpProblem(part) ?? operationProblem(part) ?? cutProblem(part) ?? faceProblem(part) ?? attitudeProblem(part) ?? handProblem(part);
}

const cutsOf = (part: Part) => part.operations.flatMap((operation) => operation.cuts);

function doubled(part: Part): string | undefined {
  const lists = { 'set-up': part.setUps, station: part.stations, cut: cutsOf(part) };
  for (const [what, entries] of Object.entries(lists)) {
    const seen = new Set<string>();
    for (const { id } of entries) {
      if (seen.has(id)) return `the ${what} "${id}" stands twice`;
      seen.add(id);
    }
  }
  return undefined;
}

function setUpProblem({ setUps, stations }: Part): string | undefined {
  const known = new Set(stations.map(({ id }) => id));
  for (const { id, up, right, zero } of setUps) {
    if (Math.abs(dot(vectorOf(up), vectorOf(right))) > SAME) return `in the set-up "${id}" right is not square to up`;
    const lost = zero.find((station) => !known.has(station));
    if (lost !== undefined) return `the set-up "${id}" has its zero at the station "${lost}", which is not there`;
  }
  return undefined;
}

function operationProblem({ operations, setUps }: Part): string | undefined {
  let before = 0;
  for (const { number, setUp } of operations) {
    if (number <= before) return `operation ${String(number)} follows operation ${String(before)}: the numbers must rise`;
    if (!setUps.some(({ id }) => id === setUp)) return `operation ${String(number)} is in the set-up "${setUp}", which is not there`;
    before = number;
  }
  return undefined;
}

function cutProblem(part: Part): string | undefined {
  const known = new Set(part.stations.map(({ id }) => id));
  for (const { id, stations, faces, sizes, finishDepth } of cutsOf(part)) {
    const named = [...stations, ...(finishDepth?.walls ?? []), ...Object.values(faces).flatMap((face) => [...face.stations, ...(face.bounds ?? [])])];
    const lost = named.find((station) => !known.has(station));
    if (lost !== undefined) return `the cut "${id}" stands on the station "${lost}", which is not there`;
    for (const size of sizes) {
      if (size.cut !== id) return `the cut "${id}" has a size of the cut "${size.cut}"`;
      if (!('points' in size)) continue;
      const { points } = size;
      if (points.some((point, i) => points.slice(0, i).some((other) => Math.hypot(point[0] - other[0], point[1] - other[1], point[2] - other[2]) <= SAME))) {
        return `the cut "${id}" has two holes at one place`;
      }
    }
  }
  for (const [name, { stations }] of Object.entries(part.stock.faces)) {
    const lost = stations.find((station) => !known.has(station));
    if (lost !== undefined) return `the face "${name}" of the stock stands on the station "${lost}", which is not there`;
  }
  return undefined;
}

/** Every face that a form names must be told of: what is not told has no place on the print. */
function faceProblem(part: Part): string | undefined {
  const owners = [{ name: 'the stock', ...part.stock }, ...cutsOf(part).map((cut) => ({ ...cut, name: `the cut "${cut.id}"` }))];
  for (const { name, forms, faces } of owners) {
    const lost = forms.flatMap(facesOf).find((face) => !Object.hasOwn(faces, face));
    if (lost !== undefined) return `${name} has a face "${lost}" that its faces do not tell of`;
  }
  return undefined;
}

function facesOf(form: Form): readonly string[] {
  if (form.kind === 'half-space') return [form.face];
  const sides = form.outline.map(({ face }) => face);
  return form.kind === 'prism' ? [...sides, form.lowFace, form.highFace] : sides;
}

const handProblem = ({ hand }: Part): string | undefined => (hand === 'left' ? 'hand is "left": describe the right-hand part, of which the left is made' : undefined);

const attitudeProblem = ({ attitude: { front, up } }: Part): string | undefined =>
  length(cross(vectorOf(front), vectorOf(up))) < SAME ? `attitude.up "${up}" is not square to attitude.front "${front}"` : undefined;
