import { pistonLoad, type Loads } from '../../../engine/part/loads.js';
import type { Values } from '../../../engine/part/parameters.js';
import { tormentil } from '../../engine.js';
import { flutedSection } from '../../sections.js';
import type { connectingRodParameters } from './parameters.js';

/** The rod pushed by the whole of the piston's load; it may give way sideways, where it is thin. */
export const connectingRodLoads: Loads<Values<typeof connectingRodParameters>> = {
  engine: tormentil,
  checks: (p, engine) => {
    const force = pistonLoad(engine);
    const section = flutedSection(p.thickness, p.shankHeight, { width: p.fluteWidth, depth: p.fluteDepth, sides: p.fluted === 'both sides' ? 2 : 1 });
    const steel = 'bright mild steel';
    return [
      { kind: 'column', what: 'rod giving way sideways', by: 'steam', force, material: steel, length: p.centres, section, ends: 'pinned' },
      { kind: 'bearing', what: 'bush of the big end in its bore', by: 'steam', force, material: 'gunmetal', diameter: p.bigBore, length: p.thickness },
      { kind: 'bearing', what: 'bush of the little end in its bore', by: 'steam', force, material: 'gunmetal', diameter: p.smallBore, length: p.thickness },
      { kind: 'own-weight', what: 'rod held by its ends', by: 'own weight', force: 0, material: steel, length: p.centres, section },
    ];
  },
};
