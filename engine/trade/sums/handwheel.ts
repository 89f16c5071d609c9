import { UserError } from '../../units/user-error.js';
import { findMachine } from '../shop/spindle.js';
import type { Dial, SlideName } from '../shop/shop.js';
import { figures, say, type Sum, type SumContext } from './sum.js';
import type { SumValues } from './values.js';

export interface DialSetting {
  /** Whole turns from the zero; negative behind it. */
  readonly turns: number;
  /** Divisions past the mark where the whole turns end, 0 up to a turn. */
  readonly divisions: number;
  /** The nearest whole division, and by how much the slide is then off, mm. */
  readonly nearestDivision: number;
  readonly off: number;
}

/** Turns and divisions of a dial for a slide at `position` (mm) from its zero, counted in the direction of the dial. */
export function dialSetting(position: number, dial: Dial): DialSetting {
  const scale = dial.reads === 'diameter' ? 2 : 1;
  const counted = position * scale;
  const turns = Math.floor(counted / dial.perTurn + 1e-9);
  const divisions = Math.max(0, Number(((counted - turns * dial.perTurn) / dial.division).toFixed(6)));
  const nearestDivision = Math.round(divisions);
  return { turns, divisions, nearestDivision, off: Number((((nearestDivision - divisions) * dial.division) / scale).toFixed(9)) + 0 };
}

const thou = 0.0254;

/** A dial whose turn is whole or half thousandths of an inch (0.1, 0.125, 0.0625 in) is divided by them; others by 100. */
const usualDivision = (perTurn: number): number => (Math.abs(perTurn / thou - Math.round((2 * perTurn) / thou) / 2) < 1e-6 ? thou : perTurn / 100);

function readDial(values: SumValues, context: SumContext): Dial {
  const slide = values.text('slide') as SlideName;
  const machine = values.has('per-turn') ? undefined : findMachine(context.shop, values.textOr('machine', undefined), slide === 'x' || slide === 'y' || slide === 'z' ? ['mill', 'drill'] : ['lathe']);
  const given = machine?.dials[slide];
  if (machine !== undefined && given === undefined) throw new UserError(`${machine.name} has no dial known for its slide ${slide}: give per-turn, what the dial counts in a turn.`);
  const perTurn = values.numberOr('per-turn', given?.perTurn ?? Number.NaN);
  const division = values.numberOr('division', given?.division ?? usualDivision(perTurn));
  if (division > perTurn) throw new UserError(`the division ${say(division, context)} must not be more than the turn ${say(perTurn, context)}.`);
  return { perTurn, division, reads: values.has('reads') ? (values.text('reads') as Dial['reads']) : (given?.reads ?? 'direct') };
}

export const handwheel: Sum = {
  name: 'handwheel',
  summary: 'turns and divisions of a handwheel for each position, always approached from the same side',
  example: { to: '12.5mm,3.2mm', 'per-turn': '0.1in' },
  source: 'turns = whole part of position / lead; divisions = rest / division; backlash is taken up by coming from one side only',
  arguments: [
    { name: 'to', kind: 'lengths', about: 'positions from the zero, with commas', required: true, sign: 'any' },
    { name: 'per-turn', kind: 'length', about: 'what the dial counts in a turn (0.1 in, 0.0625 in, 2 mm, 3 mm); that of the slide of the shop if not given' },
    { name: 'division', kind: 'length', about: 'what the dial counts for a division' },
    { name: 'reads', kind: 'choice', choices: ['direct', 'diameter'], about: 'diameter where the dial counts twice the travel' },
    { name: 'machine', kind: 'text', about: 'machine of the shop by name' },
    { name: 'slide', kind: 'choice', choices: ['x', 'y', 'z', 'cross', 'top', 'saddle'], about: 'slide of that machine', default: 'x' },
    { name: 'backlash', kind: 'length', about: 'backlash of the screw', default: '0.3 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const dial = readDial(values, context);
    const settings = values.numbers('to').map((to) => ({ to, ...dialSetting(to, dial) }));
    const half = dial.perTurn / (dial.reads === 'diameter' ? 4 : 2);
    const past = Math.max(half, 2 * values.number('backlash'));
    let before = 0;
    const moves = settings.map(({ to, turns, divisions, off }) => {
      const back = to < before - 1e-9;
      before = to;
      const where = `${turns} turns and ${figures(divisions, 5)} divisions`;
      const error = Math.abs(off) < 1e-6 ? '' : ` (the nearest whole division is off by ${say(off, context)})`;
      return back ? `${say(to, context)}: go back past it by ${say(past, context)}, then forward to ${where}${error}` : `${say(to, context)}: forward to ${where}${error}`;
    });
    return {
      result: { settings, perTurn: dial.perTurn, division: dial.division, reads: dial.reads, overshoot: past },
      steps: [
        `dial of ${say(dial.perTurn, context)} a turn, ${say(dial.division, context)} a division${dial.reads === 'diameter' ? ', reading the diameter: it counts twice the travel' : ''}`,
        `come to the zero going forward; if you overshoot, go back ${say(past, context)} and come forward again`,
        ...moves,
      ],
    };
  },
};
