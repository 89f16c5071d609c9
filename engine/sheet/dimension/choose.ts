import type { AxisProblem, Candidate } from './equations.js';
import type { LinearDimension } from './linear.js';
import { row, RowSpace } from './row-space.js';

/** The dimensions of one axis, and the figures that prove them complete and single. */
export interface AxisDimensions {
  readonly dimensions: readonly LinearDimension[];
  readonly proof: {
    readonly axis: string;
    readonly coordinates: number;
    readonly implied: number;
    readonly printed: number;
    /** Rank of all that is printed and implied; complete means coordinates - 1. */
    readonly rank: number;
    readonly complete: boolean;
    /** True when no printed dimension follows from the others. */
    readonly single: boolean;
  };
}

/** Extra cost of printing a dimension, from the views: 0 where one shows it well; Infinity where none can. */
export type Extra = (candidate: Candidate) => number;

/**
 * Picks the dimensions of least total cost that settle every coordinate once: independent sets of rows form a matroid, so
 * taking the cheapest independent row each time is exact (Edmonds 1971, from memory).
 */
export function chooseDimensions(problem: AxisProblem, extra: Extra): AxisDimensions {
  const space = new RowSpace();
  let implied = 0;
  for (const each of problem.implied) if (space.add(each.row)) implied += 1;
  const priced = problem.candidates
    .map((candidate) => ({ candidate, cost: candidate.cost + extra(candidate) }))
    .filter(({ cost }) => Number.isFinite(cost))
    .sort((a, b) => a.cost - b.cost || compare(a.candidate.dimension.id, b.candidate.dimension.id));
  const dimensions: LinearDimension[] = [];
  for (const { candidate } of priced) if (space.add(candidate.row)) dimensions.push(candidate.dimension);
  const wanted = Math.max(0, problem.nodes.length - 1);
  return {
    dimensions,
    proof: {
      axis: problem.axis,
      coordinates: problem.nodes.length,
      implied,
      printed: dimensions.length,
      rank: space.rank,
      complete: space.rank === wanted,
      single: space.rank === implied + dimensions.length,
    },
  };
}

/** The coordinates that the chosen rows leave open, by the names of their stations. */
export function unsettled(problem: AxisProblem, chosen: readonly LinearDimension[]): readonly string[] {
  const space = new RowSpace();
  const nodeOf = (id: string): string => problem.nodes.find((node) => node.stations.some((station) => station.id === id))!.id;
  for (const each of problem.implied) space.add(each.row);
  for (const each of chosen) space.add(row([nodeOf(each.to.id), 1], [nodeOf(each.from.id), -1]));
  const first = problem.nodes[0];
  if (first === undefined) return [];
  return problem.nodes
    .filter((node) => node !== first && !space.spans(row([node.id, 1], [first.id, -1])))
    .map((node) => node.stations[0]!.name);
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
