import { clearanceDrill, type ClearanceFit } from '../tapping.js';
import { findThread } from '../threads.js';
import { say, type Sum } from './sum.js';

export const clearanceDrillSum: Sum = {
  name: 'clearance-drill',
  summary: 'the drill for a hole that a screw passes',
  example: { thread: '4-40', fit: 'close' },
  source: 'ASME B18.2.8, ISO 273; common practice for threads that neither lists',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread of the screw', required: true },
    { name: 'fit', kind: 'choice', choices: ['close', 'normal', 'loose'], about: 'how freely it passes', default: 'normal' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const { drill, clearance, source } = clearanceDrill(thread, values.text('fit') as ClearanceFit);
    return {
      result: { drill: { name: drill.name, diameter: drill.diameter, series: drill.series }, clearance, source },
      steps: [`${thread.designation} is ${say(thread.major, context)}: ${values.text('fit')} hole ${drill.name} = ${say(drill.diameter, context)} (${source})`],
    };
  },
};
