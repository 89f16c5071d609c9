import type { Engine } from '../engine/part/loads.js';

/** Our own demonstration engine, two cylinders, 5 inch gauge: bore 1 1/4 in, stroke 2 in, 80 psi, 55 kg in steam. */
export const tormentil: Engine = { name: 'Tormentil', bore: 31.75, stroke: 50.8, rod: 165.1, pressure: 0.5516, kilograms: 55 };

/** What works the valve, as a part of the piston's load: friction of a slide valve, a rough figure (common practice). */
export const valveShare = 0.12;
