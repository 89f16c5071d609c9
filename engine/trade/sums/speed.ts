import { speedOperations } from '../cutting.js';
import { findMaterial } from '../materials.js';
import { spindleSpeed } from '../shop/spindle-speed.js';
import { figures, say, type Sum } from './sum.js';

export const speed: Sum = {
  name: 'speed',
  summary: 'spindle speed from material, cutter and diameter, snapped to the speeds of the machine',
  example: { material: 'silver steel', diameter: '12mm', tool: 'hss' },
  source: 'n = 1000 v / (pi d); v the middle of the range of the table of materials; snapped down to a speed that the machine has',
  arguments: [
    { name: 'material', kind: 'material', about: 'what is cut', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the work on a lathe, of the cutter or drill elsewhere', required: true },
    { name: 'tool', kind: 'choice', choices: ['hss', 'carbide'], about: 'material of the cutter', default: 'hss' },
    { name: 'operation', kind: 'choice', choices: speedOperations, about: 'kind of cut', default: 'turning' },
    { name: 'surface', kind: 'surface-speed', about: 'cutting speed wanted, in place of the table' },
    { name: 'machine', kind: 'text', about: 'machine of the shop by name; the first fit for the operation if not given' },
  ],
  compute(values, context) {
    const material = findMaterial(values.text('material'));
    const diameter = values.number('diameter');
    const operation = values.text('operation');
    const cut = { material, diameter, tool: values.text('tool') as 'hss' | 'carbide', operation };
    const { rpm, snapped, machine, surface, range, tooFast, tooLarge } = spindleSpeed(context.shop, {
      ...cut,
      ...(values.has('surface') ? { surface: values.number('surface') } : {}),
      ...(values.has('machine') ? { machine: values.text('machine') } : {}),
    });
    const [low, high] = range;
    return {
      result: { rpm, snapped, machine: machine.name, surfaceSpeedMetresPerMinute: surface, rangeMetresPerMinute: [low, high], tooFast, tooLarge, source: material.source },
      steps: [
        `${operation} ${material.name} with ${values.text('tool')}: ${figures(low, 3)} to ${figures(high, 3)} m/min, taken ${figures(surface, 3)}`,
        `n = 1000 x ${figures(surface, 3)} / (pi x ${say(diameter, { unit: 'mm' })}) = ${figures(rpm, 4)} a minute`,
        `${machine.name}: ${snapped} a minute${tooFast ? ', its slowest and still too fast: take light cuts' : ''}`,
        ...(tooLarge ? [`${machine.name} swings only ${say(machine.swing ?? 0, context)}`] : []),
      ],
    };
  },
};
