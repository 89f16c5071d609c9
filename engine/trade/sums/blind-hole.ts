import { UserError } from '../../units/user-error.js';
import { findDrill } from '../drills.js';
import { tappingDrill } from '../tapping.js';
import { findThread } from '../threads.js';
import { tangent } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

/** Pitches of lead of each tap: common practice. */
export const tapLeads: Readonly<Record<string, number>> = { taper: 8, second: 4, bottoming: 1.5 };

/** Length of a drill's point: d / (2 tan(A/2)), mm. */
export const pointLength = (diameter: number, angle: number): number => diameter / (2 * tangent(angle / 2));

export const blindHole: Sum = {
  name: 'blind-hole',
  summary: 'depth to drill for a blind tapped hole, and the wall left below it',
  example: { thread: '4 BA', depth: '1/4in', thickness: '1/2in' },
  source: 'full thread + lead of the tap + room for chips; below it the point d / (2 tan(A/2)); leads are common practice',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'depth', kind: 'length', about: 'depth of full thread', required: true },
    { name: 'tap', kind: 'choice', choices: Object.keys(tapLeads), about: 'last tap to go down', default: 'bottoming' },
    { name: 'chips', kind: 'number', about: 'room for chips, in pitches', default: '1', sign: 'not-negative' },
    { name: 'drill', kind: 'drill', about: 'tapping drill; that of 65 % if not given' },
    { name: 'point', kind: 'angle', about: 'point angle of the drill', default: '118' },
    { name: 'thickness', kind: 'length', about: 'metal from the surface to the far side' },
    { name: 'wall', kind: 'length', about: 'least metal to leave below the point', default: '1 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const drill = values.has('drill') ? findDrill(values.text('drill')) : tappingDrill(thread).drill;
    if (values.number('point') > 180) throw new UserError(`the point angle of a drill is at most 180 degrees.`);
    const lead = (tapLeads[values.text('tap')] ?? 0) * thread.pitch;
    const room = values.number('chips') * thread.pitch;
    const depth = values.number('depth') + lead + room;
    const point = pointLength(drill.diameter, values.number('point'));
    const left = values.has('thickness') ? values.number('thickness') - depth - point : undefined;
    if (left !== undefined && left < values.number('wall')) {
      throw new UserError(
        `the point of the drill would leave ${say(left, context)} of the ${say(values.number('thickness'), context)}, and ${say(values.number('wall'), context)} is wanted: at most ${say(values.number('depth') + left - values.number('wall'), context)} of full thread fits with this tap.`,
      );
    }
    return {
      result: { drillDepth: depth, withPoint: depth + point, point, lead, drill: { name: drill.name, diameter: drill.diameter }, ...(left === undefined ? {} : { wall: left }) },
      steps: [
        `full thread ${say(values.number('depth'), context)} + lead ${say(lead, context)} (${figures(lead / thread.pitch)} pitches) + chips ${say(room, context)} = ${say(depth, context)} at the full diameter of ${drill.name}`,
        `the point goes ${say(point, context)} deeper: ${say(depth + point, context)}`,
        ...(left === undefined ? [] : [`wall left below ${say(left, context)}`]),
      ],
    };
  },
};
