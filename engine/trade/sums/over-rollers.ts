import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { arctangent, cosine, sine, tangent } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const taperRollers: Sum = {
  name: 'taper-rollers',
  summary: 'measures over two rollers on a male taper, small end down, at the table and on equal blocks, and the taper from such measures',
  example: { roller: '6mm', blocks: '25mm', small: '12mm', angle: '7' },
  source: 'M1 = d + D (1 + sec A + tan A), M2 = M1 + 2 H tan A, A the half angle (geometry, as in handbooks)',
  arguments: [
    { name: 'roller', kind: 'length', about: 'diameter of the rollers', required: true },
    { name: 'blocks', kind: 'length', about: 'height of the blocks', required: true },
    { name: 'small', kind: 'length', about: 'small diameter, with angle' },
    { name: 'angle', kind: 'angle', about: 'included angle, with small' },
    { name: 'low', kind: 'length', about: 'measure over the rollers on the table, with high' },
    { name: 'high', kind: 'length', about: 'measure over the rollers on the blocks, with low' },
  ],
  compute(values, context) {
    const measured = values.has('low') && values.has('high');
    if (measured === (values.has('small') && values.has('angle')) || ['small', 'angle', 'low', 'high'].filter((name) => values.has(name)).length !== 2) throw new UserError('taper-rollers needs either small and angle, or low and high.');
    if (measured && values.number('high') <= values.number('low')) throw new UserError('the measure on the blocks must be more than that on the table: the taper stands on its small end.');
    if (!measured && values.number('angle') >= 180) throw new UserError(`angle ${formatAngle(values.number('angle'))} is not under 180 degrees.`);
    const [roller, blocks] = [values.number('roller'), values.number('blocks')];
    const half = measured ? arctangent((values.number('high') - values.number('low')) / (2 * blocks)) : values.number('angle') / 2;
    const grow = roller * (1 + 1 / cosine(half) + tangent(half));
    const low = measured ? values.number('low') : values.number('small') + grow;
    if (low - grow <= 0) throw new UserError(`the measure ${say(low, context)} leaves nothing between two rollers of ${say(roller, context)}.`);
    const high = low + 2 * blocks * tangent(half);
    return {
      result: { low, high, small: low - grow, half, included: 2 * half },
      steps: [
        `half angle ${formatAngle(half)}: D (1 + sec A + tan A) = ${say(grow, context)}`,
        `on the table ${say(low, context)}, on ${say(blocks, context)} blocks ${say(high, context)}; small diameter ${say(low - grow, context)}`,
      ],
    };
  },
};

export const dovetail: Sum = {
  name: 'dovetail',
  summary: 'measure over rollers in a male dovetail, or between them in a female one',
  example: { width: '30mm', angle: '60', roller: '6mm' },
  source: 'W + D (1 + cot(A/2)) over, W - D (1 + cot(A/2)) between; W across the sharp corners in which the rollers lie (handbook)',
  arguments: [
    { name: 'kind', kind: 'choice', choices: ['male', 'female'], about: 'male is measured over, female between the rollers', default: 'male' },
    { name: 'width', kind: 'length', about: 'width across the sharp corners: the narrow side of a male, the wide side of a female', required: true },
    { name: 'angle', kind: 'angle', about: 'angle of the flank to the base', required: true },
    { name: 'roller', kind: 'length', about: 'diameter of the rollers', required: true },
  ],
  compute(values, context) {
    if (values.number('angle') >= 90) throw new UserError('the angle of a dovetail is under 90 degrees.');
    const grow = values.number('roller') * (1 + 1 / tangent(values.number('angle') / 2));
    const male = values.text('kind') === 'male';
    const measure = values.number('width') + (male ? grow : -grow);
    if (measure <= 0) throw new UserError(`two rollers of ${say(values.number('roller'), context)} do not fit in the dovetail.`);
    return { result: { measure }, steps: [`${say(values.number('width'), context)} ${male ? '+' : '-'} ${say(grow, context)} = ${say(measure, context)} ${male ? 'over' : 'between'} the rollers`] };
  },
};

export const vRoller: Sum = {
  name: 'v-roller',
  summary: 'height of a roller that lies in a V groove above the face',
  example: { width: '10mm', angle: '90', roller: '8mm' },
  source: 'h = (d/2) / sin(A/2) + d/2 - (w/2) / tan(A/2) (geometry)',
  arguments: [
    { name: 'width', kind: 'length', about: 'width of the groove at the face', required: true },
    { name: 'angle', kind: 'angle', about: 'included angle of the groove', required: true },
    { name: 'roller', kind: 'length', about: 'diameter of the roller', required: true },
  ],
  compute(values, context) {
    const [width, half, radius] = [values.number('width'), values.number('angle') / 2, values.number('roller') / 2];
    if (half >= 90) throw new UserError('the angle of a groove is under 180 degrees.');
    if (2 * radius * cosine(half) > width) throw new UserError(`a roller of ${say(2 * radius, context)} rests on the edges of a groove ${say(width, context)} wide: take a smaller one.`);
    const height = radius / sine(half) + radius - width / 2 / tangent(half);
    return {
      result: { height, floorToTop: radius / sine(half) + radius },
      steps: [`from the sharp bottom ${say(radius / sine(half) + radius, context)}, less the depth ${say(width / 2 / tangent(half), context)}: ${say(height, context)} above the face`],
    };
  },
};
