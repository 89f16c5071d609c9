import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { arctangent, tangent } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

export const taper: Sum = {
  name: 'taper',
  summary: 'a taper from two of its diameters and length, or from its included angle: angle, rate, top slide and tailstock set-over',
  example: { large: '0.475in', small: '0.369in', length: '2-1/8in' },
  source: 'tan(half angle) = (D - d) / (2 L)',
  arguments: [
    { name: 'large', kind: 'length', about: 'large diameter', required: true },
    { name: 'small', kind: 'length', about: 'small diameter', sign: 'not-negative' },
    { name: 'length', kind: 'length', about: 'length between the two diameters', required: true },
    { name: 'angle', kind: 'angle', about: 'included angle, in place of the small diameter' },
    { name: 'work', kind: 'length', about: 'length of the work between centres, for the set-over; the taper alone if not given' },
  ],
  compute(values, context) {
    const large = values.number('large');
    const length = values.number('length');
    if (values.has('small') === values.has('angle')) throw new UserError('taper needs either small (the small diameter) or angle (the included angle), and not both.');
    const small = values.has('small') ? values.number('small') : large - 2 * length * tangent(values.number('angle') / 2);
    if (small < 0) throw new UserError(`the taper comes to a point before its end: ${say(length, context)} is longer than the cone.`);
    if (small >= large) throw new UserError(`the small diameter ${say(small, context)} must be under the large one ${say(large, context)}.`);
    const half = arctangent((large - small) / (2 * length));
    const setOver = (values.numberOr('work', length) * (large - small)) / (2 * length);
    return {
      result: { small, large, included: 2 * half, half, ratio: (large - small) / length, oneIn: length / (large - small), inchesPerFoot: (12 * (large - small)) / length, setOver },
      steps: [
        `(D - d) / L = (${say(large, context)} - ${say(small, context)}) / ${say(length, context)} = 1 in ${figures(length / (large - small))} = ${figures((12 * (large - small)) / length)} in a foot`,
        `half angle = arctan of half of that = ${formatAngle(half)}: top slide; included ${formatAngle(2 * half)}`,
        `tailstock set over ${say(setOver, context)}`,
      ],
    };
  },
};
