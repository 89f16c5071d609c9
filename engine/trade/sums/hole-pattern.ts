import { cosine, sine } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const holePattern: Sum = {
  name: 'hole-pattern',
  summary: 'coordinates of any holes from another datum, with the pattern turned or handed',
  example: { points: '0mm,0mm; 12mm,5mm; 24mm,0mm', 'datum-x': '12mm', 'datum-y': '-3mm' },
  source: 'shift to the datum, turn back by the angle of its x axis, then mirror x for the other hand',
  arguments: [
    { name: 'points', kind: 'points', about: 'x,y of each hole, with semicolons between', required: true },
    { name: 'datum-x', kind: 'length', about: 'the new datum in the old coordinates', default: '0 mm', sign: 'any' },
    { name: 'datum-y', kind: 'length', about: 'the new datum in the old coordinates', default: '0 mm', sign: 'any' },
    { name: 'angle', kind: 'angle', about: 'direction of the new x axis in the old coordinates', default: '0', sign: 'any' },
    { name: 'hand', kind: 'choice', choices: ['same', 'other'], about: 'other mirrors the pattern about the new y axis', default: 'same' },
  ],
  compute(values, context) {
    const [c, s] = [cosine(values.number('angle')), sine(values.number('angle'))];
    const hand = values.text('hand') === 'other' ? -1 : 1;
    const holes = values.points('points').map(([oldX, oldY]) => {
      const [x, y] = [oldX - values.number('datum-x'), oldY - values.number('datum-y')];
      return { x: hand * (x * c + y * s) + 0, y: y * c - x * s };
    });
    const [first, ...rest] = holes;
    const spans = first === undefined ? [] : rest.map(({ x, y }) => Math.hypot(x - first.x, y - first.y));
    return {
      result: { holes, fromFirst: spans },
      steps: holes.map(({ x, y }, index) => `hole ${index + 1}: x ${say(x, context)}, y ${say(y, context)}${index === 0 ? '' : `; check ${say(spans[index - 1] ?? 0, context)} from hole 1`}`),
    };
  },
};
