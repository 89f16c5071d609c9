import type { Vector2 } from '../../geometry/vector.js';
import type { Target } from '../say/item.js';

/** Angles of a leader on paper, never level or upright (rule D26). */
const angles = [30, 60, 45, 120, 150, 135, -30, -60, -45, -120, -150, -135, 15, 165, -15, -165, 75, 105, -75, -105];

/** A way from a target on which a leader may end. */
export interface Ray {
  readonly target: Target;
  readonly angle: number;
  readonly direction: Vector2;
  readonly tip: Vector2;
  /** From the tip to where a leader of no length would end: it may come through the centre of an arc. */
  readonly inside: number;
  /** What the way itself costs. */
  readonly leaning: number;
  /** Its place among the ways, which settles ties. */
  readonly rank: number;
}

/** The ways from the targets of a callout, the preferred first. */
export function raysOf(targets: readonly Target[], hatched: boolean): readonly Ray[] {
  const rays: Ray[] = [];
  targets.forEach((target, targetRank) => {
    for (const angle of angles) {
      const direction: Vector2 = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      if (target.arc !== undefined && target.radius > 0 && !between(angle, target.arc) && !between(angle + 180, target.arc)) continue;
      // On a hollow arc the leader comes from the centre's side, on a round one from outside.
      const fromInside = target.arc !== undefined && !between(angle, target.arc);
      const leaning =
        targetRank * 0.2 +
        (Math.abs(Math.abs(angle) % 45) < 1e-9 && hatched ? 3 : 0) +
        (Math.abs(direction[0]) < 0.3 || Math.abs(direction[1]) < 0.3 ? 1.2 : 0);
      const tip = shrunk(target.at, direction, fromInside ? -target.radius : target.radius);
      rays.push({ target, angle, direction, tip, inside: fromInside ? target.radius : 0, leaning, rank: rays.length });
    }
  });
  return rays;
}

/** A place on the way, `by` mm from its tip. */
export const shrunk = (tip: Vector2, direction: Vector2, by: number): Vector2 => [tip[0] + direction[0] * by, tip[1] + direction[1] * by];

/** True for an angle within an arc given by its two ends, degrees. */
export function between(angle: number, [from, to]: readonly [number, number]): boolean {
  const turn = (value: number): number => ((value % 360) + 360) % 360;
  return turn(angle - from) <= turn(to - from) + 1e-9;
}
