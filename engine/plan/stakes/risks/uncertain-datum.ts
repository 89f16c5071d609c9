import { dot } from '../../../geometry/vector.js';
import { vectorOf } from '../../../part/author/directions.js';
import type { Part } from '../../../part/part.js';
import type { Station } from '../../../part/station.js';
import { datumSpreads, holdingSpreads } from '../../../trade/data/datum-spreads.js';
import { angledPickUp, generalRunOut, generalTolerance, measuredFirst } from '../../data/stake-limits.js';
import { runsOf } from '../../runs.js';
import { between, riskOf, say, type RiskFinder } from '../chance.js';
import { isAngled, type OperationFacts } from '../facts.js';
import { holdingOf } from '../times/holding.js';
import { distanceOf, widthOf } from '../tolerances.js';

const spreadNames: Readonly<Record<string, keyof typeof holdingSpreads>> = {
  'three-jaw chuck': 'three-jaw',
  'four-jaw chuck': 'four-jaw',
  collet: 'collet',
  'split bush': 'soft-jaws',
  'between centres': 'between-centres',
  vice: 'vice',
  'angle packing': 'vice',
  clamps: 'clamps',
  fixture: 'undisturbed',
  bench: 'undisturbed',
};

interface Doubt {
  readonly what: string;
  readonly spread: number;
  readonly tolerance: number;
  readonly pickUp: string;
}

/** In which stretch of set-up a station was first there to be measured from; undefined where it never was before. */
function madeIn(part: Part, id: string, run: number): number | undefined {
  const station = part.stations.find((each) => each.id === id);
  const stock = Object.values(part.stock.faces).some(({ stations }) => stations.includes(id));
  if (stock) return -1;
  const index = runsOf(part).slice(0, run + 1).findIndex(({ setUp, operations }) =>
    operations.some(({ cuts }) => cuts.some(({ stations }) => stations.includes(id))) || (station?.placing.kind === 'datum' && setUp.zero.includes(id) && operations.some(({ cuts }) => cuts.length > 0)),
  );
  return index < 0 ? undefined : index;
}

/** How far the zero of this set-up may be off along an axis, mm: pick-up, and lift along the spindle or run-out across it. */
function spreadAlong({ setUp, frame }: OperationFacts, axis: Station['axis']): { readonly spread: number; readonly pickUp: string } {
  const holding = holdingSpreads[spreadNames[holdingOf({ setUp })] ?? 'undisturbed']!;
  const along = Math.abs(dot(vectorOf(`+${axis}`), frame.z)) > 0.5;
  const pickUp = along ? 'paper-touch' : setUp.machine === 'lathe' ? 'indicated-bar' : 'edge-finder';
  const spread = datumSpreads[pickUp]!.spread + (along ? holding.lift : holding.runOut) + (isAngled(setUp) ? angledPickUp : 0);
  return { spread, pickUp };
}

/** Places counted from what an earlier set-up made: the new zero adds its own spread to them. */
function placed(facts: OperationFacts): readonly Doubt[] {
  const { part, operation, run, setUp } = facts;
  if (run === 0) return [];
  const own = new Set(operation.cuts.flatMap(({ stations }) => stations));
  return part.stations.filter(({ id }) => own.has(id)).flatMap((station): readonly Doubt[] => {
    if (setUp.machine === 'lathe' && Math.abs(dot(vectorOf(`+${station.axis}`), facts.frame.z)) < 0.5) return [];
    const told = distanceOf(station);
    if (told === undefined || station.placing.kind === 'row') return [];
    const { spread, pickUp } = spreadAlong(facts, station.axis);
    const doubt = (tolerance: number): readonly Doubt[] => [{ what: station.name, spread, tolerance, pickUp }];
    const made = madeIn(part, told.from, run);
    // Of two faces about a middle the other was made before: the width hangs on this zero; else the middle does.
    if (made !== undefined && made < run && made >= 0) return doubt((widthOf(told.distance.tolerance) ?? 2 * generalTolerance) / 2);
    const about = station.placing.kind === 'pair' ? madeIn(part, station.placing.about, run) : undefined;
    return about !== undefined && about >= 0 && about < run ? doubt(generalTolerance) : [];
  });
}

/** Round work that was taken out of its chuck: what is turned now runs out to what was turned before. */
function rechucked(facts: OperationFacts): readonly Doubt[] {
  const { part, operation, run, setUp } = facts;
  if (setUp.machine !== 'lathe' || operation.cuts.every(({ forms }) => forms.every(({ kind }) => kind !== 'revolution'))) return [];
  const before = runsOf(part).slice(0, run).some(({ setUp: other, operations }) => other.machine === 'lathe' && operations.some(({ cuts }) => cuts.some(({ forms }) => forms.some(({ kind }) => kind === 'revolution'))));
  if (!before) return [];
  const holding = holdingSpreads[spreadNames[holdingOf(facts)] ?? 'undisturbed']!;
  return [{ what: operation.cuts[0]?.name ?? operation.title, spread: holding.runOut, tolerance: generalRunOut, pickUp: 'taken out and chucked again' }];
}

const inWords: Readonly<Record<string, string>> = { 'paper-touch': 'touched with paper and lifted by the jaws', 'edge-finder': 'picked up with an edge finder', 'indicated-bar': 'set true with an indicator' };

/** A zero that can be off by as much as what is cut from it allows. */
export const uncertainDatum: RiskFinder = (facts) => {
  const worst = [...placed(facts), ...rechucked(facts)].sort((a, b) => b.spread / b.tolerance - a.spread / a.tolerance)[0];
  if (worst === undefined || worst.spread < worst.tolerance / 2) return [];
  const { what, spread, tolerance, pickUp } = worst;
  const measured = facts.operation.leave !== undefined && facts.operation.check !== undefined;
  return [
    riskOf(facts, {
      kind: 'uncertain datum',
      factor: between(spread / tolerance, 0.5, 2.5) * (measured ? measuredFirst : 1),
      because: [`the zero, ${inWords[pickUp] ?? pickUp}, can be off by `, { length: spread }, `; the ${what} may be off by `, { length: tolerance }, ...(measured ? [', and is measured before the last cut'] : [])],
      figures: { place: what, pickUp, spread, tolerance, share: Number(say(spread / tolerance, 4)) },
    }),
  ];
};
