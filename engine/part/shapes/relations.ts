import { z } from 'zod';
import { text } from './basics.js';

// A side may be no number at all: that is told with the relation, in its own words.
const side = z.looseObject({ text, value: z.custom<number>((value) => typeof value === 'number', 'must be a number') });

/** What `relations` gives. */
export const relationsShape = z.array(
  z.looseObject({ says: text, left: side, is: z.enum(['<', '<=', '=', '>=', '>']), right: side, measure: z.enum(['length', 'angle', 'count']) }),
);
