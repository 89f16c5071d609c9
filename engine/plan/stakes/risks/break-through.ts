import { add, dot, scale } from '../../../geometry/vector.js';
import { holeSizes } from '../../hole-places.js';
import { riskOf, type RiskFinder } from '../chance.js';
import { hitsAlong, type Hit } from '../ray.js';
import { cutName } from './thin-wall.js';

/** Cosine from which a face counts as square to a drill: 8 degrees. */
const squareFace = 0.99;

/** Facets met twice through a shared edge count once. */
const distinct = (hits: readonly Hit[]): readonly Hit[] => hits.filter((hit, i) => i === 0 || hit.distance - hits[i - 1]!.distance > 1e-6);

/** A hole that comes out on a slope or into another hole, or crosses a gap and must start again on its far side. */
export const breakThrough: RiskFinder = (facts) =>
  holeSizes(facts.operation).flatMap((size) => {
    if (size.kind !== 'hole' || size.depth !== undefined || facts.setUp.machine === 'lathe') return [];
    const { before } = facts;
    const start = add(size.points[0]!, scale(size.direction, -1e-3));
    const hits = distinct(hitsAlong(before, start, size.direction)).filter(({ distance }) => size.into === undefined || distance < reachInto(facts.removed, size.diameter.value, size.points.length));
    const exits = hits.filter(({ normal }) => dot(normal, size.direction) > 0);
    const first = exits[0];
    if (first === undefined) return [];
    const { tag, surface } = before.faces[before.faceOfTriangle[first.triangle]!]!;
    const round = before.surfaces[surface]?.kind !== 'plane';
    const sloping = round || dot(first.normal, size.direction) < squareFace;
    const crosses = exits.length > 1;
    if (!sloping && !crosses) return [];
    const where = cutName(facts, tag.cut);
    return [
      riskOf(facts, {
        kind: 'break-through',
        factor: (sloping ? 1.5 : 1) * (crosses || sloping ? 1 : 0),
        holes: 1,
        because: [sloping ? `comes out ${round ? 'on a round' : 'on a slope'}, into ${where}: the cutter snatches on one lip` : `crosses the ${where} and starts again beyond it, with nothing to guide the cutter`],
        figures: { into: where, gaps: exits.length - 1, slope: sloping ? 'yes' : 'no' },
      }),
    ];
  });

/** A hole that ends in another is counted as far as its metal goes, and a diameter more. */
const reachInto = (removed: number, diameter: number, count: number): number => removed / ((Math.PI / 4) * diameter ** 2 * count) + diameter;
