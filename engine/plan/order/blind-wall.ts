import { pointLength } from '../../trade/sums/blind-hole.js';
import { drillingLimits } from '../data/drilling-limits.js';
import type { Finding } from '../finding.js';
import { casterOf } from './caster.js';
import { acrossRound, commonPractice, figureOf, mm, type Check } from './context.js';
import { along } from './hole-walls.js';

/** The metal below a blind hole and its point. */
export const blindWall: Check = (_context, { operation, after }) =>
  operation.cuts.flatMap(({ sizes, name }) =>
    sizes.flatMap((size): readonly Finding[] => {
      if (size.kind !== 'hole' || size.depth === undefined) return [];
      const point = size.pointAngle >= 180 ? 0 : pointLength(size.diameter.value, size.pointAngle);
      const tip = size.depth.value + point;
      const caster = casterOf(after, size.direction);
      const walls = size.points.map((entry) => {
        const below = caster.spans(along(entry, size.direction, tip + 0.01)).find(({ from, to }) => from < 0.02 && to > 0);
        return below === undefined ? 0 : below.to + 0.01;
      });
      const wall = Math.min(...walls);
      if (wall >= drillingLimits.floor) return [];
      const figures = { wall: figureOf(wall), drilled: figureOf(size.depth.value), point: figureOf(point), limit: drillingLimits.floor };
      const says = [`${name} `, acrossRound(size.diameter.value), ' x ', mm(size.depth.value), ' deep, with its point ', mm(tip)] as const;
      const source = `${commonPractice}; point of the drill d / (2 tan(A/2))`;
      if (wall < 0.05) return [{ check: 'blind hole', operation: operation.number, gravity: 'fatal', figures, sentence: [...says, ': the point breaks through, and the hole is to be blind'], source }];
      return [{ check: 'blind hole', operation: operation.number, gravity: 'warning', figures, sentence: [...says, ', leaves ', mm(wall), ' of metal below, and ', mm(drillingLimits.floor), ' is wanted: set the depth stop on scrap, or grind the point flatter'], source }];
    }),
  );
