import { UserError } from '../../units/user-error.js';
import { formatAngle } from '../../units/format.js';
import { tangent } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const vDepth: Sum = {
  name: 'v-depth',
  summary: 'depth of a V cut from its width at the surface, or the width from the depth',
  example: { angle: '60', width: '2mm' },
  source: 'depth = (w - flat) / (2 tan(A/2))',
  arguments: [
    { name: 'angle', kind: 'angle', about: 'included angle of the cutter', required: true },
    { name: 'width', kind: 'length', about: 'width at the surface' },
    { name: 'depth', kind: 'length', about: 'depth, in place of the width' },
    { name: 'flat', kind: 'length', about: 'flat at the tip of the cutter', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    if (values.has('width') === values.has('depth')) throw new UserError('v-depth needs either width or depth, and not both.');
    const rise = 2 * tangent(values.number('angle') / 2);
    const flat = values.number('flat');
    if (values.number('angle') >= 180) throw new UserError(`angle ${formatAngle(values.number('angle'))} is not under 180 degrees.`);
    const depth = values.has('depth') ? values.number('depth') : (values.number('width') - flat) / rise;
    if (depth <= 0) throw new UserError(`the width must be more than the flat of the cutter ${say(flat, context)}.`);
    const width = flat + depth * rise;
    return { result: { depth, width }, steps: [`depth ${say(depth, context)} opens ${say(width, context)} at the surface with ${formatAngle(values.number('angle'))}`] };
  },
};

export const roundDepth: Sum = {
  name: 'round-depth',
  summary: 'depth of a cut by a round-nosed or ball cutter from its width at the surface, or the width from the depth',
  example: { radius: '3mm', width: '4mm' },
  source: 'depth = r - sqrt(r^2 - w^2/4)',
  arguments: [
    { name: 'radius', kind: 'length', about: 'radius of the nose', required: true },
    { name: 'width', kind: 'length', about: 'width at the surface, at most twice the radius' },
    { name: 'depth', kind: 'length', about: 'depth, in place of the width' },
  ],
  compute(values, context) {
    const radius = values.number('radius');
    if (values.has('width') === values.has('depth')) throw new UserError('round-depth needs either width or depth, and not both.');
    if (values.numberOr('width', 0) > 2 * radius) throw new UserError(`a nose of ${say(radius, context)} radius cuts at most ${say(2 * radius, context)} wide.`);
    const depth = values.has('depth') ? values.number('depth') : radius - Math.sqrt(radius ** 2 - values.number('width') ** 2 / 4);
    const width = depth >= radius ? 2 * radius : 2 * Math.sqrt(radius ** 2 - (radius - depth) ** 2);
    return { result: { depth, width }, steps: [`depth ${say(depth, context)} opens ${say(width, context)} at the surface with a nose of ${say(radius, context)} radius`] };
  },
};
