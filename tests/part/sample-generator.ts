import { definePart } from '../../engine/part/generator.js';
import type { Part } from '../../engine/part/part.js';

/** A part with a parameter of every kind and a relation of every measure; `build` is never called. */
export const sample = definePart({
  name: 'sample-block',
  title: 'Sample block',
  summary: 'A block with one of everything.',
  parameters: {
    length: { kind: 'length', label: 'length over all', default: '1 1/2 in', minimum: '1/2 in', maximum: '3 in' },
    bore: { kind: 'length', label: 'bore', default: '5/16 in', minimum: '1/8 in', maximum: '1/2 in' },
    gap: { kind: 'clearance', label: 'gap at each side', default: '0.1 mm', minimum: '0 mm', maximum: '0.5 mm' },
    bar: { kind: 'stock', form: 'round', label: 'bar', default: '3/4 in', minimum: '1/4 in', maximum: '2 in' },
    screw: { kind: 'thread', label: 'clamp screw', default: '4-40', minimum: '0.05 in', maximum: '1/4 in' },
    oilHole: { kind: 'drill', label: 'oil hole', default: '#53', minimum: '#70', maximum: '1/8 in' },
    bevel: { kind: 'angle', label: 'bevel', default: 30, minimum: 5, maximum: 60 },
    holes: { kind: 'count', label: 'holes', default: 4, minimum: 1, maximum: 12 },
    end: { kind: 'choice', label: 'end', default: 'rounded', options: ['rounded', 'square'] },
  },
  relations: ({ bore, bar, holes, bevel }) => [
    {
      says: 'a wall must remain about the bore',
      left: { text: 'bore and two walls', value: bore + 2 * 3 },
      is: '<=',
      right: { text: 'bar', value: bar },
      measure: 'length',
    },
    {
      says: 'the holes go round in pairs',
      left: { text: 'holes over a pair', value: holes % 2 },
      is: '=',
      right: { text: 'none', value: 0 },
      measure: 'count',
    },
    {
      says: 'the cutter leans no further',
      left: { text: 'bevel', value: bevel },
      is: '<',
      right: { text: 'the lean of the cutter', value: 45 },
      measure: 'angle',
    },
  ],
  build: (): Part => {
    throw new TypeError('not built here');
  },
});
