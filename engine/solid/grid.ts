import { cross2, subtract2, length2, type Vector2, type Vector3, cross, dot, scale, subtract, unit } from '../geometry/vector.js';
import type { ArcSegment } from '../geometry/outline.js';

export const DEFAULT_SEGMENTS = 64;

/** Greatest distance of a chord from its arc that is let stand at 64 segments, mm; large arcs get more segments. */
const SAG_AT_64 = 0.05;

/** So small a distance is not worth a finer grid, mm at 64 segments; tiny holes get fewer segments. */
const FINE_AT_64 = 0.003;

/** A grid point so near to an arc's end, in parts of a step, is left out: it would make a sliver. */
const NEAR_END = 0.05;

/**
 * Steps in a full turn: `segments` rounded up to a multiple of sixteen, doubled for large radii until a chord's distance
 * from the arc is bounded, halved (to a quarter at most) for tiny ones while it stays minute. Grids of one axis are nested
 * in this way, so that coaxial cuts line up.
 */
export function stepsPerTurn(radius: number, segments: number): number {
  const asked = 16 * Math.ceil(segments / 16);
  const scaled = (64 / asked) ** 2;
  const sag = (steps: number): number => radius * (1 - Math.cos(Math.PI / steps));
  let steps = asked;
  while (sag(steps) > SAG_AT_64 * scaled && steps < 4096) steps *= 2;
  while (sag(steps / 2) < FINE_AT_64 * scaled && steps > asked / 4) steps /= 2;
  return steps;
}

/**
 * The direction from which angles about an axis are counted: square to the axis and as near as can be to a direction of
 * space. The same for an axis and its reverse, and a mirrored axis has the mirrored direction (or its opposite).
 */
export function zeroDirection(axis: Vector3): Vector3 {
  const sizes = axis.map((component) => Math.round(Math.abs(component) * 1e9));
  const least = sizes.indexOf(Math.min(...sizes));
  const direction: Vector3 = [least === 0 ? 1 : 0, least === 1 ? 1 : 0, least === 2 ? 1 : 0];
  return unit(subtract(direction, scale(axis, dot(axis, direction))));
}

/** The two directions that span the plane square to `axis`: the zero direction and the one a quarter turn from it. */
export function directionsAcross(axis: Vector3): { readonly x: Vector3; readonly y: Vector3 } {
  const x = zeroDirection(axis);
  return { x, y: cross(axis, x) };
}

/** Cosine and sine of step `index` of `steps` (a multiple of four) in a turn; exact at the quarters. */
export function gridDirection(index: number, steps: number): Vector2 {
  const quarter = steps / 4;
  const turns = ((Math.floor(index / quarter) % 4) + 4) % 4;
  const rest = index - Math.floor(index / quarter) * quarter;
  const angle = (2 * Math.PI * rest) / steps;
  const [c, s] = rest === 0 ? [1, 0] : [Math.cos(angle), Math.sin(angle)];
  return turns === 0 ? [c, s] : turns === 1 ? [-s, c] : turns === 2 ? [-c, -s] : [s, -c];
}

/** The signed angle that an arc turns through, radians, positive to the left. */
export function arcSweep(arc: ArcSegment): number {
  const from = subtract2(arc.from, arc.centre);
  const to = subtract2(arc.to, arc.centre);
  const angle = Math.atan2(cross2(from, to), from[0] * to[0] + from[1] * to[1]);
  if (arc.turn === 'left') return angle > 0 ? angle : angle + 2 * Math.PI;
  return angle < 0 ? angle : angle - 2 * Math.PI;
}

export const arcRadius = (arc: ArcSegment): number => length2(subtract2(arc.from, arc.centre));

/**
 * Points of an arc from its first point, included, to its last, left out, on the grid of its circle: angles are counted
 * from `zero` (length one, in the outline's plane). `sag` is the greatest distance of a chord from the arc, mm.
 */
export function arcPoints(
  arc: ArcSegment,
  zero: Vector2,
  segments: number,
): { readonly points: readonly Vector2[]; readonly sag: number } {
  const radius = arcRadius(arc);
  const steps = stepsPerTurn(radius, segments);
  const step = (2 * Math.PI) / steps;
  const from = subtract2(arc.from, arc.centre);
  const across: Vector2 = [-zero[1], zero[0]];
  const start = Math.atan2(from[0] * across[0] + from[1] * across[1], from[0] * zero[0] + from[1] * zero[1]);
  const sweep = arcSweep(arc);
  const sense = Math.sign(sweep);
  const points: Vector2[] = [arc.from];
  const angles: number[] = [0];
  const first = sense > 0 ? Math.ceil(start / step - 1e-9) : Math.floor(start / step + 1e-9);
  for (let index = first; ; index += sense) {
    const turned = sense * (index * step - start);
    const left = Math.abs(sweep) - turned;
    if (left <= 1e-9) break;
    // The points where a circle is widest stay, so that boxes are exact.
    const near = index % (steps / 4) === 0 ? 1e-9 : NEAR_END * step;
    if (turned <= near || left <= near) continue;
    const [c, s] = gridDirection(index, steps);
    points.push([
      arc.centre[0] + radius * (c * zero[0] + s * across[0]),
      arc.centre[1] + radius * (c * zero[1] + s * across[1]),
    ]);
    angles.push(turned);
  }
  angles.push(Math.abs(sweep));
  const widest = Math.max(...angles.slice(1).map((angle, i) => angle - (angles[i] ?? 0)));
  return { points, sag: radius * (1 - Math.cos(widest / 2)) };
}
