import type { Material } from '../../trade/material.js';

/**
 * What a kilogram of bar stands for, hours of one's own time: common practice, from what short lengths cost against steel. A
 * shop file can give prices instead.
 */
export const hoursOfKilogram: Readonly<Record<Material['kind'], number>> = {
  steel: 0.5,
  'cast iron': 0.6,
  'copper alloy': 1.2,
  aluminium: 0.9,
  plastic: 0.9,
};

/** Density taken for a material that the tables do not have, kg/m3: steel's. */
export const densityUnknown = 7850;
