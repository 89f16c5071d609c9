import type { Parameters } from '../../../engine/part/parameters.js';

/** Sizes of the expansion link. Heights count from the trunnion line, on which the centre of the slot's radius lies. */
export const expansionLinkParameters = {
  radius: { kind: 'length', label: 'radius of the slot’s middle line, the length of the radius rod', default: '4 in', minimum: '1.5 in', maximum: '12 in' },
  thickness: { kind: 'stock', form: 'rectangular', label: 'thickness of the plate, which stays', default: '3/16 in', minimum: '1/16 in', maximum: '1/2 in', stays: true, section: 'flat' },
  barWidth: { kind: 'stock', form: 'rectangular', label: 'width of the plate', default: '1 in', minimum: '3/8 in', maximum: '4 in', section: 'flat' },
  endAllowance: { kind: 'allowance', label: 'left on each end of the blank', default: '1/16 in', minimum: '0.02 in', maximum: '1/4 in' },
  slotWidth: { kind: 'length', label: 'width of the slot, to the die block', default: '1/4 in', minimum: '0.08 in', maximum: '3/4 in', follows: 'end mill' },
  slotLength: { kind: 'length', label: 'between the middles of the slot’s rounded ends', default: '1 1/4 in', minimum: '0.3 in', maximum: '4 in' },
  blockTravel: { kind: 'length', label: 'travel of the die block each side of the trunnion line', default: '5/16 in', minimum: '0.05 in', maximum: '1.5 in' },
  blockLength: { kind: 'length', label: 'length of the die block', default: '1/2 in', minimum: '0.1 in', maximum: '1.5 in' },
  endClearance: { kind: 'clearance', label: 'from the die block to the end of the slot, at least', default: '1/32 in', minimum: '0.01 in', maximum: '1/4 in' },
  endRadius: { kind: 'length', label: 'radius of the ends, half the width of the link', default: '5/16 in', minimum: '0.12 in', maximum: '1 in' },
  bracketSpan: { kind: 'length', label: 'between the bracket holes', default: '2 1/4 in', minimum: '0.5 in', maximum: '6 in' },
  bracketHole: { kind: 'length', label: 'bracket holes, reamed for fitted screws', default: '5/32 in', minimum: '0.05 in', maximum: '3/8 in', follows: 'reamer' },
  screwHead: { kind: 'length', label: 'countersink of the bracket holes, outer face', default: '5/16 in', minimum: '0.08 in', maximum: '3/4 in' },
  tailDrop: { kind: 'length', label: 'trunnion line to the tail pin', default: '1 9/16 in', minimum: '0.4 in', maximum: '5 in' },
  tailHole: { kind: 'length', label: 'tail pin hole', default: '1/4 in', minimum: '0.06 in', maximum: '3/4 in', follows: 'reamer' },
  wall: { kind: 'wall', label: 'least wall between features', default: '0.06 in', minimum: '0.02 in', maximum: '0.25 in' },
} as const satisfies Parameters;
