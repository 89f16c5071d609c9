import type { Material } from '../../trade/material.js';

/** A wall thinner than this springs or breaks out, mm, by kind of metal: common practice at this size of work. */
export const thinWalls: Readonly<Record<Material['kind'] | 'unknown', number>> = { steel: 0.8, 'cast iron': 1.5, 'copper alloy': 1, aluminium: 1, plastic: 1.5, unknown: 1 };

/** A wall so many times higher than thick gives way before the cutter: common practice. */
export const slenderWall = 10;

/** Round a hole, the less of so many of its diameters and of so much metal, mm: common practice. */
export const roundHole = { diameters: 0.5, most: 1.2 } as const;

/** What is left of less is none, mm. */
export const noWall = 0.15;
