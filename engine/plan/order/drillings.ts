import { add, cross, scale, unit, type Vector3 } from '../../geometry/vector.js';
import type { HoleSize } from '../../part/cut.js';
import type { Form } from '../../part/form.js';
import { keyOf } from '../hole-places.js';
import type { OperationState } from '../states/state.js';
import { casterOf, type Span } from './caster.js';
import type { OrderContext } from './context.js';

/** What a drill meets at one place: on its axis and round its rim, in the work as it finds it. */
export interface Meeting {
  readonly point: Vector3;
  /** Spans of metal on the axis, mm from the entry point along the way in. */
  readonly centre: readonly Span[];
  /** The same on lines round the rim. */
  readonly rim: readonly (readonly Span[])[];
  /** Where the hole ends at its full diameter, mm from the entry point. */
  readonly end: number;
  /** From the first metal to where the hole ends or leaves the work, mm. */
  readonly depth: number;
}

export interface Drilling {
  readonly size: HoleSize;
  readonly metal: readonly Meeting[];
}

/** Lines round the rim of a drill. */
const lines = 16;
/** How far inside the rim they run, share of the radius. */
const within = 0.97;

/** The holes of an operation that are drilled where no hole was before; reamed ones are drilled first. */
export function drillings(context: OrderContext, state: OperationState): readonly Drilling[] {
  const known = kept.get(state) ?? drillingsAnew(context, state);
  kept.set(state, known);
  return known;
}

const kept = new WeakMap<OperationState, readonly Drilling[]>();

function drillingsAnew({ part }: OrderContext, { operation, before }: OperationState): readonly Drilling[] {
  const earlier = new Set(part.operations.filter(({ number }) => number < operation.number).flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'hole' ? size.points.map(keyOf) : [])))));
  return operation.cuts.flatMap(({ sizes, forms }) =>
    sizes.flatMap((size): readonly Drilling[] => {
      if (size.kind !== 'hole' || (size.finish !== 'drilled' && size.finish !== 'reamed')) return [];
      const points = size.points.filter((point) => !earlier.has(keyOf(point)));
      return points.length === 0 ? [] : [{ size, metal: points.map((point) => meetingAt(size, point, endOf(forms, point, size), before)) }];
    }),
  );
}

/** How deep a hole is at its full diameter, mm from its mouth; a hole right through ends outside the work. */
function endOf(forms: readonly Form[], point: Vector3, size: HoleSize): number {
  if (size.depth !== undefined) return size.depth.value;
  const form = forms.find((each) => each.kind === 'revolution' && keyOf(each.frame.origin) === keyOf(point));
  return form?.kind === 'revolution' ? Math.max(...form.outline.map(({ from }) => from[1])) : Infinity;
}

function meetingAt(size: HoleSize, point: Vector3, end: number, before: OperationState['before']): Meeting {
  const { direction } = size;
  const caster = casterOf(before, direction);
  const u = unit(cross(Math.abs(direction[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0], direction));
  const v = cross(direction, u);
  const radius = (size.diameter.value / 2) * within;
  // Metal behind the entry by more than a diameter is another wall of the work, which the drill does not come through.
  const ahead = (spans: readonly Span[]): readonly Span[] => spans.filter(({ from, to }) => to > 1e-3 && from < end && from > -4 * size.diameter.value);
  const rim = Array.from({ length: lines }, (_, i) => {
    const angle = (2 * Math.PI * i) / lines;
    return ahead(caster.spans(add(point, add(scale(u, radius * Math.cos(angle)), scale(v, radius * Math.sin(angle))))));
  });
  const centre = ahead(caster.spans(point));
  const all = [centre, ...rim].flat();
  const last = Math.min(end, Math.max(0, ...all.map(({ to }) => to)));
  const first = Math.max(0, Math.min(last, ...all.map(({ from }) => from)));
  return { point, centre, rim, end, depth: last - first };
}
