import { cuttingSpeed, machinesFor, turnsPerMinute } from '../cutting.js';
import type { Material, SpeedRange } from '../material.js';
import type { Machine, Shop } from './shop.js';
import { findMachine, snapSpeed } from './spindle.js';

export interface SpindleCut {
  readonly material: Material;
  /** Of the work on a lathe, of the cutter or drill elsewhere, mm. */
  readonly diameter: number;
  readonly tool: 'hss' | 'carbide';
  /** One of `speedOperations`. */
  readonly operation: string;
  /** Cutting speed in place of the middle of the table's range, m/min. */
  readonly surface?: number;
  /** Machine of the shop by name; the first fit for the operation if not given. */
  readonly machine?: string;
}

export interface SpindleSpeed {
  /** Turns a minute as worked out, and as the machine has them. */
  readonly rpm: number;
  readonly snapped: number;
  readonly machine: Machine;
  /** m/min */
  readonly surface: number;
  readonly range: SpeedRange;
  /** The slowest speed of the machine is above the range. */
  readonly tooFast: boolean;
  /** The work does not swing in the lathe. */
  readonly tooLarge: boolean;
}

/**
 * Spindle speed n = 1000 v / (pi d), snapped down to a speed that the machine has.
 * @throws UserError for an operation without a cutting speed, or a machine that the shop lacks.
 */
export function spindleSpeed(shop: Shop, { material, diameter, tool, operation, surface: wanted, machine: name }: SpindleCut): SpindleSpeed {
  const range = cuttingSpeed(material, tool, operation);
  const surface = wanted ?? (range[0] + range[1]) / 2;
  const rpm = turnsPerMinute(surface, diameter);
  const kinds = machinesFor(operation);
  const machine = findMachine(shop, name, kinds);
  const snapped = snapSpeed(machine.speeds, rpm);
  return {
    rpm,
    snapped,
    machine,
    surface,
    range,
    tooFast: snapped > turnsPerMinute(Math.max(range[1], surface), diameter),
    tooLarge: machine.kind === 'lathe' && kinds[0] === 'lathe' && diameter > (machine.swing ?? Infinity),
  };
}
