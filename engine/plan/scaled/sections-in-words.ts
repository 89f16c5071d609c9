import { formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import type { MachineChange } from './machines.js';
import { signed } from './in-words.js';
import { leastTapMargin } from '../data/stake-limits.js';
import type { ScaleReport } from './report.js';

/** A block of the report: a heading, sentences, and a table, all in words. */
export interface WordBlock {
  readonly heading: string;
  readonly sentences: readonly string[];
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const figure = (value: number, digits = 3): string => String(Number(value.toPrecision(digits)));

/** How the factor is reckoned, and by how much the other ways differ. */
export function factorBlock({ factor, from, to }: ScaleReport): WordBlock {
  return {
    heading: 'Scaling',
    sentences: [`From ${from} to ${to}: ${figure(factor.value, 5)} times as large, ${factor.by === 'factor' ? 'as given' : `by ${factor.by}`}.`],
    columns: ['by', 'factor', 'against this, %', 'which is'],
    rows: factor.ways.map(({ by, factor: value, percent, says }) => [by, figure(value, 5), signed(percent, 2), says]),
  };
}

/** Loads and what they do at both sizes. */
export function strengthBlock({ strength, kilograms }: ScaleReport): WordBlock {
  return {
    heading: 'Strength, at the same boiler pressure',
    sentences: [
      ...(kilograms === null ? [] : [`The finished part weighs ${mass(kilograms.before)} before and ${mass(kilograms.after)} after, ${figure(kilograms.after / kilograms.before)} times as much.`]),
      ...(strength.length === 0 ? ['What loads this part is not known here.'] : ['Times: how many times the load could grow; asked is common practice.', `Sums: ${[...new Set(strength.map(({ what, source }) => `${what}: ${source}`))].join('; ')}.`]),
    ],
    columns: ['what', 'loaded by', 'before', 'times', 'exact, times', 'chosen', 'times', 'exact %', 'chosen %', 'asked', 'verdict'],
    rows: strength.map(({ what, by, unit: of, before, exact, after, exactChange, change, asked, verdict }) => [
      what,
      by,
      `${figure(before.figure)} of ${figure(before.allowed)} ${of}`,
      figure(before.safety),
      figure(exact.safety),
      `${figure(after.figure)} of ${figure(after.allowed)} ${of}`,
      figure(after.safety),
      signed(exactChange, 1),
      signed(change, 1),
      figure(asked),
      verdict,
    ]),
  };
}

const mass = (kilograms: number): string => (kilograms < 1 ? `${figure(1000 * kilograms)} g` : `${figure(kilograms)} kg`);

/** Of each machine and measure the set-up that needs most. */
const mostOf = (machines: readonly MachineChange[]): readonly MachineChange[] =>
  machines.filter((need) => machines.find((other) => other.machine === need.machine && other.what === need.what && other.needs >= Math.max(...machines.filter((each) => each.machine === need.machine && each.what === need.what).map(({ needs }) => needs)) - 1e-9) === need);

/** What the change does to the work. */
export function workBlocks({ work, fits }: ScaleReport, unit: LengthUnit): readonly WordBlock[] {
  const length = (mm: number): string => formatLength(mm, unit, unit === 'in' ? 3 : 1);
  const { buy } = work;
  return [
    {
      heading: 'Machines',
      sentences: [
        work.machines.every(({ fits: goes }) => goes) ? 'It goes on your machines in every set-up.' : 'It does not go on your machines in every set-up.',
        'Power is that of the heaviest usual cut in each set-up, with what is lost between motor and cutter.',
      ],
      columns: ['set-up', 'machine', 'most of', `before, ${unit}`, `now, ${unit}`, `has, ${unit}`, 'goes'],
      rows: mostOf(work.machines).map(({ setUp, machine, what, neededBefore, needs, has, fits: goes }) => [setUp, machine, what, ...(what.startsWith('power') ? [neededBefore, needs, has].map((watts) => watts.toFixed(0)) : [neededBefore, needs, has].map(length)), goes ? 'yes' : 'no']),
    },
    {
      heading: 'Taps',
      sentences: work.taps.length === 0 ? ['Nothing is tapped by hand.'] : [`Safe: the tap is stronger than a hand feels, so that it is felt before it breaks, and twists off at ${leastTapMargin} times what its cut takes or more.`],
      columns: ['op.', 'before', 'margin', 'now', 'margin', 'verdict'],
      rows: work.taps.map(({ operation, before, after, verdict }) => [String(operation), before.thread, figure(before.margin, 2), after.thread, figure(after.margin, 2), verdict]),
    },
    {
      heading: 'Test pieces',
      sentences: work.rehearsals.length === 0 ? ['At neither size an operation is worth a test piece.'] : ['Worth it where the hours at stake are more than the rehearsal costs.'],
      columns: ['op.', 'what is done', 'at stake before, h', 'costs', 'at stake now, h', 'costs', 'verdict'],
      rows: work.rehearsals.map(({ operation, title, before, after, verdict }) => [String(operation), title, before.hoursAtStake.toFixed(2), before.rehearsalHours.toFixed(2), after.hoursAtStake.toFixed(2), after.rehearsalHours.toFixed(2), verdict]),
    },
    ...(work.fixtures === undefined
      ? []
      : [
          {
            heading: 'Fixtures',
            sentences: work.fixtures.length === 0 ? ['At neither size a set-up asks for a fixture, or is worth one.'] : ['Each is made to the sizes of its own part: none of the smaller serves the larger.'],
            columns: ['set-up', 'before', 'now', 'verdict'],
            rows: work.fixtures.map(({ setUp, before, after, verdict }) => [setUp, before.join('; ') || 'none', after.join('; ') || 'none', verdict]),
          },
        ]),
    {
      heading: 'Bar to buy',
      sentences: [`${buy.section.map(length).join(' x ')} ${unit}, ${length(buy.length)} long, ${buy.material}: ${buy.sold === undefined ? 'no bar of the lists holds it; cut it from plate, or ask what can be got' : buy.asSold ? `sold as ${buy.sold}` : `not sold in that section; the least that holds it is ${buy.sold}, brought down to size`}.`],
      columns: [],
      rows: [],
    },
    ...(work.toGet.length === 0 ? [] : [{ heading: 'To get beside', sentences: [], columns: ['what', 'with what is there'], rows: work.toGet.map(({ toGet, instead }) => [toGet, instead]) }]),
    {
      heading: 'Fits',
      sentences: fits.length === 0 ? ['The part has none.'] : ['Classes are kept, limits taken again at the new diameters (ISO 286).'],
      columns: ['of', 'class', 'size before', 'limits', 'size now', 'limits'],
      rows: fits.map(({ cut, class: name, before, after }) => [cut, name, formatLength(before.size, unit, 4), limits(before, unit), formatLength(after.size, unit, 4), limits(after, unit)]),
    },
  ];
}

const limits = ({ lower, upper }: { readonly lower: number; readonly upper: number }, unit: LengthUnit): string => [upper, lower].map((by) => (unit === 'in' ? signed(by / 25.4, 4).replace('0.', '.') : signed(by, 3))).join(' ');
