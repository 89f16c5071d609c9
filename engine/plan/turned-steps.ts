import { fromFrame } from '../geometry/frame.js';
import { dot, length, scale, subtract, type Vector2, type Vector3 } from '../geometry/vector.js';
import type { Cut } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';

/** A stretch that a turning or boring cut leaves: its radius at both ends, mm, and where the ends stand on the axis. */
export interface TurnedStep {
  readonly cut: Cut;
  readonly internal: boolean;
  readonly from: { readonly radius: number; readonly point: Vector3 };
  readonly to: { readonly radius: number; readonly point: Vector3 };
  readonly axis: Vector3;
}

/** The stretches of a cut in the order in which the tool comes to them; none for a cut that is not turned or bored. */
export function turnedSteps(cut: Cut): readonly TurnedStep[] {
  return cut.forms.flatMap((form): readonly TurnedStep[] => {
    if (form.kind !== 'revolution') return [];
    const faces = new Set(form.outline.map(({ face }) => face));
    const internal = faces.has('axis');
    const steps = form.outline.flatMap((segment): readonly { readonly order: number; readonly step: TurnedStep }[] => {
      const order = /^step (\d+)$/.exec(segment.face)?.[1];
      if (order === undefined || segment.kind !== 'line') return [];
      // A fillet is part of the step: its shoulder stands beyond it.
      const fillet = form.outline.find((other) => other.kind === 'arc' && other.face === `fillet ${order}`);
      const end = ([radius, height]: Vector2) => {
        const beyond = fillet === undefined ? undefined : same(fillet.from, [radius, height]) ? fillet.to : same(fillet.to, [radius, height]) ? fillet.from : undefined;
        return { radius, point: fromFrame(form.frame, [0, 0, beyond?.[1] ?? height]) };
      };
      return [{ order: Number(order), step: { cut, internal, from: end(segment.from), to: end(segment.to), axis: form.frame.z } }];
    });
    return [...steps].sort((a, b) => a.order - b.order).map(({ step }) => step);
  });
}

const same = (a: Vector2, b: Vector2): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-9;

/** The distance of the farthest metal of the bar from an axis, mm: half the diameter that it swings. */
export function stockReach(part: Part, point: Vector3, axis: Vector3): number {
  let reach = 0;
  for (const form of part.stock.forms) {
    if (form.kind === 'half-space') continue;
    for (const { from } of form.outline) {
      const at = form.kind === 'prism' ? fromFrame(form.frame, [from[0], from[1], 0]) : fromFrame(form.frame, [from[0], 0, 0]);
      const offset = subtract(at, point);
      reach = Math.max(reach, length(subtract(offset, scale(axis, dot(offset, axis)))));
    }
  }
  return reach;
}

/** The diameter of the work at `point` on the axis just before an operation: of the bar, or as turned until then, mm. */
export function diameterBefore(part: Part, operation: Operation, point: Vector3, axis: Vector3): number {
  let radius = stockReach(part, point, axis);
  for (const earlier of part.operations) {
    if (earlier === operation) break;
    for (const step of earlier.cuts.flatMap(turnedSteps)) {
      if (step.internal || Math.abs(dot(step.axis, axis)) < 1 - 1e-9) continue;
      const [a, b, here] = [dot(step.from.point, axis), dot(step.to.point, axis), dot(point, axis)];
      if (here > Math.min(a, b) - 1e-6 && here < Math.max(a, b) + 1e-6) radius = Math.min(radius, Math.max(step.from.radius, step.to.radius));
    }
  }
  return 2 * radius;
}
