import { cutMinutes } from '../cut-minutes.js';
import { feedOperations, feedRange } from '../cutting.js';
import { findMaterial } from '../materials.js';
import { figures, say, type Sum } from './sum.js';

export const feed: Sum = {
  name: 'feed',
  summary: 'feed for each turn or tooth and for a minute',
  example: { operation: 'milling', diameter: '1/4in', rpm: '1600', teeth: '2' },
  source: 'drilling feeds as two stored pages agree; others workshop-text ranges; milling feed = teeth x feed of a tooth x turns',
  arguments: [
    { name: 'operation', kind: 'choice', choices: feedOperations, about: 'kind of cut', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the drill or cutter, or of the work', required: true },
    { name: 'rpm', kind: 'number', about: 'turns a minute', required: true },
    { name: 'teeth', kind: 'count', about: 'teeth of a milling cutter', default: '4' },
  ],
  compute(values, context) {
    const operation = values.text('operation');
    const [low, high] = feedRange(operation, values.number('diameter'));
    const teeth = operation === 'milling' ? values.number('teeth') : 1;
    const rpm = values.number('rpm');
    const perMinute = [low * teeth * rpm, high * teeth * rpm];
    return {
      result: { [operation === 'milling' ? 'perTooth' : 'perTurn']: [low, high], perMinute },
      steps: [
        `${operation}: ${say(low, context)} to ${say(high, context)} for each ${operation === 'milling' ? `tooth, ${teeth} teeth` : 'turn'}`,
        `at ${figures(rpm)} a minute: ${say(perMinute[0] ?? 0, context)} to ${say(perMinute[1] ?? 0, context)} a minute`,
      ],
    };
  },
};

export const cutTime: Sum = {
  name: 'cut-time',
  summary: 'time of a cut',
  example: { length: '80mm', feed: '0.1mm', rpm: '450' },
  source: 'minutes = (length + overrun) x passes / (feed x turns)',
  arguments: [
    { name: 'length', kind: 'length', about: 'length of the cut', required: true },
    { name: 'overrun', kind: 'length', about: 'run in and out, together', default: '2 mm', sign: 'not-negative' },
    { name: 'feed', kind: 'length', about: 'feed for each turn (milling: for each turn, all teeth)', required: true },
    { name: 'rpm', kind: 'number', about: 'turns a minute', required: true },
    { name: 'passes', kind: 'count', about: 'number of passes', default: '1' },
  ],
  compute(values, context) {
    const travel = (values.number('length') + values.number('overrun')) * values.number('passes');
    const minutes = cutMinutes({ length: travel, feed: values.number('feed'), turns: values.number('rpm') });
    return {
      result: { minutes },
      steps: [`${say(travel, context)} / (${say(values.number('feed'), context)} x ${figures(values.number('rpm'))}) = ${figures(minutes, 3)} minutes`],
    };
  },
};

export const cuttingPower: Sum = {
  name: 'power',
  summary: 'power that a cut takes at the tool',
  example: { material: 'mild steel', depth: '1mm', width: '0.1mm', travel: '30 m/min' },
  source: 'specific cutting energy of the table of materials x metal removed in a second (unit power tables, sharp tool)',
  arguments: [
    { name: 'material', kind: 'material', about: 'what is cut', required: true },
    { name: 'depth', kind: 'length', about: 'depth of the cut', required: true },
    { name: 'width', kind: 'length', about: 'feed for each turn on a lathe, width of the cut on a mill', required: true },
    { name: 'travel', kind: 'surface-speed', about: 'cutting speed on a lathe, feed of the table on a mill (m/min)', required: true },
  ],
  compute(values, context) {
    const material = findMaterial(values.text('material'));
    const removed = (values.number('depth') * values.number('width') * values.number('travel') * 1000) / 60;
    const power = removed * material.cuttingEnergy;
    return {
      result: { powerW: power, removedMm3PerSecond: removed, source: material.source },
      steps: [
        `${say(values.number('depth'), context)} x ${say(values.number('width'), context)} x ${figures(values.number('travel'))} m/min = ${figures(removed)} mm3 a second`,
        `x ${material.cuttingEnergy} J/mm3 = ${figures(power, 3)} W at the tool`,
      ],
    };
  },
};
