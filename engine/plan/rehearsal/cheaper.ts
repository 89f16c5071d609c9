import type { Material as PartMaterial } from '../../part/part.js';
import type { Material } from '../../trade/material.js';
import { findMaterial } from '../../trade/materials.js';
import { materialOf } from '../material.js';

/** What test pieces are made of unless something else is asked for: cheap, as bought, and it cuts well (common practice). */
export const usualMaterial = 'free-cutting mild steel';

/** What a piece in another material shows nothing about. */
export interface MaterialGap {
  readonly piece: Material;
  readonly part: Material;
  /** Specific cutting energy of the piece's material over that of the part's. */
  readonly energy: number;
}

/**
 * The material of a test piece: what is asked for, else the part's own where it is the usual one or no known metal, else the
 * usual one.
 * @throws UserError for a name that the tables do not have.
 */
export function pieceMaterial(part: PartMaterial, asked: string | undefined): PartMaterial {
  const own = materialOf(part);
  const material = findMaterial(asked ?? usualMaterial);
  if (own !== undefined && own.name === material.name) return withoutTreatment(part);
  return { name: material.name };
}

const withoutTreatment = ({ name, trade }: PartMaterial): PartMaterial => ({ name, ...(trade === undefined ? {} : { trade }) });

/** How the materials differ; undefined where they are the same or one is not in the tables. */
export function materialGap(part: PartMaterial, piece: PartMaterial): MaterialGap | undefined {
  const [own, other] = [materialOf(part), materialOf(piece)];
  if (own === undefined || other === undefined || own.name === other.name) return undefined;
  return { part: own, piece: other, energy: other.cuttingEnergy / own.cuttingEnergy };
}
