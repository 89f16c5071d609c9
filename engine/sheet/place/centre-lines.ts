import { vectorOf } from '../../part/author/directions.js';
import type { Part } from '../../part/part.js';
import { dot, type Vector2 } from '../../geometry/vector.js';
import { axesOfPart, parallel } from '../views/axes-of-part.js';
import { laidOpen } from '../views/axis-marks.js';
import { alongPaper, circleAt } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import { house } from './house.js';

/** A level or upright centre line on paper, mm. */
export interface CentreLine {
  readonly from: Vector2;
  readonly to: Vector2;
}

interface Run {
  readonly level: boolean;
  /** The coordinate at which the line stands, and from where to where it runs. */
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

/** The centre lines of a view: crosses on circles, axes from the side, lines of symmetry over the whole; paper mm. */
export function centreLines(part: Part, plan: ViewPlan, scale: number): readonly CentreLine[] {
  const eye = vectorOf(plan.eye);
  const over = house.centreOverrun;
  const runs: Run[] = [];
  for (const round of axesOfPart(part)) {
    const u = alongPaper(round.from, plan.right) * scale;
    const v = alongPaper(round.from, plan.up) * scale;
    if (parallel(round.direction, eye)) {
      const radius = circleAt(plan.view.curves, [u / scale, v / scale]);
      if (radius === undefined || round.kind === 'rounded') continue;
      const reach = radius * scale + (radius * scale >= 1.5 ? over : 1.5);
      runs.push({ level: true, at: v, low: u - reach, high: u + reach }, { level: false, at: u, low: v - reach, high: v + reach });
    } else if (round.square !== undefined) {
      if (dot(round.square, eye) > -1 + 1e-9) continue;
      const reach = round.radius * scale + over;
      runs.push({ level: true, at: v, low: u - reach, high: u + reach }, { level: false, at: u, low: v - reach, high: v + reach });
    } else if (round.kind === 'turned' || (round.kind === 'hole' && laidOpen(round, plan.section))) {
      for (const level of [true, false]) {
        const along = level ? plan.right : plan.up;
        if (!parallel(round.direction, vectorOf(along))) continue;
        const ends = [alongPaper(round.from, along) * scale, alongPaper(round.to, along) * scale].sort((a, b) => a - b) as [number, number];
        if (ends[1] - ends[0] < 1e-6) continue;
        runs.push({ level, at: level ? v : u, low: ends[0] - over, high: ends[1] + over });
      }
    }
  }
  runs.push(...symmetryRuns(part, plan, scale));
  return merged(runs).map(({ level, at, low, high }) =>
    level ? { from: [low, at], to: [high, at] } : { from: [at, low], to: [at, high] },
  );
}

function symmetryRuns(part: Part, plan: ViewPlan, scale: number): readonly Run[] {
  const over = house.centreOverrun;
  const { low, high } = plan.view.box;
  const runs: Run[] = [];
  for (const mark of plan.marks) {
    // Marks of symmetry run over the whole view.
    if (mark.kind !== 'axis') continue;
    const station = part.stations.find(({ id }) => mark.stations.includes(id));
    if (station === undefined || station.placing.kind !== 'datum') continue;
    if (!part.stations.some(({ placing }) => placing.kind === 'pair' && placing.about === station.id)) continue;
    if (mark.axis === plan.right[1]) {
      const at = mark.value * (plan.right.startsWith('+') ? 1 : -1) * scale;
      runs.push({ level: false, at, low: low[1] * scale - over, high: high[1] * scale + over });
    } else {
      const at = mark.value * (plan.up.startsWith('+') ? 1 : -1) * scale;
      runs.push({ level: true, at, low: low[0] * scale - over, high: high[0] * scale + over });
    }
  }
  return runs;
}

/** Runs on one line that overlap become one. */
function merged(runs: readonly Run[]): readonly Run[] {
  const sorted = [...runs].sort((a, b) => Number(a.level) - Number(b.level) || a.at - b.at || a.low - b.low);
  const result: Run[] = [];
  for (const run of sorted) {
    const last = result[result.length - 1];
    if (last !== undefined && last.level === run.level && Math.abs(last.at - run.at) < 1e-4 && run.low <= last.high + 0.01)
      result[result.length - 1] = { ...last, high: Math.max(last.high, run.high) };
    else result.push(run);
  }
  return result;
}
