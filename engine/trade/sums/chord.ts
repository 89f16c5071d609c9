import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { arcsine, sine } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const chord: Sum = {
  name: 'chord',
  summary: 'centre distance of neighbouring holes on a circle, and the measure over and between two plugs',
  example: { diameter: '40mm', holes: '6', plug: '4mm' },
  source: 'chord = D sin(180/n)',
  arguments: [
    { name: 'diameter', kind: 'length', about: 'diameter of the circle', required: true },
    { name: 'holes', kind: 'count', about: 'number of holes', required: true },
    { name: 'plug', kind: 'length', about: 'diameter of the plugs in the holes', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const count = values.number('holes');
    if (count < 2) throw new UserError('chord needs two holes or more.');
    const plug = values.number('plug');
    const distance = values.number('diameter') * sine(180 / count);
    if (plug >= distance) throw new UserError(`plugs of ${say(plug, context)} run into each other: the holes are ${say(distance, context)} apart.`);
    return {
      result: { chord: distance, over: distance + plug, between: distance - plug, angle: 360 / count },
      steps: [
        `chord = ${say(values.number('diameter'), context)} x sin ${formatAngle(180 / count)} = ${say(distance, context)}`,
        ...(plug > 0 ? [`over two plugs of ${say(plug, context)}: ${say(distance + plug, context)}; between them ${say(distance - plug, context)}`] : []),
      ],
    };
  },
};

export const flatOnRound: Sum = {
  name: 'flat',
  summary: 'depth of a flat on a round bar from its width, or its width from the depth',
  example: { diameter: '1/2in', width: '1/4in' },
  source: 'depth = R - sqrt(R^2 - w^2/4)',
  arguments: [
    { name: 'diameter', kind: 'length', about: 'diameter of the bar', required: true },
    { name: 'width', kind: 'length', about: 'width of the flat' },
    { name: 'depth', kind: 'length', about: 'depth cut from the top of the bar, in place of the width' },
  ],
  compute(values, context) {
    const radius = values.number('diameter') / 2;
    if (values.has('width') === values.has('depth')) throw new UserError('flat needs either width or depth, and not both.');
    if (values.numberOr('width', 0) > 2 * radius || values.numberOr('depth', 0) >= 2 * radius) throw new UserError(`the flat does not fit on a bar of ${say(2 * radius, context)}.`);
    const depth = values.has('depth') ? values.number('depth') : radius - Math.sqrt(radius ** 2 - values.number('width') ** 2 / 4);
    const width = 2 * Math.sqrt(Math.max(0, radius ** 2 - (radius - depth) ** 2));
    return {
      result: { depth, width, left: 2 * radius - depth, angle: 2 * arcsine(Math.min(1, width / (2 * radius))) },
      steps: [`depth ${say(depth, context)} gives a flat ${say(width, context)} wide; measure ${say(2 * radius - depth, context)} over flat and back`],
    };
  },
};
