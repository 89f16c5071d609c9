import { z } from 'zod';

/** Pieces of the shape of a part that a user's own module gives. Numbers are finite: zod refuses NaN and Infinity. */
export const text = z.string().min(1);
export const positive = z.number().positive();
export const ids = z.array(text);
export const axis = z.enum(['x', 'y', 'z']);
export const direction = z.enum(['+x', '-x', '+y', '-y', '+z', '-z']);
export const vector2 = z.tuple([z.number(), z.number()]);
export const vector3 = z.tuple([z.number(), z.number(), z.number()]);

/** Off a length of one by no more than the sines and cosines of an author. */
const ROUNDING = 1e-9;

export const unitVector = vector3.refine((v) => Math.abs(Math.hypot(...v) - 1) <= ROUNDING, 'must have the length one');

export const tolerance = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('plus-minus'), value: positive }),
  z.looseObject({ kind: z.literal('deviations'), upper: z.number(), lower: z.number() }).refine(({ upper, lower }) => upper >= lower, 'must have its upper deviation above the lower'),
  z.looseObject({ kind: z.literal('fit'), class: text, upper: z.number(), lower: z.number() }).refine(({ upper, lower }) => upper >= lower, 'must have its upper deviation above the lower'),
  z.looseObject({ kind: z.literal('maximum') }),
  z.looseObject({ kind: z.literal('minimum') }),
]);

const purposes = { purpose: z.enum(['functional', 'size', 'location', 'overall']), tolerance: tolerance.optional() };

/** A size of a feature: more than nought. */
export const sized = z.looseObject({ value: positive, ...purposes });

/** A distance between stations, which may be nought. */
export const distance = z.looseObject({ value: z.number().min(0), ...purposes });

export const phrase = z.array(
  z.union([z.string(), z.looseObject({ length: z.number(), tolerance: tolerance.optional(), sign: z.enum(['diameter', 'radius']).optional() })], { error: 'must be a text, or a size such as { length: 3 }' }),
);
