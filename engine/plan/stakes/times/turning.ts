import { add, dot, scale } from '../../../geometry/vector.js';
import { feedRange } from '../../../trade/cutting.js';
import { cutMinutes } from '../../../trade/cut-minutes.js';
import { handlingMinutes } from '../../data/handling.js';
import { overrun, passDepths, steelEnergy, turnsUnknown } from '../../data/passes.js';
import type { CutterPlan } from '../../speeds.js';
import { diameterBefore, turnedSteps, type TurnedStep } from '../../turned-steps.js';
import { spanAlong, standsBeyond } from '../extents.js';
import { isPartingOff } from '../parting-off.js';
import type { OperationFacts } from '../facts.js';

/** The middle of a range of feeds, mm a turn. */
export function middleFeed(operation: string, diameter: number): number {
  const [low, high] = feedRange(operation, diameter);
  return (low + high) / 2;
}

/** How much deeper a cut may be than in steel: by the energy that the metal takes, within bounds. */
export const softness = ({ material }: Pick<OperationFacts, 'material'>): number => Math.min(2.5, Math.max(0.6, steelEnergy / (material?.cuttingEnergy ?? steelEnergy)));

/** Roughing passes for a depth to take off a side, without the finishing pass. */
export const roughingPasses = (off: number, depth: number): number => Math.max(0, Math.ceil((off - passDepths.finish) / depth - 1e-9));

/** Facing: passes from the rim to the middle. What is parted off first is not turned to chips: one cut parts it, one pass faces it. */
export function facingMinutes(facts: OperationFacts, cutter: CutterPlan): number {
  const turns = cutter.speed ?? turnsUnknown;
  const diameter = cutter.diameter ?? 0;
  return facts.operation.cuts.flatMap(({ forms }) => forms).reduce((minutes, form) => {
    if (form.kind !== 'half-space') return minutes;
    const off = isPartingOff(facts.operation) ? 0 : standsBeyond(facts.before, form.point, form.normal);
    const passes = roughingPasses(off, passDepths.facing * softness(facts)) + 1;
    const parted = isPartingOff(facts.operation) ? partingMinutes(facts, cutter) : 0;
    return minutes + parted + cutMinutes({ length: diameter / 2, overrun: overrun / 2, feed: middleFeed('facing', diameter), turns, passes }) + passes * handlingMinutes.passOnLathe;
  }, 0);
}

/** How long a stretch is, mm: the form of an open end reaches on into the air, the tool only as far as there is metal. */
function lengthOf({ before }: OperationFacts, { from, to, axis }: TurnedStep): number {
  const [a, b] = [dot(from.point, axis), dot(to.point, axis)];
  const [low, high] = spanAlong(before, axis) ?? [-Infinity, Infinity];
  return Math.max(0, Math.min(high, Math.max(a, b)) - Math.max(low, Math.min(a, b)));
}

/** Turning along the work: roughing passes, then one to finish, for each stretch. */
export function turningMinutes(facts: OperationFacts, cutter: CutterPlan): number {
  const turns = cutter.speed ?? turnsUnknown;
  return facts.operation.cuts.flatMap(turnedSteps).filter(({ internal }) => !internal).reduce((minutes, step) => {
    const least = Math.min(step.from.radius, step.to.radius);
    const there = diameterBefore(facts.part, facts.operation, scale(add(step.from.point, step.to.point), 0.5), step.axis) / 2;
    const rough = roughingPasses(there - least, passDepths.turning * softness(facts));
    const length = lengthOf(facts, step);
    return (
      minutes +
      cutMinutes({ length, overrun, feed: middleFeed('roughing', 2 * there), turns, passes: rough }) +
      cutMinutes({ length, overrun, feed: middleFeed('finishing', 2 * there), turns }) +
      (rough + 1) * handlingMinutes.passOnLathe
    );
  }, 0);
}

/** Boring: the tool is thin and the passes are light; the last is run twice, for the spring of the tool. */
export function boringMinutes(facts: OperationFacts, cutter: CutterPlan): number {
  const turns = cutter.speed ?? turnsUnknown;
  const bored: readonly { readonly radius: number; readonly length: number }[] = [
    ...facts.operation.cuts.flatMap(turnedSteps).filter(({ internal }) => internal).map((step) => ({ radius: Math.max(step.from.radius, step.to.radius), length: lengthOf(facts, step) })),
    ...facts.operation.cuts.flatMap(({ sizes }) => sizes).flatMap((size) => {
      if (size.kind === 'counterbore') return [{ radius: size.diameter.value / 2, length: size.depth.value }];
      if (size.kind === 'hole' && size.finish !== 'drilled' && size.finish !== 'reamed') return [{ radius: size.diameter.value / 2, length: size.depth?.value ?? holeLength(facts, size.diameter.value, size.points.length) }];
      return [];
    }),
  ];
  const whole = bored.reduce((sum, { length }) => sum + length, 0);
  return bored.reduce((minutes, { radius, length }) => {
    const share = whole === 0 ? 0 : (facts.removed * length) / whole;
    const there = Math.sqrt(Math.max(0, radius ** 2 - share / (Math.PI * Math.max(length, 0.1))));
    const passes = roughingPasses(radius - there, passDepths.boring * softness(facts)) + 2;
    return minutes + cutMinutes({ length, overrun, feed: middleFeed('boring', 2 * radius), turns, passes }) + passes * handlingMinutes.passOnLathe;
  }, 0);
}

/** How long each of some holes without a depth is, mm: of the metal that they take. */
export const holeLength = ({ removed }: OperationFacts, diameter: number, count: number): number => removed / ((Math.PI / 4) * diameter ** 2 * Math.max(1, count));

/** Parting and grooving: straight in, to the middle where nothing is left there. */
export function partingMinutes(facts: OperationFacts, cutter: CutterPlan): number {
  const turns = cutter.speed ?? turnsUnknown;
  const diameter = cutter.diameter ?? 0;
  const inward = facts.operation.cuts.flatMap(turnedSteps).map((step) => Math.min(step.from.radius, step.to.radius));
  const length = Math.max(0, diameter / 2 - (inward.length === 0 ? 0 : Math.min(...inward)));
  return cutMinutes({ length, overrun: overrun / 2, feed: middleFeed('parting', diameter), turns }) + handlingMinutes.passOnLathe;
}
