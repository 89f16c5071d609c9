import type { Cut, CutFace, Phrase, Size } from '../../cut.js';
import type { Axis, Station } from '../../station.js';
import type { Sized } from '../../tolerance.js';
import { indexOf, pointAt, vectorOf } from '../directions.js';
import { reversed } from '../outlines.js';
import { inWords, joined } from '../phrases.js';
import { clear, reachFrom, type Room } from '../room.js';
import { sized } from '../stations.js';
import type { Segment } from '../../../geometry/outline.js';
import { cross2, length2, subtract2, type Vector2, type Vector3 } from '../../../geometry/vector.js';
import { axisFrame } from './pocket.js';

/** One step of a turned outline: a diameter as far as `to`, or a taper that ends there with another diameter. */
export interface TurnStep {
  readonly to: Station;
  readonly diameter: Sized;
  /** Diameter at `to` where the step tapers; the angle is printed, not this. */
  readonly taperTo?: number;
  /** Fillet between this diameter and the face at `to`, mm. */
  readonly fillet?: number;
  readonly texture?: number;
  /** Says that the diameter is printed elsewhere (it equals a neighbour's). */
  readonly unsaid?: boolean;
}

/** All outside an outline turned away between `from` and the last step's end. */
export interface TurnCut {
  readonly id: string;
  readonly name: string;
  readonly axis: Axis;
  readonly centre: readonly [Station, Station];
  readonly from: Station;
  /** True where the cut starts in free air beyond `from`. */
  readonly open?: boolean;
  readonly steps: readonly TurnStep[];
  readonly verb?: string;
}

export function turn(room: Room, cut: TurnCut): Cut {
  const last = cut.steps[cut.steps.length - 1];
  if (last === undefined) throw new RangeError(`the ${cut.name} has no steps`);
  const sense = last.to.value > cut.from.value ? 1 : -1;
  const onAxis = (height: number): Vector3 => {
    const point: [number, number, number] = [...pointAt(...cut.centre, cut.from)];
    point[indexOf(cut.axis)] = height;
    return point;
  };
  const outside = reachFrom(room, onAxis(cut.from.value));
  const faces: Record<string, CutFace> = { start: { stations: cut.open === true ? [] : [cut.from.id] }, outside: { stations: [] } };
  const sizes: Size[] = [];
  const segments: Segment[] = [];
  const points: Vector2[] = [];
  const go = (to: Vector2, faceName: string): void => {
    const from = points[points.length - 1]!;
    if (length2(subtract2(to, from)) > 1e-9) segments.push({ kind: 'line', from, to, face: faceName });
    points.push(to);
  };
  const start = cut.from.value - (cut.open === true ? sense * clear : 0);
  points.push([outside, start]);
  let height = cut.from.value;
  cut.steps.forEach((step, i) => {
    const name = `step ${i + 1}`;
    const radius = step.diameter.value / 2;
    const end = step.taperTo === undefined ? radius : step.taperTo / 2;
    go([radius, i === 0 ? start : height], i === 0 ? 'start' : `shoulder ${i}`);
    if (step.taperTo !== undefined && i === 0 && cut.open === true) go([radius, height], 'lead');
    const fillet = step.fillet ?? 0;
    go([end, step.to.value - sense * fillet], name);
    faces[name] = {
      stations: [],
      ...(step.taperTo === undefined ? {} : { bounds: [i === 0 ? cut.from.id : cut.steps[i - 1]!.to.id, step.to.id] }),
      ...(step.texture === undefined ? {} : { texture: step.texture }),
    };
    faces[`shoulder ${i + 1}`] = { stations: [step.to.id] };
    if (fillet > 0) {
      const centre: Vector2 = [end + fillet, step.to.value - sense * fillet];
      const to: Vector2 = [end + fillet, step.to.value];
      const from = points[points.length - 1]!;
      const turnTo = cross2(subtract2(from, centre), subtract2(to, centre)) > 0 ? 'left' : 'right';
      segments.push({ kind: 'arc', from, to, centre, turn: turnTo, face: `fillet ${i + 1}` });
      points.push(to);
      faces[`fillet ${i + 1}`] = { stations: [] };
      const half = Math.SQRT1_2;
      sizes.push({
        kind: 'radius',
        cut: cut.id,
        radius: sized(fillet),
        centres: [],
        toward: [],
        ring: { point: onAxis(centre[1]), axis: vectorOf(`+${cut.axis}`), radius: centre[0], towardOut: -half, towardAlong: sense * half },
      });
    }
    if (step.taperTo !== undefined) sizes.push(taperAngle(cut, onAxis, height, step, radius, end));
    if (step.taperTo === undefined && step.unsaid !== true)
      sizes.push({ kind: 'diameter', cut: cut.id, from: onAxis(height), to: onAxis(step.to.value), diameter: step.diameter, internal: false });
    height = step.to.value;
  });
  go([outside, last.to.value], `shoulder ${cut.steps.length}`);
  go([outside, start], 'outside');
  let area = 0;
  for (const segment of segments) area += cross2(segment.from, segment.to);
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'revolution', frame: axisFrame(cut.axis, cut.centre), outline: area > 0 ? segments : reversed(segments) }],
    faces,
    sizes,
    stations: [cut.from.id, ...cut.steps.map((step) => step.to.id)],
    instruction: [`${cut.verb ?? 'Turn'} ${cut.name}: `, ...joined(cut.steps.map((step) => stepInWords(cut, step)))],
  };
}

function stepInWords(cut: TurnCut, step: TurnStep): Phrase {
  const to: Phrase = cut.open === true ? [' to ', step.to.name] : [' between ', cut.from.name, ' and ', step.to.name];
  if (step.taperTo !== undefined) {
    const run = Math.abs(step.to.value - cut.from.value);
    const included = (Math.atan(Math.abs(step.diameter.value - step.taperTo) / 2 / run) * 360) / Math.PI;
    return [`taper ${Math.round(included * 100) / 100}° included, from `, inWords(step.diameter, 'diameter'), ' to ', { length: step.taperTo, sign: 'diameter' }];
  }
  const length: Phrase =
    step.to.placing.kind === 'from' && step.to.placing.station === cut.from.id ? [' x ', inWords(step.to.placing.distance), ' long'] : to;
  const fillet: Phrase = step.fillet === undefined ? [] : [', fillet ', inWords(sized(step.fillet), 'radius')];
  return [inWords(step.diameter, 'diameter'), ...length, ...fillet];
}

/** The included angle of a taper, at its apex. */
function taperAngle(
  cut: TurnCut,
  onAxis: (height: number) => Vector3,
  from: number,
  step: TurnStep,
  radius: number,
  end: number,
): Size {
  const run = step.to.value - from;
  const half = (Math.atan(Math.abs(end - radius) / Math.abs(run)) * 180) / Math.PI;
  const apex = from + (run * radius) / (radius - end);
  return {
    kind: 'angle',
    cut: cut.id,
    corner: onAxis(apex),
    a: vectorOf(`${from > apex ? '+' : '-'}${cut.axis}`),
    b: vectorOf(`${from > apex ? '+' : '-'}${cut.axis}`),
    degrees: Math.round(half * 2 * 1e6) / 1e6,
    included: true,
  };
}
