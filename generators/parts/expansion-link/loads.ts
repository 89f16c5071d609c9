import { pistonLoad, type Loads } from '../../../engine/part/loads.js';
import type { Values } from '../../../engine/part/parameters.js';
import { tormentil, valveShare } from '../../engine.js';
import type { expansionLinkParameters } from './parameters.js';

/** What works the valve presses the die block on the slot, and the tail pin in its hole. */
export const expansionLinkLoads: Loads<Values<typeof expansionLinkParameters>> = {
  engine: tormentil,
  checks: (p, engine) => {
    const common = { by: 'steam', force: valveShare * pistonLoad(engine), material: 'gauge plate' } as const;
    return [
      { ...common, kind: 'slide', what: 'die block on a side of the slot', width: p.thickness, length: p.blockLength },
      { ...common, kind: 'bearing', what: 'tail pin in its hole', diameter: p.tailHole, length: p.thickness },
    ];
  },
};
