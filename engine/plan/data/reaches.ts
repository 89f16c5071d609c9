import type { WorkKind } from '../work.js';

/**
 * How a cutter sticks out of what holds it, and how thick that is: common practice for collet holders and drill chucks of
 * small machines. `stickOut` is so many diameters and mm more; `holder` is a diameter, mm.
 */
export interface Reach {
  readonly diameters: number;
  readonly more: number;
  readonly holder: number;
}

/** An end mill's flutes are 2.5 to 3 diameters long, a stub of shank is seen below the collet. */
export const endMillReach: Reach = { diameters: 2.5, more: 8, holder: 40 };

/** A jobber drill shows about 10 diameters below the jaws, and never less than this. */
export const drillReach: Reach = { diameters: 8, more: 14, holder: 36 };

/** A small tap in its wrench or guide. */
export const tapReach: Reach = { diameters: 4, more: 20, holder: 25 };

/** The reach of the cutter of a kind of work. */
export function reachOfWork(kind: WorkKind): Reach {
  if (kind === 'milling' || kind === 'counterboring') return endMillReach;
  return kind === 'tapping' || kind === 'threading' ? tapReach : drillReach;
}
