import { add, scale, type Vector3 } from '../../geometry/vector.js';
import { overhangLimits } from '../data/overhang.js';
import type { Finding } from '../finding.js';
import { toMachine, type MachineFrame } from '../machine-frame.js';
import type { OperationState } from '../states/state.js';
import { turnedSteps } from '../turned-steps.js';
import { workOf, type WorkKind } from '../work.js';
import { casterOf } from './caster.js';
import { centreHoles } from './centre-holes.js';
import { acrossRound, commonPractice, figureOf, frameOf, mm, plain, type Check } from './context.js';
import { gripStations } from './grip-vice.js';
import { extentAlong, place, upward } from './placed.js';
import { alongSpindle } from './round-grip.js';

/** Work that bends the bar; facing and drilling push along it. */
const bending: readonly WorkKind[] = ['turning', 'parting', 'chamfering', 'threading'];

/** Whether the bar stands out of the chuck too far for its thickness, and whether a centre carries its end. */
export const overhang: Check = (context, state) => {
  const { operation, setUp } = state;
  const kind = setUp.grip?.kind;
  if (setUp.machine !== 'lathe' || kind === undefined || kind === 'between centres' || kind === 'fixture' || kind === 'clamps') return [];
  if (!workOf(context.part, setUp, operation).some((work) => bending.includes(work.kind))) return [];
  const frame = frameOf(context, state);
  const chuck = Math.max(...gripStations(context, state).map(({ value, axis }) => alongSpindle(frame, value, axis)));
  const ends = operation.cuts.flatMap((cut) => [...turnedSteps(cut).flatMap(({ from, to }) => [from.point, to.point]), ...cut.sizes.flatMap((size) => (size.kind === 'chamfer' ? [size.ring.point] : size.kind === 'external-thread' ? [size.from, size.to] : []))]).map((point) => toMachine(frame, point)[2]);
  const tip = extentAlong(place(state.before, frame), upward)[1];
  const far = Math.min(tip, Math.max(-Infinity, ...ends));
  const reach = far - chuck;
  if (!(reach > 0.5)) return [];
  const { ratio, diameter } = limberness(state, frame, chuck, far);
  const hole = centreHoles(context.part, operation, scale(frame.z, -1)).length > 0;
  const figures = { overhang: figureOf(reach), diameter: figureOf(diameter), ratio: figureOf(ratio), centre: hole ? 'yes' : 'no' };
  const finding = (gravity: Finding['gravity'], ...sentence: Finding['sentence']): Finding => ({ check: 'overhang', operation: operation.number, gravity, figures, sentence, source: `${commonPractice}; bending of a stepped bar under a load at its end` });
  const says = ['The work stands ', mm(reach), ' out of the chuck at this cut and bends like a plain bar ', acrossRound(diameter), ` of ${plain(ratio)} diameters`] as const;
  if (hole) return ratio > overhangLimits.centred ? [finding('warning', ...says, `; even with the centre ${overhangLimits.centred} is the most: a steady is wanted, or light cuts`)] : [];
  if (ratio > overhangLimits.hopeless) return [finding('fatal', ...says, `, and ${overhangLimits.free} go free: there is no centre hole for the tailstock yet, and without one it bends and climbs`)];
  return ratio > overhangLimits.free ? [finding('warning', ...says, `, and ${overhangLimits.free} go free: a centre is wanted, and there is no centre hole yet`)] : [];
};

/** Slices in which the bar is taken. */
const slices = 60;

/**
 * How far a plain bar of the diameter at the cut would stand out, in diameters, to bend as the stepped bar does: both have the
 * same integral of (reach to the end)^2 / d^4. The thickness is counted across the axis, in the thinner of four directions.
 */
function limberness({ after }: OperationState, frame: MachineFrame, chuck: number, far: number): { readonly ratio: number; readonly diameter: number } {
  const step = (far - chuck) / slices;
  const widths = Array.from({ length: slices }, (_, i) => thickness(after, frame, chuck + (i + 0.5) * step));
  const known = widths.filter((width) => width > 0);
  const diameter = [...known].reverse()[0] ?? 0;
  if (diameter === 0) return { ratio: 0, diameter };
  const limber = widths.reduce((sum, width, i) => sum + ((slices - i - 0.5) * step) ** 2 * step / (width > 0 ? width : diameter) ** 4, 0);
  return { ratio: Math.cbrt(3 * limber * diameter ** 4) / diameter, diameter };
}

function thickness(solid: OperationState['after'], frame: MachineFrame, height: number): number {
  const middle = add(frame.origin, scale(frame.z, height));
  const half = Math.SQRT1_2;
  const ways: readonly Vector3[] = [frame.x, frame.y, add(scale(frame.x, half), scale(frame.y, half)), add(scale(frame.x, half), scale(frame.y, -half))];
  return Math.min(
    ...ways.map((way) => {
      const spans = casterOf(solid, way).spans(middle);
      const [first, last] = [spans[0], spans.at(-1)];
      return first === undefined || last === undefined ? 0 : last.to - first.from;
    }),
  );
}
