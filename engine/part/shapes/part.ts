import { z } from 'zod';
import { axis, direction, distance, ids, phrase, positive, sized, text, unitVector } from './basics.js';
import { form } from './forms.js';
import { size } from './sizes.js';

/** A name that goes into the names of files. */
export const plainName = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'must be small letters and digits, words joined by hyphens').max(60, 'must be no longer than 60 letters');

const placing = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('datum') }),
  z.looseObject({ kind: z.literal('from'), station: text, distance, sense: z.literal([1, -1]) }),
  z.looseObject({ kind: z.literal('derived'), station: text, by: text }),
  z.looseObject({ kind: z.literal('row'), first: text, previous: text, index: z.int().min(1), count: z.int().min(2), pitch: distance }),
  z.looseObject({ kind: z.literal('pair'), about: text, other: text, width: distance }),
]);

const turnedTo = z.union([direction, unitVector], { error: 'must be a direction such as +x, or a vector of length one' });

const cut = z.looseObject({
  id: text,
  name: text,
  forms: z.array(form),
  faces: z.record(z.string(), z.looseObject({ stations: ids, bounds: ids.optional(), texture: positive.optional() })),
  sizes: z.array(size),
  stations: ids,
  finishDepth: z.looseObject({ depth: sized, under: z.number().min(0), walls: ids }).optional(),
  instruction: phrase,
});

/** All that the rest of the program counts on in a part. More may be there and is passed over. */
export const partShape = z.looseObject({
  name: plainName,
  title: text,
  engine: text,
  units: z.enum(['in', 'mm']),
  quantity: z.int().min(1).max(1_000_000),
  material: z.looseObject({ name: text, treatment: phrase.optional() }),
  stock: z.looseObject({
    shape: z.enum(['round', 'rectangular', 'hexagon']),
    section: z.array(positive).min(1),
    length: positive,
    forms: z.array(form).min(1),
    faces: z.record(z.string(), z.looseObject({ stations: ids })),
  }),
  stations: z.array(z.looseObject({ id: text, axis, value: z.number(), name: text, placing })),
  setUps: z.array(z.looseObject({ id: text, machine: z.enum(['lathe', 'mill', 'drill', 'bench']), holding: text, up: turnedTo, right: turnedTo, zero: ids, note: phrase.optional() })),
  operations: z
    .array(
      z.looseObject({
        number: z.int().min(1).max(9999),
        title: text,
        setUp: text,
        cutter: z.looseObject({ name: text, diameter: positive.optional(), width: positive.optional() }),
        cuts: z.array(cut),
        leave: phrase.optional(),
        check: phrase.optional(),
        minutes: positive.optional(),
        caution: ids.optional(),
      }),
    )
    .min(1),
  notes: z.array(phrase),
  cautions: ids,
  attitude: z.looseObject({ kind: z.enum(['turned', 'milled']), front: direction, up: direction }),
  handAxis: axis,
  hand: z.enum(['right', 'left']),
  texture: positive,
});
