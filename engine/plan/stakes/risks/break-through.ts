import { add, cross, dot, scale, unit, type Vector3 } from '../../../geometry/vector.js';
import type { HoleSize } from '../../../part/cut.js';
import type { Solid } from '../../../solid/model.js';
import { cutName } from '../cut-name.js';
import { holeSizes } from '../../hole-places.js';
import { riskOf, type RiskFinder } from '../chance.js';
import { hitsAlong, type Hit } from '../ray.js';

/** Cosine from which a face counts as square to a drill: 8 degrees. */
const squareFace = 0.99;

/** Where a drill comes out of the metal along one line: the first face, and how often it comes out. */
interface Way {
  readonly first: Hit;
  readonly exits: number;
}

/** Facets met twice through a shared edge count once. */
const distinct = (hits: readonly Hit[]): readonly Hit[] => hits.filter((hit, i) => i === 0 || hit.distance - hits[i - 1]!.distance > 1e-6);

/** Four lines halfway between the middle and the lips: what most of them meet, the drill meets; a small hole at the middle it does not mind. */
function ways(before: Solid, size: HoleSize, far: number): readonly Way[] {
  const { direction } = size;
  const other: Vector3 = Math.abs(direction[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const across = unit(cross(direction, other));
  const second = cross(direction, across);
  return [across, scale(across, -1), second, scale(second, -1)].flatMap((side): readonly Way[] => {
    const start = add(size.points[0]!, add(scale(side, size.diameter.value / 4), scale(direction, -1e-3)));
    const exits = distinct(hitsAlong(before, start, direction)).filter(({ normal, distance }) => dot(normal, direction) > 0 && distance < far);
    return exits[0] === undefined ? [] : [{ first: exits[0], exits: exits.length }];
  });
}

/** A hole that comes out on a slope or a round, or crosses a gap and must start again on its far side. */
export const breakThrough: RiskFinder = (facts) =>
  holeSizes(facts.operation).flatMap((size) => {
    if (size.kind !== 'hole' || size.depth !== undefined || facts.setUp.machine === 'lathe') return [];
    const { before, removed } = facts;
    const diameter = size.diameter.value;
    // A hole that ends in another goes as far as its metal, and a diameter more.
    const far = size.into === undefined ? Infinity : removed / ((Math.PI / 4) * diameter ** 2 * size.points.length) + diameter;
    const all = ways(before, size, far);
    const sloping = all.filter(({ first }) => dot(first.normal, size.direction) < squareFace);
    const crossing = all.filter(({ exits }) => exits > 1);
    const [slopes, crosses] = [sloping.length > 2, crossing.length > 2];
    const way = slopes ? sloping[0] : crosses ? crossing[0] : undefined;
    if (way === undefined) return [];
    const where = cutName(facts, before.faces[before.faceOfTriangle[way.first.triangle]!]!.tag.cut);
    return [
      riskOf(facts, {
        kind: 'break-through',
        factor: slopes ? 1.5 : 1,
        because: [slopes ? `comes out on a slope, into the ${where}: the cutter snatches on one lip` : `crosses the ${where} and starts again beyond it, where nothing guides the cutter`],
        figures: { into: where, gaps: way.exits - 1, slope: slopes ? 'yes' : 'no' },
      }),
    ];
  });
