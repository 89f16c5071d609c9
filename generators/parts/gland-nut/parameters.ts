import type { Parameters } from '../../../engine/part/parameters.js';

export const glandNutParameters = {
  flats: { kind: 'stock', form: 'hexagon', label: 'hexagon bar across flats', default: '9/16 in', minimum: '3/16 in', maximum: '1 in', stays: true },
  rod: { kind: 'length', label: 'rod that runs through', default: '5/32 in', minimum: '1/16 in', maximum: '5/8 in', follows: 'ground rod' },
  thread: { kind: 'thread', label: 'thread of the stuffing box', default: '3/8x32', minimum: '0.1 in', maximum: '0.9 in' },
  threading: { kind: 'choice', label: 'how the thread is made', default: 'tap', options: ['tap', 'screw-cut'] },
  length: { kind: 'length', label: 'length over all', default: '7/16 in', minimum: '0.12 in', maximum: '1.5 in' },
  shoulderDepth: { kind: 'length', label: 'thread end to the shoulder', default: '5/16 in', minimum: '0.07 in', maximum: '1.25 in' },
  grooveWidth: { kind: 'length', label: 'width of the groove before the shoulder', default: '1/16 in', minimum: '0.02 in', maximum: '3/16 in' },
  grooveOver: { kind: 'clearance', label: 'groove over the thread, on diameter', default: '0.01 in', minimum: '0.002 in', maximum: '0.04 in' },
  mouthChamfer: { kind: 'length', label: 'chamfer at the mouth of the thread', default: '0.02 in', minimum: '0.005 in', maximum: '1/16 in' },
  cornerCircle: { kind: 'length', label: 'circle that the chamfered corners leave on each end', default: '0.53 in', minimum: '0.15 in', maximum: '1 in', with: 'flats' },
  faceAllowance: { kind: 'allowance', label: 'left on the outer end when parted off', default: '0.02 in', minimum: '0.005 in', maximum: '1/8 in' },
  endAllowance: { kind: 'allowance', label: 'left on the end of the bar', default: '1/32 in', minimum: '0.01 in', maximum: '1/4 in' },
  gripLength: { kind: 'allowance', label: 'bar beyond the parting, to hold it by', default: '5/8 in', minimum: '0.3 in', maximum: '3 in' },
  wall: { kind: 'wall', label: 'least wall', default: '0.04 in', minimum: '0.02 in', maximum: '0.25 in' },
} as const satisfies Parameters;
