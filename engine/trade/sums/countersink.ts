import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { tangent } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const countersink: Sum = {
  name: 'countersink',
  summary: 'depth of a countersink from the diameter wanted and the hole drilled',
  example: { angle: '90', diameter: '0.119in', hole: '0.0625in' },
  source: '(D - d) / (2 tan(A/2))',
  arguments: [
    { name: 'angle', kind: 'angle', about: 'included angle of the cone', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter wanted at the surface', required: true },
    { name: 'hole', kind: 'length', about: 'diameter of the hole; none if not given', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const [angle, diameter, hole] = [values.number('angle'), values.number('diameter'), values.number('hole')];
    if (angle >= 180) throw new UserError(`angle ${formatAngle(angle)} is not under 180 degrees.`);
    if (hole >= diameter) throw new UserError(`the hole ${say(hole, context)} is not smaller than the countersink ${say(diameter, context)}.`);
    const rise = 2 * tangent(angle / 2);
    const depth = (diameter - hole) / rise;
    const fromPoint = diameter / rise;
    return {
      result: { depth, fromPoint },
      steps: [
        `depth = (${say(diameter, context)} - ${say(hole, context)}) / (2 tan ${formatAngle(angle / 2)}) = ${say(depth, context)}: feed this from where the cone touches the rim of the hole`,
        `from where the cone's point would touch the surface: ${say(fromPoint, context)}`,
      ],
    };
  },
};
