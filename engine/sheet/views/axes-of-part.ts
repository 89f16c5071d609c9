
import { indexOf, vectorOf } from '../../part/author/directions.js';
import type { Cut } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { add, dot, scale, subtract, type Vector3 } from '../../geometry/vector.js';

/** Something round in the part: a line in space, from where to where it counts, and its greatest radius. */
export interface RoundAxis {
  readonly from: Vector3;
  readonly to: Vector3;
  readonly direction: Vector3;
  readonly radius: number;
  readonly cut: string;
  readonly kind: 'hole' | 'turned' | 'rounded' | 'slot end';
  readonly internal?: boolean;
  /** For a leaning hole: the way in as it would be square to the face that it enters. */
  readonly square?: Vector3;
}

/** The axes of all round features: holes by their entry and depth, turned steps by their length, rounded ends by their sweep. */
export function axesOfPart(part: Part): readonly RoundAxis[] {
  const axes: RoundAxis[] = [];
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes) {
        if (size.kind === 'hole' || size.kind === 'counterbore' || size.kind === 'countersink') {
          const depthAt = (point: Vector3): number =>
            size.kind === 'hole' ? (size.depth?.value ?? openDepth(part, cut, size.direction, point)) : size.kind === 'counterbore' ? size.depth.value : 0;
          for (const point of size.points)
            axes.push({
              from: point,
              to: add(point, scale(size.direction, depthAt(point))),
              direction: size.direction,
              radius: size.diameter.value / 2,
              cut: cut.id,
              kind: 'hole',
              ...(size.lean === undefined ? {} : { square: vectorOf(size.lean.from) }),
            });
        } else if (size.kind === 'diameter') {
          const direction: Vector3 = [size.to[0] - size.from[0], size.to[1] - size.from[1], size.to[2] - size.from[2]];
          const length = Math.hypot(...direction);
          axes.push({
            from: size.from,
            to: size.to,
            direction: scale(direction, 1 / length),
            radius: size.diameter.value / 2,
            cut: cut.id,
            kind: 'turned',
            internal: size.internal,
          });
        } else if (size.kind === 'radius' && size.axis !== undefined) {
          for (const centre of size.centres)
            axes.push({ from: centre, to: centre, direction: size.axis, radius: size.radius.value, cut: cut.id, kind: size.full === true ? 'slot end' : 'rounded' });
        } else if (size.kind === 'arc-slot') {
          for (const end of size.ends) axes.push({ from: end, to: end, direction: size.axis, radius: size.width.value / 2, cut: cut.id, kind: 'slot end' });
        }
      }
  return axes;
}

/** How deep a hole without a depth of its own reaches: as its form does, at most to the last coordinate of the part ahead. */
function openDepth(part: Part, cut: Cut, direction: Vector3, point: Vector3): number {
  const forms = cut.forms.filter((form) => form.kind === 'revolution' && Math.hypot(...subtract(form.frame.origin, point)) < 1e-6);
  const reach = Math.max(0, ...forms.flatMap((form) => (form.kind === 'revolution' ? form.outline.map(({ to }) => to[1]) : [])));
  const ahead = part.stations.map(({ axis, value }) => (value - point[indexOf(axis)]) * Math.round(direction[indexOf(axis)]));
  return Math.min(reach, Math.max(0, ...ahead), ...endsAhead(part, direction, point));
}

/** How far ahead the faces right across the work are, beyond which nothing stays. */
const endsAhead = (part: Part, direction: Vector3, point: Vector3): readonly number[] =>
  part.operations.flatMap(({ cuts }) =>
    cuts.flatMap(({ forms }) =>
      forms.flatMap((form) => {
        if (form.kind !== 'half-space' || dot(form.normal, direction) < 1 - 1e-9) return [];
        const ahead = dot(subtract(form.point, point), direction);
        return ahead > 1e-6 ? [ahead] : [];
      }),
    ),
  );

/** True when two directions are parallel, either way. */
export const parallel = (a: Vector3, b: Vector3): boolean => Math.abs(Math.abs(a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) - 1) < 1e-9;

