import { say, type Sum } from './sum.js';

/** Where the cutter stands beside a line: the direction from the line to the cutter's centre. */
const sides: Readonly<Record<string, readonly [number, number]>> = { on: [0, 0], left: [-1, 0], right: [1, 0], front: [0, -1], back: [0, 1] };

export const readout: Sum = {
  name: 'readout',
  summary: "coordinates from the set-up's datum for a read-out, with the radius of the cutter allowed for",
  example: { points: '10mm,5mm; 30mm,5mm', cutter: '6mm', side: 'front' },
  source: 'cutter centre = point - datum, moved by the radius to the side on which the cutter stands; x to the right, y away from you',
  arguments: [
    { name: 'points', kind: 'points', about: 'x,y of each point, with semicolons between', required: true },
    { name: 'datum-x', kind: 'length', about: 'datum of the set-up in the same coordinates', default: '0 mm', sign: 'any' },
    { name: 'datum-y', kind: 'length', about: 'datum of the set-up in the same coordinates', default: '0 mm', sign: 'any' },
    { name: 'cutter', kind: 'length', about: 'true diameter of the cutter', default: '0 mm', sign: 'not-negative' },
    { name: 'side', kind: 'choice', choices: Object.keys(sides), about: 'side of the line on which the cutter stands; on for holes', default: 'on' },
    { name: 'finder', kind: 'length', about: 'diameter of the edge finder with which the datum edges are picked up', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const [dx, dy] = sides[values.text('side')] ?? [0, 0];
    const radius = values.number('cutter') / 2;
    const positions = values.points('points').map(([x, y]) => ({ x: x - values.number('datum-x') + dx * radius, y: y - values.number('datum-y') + dy * radius }));
    const finder = values.number('finder') / 2;
    return {
      result: { positions, side: values.text('side'), cutterRadius: radius },
      steps: [
        ...(finder > 0 ? [`edges picked up from outside: set the read-out to minus ${say(finder, context)} at a left or front edge, plus at a right or back edge`] : []),
        ...positions.map(({ x, y }, index) => `${index + 1}: X ${say(x, context)}, Y ${say(y, context)}${radius > 0 && values.text('side') !== 'on' ? ` (cutter ${say(2 * radius, context)} ${values.text('side')} of the line)` : ''}`),
      ],
    };
  },
};
