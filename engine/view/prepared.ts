import type { Solid } from '../solid/model.js';
import { chainsOf, type Chain } from './chains.js';
import { curvedSheetsOf, type CurvedSheet } from './curved-sheets.js';
import { edgesOf, surfacesAtEnds, type Edge } from './edges.js';
import { facetTreeOf, type FacetTree } from './facet-tree.js';
import { topologyOf, type Topology } from './topology.js';

/** What every view of a solid needs and no camera changes. */
export interface Prepared {
  readonly solid: Solid;
  readonly topology: Topology;
  readonly chains: readonly Chain[];
  readonly edges: readonly Edge[];
  readonly curvedSheets: readonly CurvedSheet[];
  readonly tree: FacetTree;
  /** Room for the marks that a view makes and the next one overwrites: a state per corner, a value per vertex, a flag per facet. */
  readonly marks: { readonly states: Uint8Array; readonly values: Float64Array; readonly seen: Uint8Array };
}

const known = new WeakMap<Solid, Prepared>();

/** Made once for each solid and kept as long as the solid. Throws RangeError when the mesh is not closed. */
export function prepare(solid: Solid): Prepared {
  const found = known.get(solid);
  if (found) return found;
  const topology = topologyOf(solid);
  const chains = chainsOf(solid, topology);
  const ends = surfacesAtEnds(chains);
  const prepared: Prepared = {
    solid,
    topology,
    chains,
    edges: chains.flatMap((chain) => edgesOf(solid, chain, ends)),
    curvedSheets: curvedSheetsOf(solid, topology),
    tree: facetTreeOf(solid),
    marks: {
      states: new Uint8Array(solid.triangles.length),
      values: new Float64Array(solid.positions.length / 3),
      seen: new Uint8Array(solid.faceOfTriangle.length),
    },
  };
  known.set(solid, prepared);
  return prepared;
}
