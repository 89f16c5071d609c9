import { UserError } from '../../units/user-error.js';
import { datumSpreads, holdingSpreads } from '../data/datum-spreads.js';
import { finishingAllowance } from '../finishing-allowance.js';
import { say, type Sum } from './sum.js';

export const allowance: Sum = {
  name: 'allowance',
  summary: 'how much to leave on each side for the finishing cut, from what the datum can be trusted to',
  example: { datum: 'screwed-on', holding: 'four-jaw', length: '25mm' },
  source: 'worst case: pick-up + run-out + squareness x length + lift; spreads as stated beside each',
  arguments: [
    { name: 'datum', kind: 'choice', choices: Object.keys(datumSpreads), about: 'what the work is located or picked up from', required: true },
    { name: 'holding', kind: 'choice', choices: Object.keys(holdingSpreads), about: 'how it is held for the finishing cut', default: 'vice' },
    { name: 'length', kind: 'length', about: 'length over which it may stand out of square', default: '0 mm', sign: 'not-negative' },
    { name: 'squareness', kind: 'length', about: 'out of square over 100 mm', default: '0.05 mm', sign: 'not-negative' },
    { name: 'pick-up', kind: 'length', about: 'spread of the datum, in place of the table', sign: 'not-negative' },
    { name: 'clean', kind: 'length', about: 'least that the finishing cut must take to clean up', default: '0.05 mm', sign: 'not-negative' },
    { name: 'leave', kind: 'length', about: 'allowance to check' },
  ],
  compute(values, context) {
    const { terms, worst, likely, measure } = finishingAllowance({
      datum: values.text('datum'),
      holding: values.text('holding'),
      length: values.number('length'),
      squareness: values.number('squareness'),
      ...(values.has('pick-up') ? { pickUp: values.number('pick-up') } : {}),
    });
    const shown = `${terms.map(({ name, value }) => `${name} ${say(value, context)}`).join(' + ')} = ${say(worst, context)}`;
    const leave = values.numberOr('leave', worst + values.number('clean'));
    if (leave < worst - 1e-9) throw new UserError(`an allowance of ${say(leave, context)} is too small: ${shown}.`);
    return {
      result: { worst, likely, leave, terms: terms.map((term) => ({ ...term })), measure },
      steps: [shown, `likely (root of the squares) ${say(likely, context)}`, `leave ${say(leave, context)} on each side`, `measure ${measure}`],
    };
  },
};
