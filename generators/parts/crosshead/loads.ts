import { pistonLoad, slideLoad, type Loads } from '../../../engine/part/loads.js';
import type { Values } from '../../../engine/part/parameters.js';
import { tormentil } from '../../engine.js';
import type { crossheadAndPin } from '../../mates/crosshead-and-pin.js';
import type { crossheadParameters } from './parameters.js';

/** A pin that only swings carries more than a journal that turns: the lower figure of the table. */
const wristPin = { pressure: 13.79, source: 'Shigley, wrist pins 2000 to 2300 psi (memory)' } as const;

/** The piston's load passes from the rod's thread to the pin; the slope of the connecting rod presses the pads on the bars. */
export const crossheadLoads: Loads<Values<typeof crossheadParameters & typeof crossheadAndPin>> = {
  engine: tormentil,
  checks: (p, engine) => {
    const force = pistonLoad(engine);
    const body = 'free-cutting mild steel';
    const pin = { by: 'steam', force, material: 'silver steel', diameter: p.pinDiameter } as const;
    return [
      { ...pin, kind: 'shear', what: 'crosshead pin across', planes: 2 },
      { ...pin, kind: 'pin-bending', what: 'crosshead pin bent between the cheeks', middle: p.pocketWidth, side: (p.bodyWidth - p.pocketWidth) / 2 },
      { kind: 'bearing', what: 'crosshead pin in the bush of the rod', by: 'steam', force, material: 'gunmetal', diameter: p.pinDiameter, length: p.pocketWidth, limit: wristPin },
      { kind: 'slide', what: 'pads on the slide bars', by: 'steam', force: slideLoad(engine), material: 'phosphor bronze', width: p.grooveWidth, length: p.length - p.bossLength },
      { kind: 'screw', what: 'thread of the piston rod in tension', by: 'steam', force, material: 'stainless steel 303', thread: p.rodThread },
      { kind: 'stripping', what: 'thread of the piston rod in the boss', by: 'steam', force, material: body, screw: 'stainless steel 303', thread: p.rodThread, engagement: p.rodThreadDepth - p.registerDepth },
    ];
  },
};
