import type { Shadow } from './shadow.js';

/**
 * The half axes of the ellipse centre + u cos t + v sin t in the plane: a the greater, reached at t = lead; b the lesser,
 * to the left of a. With rising t the point runs counter-clockwise when `sense` is 1, clockwise when it is -1.
 */
export interface Conic {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly major: number;
  readonly minor: number;
  readonly lead: number;
  readonly sense: 1 | -1;
}

export function conicOf({ u, v }: Shadow & { kind: 'ellipse' }): Conic {
  const [uu, vv, uv] = [u[0] * u[0] + u[1] * u[1], v[0] * v[0] + v[1] * v[1], u[0] * v[0] + u[1] * v[1]];
  const even = Math.abs(uu - vv) < 1e-12 * (uu + vv) && Math.abs(uv) < 1e-12 * (uu + vv);
  const lead = even ? 0 : Math.atan2(2 * uv, uu - vv) / 2;
  const [c, s] = [Math.cos(lead), Math.sin(lead)];
  const [ax, ay] = [u[0] * c + v[0] * s, u[1] * c + v[1] * s];
  const [bx, by] = [v[0] * c - u[0] * s, v[1] * c - u[1] * s];
  const sense = ax * by - ay * bx < 0 ? -1 : 1;
  const [major, minor] = [Math.sqrt(ax * ax + ay * ay), Math.sqrt(bx * bx + by * by)];
  return { ax, ay, bx: sense * bx, by: sense * by, major, minor, lead, sense };
}
