import { feedOperations, feedRange } from '../cutting.js';
import { figures, say, type Sum } from './sum.js';

export const feed: Sum = {
  name: 'feed',
  summary: 'feed for each turn or tooth and for a minute',
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
    const minutes = travel / (values.number('feed') * values.number('rpm'));
    return {
      result: { minutes },
      steps: [`${say(travel, context)} / (${say(values.number('feed'), context)} x ${figures(values.number('rpm'))}) = ${figures(minutes, 3)} minutes`],
    };
  },
};
