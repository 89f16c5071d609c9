import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { arcsine, arctangent, cosine, sine } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

export const sinePacking: Sum = {
  name: 'sine',
  summary: 'packing under one roller of a sine bar for an angle, or the angle of a packing',
  example: { angle: '15', centres: '100mm' },
  source: 'h = L sin A',
  arguments: [
    { name: 'angle', kind: 'angle', about: 'angle to the table, under 90' },
    { name: 'centres', kind: 'length', about: 'centre distance of the rollers', required: true },
    { name: 'height', kind: 'length', about: 'packing, where the angle is wanted' },
  ],
  compute(values, context) {
    const centres = values.number('centres');
    if (values.has('angle') === values.has('height')) throw new UserError('sine needs either angle or height, and not both.');
    if (values.numberOr('height', 0) >= centres) throw new UserError(`packing must be under the centre distance ${say(centres, context)}.`);
    const angle = values.has('angle') ? values.number('angle') : arcsine(values.number('height') / centres);
    if (angle >= 90) throw new UserError(`angle ${angle} is not under 90 degrees.`);
    const height = centres * sine(angle);
    const secondsPerHundredth = (arctangent(0.01 / (centres * cosine(angle)))) * 3600;
    return {
      result: { height, angle },
      steps: [
        `h = ${say(centres, context)} x sin ${formatAngle(angle)} = ${say(height, context)}`,
        `0.01 mm of error in the packing turns it by ${figures(secondsPerHundredth, 2)} seconds of arc`,
      ],
    };
  },
};

export const rollerAngle: Sum = {
  name: 'roller-angle',
  summary: 'the angle between two straight edges that lie on a large and a small roller',
  example: { large: '12mm', small: '6mm' },
  source: 'sin(A/2) = (D - d) / (D + d + 2 gap)',
  arguments: [
    { name: 'large', kind: 'length', about: 'diameter of the large roller', required: true },
    { name: 'small', kind: 'length', about: 'diameter of the small roller', required: true },
    { name: 'gap', kind: 'length', about: 'gap between the rollers', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const [large, small, gap] = [values.number('large'), values.number('small'), values.number('gap')];
    if (small >= large) throw new UserError(`the small roller ${say(small, context)} must be under the large one ${say(large, context)}.`);
    const centres = (large + small) / 2 + gap;
    const angle = 2 * arcsine((large - small) / (2 * centres));
    return {
      result: { angle, centres },
      steps: [`centres ${say(centres, context)}; sin(A/2) = ${say(large - small, context)} / ${say(2 * centres, context)}: A = ${formatAngle(angle)}`],
    };
  },
};
