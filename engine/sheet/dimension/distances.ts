import { UserError } from '../../units/user-error.js';
import type { Axis, Station } from '../../part/station.js';
import type { Part } from '../../part/part.js';
import { linearHome } from '../say/linear-item.js';
import type { ViewPlan } from '../views/plan.js';
import { chooseDimensions, unsettled, type AxisDimensions } from './choose.js';
import { axisProblem, type AxisProblem } from './equations.js';
import type { LinearDimension } from './linear.js';

/**
 * The distances to print along all three axes: a complete and single set, then, in brackets, the overall sizes that follow
 * from it. Throws UserError naming the feature when some coordinate can be shown in no view.
 */
export function distancesOf(
  part: Part,
  shown: ReadonlySet<string>,
  plans: readonly ViewPlan[],
): { readonly dimensions: readonly LinearDimension[]; readonly proofs: readonly AxisDimensions['proof'][] } {
  const dimensions: LinearDimension[] = [];
  const proofs: AxisDimensions['proof'][] = [];
  for (const axis of ['x', 'y', 'z'] as const) {
    const problem = axisProblem(axis, part.stations, shown);
    const chosen = chooseDimensions(problem, ({ dimension }) => bestHomeCost(dimension.from, dimension.to, plans));
    const open = unsettled(problem, chosen.dimensions);
    if (open.length > 0 || !chosen.proof.complete || !chosen.proof.single)
      throw new UserError(
        `the print of the ${part.name} cannot be dimensioned along ${axis}: no view shows where the ${open[0] ?? 'datum'} is; give it a place from a face or an axis that a view shows`,
      );
    dimensions.push(...chosen.dimensions, ...overall(axis, problem, chosen.dimensions, plans));
    proofs.push(chosen.proof);
  }
  return { dimensions, proofs };
}

const bestHomeCost = (from: Station, to: Station, plans: readonly ViewPlan[]): number =>
  Math.min(...plans.map((plan) => linearHome(plan, from, to)?.cost ?? Infinity));

/** The overall size along an axis as a reference, where it is not printed already and is no single diameter. */
function overall(axis: Axis, problem: AxisProblem, chosen: readonly LinearDimension[], plans: readonly ViewPlan[]): readonly LinearDimension[] {
  const lowest = problem.nodes[0];
  const highest = problem.nodes[problem.nodes.length - 1];
  if (lowest === undefined || highest === undefined || problem.nodes.length < 3) return [];
  const spans = (dimension: LinearDimension): boolean => {
    const ends = [dimension.from.value, dimension.to.value].sort((a, b) => a - b);
    return Math.abs(ends[0]! - lowest.value) < 1e-6 && Math.abs(ends[1]! - highest.value) < 1e-6;
  };
  if (chosen.some(spans)) return [];
  const from = lowest.stations[0]!;
  const to = highest.stations[0]!;
  if (!Number.isFinite(bestHomeCost(from, to, plans))) return [];
  return [
    {
      id: `${axis} over all`,
      axis,
      from,
      to,
      size: { value: highest.value - lowest.value, purpose: 'overall' },
      reference: true,
    },
  ];
}
