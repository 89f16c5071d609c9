import { FULL, type Carriers, type LineCarrier } from './carriers.js';
import { conicOf } from './conic.js';
import { foldsOf, halfTurn, turningStops, whereReached } from './folds.js';
import { angleAt, coordinateAt, type RoundShadow, type Shadow } from './shadow.js';
import type { Strand } from './strand.js';

/** Shadows shorter than this are points, mm. */
const POINT = 1e-6;

/** Lays a strand on its carrier; one seen edge-on is laid on a line, folded where it turns back. */
export function layStrand(carriers: Carriers, strand: Strand): void {
  const { shadow, low, high } = strand;
  switch (shadow.kind) {
    case 'line':
      return layFlat(carriers, strand, [low, high], 0);
    case 'ellipse':
      return layEllipse(carriers, strand, shadow);
    case 'round':
      return layRound(carriers, strand, shadow);
    case 'spline': {
      const folds = foldsOf(shadow, low, high);
      if (folds) return layFlat(carriers, strand, folds, 0);
      const carrier = carriers.spline(shadow);
      carrier.members.push({ strand, from: low, to: high, toParameter: (s) => s, fold: 0 });
    }
  }
}

function layEllipse(carriers: Carriers, strand: Strand, shadow: Shadow & { kind: 'ellipse' }): void {
  const conic = conicOf(shadow);
  if (conic.minor < 1e-7 * conic.major || conic.minor < POINT) {
    // Its ends along the line are where t = lead and lead + pi; a whole turn begins at one.
    const whole = strand.high - strand.low > FULL - 1e-9;
    const [low, high] = whole ? [conic.lead, conic.lead + FULL] : [strand.low, strand.high];
    const first = Math.ceil((low - conic.lead) / Math.PI + 1e-9);
    const stops = [low];
    for (let k = first; conic.lead + k * Math.PI < high - 1e-9; k += 1) stops.push(conic.lead + k * Math.PI);
    return layFlat(carriers, strand, [...stops, high], first - 1);
  }
  const { low, high } = strand;
  const [x, y] = shadow.centre;
  const { sense } = conic;
  const carrier = carriers.ellipse(x, y, conic.ax, conic.ay, conic.bx, conic.by);
  // The carrier may be an equal ellipse whose axes (of a circle) are turned.
  const size = carrier.ax ** 2 + carrier.ay ** 2;
  const along = (conic.ax * carrier.ax + conic.ay * carrier.ay) / size;
  const beside = (conic.ay * carrier.ax - conic.ax * carrier.ay) / size;
  const shift = Math.atan2(beside, along) - sense * conic.lead;
  const start = sense > 0 ? low : high;
  const raw = shift + sense * start;
  const from = raw - FULL * Math.floor(raw / FULL);
  const offset = from - raw;
  carrier.members.push({
    strand, from, to: from + high - low, fold: 0,
    toParameter: (s) => sense * (s - offset - shift),
  });
}

function layRound(carriers: Carriers, strand: Strand, shadow: RoundShadow): void {
  const { centre: [x, y], radius } = shadow;
  const carrier = carriers.ellipse(x, y, radius, 0, 0, radius);
  const shift = -Math.atan2(carrier.ay, carrier.ax);
  const angle = (t: number): number => angleAt(shadow, t) + shift;
  turningStops(angle, strand.low, strand.high).forEach((to, i, stops) => {
    const from = stops[i - 1];
    if (from === undefined) return;
    const [a, b] = [angle(from), angle(to)];
    const low = Math.min(a, b);
    const turned = FULL * Math.floor(low / FULL);
    if (Math.abs(b - a) * radius < POINT) return;
    const toParameter = (s: number): number => whereReached(angle, s + turned, from, to, a < b);
    carrier.members.push({ strand, from: low - turned, to: Math.max(a, b) - turned, toParameter, fold: i });
  });
}

/** Lays stretches that run straight, each one way, on the line of the whole. */
function layFlat(carriers: Carriers, strand: Strand, stops: readonly number[], firstFold: number): void {
  const { shadow } = strand;
  let carrier: LineCarrier | undefined;
  for (let i = 0; i + 1 < stops.length; i += 1) {
    const [from, to] = [stops[i]!, stops[i + 1]!];
    const [x0, y0] = [coordinateAt(shadow, from, 0), coordinateAt(shadow, from, 1)];
    const [x1, y1] = [coordinateAt(shadow, to, 0), coordinateAt(shadow, to, 1)];
    if ((x1 - x0) ** 2 + (y1 - y0) ** 2 < POINT * POINT) continue;
    const line = carrier ?? carriers.line(x0, y0, x1, y1);
    carrier = line;
    const { dx, dy } = line;
    const [s0, s1] = [x0 * dx + y0 * dy, x1 * dx + y1 * dy];
    const toParameter = shadow.kind === 'line'
      ? (s: number): number => from + ((s - s0) * (to - from)) / (s1 - s0)
      : shadow.kind === 'ellipse' ? halfTurn(shadow, dx, dy, (from + to) / 2)
      : (s: number): number => whereReached((t) => coordinateAt(shadow, t, 0) * dx + coordinateAt(shadow, t, 1) * dy, s, from, to, s0 < s1);
    line.members.push({ strand, from: Math.min(s0, s1), to: Math.max(s0, s1), toParameter, fold: firstFold + i });
  }
}
