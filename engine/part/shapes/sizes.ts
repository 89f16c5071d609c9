import { z } from 'zod';
import { direction, positive, sized, text, unitVector, vector3 } from './basics.js';

const included = positive.max(180);

const atHoles = {
  cut: text,
  points: z.array(vector3).min(1),
  direction: unitVector,
  pitchCircle: z.looseObject({ centre: vector3, diameter: sized, start: z.number(), zero: unitVector, zeroName: text }).optional(),
  lean: z.looseObject({ angle: z.number().gt(-90).lt(90), from: direction, toward: direction }).optional(),
};

const thread = z.looseObject({ designation: text, major: positive, pitch: positive, minor: positive });
const ring = { point: vector3, axis: unitVector, radius: z.number().min(0) };

const alongArc = { cut: text, centre: vector3, axis: unitVector, middle: unitVector, ends: z.tuple([vector3, vector3]), line: text };

/** The sizes that a cut carries beside its stations. */
export const size = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('hole'), ...atHoles, diameter: sized, depth: sized.optional(), pointAngle: included, finish: z.enum(['drilled', 'reamed', 'bored', 'milled']) }),
  z.looseObject({ kind: z.literal('tapping'), ...atHoles, thread, depth: sized.optional() }),
  z.looseObject({ kind: z.literal('countersink'), ...atHoles, diameter: sized, angle: included }),
  z.looseObject({ kind: z.literal('counterbore'), ...atHoles, diameter: sized, depth: sized }),
  z.looseObject({ kind: z.literal('diameter'), cut: text, from: vector3, to: vector3, diameter: sized, internal: z.boolean() }),
  z.looseObject({
    kind: z.literal('radius'),
    cut: text,
    radius: sized,
    centres: z.array(vector3),
    axis: unitVector.optional(),
    toward: z.array(unitVector),
    ring: z.looseObject({ ...ring, towardOut: z.number(), towardAlong: z.number() }).optional(),
    full: z.boolean().optional(),
    within: positive.max(180).optional(),
  }),
  z.looseObject({ kind: z.literal('arc-slot'), ...alongArc, radius: sized, width: sized, also: text.optional(), through: z.boolean() }),
  z.looseObject({ kind: z.literal('arc-sides'), ...alongArc, inner: positive, outer: positive, concentricWith: text }),
  z.looseObject({ kind: z.literal('angle'), cut: text, corner: vector3, a: unitVector, b: unitVector, degrees: included, tolerance: positive.optional() }),
  z.looseObject({ kind: z.literal('chamfer'), cut: text, ring: z.looseObject(ring), outward: unitVector, internal: z.boolean(), leg: sized, angle: positive.lt(90), face: z.looseObject({ diameter: sized, angle: positive.lt(90) }).optional() }),
  z.looseObject({ kind: z.literal('external-thread'), cut: text, thread, from: vector3, to: vector3, root: positive }),
  z.looseObject({ kind: z.literal('internal-thread'), cut: text, thread, from: vector3, to: vector3, core: positive, method: z.enum(['tap', 'screw-cut']) }),
  z.looseObject({ kind: z.literal('centre-hole'), cut: text, point: vector3, direction: unitVector, designation: text, pilot: positive, outside: positive }),
]);
