import type { Axis, Station } from '../../part/station.js';
import type { Sized } from '../../part/tolerance.js';
import type { LinearDimension } from './linear.js';
import { row, type Row } from './row-space.js';

/** A dimension that could be printed, with what it says and what it costs to print. */
export interface Candidate {
  readonly dimension: LinearDimension;
  readonly row: Row;
  readonly cost: number;
}

/** What is to be found along one axis: coordinates, what holds between them unsaid, and what could be printed. */
export interface AxisProblem {
  readonly axis: Axis;
  /** Distinct coordinates; stations at one coordinate share a node. */
  readonly nodes: readonly Node[];
  /** Symmetry, equal pitch, ends that other sizes fix: true without a printed distance. */
  readonly implied: readonly Implied[];
  readonly candidates: readonly Candidate[];
}

export interface Node {
  readonly id: string;
  readonly value: number;
  readonly stations: readonly Station[];
}

export interface Implied {
  readonly says: string;
  readonly row: Row;
}

/** Stations closer than this, mm, are one coordinate on the print. */
const same = 1e-6;

const purposeCost: Readonly<Record<Sized['purpose'], number>> = { functional: 0, size: 1, location: 2, overall: 3 };

/** Sets up what must be settled along one axis, for the stations that the finished part still shows. */
export function axisProblem(axis: Axis, all: readonly Station[], shown: ReadonlySet<string>): AxisProblem {
  const mine = all.filter((station) => station.axis === axis && shown.has(station.id));
  const nodes: { id: string; value: number; stations: Station[] }[] = [];
  for (const station of [...mine].sort((a, b) => a.value - b.value)) {
    const last = nodes[nodes.length - 1];
    if (last !== undefined && Math.abs(last.value - station.value) <= same) last.stations.push(station);
    else nodes.push({ id: station.id, value: station.value, stations: [station] });
  }
  const nodeOf = new Map(nodes.flatMap((node) => node.stations.map((station) => [station.id, node.id] as const)));
  const byId = new Map(mine.map((station) => [station.id, station]));
  const implied: Implied[] = [];
  const candidates: Candidate[] = [];
  const offer = (from: Station, to: Station, size: Sized, cost: number, repeats?: number): void => {
    candidates.push({
      dimension: {
        id: `${axis} ${from.name} to ${to.name}`,
        axis,
        from,
        to,
        size,
        reference: false,
        ...(repeats === undefined ? {} : { repeats }),
      },
      row: row([nodeOf.get(to.id)!, 1], [nodeOf.get(from.id)!, -1]),
      cost,
    });
  };
  for (const station of mine) {
    const { placing } = station;
    if (placing.kind === 'from') {
      const from = byId.get(placing.station);
      if (from !== undefined) offer(from, station, placing.distance, purposeCost[placing.distance.purpose]);
    } else if (placing.kind === 'pair') {
      const other = byId.get(placing.other);
      const about = byId.get(placing.about);
      if (other === undefined || station.value > other.value) continue;
      offer(station, other, placing.width, purposeCost[placing.width.purpose]);
      if (about !== undefined)
        implied.push({
          says: `${station.name} midway about ${about.name}`,
          row: row([nodeOf.get(station.id)!, 1], [nodeOf.get(other.id)!, 1], [nodeOf.get(about.id)!, -2]),
        });
    } else if (placing.kind === 'derived') {
      const from = byId.get(placing.station);
      if (from !== undefined)
        implied.push({ says: `${station.name} follows from ${placing.by}`, row: row([nodeOf.get(station.id)!, 1], [nodeOf.get(from.id)!, -1]) });
    } else if (placing.kind === 'row') {
      const previous = byId.get(placing.previous);
      if (previous === undefined) continue;
      if (placing.index === 1) offer(previous, station, placing.pitch, purposeCost[placing.pitch.purpose], placing.count - 1);
      else if (previous.placing.kind === 'row') {
        const before = byId.get(previous.placing.previous);
        if (before !== undefined)
          implied.push({
            says: `${station.name} at equal pitch`,
            row: row([nodeOf.get(station.id)!, 1], [nodeOf.get(previous.id)!, -2], [nodeOf.get(before.id)!, 1]),
          });
      }
    }
  }
  candidates.push(...fallbacks(axis, nodes, byId));
  return { axis, nodes, implied, candidates };
}

/** Plain distances from the datum, or from the lowest coordinate, for what the cuts' own sizes leave unsaid. */
function fallbacks(axis: Axis, nodes: readonly Node[], byId: ReadonlyMap<string, Station>): readonly Candidate[] {
  const datum = [...byId.values()].find((station) => station.placing.kind === 'datum') ?? nodes[0]?.stations[0];
  if (datum === undefined) return [];
  const zero = nodes.find((node) => node.stations.includes(datum))!;
  return nodes
    .filter((node) => node !== zero)
    .map((node) => {
      const to = node.stations[0]!;
      return {
        dimension: {
          id: `${axis} ${datum.name} to ${to.name}`,
          axis,
          from: datum,
          to,
          size: { value: Math.abs(node.value - zero.value), purpose: 'location' },
          reference: false,
        },
        row: row([node.id, 1], [zero.id, -1]),
        cost: 8,
      };
    });
}
