import type { Parameters } from '../../../engine/part/parameters.js';

export const forkParameters = {
  bar: { kind: 'stock', form: 'rectangular', label: 'square bar, whose faces stay', default: '3/8 in', minimum: '5/32 in', maximum: '1 1/2 in' },
  tongue: { kind: 'length', label: 'thickness of the tongue, nominal width of the slot', default: '1/8 in', minimum: '0.04 in', maximum: '3/4 in' },
  pinDiameter: { kind: 'length', label: 'cross pin', default: '5/32 in', minimum: '0.04 in', maximum: '3/4 in' },
  headDiameter: { kind: 'length', label: 'recess for the head of the pin', default: '1/4 in', minimum: '0.06 in', maximum: '1 in' },
  headDepth: { kind: 'length', label: 'depth of that recess', default: '0.045 in', minimum: '0.01 in', maximum: '1/4 in' },
  pinPosition: { kind: 'length', label: 'shank end to the pin axis', default: '1 1/8 in', minimum: '0.3 in', maximum: '4 in' },
  rootBehind: { kind: 'length', label: 'pin axis to the root of the slot', default: '5/16 in', minimum: '0.08 in', maximum: '2 in' },
  finishBehind: { kind: 'length', label: 'pin axis to where the exact width of the slot may end', default: '7/32 in', minimum: '0.05 in', maximum: '1.5 in' },
  roughUnder: { kind: 'allowance', label: 'by how much the slot may stay narrower below that', default: '0.01 in', minimum: '0.002 in', maximum: '0.03 in' },
  shankDiameter: { kind: 'length', label: 'diameter of the shank', default: '9/32 in', minimum: '0.1 in', maximum: '1.25 in' },
  shankLength: { kind: 'length', label: 'length of the shank', default: '3/8 in', minimum: '0.1 in', maximum: '2 in' },
  shankChamfer: { kind: 'clearance', label: 'chamfer at the end of the shank', default: '0.02 in', minimum: '0.005 in', maximum: '1/16 in' },
  rodThread: { kind: 'thread', label: 'thread of the valve rod', default: '5/32x40', minimum: '0.06 in', maximum: '0.75 in' },
  threadDepth: { kind: 'length', label: 'full thread in the shank', default: '0.45 in', minimum: '0.08 in', maximum: '2 in' },
  drillDepth: { kind: 'length', label: 'depth of the drilled hole', default: '0.52 in', minimum: '0.1 in', maximum: '2.5 in' },
  sawDiameter: { kind: 'length', label: 'slitting saw, diameter', default: '2 1/2 in', minimum: '1 in', maximum: '6 in' },
  sawThickness: { kind: 'length', label: 'slitting saw, thickness', default: '3/32 in', minimum: '0.012 in', maximum: '1/4 in' },
  sawCollar: { kind: 'length', label: 'collar of the saw’s arbor, diameter', default: '1 1/8 in', minimum: '0.3 in', maximum: '3 in' },
  endAllowance: { kind: 'allowance', label: 'left on each end of the blank', default: '1/16 in', minimum: '0.02 in', maximum: '1/4 in' },
  wall: { kind: 'wall', label: 'least wall between features', default: '0.03 in', minimum: '0.015 in', maximum: '0.25 in' },
} as const satisfies Parameters;
