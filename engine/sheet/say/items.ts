import type { RadiusSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { parallel } from '../views/axes-of-part.js';
import type { LinearDimension } from '../dimension/linear.js';
import { arcSidesItem, arcSlotItems } from './arc-items.js';
import { holeItems } from './hole-item.js';
import type { PrintItem } from './item.js';
import { linearItem } from './linear-item.js';
import { angleItem, radiusItem } from './shape-items.js';
import type { Speech } from './texts.js';
import { textureItems } from './texture-items.js';
import { internalThreadItem } from './internal-thread-item.js';
import { centreHoleItem, chamferItem, diameterItem, externalThreadItem } from './turned-items.js';
import { finishOfWalls } from './finish-words.js';

/** The part without cuts that repeat others: their sizes are said there. */
const saidOnce = (part: Part): Part =>
  part.operations.every(({ cuts }) => cuts.every(({ repeats }) => repeats === undefined)) ? part : { ...part, operations: part.operations.map((operation) => ({ ...operation, cuts: operation.cuts.filter(({ repeats }) => repeats === undefined) })) };

/** All that a print of the part must say, each thing once: the chosen distances, then every size that the cuts carry. */
export function itemsOf(whole: Part, distances: readonly LinearDimension[], speech: Speech): readonly PrintItem[] {
  const part = saidOnce(whole);
  const items: PrintItem[] = distances.map((dimension) => linearItem(dimension, speech, finishOfWalls(part, dimension), acrossFlats(part, dimension) ? ' A/F' : ''));
  const radii: RadiusSize[] = [];
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes)
        switch (size.kind) {
          case 'diameter':
            items.push(diameterItem(size, speech));
            break;
          case 'radius':
            // Equal radii about parallel axes share one size, below.
            if (size.ring !== undefined) items.push(radiusItem(size, speech));
            else radii.push(size);
            break;
          case 'arc-slot':
            items.push(...arcSlotItems(size, cut.faces['outer wall']?.texture, speech));
            break;
          case 'arc-sides':
            items.push(arcSidesItem(size));
            break;
          case 'angle':
            items.push(angleItem(size));
            break;
          case 'chamfer':
            items.push(chamferItem(size, speech));
            break;
          case 'external-thread':
            items.push(externalThreadItem(size));
            break;
          case 'internal-thread':
            items.push(internalThreadItem(size));
            break;
          case 'centre-hole':
            items.push(centreHoleItem(size, speech));
            break;
          // Holes and their mouths share callouts, made below.
          case 'hole':
          case 'tapping':
          case 'countersink':
          case 'counterbore':
            break;
        }
  for (const size of sharedRadii(radii)) items.push(radiusItem(size, speech));
  return merged([...items, ...holeItems(part, speech), ...textureItems(part)]);
}

/** Whether a distance is that over two flats of a hexagon bar. */
const acrossFlats = ({ stock }: Part, { from, to }: LinearDimension): boolean =>
  stock.shape === 'hexagon' && [from, to].every(({ id }) => Object.entries(stock.faces).some(([face, { stations }]) => face.endsWith('flat') && stations.includes(id)));

/** Milled radii that are equal and lie about parallel axes, joined: "4x R3" is said once. */
function sharedRadii(radii: readonly RadiusSize[]): readonly RadiusSize[] {
  const shared: RadiusSize[] = [];
  for (const size of radii) {
    const i = shared.findIndex(
      (other) =>
        Math.abs(other.radius.value - size.radius.value) < 1e-6 &&
        other.full === size.full &&
        other.radius.tolerance === undefined &&
        size.radius.tolerance === undefined &&
        other.axis !== undefined &&
        size.axis !== undefined &&
        parallel(other.axis, size.axis),
    );
    const known = shared[i];
    if (known === undefined) shared.push(size);
    else shared[i] = { ...known, centres: [...known.centres, ...size.centres], toward: [...known.toward, ...size.toward] };
  }
  return shared;
}

/** Sizes of one cut that read alike (the same bevel angle on both sides stays two, the same step twice is one). */
function merged(items: readonly PrintItem[]): readonly PrintItem[] {
  const seen = new Set<string>();
  return items.filter((item) => !seen.has(item.id) && seen.add(item.id) !== undefined);
}
