import type { Options } from 'yargs';
import { findSum, reckon, sums, type Sum, type SumArgument } from '../engine/trade/sums/index.js';
import type { Command } from './command.js';

const UNITS_OF_RESULTS = 'Results in JSON are millimetres and degrees where their names say no other unit.';

/** How a value of each kind is written. */
const WRITTEN: Readonly<Record<SumArgument['kind'], string>> = {
  length: 'length: 5/16in, 10thou, 2.5mm',
  lengths: 'lengths with commas: 12mm,3.5mm',
  points: 'points with semicolons: "0mm,0mm; 12mm,5mm"',
  angle: 'degrees: 15, 5.75, "5d 45\'"',
  count: 'whole number',
  number: 'number',
  choice: '',
  text: 'name',
  thread: 'thread: 0-80, M3, 4BA, 1/4x40',
  drill: 'drill: "#53", F, 1/16in, 2.05mm',
  class: 'class: H7/g6, H7, g6, RC4',
  material: 'material: silver steel, EN1A, CZ121',
  force: 'force: 120N, 27lbf',
  stress: 'stress: 400MPa, 58ksi',
  'surface-speed': 'speed: "30 m/min", 100fpm',
  'temperature-rise': 'rise: 100K, 180F',
};

const quoted = (text: string): string => (/^[\w.+/%-]+$/.test(text) ? text : `"${text}"`);

/** The words that use a sum as its example does. */
const exampleOf = ({ name, example }: Sum): string => ['reckon', name, ...Object.entries(example).map(([argument, text]) => `--${argument} ${quoted(text)}`)].join(' ');

/** The names of what the example of a sum gives. */
const resultsOf = ({ name, example }: Sum): string => Object.keys(reckon(name, example).result).join(', ');

/** Every sum: what it is for, how it is used, and what it gives. */
export const allSums = (): string =>
  `Sums:\n${sums.map((sum) => `  ${sum.name}: ${sum.summary}\n      ${exampleOf(sum)}\n      gives ${resultsOf(sum)}\n`).join('')}\n${UNITS_OF_RESULTS}`;

/** The command as it is for one sum, with that sum's arguments as its options. */
export function commandForSum(command: Command, name: string): Command {
  const sum = findSum(name);
  return {
    ...command,
    title: `${command.name} ${sum.name}`,
    summary: `${sum.name}: ${sum.summary}`,
    options: { ...Object.fromEntries(sum.arguments.map((argument) => [argument.name, optionOf(argument)])), ...command.options },
    examples: [],
    epilogue: `Example:\n  trialpiece ${exampleOf(sum)}\n\nGives: ${resultsOf(sum)}\n${UNITS_OF_RESULTS}\nSource: ${sum.source}`,
  };
}

function optionOf({ kind, about, choices, required, default: usual }: SumArgument): Options {
  const notes = [WRITTEN[kind], ...(choices === undefined ? [] : [choices.join(', ')]), required === true ? 'needed' : '', usual === undefined ? '' : `usual: ${usual}`];
  return { type: 'string', requiresArg: true, group: 'Arguments:', describe: `${about} (${notes.filter((note) => note !== '').join('; ')})` };
}
