import { conicOf } from './conic.js';
import { coordinateAt, type Shadow } from './shadow.js';

/** The parameter of an ellipse seen edge-on from its place along the line, on the half turn that holds `middle`. */
export function halfTurn(shadow: Shadow & { kind: 'ellipse' }, dx: number, dy: number, middle: number): (s: number) => number {
  const { ax, ay, lead } = conicOf(shadow);
  const centre = shadow.centre[0] * dx + shadow.centre[1] * dy;
  const reach = ax * dx + ay * dy;
  const half = Math.floor((middle - lead) / Math.PI);
  return (s) => {
    const turn = Math.acos(Math.max(-1, Math.min(1, (s - centre) / reach)));
    return half % 2 === 0 ? lead + half * Math.PI + turn : lead + (half + 1) * Math.PI - turn;
  };
}

/** Where a value that rises (or falls) all the way comes to `target`, by halving. */
export function whereReached(value: (t: number) => number, target: number, from: number, to: number, rising: boolean): number {
  let [low, high] = [from, to];
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (value(middle) < target === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** For a spline whose shadow is straight: where it turns back, with both ends; else undefined. */
export function foldsOf({ points }: Shadow & { kind: 'spline' }, low: number, high: number): number[] | undefined {
  const far = points.reduce((best, p) => {
    const gap = (p[0] - points[0]![0]) ** 2 + (p[1] - points[0]![1]) ** 2;
    return gap > best.gap ? { gap, p } : best;
  }, { gap: 0, p: points[0]! });
  const size = Math.sqrt(far.gap);
  if (size < 1e-6) return [low, high];
  const [dx, dy] = [(far.p[0] - points[0]![0]) / size, (far.p[1] - points[0]![1]) / size];
  for (const [x, y] of points) if (Math.abs((x - points[0]![0]) * dy - (y - points[0]![1]) * dx) > 5e-6) return undefined;
  const along = (t: number): number => {
    const shadow: Shadow = { kind: 'spline', points };
    return coordinateAt(shadow, t, 0) * dx + coordinateAt(shadow, t, 1) * dy;
  };
  return turningStops(along, low, high);
}

/** The ends of a stretch and between them the places where the value turns back. */
export function turningStops(along: (t: number) => number, low: number, high: number): number[] {
  const stops = [low];
  const count = Math.ceil((high - low) * 8);
  const step = (high - low) / count;
  for (let i = 1; i < count; i += 1) {
    const t = low + i * step;
    const [a, b, c] = [along(t - step), along(t), along(t + step)];
    if ((b - a) * (c - b) <= 0) stops.push(goldenTurn(along, t - step, t + step, b > a ? 1 : -1));
  }
  return [...stops, high].filter((t, i, all) => i === 0 || t > all[i - 1]! + 1e-9);
}

/** The place of the greatest (sense 1) or least (-1) value between low and high, by thirds. */
function goldenTurn(value: (t: number) => number, low: number, high: number, sense: number): number {
  let [a, b] = [low, high];
  for (let round = 0; round < 60; round += 1) {
    const [p, q] = [a + (b - a) / 3, b - (b - a) / 3];
    if (sense * value(p) < sense * value(q)) a = p;
    else b = q;
  }
  return (a + b) / 2;
}
