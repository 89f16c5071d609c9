import { UserError } from '../../units/user-error.js';
import { cosine } from './geometry-of-degrees.js';
import { say, type Sum } from './sum.js';

export const acrossFlats: Sum = {
  name: 'across-flats',
  summary: 'across the corners from across the flats and the other way, and the largest square or hexagon in a round bar',
  example: { flats: '8mm' },
  source: 'corners = flats / cos(180/n), n even',
  arguments: [
    { name: 'sides', kind: 'choice', choices: ['4', '6', '8'], about: 'square, hexagon or octagon', default: '6' },
    { name: 'flats', kind: 'length', about: 'across the flats' },
    { name: 'corners', kind: 'length', about: 'across the corners; the diameter of the bar for the largest that comes out of it' },
    { name: 'round', kind: 'length', about: 'diameter of the bar on hand, to see how rounded the corners come' },
  ],
  compute(values, context) {
    const ratio = cosine(180 / Number(values.text('sides')));
    if (values.has('flats') === values.has('corners')) throw new UserError('across-flats needs either flats or corners, and not both.');
    const flats = values.has('flats') ? values.number('flats') : values.number('corners') * ratio;
    const corners = flats / ratio;
    const round = values.numberOr('round', corners);
    if (round < flats) throw new UserError(`a bar of ${say(round, context)} is too small for ${say(flats, context)} across the flats.`);
    const flatWidth = Math.sqrt(Math.min(round, corners) ** 2 - flats ** 2);
    return {
      result: { flats, corners, flatWidth, cutDepth: (round - flats) / 2, fullCorners: round >= corners - 1e-9 },
      steps: [
        `corners = ${say(flats, context)} / ${ratio.toFixed(5)} = ${say(corners, context)}`,
        `from ${say(round, context)} round: cut ${say((round - flats) / 2, context)} on each side, each flat ${say(flatWidth, context)} wide`,
      ],
    };
  },
};
