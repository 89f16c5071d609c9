import { UserError } from '../../units/user-error.js';
import type { SumArgument } from './sum.js';
import type { SumValues } from './values.js';

/** A solid section: area mm2, second moment mm4 about its weak axis and in the direction of the load, half depth mm. */
export interface Section {
  readonly area: number;
  readonly weakMoment: number;
  readonly loadMoment: number;
  readonly halfDepth: number;
}

export const sectionArguments: readonly SumArgument[] = [
  { name: 'diameter', kind: 'length', about: 'diameter of a round section' },
  { name: 'bore', kind: 'length', about: 'bore of a round section', default: '0 mm', sign: 'not-negative' },
  { name: 'width', kind: 'length', about: 'width of a rectangular section, across the load' },
  { name: 'depth', kind: 'length', about: 'depth of a rectangular section, along the load' },
];

/** @throws UserError unless exactly one of a diameter, or a width and a depth, is given. */
export function readSection(values: SumValues): Section {
  const rectangle = values.has('width') || values.has('depth');
  if (rectangle === values.has('diameter') || (rectangle && !(values.has('width') && values.has('depth')))) {
    throw new UserError('give either the diameter of a round section, or the width and the depth of a rectangular one.');
  }
  if (rectangle) {
    if (values.number('bore') > 0) throw new UserError('a rectangular section has no bore: leave it out, or give the diameter of a round section.');
    const [width, depth] = [values.number('width'), values.number('depth')];
    const loadMoment = (width * depth ** 3) / 12;
    return { area: width * depth, weakMoment: Math.min(loadMoment, (depth * width ** 3) / 12), loadMoment, halfDepth: depth / 2 };
  }
  const [diameter, bore] = [values.number('diameter'), values.number('bore')];
  if (bore >= diameter) throw new UserError('the bore must be under the diameter.');
  const moment = (Math.PI / 64) * (diameter ** 4 - bore ** 4);
  return { area: (Math.PI / 4) * (diameter ** 2 - bore ** 2), weakMoment: moment, loadMoment: moment, halfDepth: diameter / 2 };
}

export interface Strength {
  readonly yieldStrength: number;
  readonly modulus: number;
  readonly name: string;
}
