import type { Material as PartMaterial } from '../part/part.js';
import { findMaterial, type Material } from '../trade/materials.js';
import { UserError } from '../units/user-error.js';

function known(name: string): Material | undefined {
  try {
    return findMaterial(name);
  } catch (error) {
    if (error instanceof UserError) return undefined;
    throw error;
  }
}

/**
 * The material of the trade's tables that a part names: by its `trade` name, by its whole name, by a designation in it
 * ("11SMn30"), or by its words before a comma. Undefined where the tables do not have it: then no speed can be given.
 */
export function materialOf({ name, trade }: PartMaterial): Material | undefined {
  const designations = name.split(/[\s,;()]+/).filter((word) => /\d/.test(word) && /[a-z]/i.test(word));
  const beforeComma = name.split(',')[0] ?? name;
  for (const candidate of [...(trade === undefined ? [] : [trade]), name, ...designations, beforeComma]) {
    const material = known(candidate);
    if (material !== undefined) return material;
  }
  return undefined;
}
