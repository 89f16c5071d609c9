import { UserError } from '../../units/user-error.js';
import { nearestClause } from '../../units/nearest-name.js';
import type { Machine, MachineKind, Shop } from './shop.js';

/** The fastest spindle speed that is not above `wanted` (turns a minute); the slowest where all are above. */
export function snapSpeed(speeds: Machine['speeds'], wanted: number): number {
  if ('from' in speeds) return Math.min(speeds.to, Math.max(speeds.from, Math.floor(wanted / 10) * 10));
  const rising = [...speeds].sort((a, b) => a - b);
  return rising.filter((speed) => speed <= wanted + 1e-9).at(-1) ?? rising[0] ?? wanted;
}

/**
 * The machine of that name, or the first of a kind.
 * @throws UserError where the shop has none.
 */
export function findMachine(shop: Shop, name: string | undefined, kinds: readonly MachineKind[]): Machine {
  const names = shop.machines.map((machine) => machine.name);
  const machine = name === undefined
    ? kinds.map((kind) => shop.machines.find((candidate) => candidate.kind === kind)).find((candidate) => candidate !== undefined)
    : shop.machines.find((candidate) => candidate.name.toLowerCase() === name.trim().toLowerCase());
  if (machine === undefined) {
    throw new UserError(name === undefined ? `the shop has no ${kinds.join(' or ')}.` : `the shop has no machine "${name}": it has ${names.join(', ')}${nearestClause(name, names)}.`);
  }
  return machine;
}
