import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import type { Material } from './material.js';
import { materialRows } from './data/materials.js';

export type { Material, SpeedRange } from './material.js';

export const materials: readonly Material[] = materialRows;

const keyOf = (name: string): string => name.toLowerCase().replace(/[\s._/-]+/g, '');

const named = new Map(
  [...materials].reverse().flatMap((material) => [material.name, ...material.aliases].map((name) => [keyOf(name), material] as const)),
);

/**
 * The material of that name or trade name: "silver steel", "EN1A", "CZ121", "cast iron". Case, spaces and dashes aside.
 * @throws UserError for a name that is not in the table.
 */
export function findMaterial(name: string): Material {
  const material = named.get(keyOf(name));
  if (material !== undefined) return material;
  const names = materials.flatMap((row) => [row.name, ...row.aliases]);
  throw new UserError(`material "${name.trim()}" is not in the table: allowed are ${materials.map((row) => row.name).join(', ')}${nearestClause(name, names)}.`);
}
