import { findDrill, nearestDrill, type Drill, type DrillSeries } from '../drills.js';
import { findThread } from '../threads.js';
import { chooseTappingDrill } from '../shop/choices.js';
import { threadPercent, type TappingDrill } from '../tapping.js';
import { figures, say, type Sum } from './sum.js';

const drillJson = ({ name, diameter, series }: Drill) => ({ name, diameter, series });

/** The drills next smaller and next larger, so that the reader can choose with his own drawer open. */
function neighbours(choice: TappingDrill): readonly Drill[] {
  const { diameter } = choice.drill;
  const next = (atLeast: number, atMost: number): readonly Drill[] => {
    try {
      return [nearestDrill(diameter, { atLeast, atMost })];
    } catch {
      return [];
    }
  };
  return [...next(0, diameter - 1e-4), ...next(diameter + 1e-4, Infinity)];
}

export const tapDrill: Sum = {
  name: 'tap-drill',
  summary: 'the drill for a thread at a percentage of engagement',
  example: { thread: '0-80', engagement: '60' },
  source: 'd = D - percent of the double depth of the form; the custom of counting is printed with the figure',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread, such as 0-80, M3 or 4BA', required: true },
    { name: 'engagement', kind: 'number', about: 'percentage of thread wanted', default: '65' },
    { name: 'series', kind: 'choice', choices: ['any', 'number', 'letter', 'fraction', 'metric'], about: 'drills to choose from', default: 'any' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const series = values.text('series');
    const limits = series === 'any' ? {} : { series: series as DrillSeries };
    const { best, use: choice, have, cost } = chooseTappingDrill(context.shop, thread, values.number('engagement'), limits);
    const second = have ? [] : [`${best.drill.name} (${figures(best.percent, 3)} %) is to be got: ${cost ?? ''}`];
    return {
      result: {
        drill: drillJson(choice.drill),
        engagement: { percent: choice.percent, basis: choice.basis },
        otherBases: choice.others.map(({ percent, basis }) => ({ percent, basis })),
        thread: { designation: thread.designation, major: thread.major, pitch: thread.pitch, minorBasic: thread.minorInternal },
        idealHole: choice.ideal,
        withinClass: choice.withinClass ?? null,
        toGet: have ? null : drillJson(best.drill),
        neighbours: neighbours(choice)
          .filter(({ diameter }) => diameter < thread.major)
          .map((drill) => ({ ...drillJson(drill), percent: threadPercent(thread, drill.diameter).percent })),
        source: thread.source,
      },
      steps: [
        `${thread.designation}: D ${say(thread.major, context)}, pitch ${say(thread.pitch, context)}`,
        `100 % counts as ${choice.basis}`,
        `hole = ${say(thread.major, context)} - ${figures(values.number('engagement'))} % = ${say(choice.ideal, context)}`,
        `drill ${choice.drill.name} = ${say(choice.drill.diameter, context)}, which leaves ${figures(choice.percent, 3)} %`,
        ...choice.others.map(({ percent, basis }) => `the same hole is ${figures(percent, 3)} % counted as ${basis}`),
        ...second,
      ],
    };
  },
};

export const threadPercentage: Sum = {
  name: 'thread-percentage',
  summary: 'the percentage of thread that a drill leaves',
  example: { thread: '0-80', drill: '#55' },
  source: '100 (D - d) / double depth of the form',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'drill', kind: 'drill', about: 'the drill by name (#53, F, 1/16 in, 2.05 mm)', required: true },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const drill = findDrill(values.text('drill'));
    const { percent, basis } = threadPercent(thread, drill.diameter);
    return {
      result: { drill: drillJson(drill), engagement: { percent, basis }, thread: { designation: thread.designation, major: thread.major, pitch: thread.pitch, minorBasic: thread.minorInternal } },
      steps: [`(${say(thread.major, context)} - ${say(drill.diameter, context)}) / ${basis} = ${figures(percent, 3)} %`],
    };
  },
};
