import type { LengthParameter } from '../../engine/part/parameters.js';

/** Sizes that the crosshead and its pin have in common: written once, so that the two always mate. */
export const crossheadAndPin = {
  bodyWidth: {
    kind: 'length',
    label: 'width of the crosshead over its cheeks',
    default: '1 in',
    minimum: '0.5 in',
    maximum: '3 in',
    mate: 'crosshead and its pin',
  },
  pinDiameter: { kind: 'length', label: 'bearing diameter of the pin', default: '1/4 in', minimum: '0.1 in', maximum: '1 in', follows: 'reamer', mate: 'crosshead and its pin' },
  headDiameter: { kind: 'length', label: 'large diameter of the pin head', default: '3/8 in', minimum: '0.15 in', maximum: '1.5 in', mate: 'crosshead and its pin' },
} as const satisfies Readonly<Record<string, LengthParameter>>;
