import { axisOf, senseOf } from '../../part/author/directions.js';
import type { Station } from '../../part/station.js';
import type { LinearDimension } from '../dimension/linear.js';
import type { Mark } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import type { FinishDepth } from '../../part/cut.js';
import { finishLines } from './finish-words.js';
import type { Home, PrintItem } from './item.js';
import { limitsOf, sizeLines, type Speech } from './texts.js';

const same = 1e-5;

/** The marks of a view at a station: its own where there are any, else what lies at the same coordinate. */
function marksOf(plan: ViewPlan, station: Station): { readonly marks: readonly Mark[]; readonly cost: number } | undefined {
  const here = plan.marks.filter((mark) => mark.axis === station.axis && Math.abs(mark.value - station.value) < same);
  if (here.length === 0) return undefined;
  const own = here.filter((mark) => mark.stations.includes(station.id));
  if (own.length === 0) return { marks: here, cost: 2 };
  const edges = own.filter((mark) => mark.kind === 'edge');
  return edges.length > 0 ? { marks: edges, cost: 0 } : { marks: own, cost: 0.3 };
}

/** Where a distance along an axis can be drawn in a view: both its ends must be seen, at true length. */
export function linearHome(plan: ViewPlan, from: Station, to: Station): Home | undefined {
  const axis = from.axis;
  const measured = axisOf(plan.right) === axis ? 'right' : axisOf(plan.up) === axis ? 'up' : undefined;
  if (measured === undefined) return undefined;
  const a = marksOf(plan, from);
  const b = marksOf(plan, to);
  if (a === undefined || b === undefined) return undefined;
  const sense = senseOf(plan[measured]);
  const [first, second] = from.value * sense <= to.value * sense ? [a, b] : [b, a];
  const [low, high] = [from.value * sense, to.value * sense].sort((p, q) => p - q) as [number, number];
  const inside = reach(plan, measured, first.marks) + reach(plan, measured, second.marks);
  return {
    kind: 'linear',
    cost: a.cost + b.cost + (plan.section === undefined ? 0 : 0.4) + 0.03 * inside,
    measured,
    low,
    high,
    lowMarks: first.marks,
    highMarks: second.marks,
  };
}

/** How far an extension line must run over the view before it is outside, mm, on the better side. */
function reach(plan: ViewPlan, measured: 'right' | 'up', marks: readonly Mark[]): number {
  const across = measured === 'right' ? 1 : 0;
  const { low, high } = plan.view.box;
  return Math.max(0, Math.min(...marks.flatMap((mark) => [mark.low - low[across], high[across] - mark.high])));
}

/**
 * @param finish of the cut whose walls these are, where it is not finished to its full depth.
 * @param suffix what stands after the figure.
 */
export function linearItem(dimension: LinearDimension, speech: Speech, finish?: FinishDepth, suffix = ''): PrintItem {
  const { from, to, size, repeats } = dimension;
  const [text, ...other] = sizeLines(dimension.reference ? { value: size.value, purpose: size.purpose } : size, speech) as [string, ...string[]];
  // Beside a dimension line there is room for one line more.
  const under = [...other, ...finishLines(finish, speech)].join(' ');
  const counted = repeats === undefined || repeats < 2 ? text : `${repeats}x ${text}`;
  return {
    id: dimension.id,
    about: to.id,
    lines: [dimension.reference ? `(${text})` : `${counted}${suffix}`, ...(under === '' ? [] : [under])],
    record: {
      kind: 'distance',
      feature: `${from.name} to ${to.name}`,
      axis: dimension.axis,
      nominal: size.value,
      measure: 'length',
      ...(dimension.reference ? { reference: true } : limitsOf(size)),
      ...(repeats === undefined ? {} : { count: repeats }),
    },
    find: (plan) => linearHome(plan, from, to),
  };
}
