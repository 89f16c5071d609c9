import { cosine, sine } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const boltCircle: Sum = {
  name: 'bolt-circle',
  summary: 'coordinates of holes on a circle, counter-clockwise from +x, from any datum',
  example: { holes: '6', diameter: '40mm', start: '30' },
  source: 'x = D/2 cos, y = D/2 sin; chord between neighbours D sin(180/n)',
  arguments: [
    { name: 'holes', kind: 'count', about: 'number of holes', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the circle', required: true },
    { name: 'start', kind: 'angle', about: 'angle of the first hole from +x', default: '0', sign: 'any' },
    { name: 'x', kind: 'length', about: 'centre of the circle from the datum', default: '0 mm', sign: 'any' },
    { name: 'y', kind: 'length', about: 'centre of the circle from the datum', default: '0 mm', sign: 'any' },
  ],
  compute(values, context) {
    const [count, diameter] = [values.number('holes'), values.number('diameter')];
    const holes = Array.from({ length: count }, (_, index) => {
      const angle = values.number('start') + (360 * index) / count;
      return { x: values.number('x') + (diameter / 2) * cosine(angle), y: values.number('y') + (diameter / 2) * sine(angle) };
    });
    const chord = count > 1 ? diameter * sine(180 / count) : 0;
    return {
      result: { holes, chord },
      steps: [
        ...holes.map(({ x, y }, index) => `hole ${index + 1}: x ${say(x, context)}, y ${say(y, context)}`),
        ...(count > 1 ? [`check: ${say(chord, context)} between neighbours, centre to centre`] : []),
      ],
    };
  },
};
