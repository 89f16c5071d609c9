import { dot } from '../../../geometry/vector.js';
import { indexOf, vectorOf } from '../../../part/author/directions.js';
import { centredOverhang, freeOverhang } from '../../data/stake-limits.js';
import { turnedSteps } from '../../turned-steps.js';
import { between, riskOf, say, type RiskFinder } from '../chance.js';
import { spanAlong } from '../extents.js';

/** Work that stands out of the chuck so far that it springs from the tool. Asked only where a set-up says by what it holds. */
export const longOverhang: RiskFinder = (facts) => {
  const { setUp, part, operation, after } = facts;
  if (setUp.machine !== 'lathe' || setUp.grip === undefined || setUp.grip.kind === 'between centres') return [];
  const tailstock = vectorOf(setUp.up);
  const jaws = setUp.grip.between.flatMap((id) => part.stations.find((station) => station.id === id) ?? []).map(({ axis, value }) => value * (tailstock[indexOf(axis)] ?? 0));
  const end = spanAlong(after, tailstock)?.[1];
  const radii = operation.cuts.flatMap(turnedSteps).filter(({ internal }) => !internal).flatMap(({ from, to }) => [[from.radius, dot(from.point, tailstock)], [to.radius, dot(to.point, tailstock)]] as const);
  if (jaws.length < 2 || end === undefined || radii.length === 0) return [];
  const overhang = end - Math.max(...jaws);
  const diameter = 2 * Math.min(...radii.map(([radius]) => radius));
  const centred = /centre/i.test(setUp.holding);
  const free = centred ? centredOverhang : freeOverhang;
  const ratio = overhang / diameter;
  if (!(ratio > free)) return [];
  return [
    riskOf(facts, {
      kind: 'long overhang',
      factor: between(ratio / (1.5 * free), 0.3, 3),
      because: ['stands ', { length: overhang }, ' out of the jaws at ', { length: diameter, sign: 'diameter' }, `: ${say(ratio, 1)} diameters, where ${free} are free of chatter${centred ? ' with the centre' : ''}`],
      figures: { overhang, diameter, overhangOverDiameter: ratio, free },
    }),
  ];
};
