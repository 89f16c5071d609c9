import { UserError } from '../units/user-error.js';
import { feedRows, speedFactors } from './data/cutting.js';
import type { Material, SpeedRange } from './material.js';
import type { MachineKind } from './shop/shop.js';

/** Operations that have a cutting speed. */
export const speedOperations: readonly string[] = [...Object.keys(speedFactors), 'drilling'];
/** Operations that have a feed. */
export const feedOperations: readonly string[] = [...new Set(feedRows.map(([operation]) => operation))];

/** The range of cutting speeds (m/min) of an operation in a material; carbide drills at three times high-speed steel. */
export function cuttingSpeed(material: Material, tool: 'hss' | 'carbide', operation: string): SpeedRange {
  if (operation === 'drilling') {
    const [low, high] = material.drilling;
    return tool === 'hss' ? [low, high] : [3 * low, 3 * high];
  }
  const factor = speedFactors[operation];
  if (factor === undefined) throw new UserError(`operation "${operation}" has no cutting speed: choose ${speedOperations.join(', ')}.`);
  const [low, high] = material.turning[tool];
  return [low * factor, high * factor];
}

/** Feed, mm for each turn (milling: for each tooth), low and high, of an operation at a diameter (mm). */
export function feedRange(operation: string, diameter: number): readonly [low: number, high: number] {
  const row = feedRows.find(([name, upTo]) => name === operation && diameter / 25.4 <= upTo + 1e-9);
  if (row === undefined) throw new UserError(`operation "${operation}" has no feed: choose ${feedOperations.join(', ')}.`);
  return [row[2] * 25.4, row[3] * 25.4];
}

/** Turns a minute at which a diameter (mm) runs at a speed (m/min): 1000 v / (pi d). */
export const turnsPerMinute = (speed: number, diameter: number): number => (1000 * speed) / (Math.PI * diameter);

/** Kinds of machine on which an operation is done, the likeliest first. */
export function machinesFor(operation: string): readonly MachineKind[] {
  if (operation === 'milling') return ['mill'];
  if (operation === 'drilling' || operation === 'reaming' || operation === 'countersinking' || operation === 'counterboring') return ['mill', 'drill', 'lathe'];
  return ['lathe'];
}
