import type { Parameters } from '../../../engine/part/parameters.js';

/** Sizes of the connecting rod. Lengths count from the big end, on the line through both bores. */
export const connectingRodParameters = {
  centres: { kind: 'length', label: 'between the centres of the two bores', default: '6 1/2 in', minimum: '2 in', maximum: '14 in' },
  thickness: { kind: 'stock', form: 'rectangular', label: 'thickness of the bar, which stays', default: '5/16 in', minimum: '1/8 in', maximum: '3/4 in', stays: true, section: 'flat' },
  barWidth: { kind: 'stock', form: 'rectangular', label: 'width of the bar', default: '1 1/4 in', minimum: '3/8 in', maximum: '3 in', section: 'flat' },
  endAllowance: { kind: 'allowance', label: 'left on each end of the blank', default: '1/16 in', minimum: '0.02 in', maximum: '1/4 in' },
  bigRadius: { kind: 'length', label: 'radius of the big end', default: '9/16 in', minimum: '0.15 in', maximum: '1.4 in' },
  bigBore: { kind: 'length', label: 'bore of the big end, for its bush', default: '5/8 in', minimum: '0.1 in', maximum: '2 in' },
  smallRadius: { kind: 'length', label: 'radius of the little end', default: '3/8 in', minimum: '0.1 in', maximum: '1.2 in' },
  smallBore: { kind: 'length', label: 'bore of the little end, for its bush', default: '3/8 in', minimum: '0.08 in', maximum: '1.5 in', follows: 'reamer' },
  shankHeight: { kind: 'length', label: 'height of the shank', default: '1/2 in', minimum: '0.15 in', maximum: '2 in' },
  fillet: { kind: 'length', label: 'fillet from shank to boss, the radius of the cutter', default: '1/4 in', minimum: '0.04 in', maximum: '1 in', follows: 'corner of an end mill' },
  fluted: { kind: 'choice', label: 'where the flutes are', default: 'outer side', options: ['outer side', 'both sides'] },
  fluteWidth: { kind: 'length', label: 'width of the flutes, the cutter’s own', default: '1/4 in', minimum: '0.06 in', maximum: '1 in', follows: 'end mill' },
  fluteDepth: { kind: 'length', label: 'depth of the flutes', default: '3/32 in', minimum: '0.01 in', maximum: '0.3 in' },
  fluteFromBig: { kind: 'length', label: 'big end to the middle of the flute’s first round end', default: '1 1/8 in', minimum: '0.3 in', maximum: '4 in' },
  fluteFromSmall: { kind: 'length', label: 'little end to the middle of the flute’s last round end', default: '7/8 in', minimum: '0.2 in', maximum: '4 in' },
  oilHole: { kind: 'drill', label: 'oil holes', default: '1/16 in', minimum: '0.02 in', maximum: '0.2 in' },
  oilCup: { kind: 'length', label: 'countersink of the oil holes', default: '5/32 in', minimum: '0.04 in', maximum: '0.4 in' },
  wall: { kind: 'wall', label: 'least wall between features', default: '0.08 in', minimum: '0.02 in', maximum: '0.25 in' },
} as const satisfies Parameters;
