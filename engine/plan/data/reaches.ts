import type { WorkKind } from '../work.js';
import { holderAcross, jobberDrills, lengthIn, shankSeen, shortEndMills } from './cutter-lengths.js';

/** How far a cutter sticks out of what holds it, and how thick that is, mm. */
export interface Reach {
  readonly stickOut: number;
  readonly holder: number;
}

/** A small tap in its wrench or guide: so many diameters and mm more (common practice, near the ISO 529 lengths less the square). */
const tap = { diameters: 4, more: 20, holder: 25 } as const;

/** The reach of the cutter of a kind of work, by its diameter. */
export function reachOf(kind: WorkKind, diameter: number): Reach {
  if (kind === 'milling' || kind === 'counterboring') return { stickOut: lengthIn(shortEndMills, diameter) + shankSeen.mill, holder: holderAcross.mill };
  if (kind === 'tapping' || kind === 'threading') return { stickOut: tap.diameters * diameter + tap.more, holder: tap.holder };
  return { stickOut: lengthIn(jobberDrills, diameter) + shankSeen.drill, holder: holderAcross.drill };
}
