import type { Grip, Part } from '../../../engine/part/part.js';
import { builtInPart } from '../../support/built-in-part.js';

const vice = (a: string, b: string): Grip => ({ kind: 'vice', between: [a, b] });
const bar = vice('y:bar faces, low', 'y:bar faces, high');
const cheeks = vice('x:cheek faces, low', 'x:cheek faces, high');

/** How the crosshead is held in each set-up, by sound practice. */
export const crossheadGrips: Readonly<Record<string, Grip>> = {
  A: { kind: 'four-jaw chuck', between: ['z:pin axis', 'z:rear face'] },
  B: bar,
  C: cheeks,
  D: cheeks,
  E: bar,
  F: bar,
  G: bar,
  H: bar,
};

/** A part of which each set-up says what holds it, as given. */
export const gripped = (part: Part, grips: Readonly<Record<string, Grip>>): Part => ({ ...part, setUps: part.setUps.map((setUp) => ({ ...setUp, ...(grips[setUp.id] === undefined ? {} : { grip: grips[setUp.id]! }) })) });

/** The crosshead, held soundly. */
export const grippedCrosshead = async (): Promise<Part> => gripped(await builtInPart('crosshead'), crossheadGrips);
