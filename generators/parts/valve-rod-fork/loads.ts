import { pistonLoad, type Loads } from '../../../engine/part/loads.js';
import type { Values } from '../../../engine/part/parameters.js';
import { tormentil, valveShare } from '../../engine.js';
import type { forkParameters } from './parameters.js';

/** The fork pulls and pushes the valve. */
export const forkLoads: Loads<Values<typeof forkParameters>> = {
  engine: tormentil,
  checks: (p, engine) => {
    const force = valveShare * pistonLoad(engine);
    const pin = { by: 'steam', force, material: 'silver steel', diameter: p.pinDiameter } as const;
    return [
      { ...pin, kind: 'shear', what: 'cross pin across', planes: 2 },
      { ...pin, kind: 'pin-bending', what: 'cross pin bent between the prongs', middle: p.tongue, side: (p.bar - p.tongue) / 2 },
      { kind: 'bearing', what: 'cross pin in the tongue', by: 'steam', force, material: 'gunmetal', diameter: p.pinDiameter, length: p.tongue },
      { kind: 'screw', what: 'valve rod in its thread', by: 'steam', force, material: 'stainless steel 303', thread: p.rodThread },
    ];
  },
};
