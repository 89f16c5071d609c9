import { z } from 'zod';
import { text, unitVector, vector2, vector3 } from './basics.js';

const frame = z.looseObject({ origin: vector3, x: unitVector, y: unitVector, z: unitVector });

const outline = z
  .array(
    z.discriminatedUnion('kind', [
      z.looseObject({ kind: z.literal('line'), from: vector2, to: vector2, face: text }),
      z.looseObject({ kind: z.literal('arc'), from: vector2, to: vector2, centre: vector2, turn: z.enum(['left', 'right']), face: text }),
    ]),
  )
  .min(2);

/** The exact shape of a stock or of what a cut takes away. That outlines close and enclose something is found with the solid. */
export const form = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('half-space'), point: vector3, normal: unitVector, face: text }),
  z.looseObject({ kind: z.literal('prism'), frame, outline, low: z.number(), high: z.number(), lowFace: text, highFace: text }),
  z.looseObject({ kind: z.literal('revolution'), frame, outline }),
]);
