import type { Command } from '../command.js';
import { optionFlag, optionText, optionWord } from '../option.js';
import { shopOf } from '../read-shop-file.js';
import { sumAsked } from '../sum-asked.js';

const standing = {
  units: { type: 'string', requiresArg: true, describe: 'in or mm: of the working, and of lengths given without a unit (usual: mm, and none)' },
  shop: { type: 'string', requiresArg: true, describe: 'the file of your shop (usual: shop.yaml in this folder, where there is one)' },
  json: { type: 'boolean', describe: 'the results alone, as JSON: lengths in mm, angles in degrees, other units in the names' },
} as const;

const command: Command = {
  name: 'reckon',
  takes: '<sum>',
  summary: 'A sum of the shop, with its working: reckon --help lists them all, reckon <sum> --help tells what one takes',
  positionals: { sum: { type: 'string', describe: 'its name' } },
  options: standing,
  examples: [
    ['reckon tap-drill --thread 0-80', 'the drill for a thread, with its working'],
    ['reckon fit --size 8mm --class H7/g6 --json', 'limits of a fit, as JSON'],
    ['reckon sine --help', 'what a sum takes, and an example of it'],
  ],
  forWords: async (words) => {
    const name = sumAsked(words);
    const help = await import('../reckon-help.js');
    return name === undefined ? { ...command, epilogue: help.allSums() } : help.commandForSum(command, name);
  },
  run: async (given) => {
    const unit = optionWord(given, 'units', ['in', 'mm']);
    const asJson = optionFlag(given, 'json');
    const shop = await shopOf(optionText(given, 'shop'));
    const { findSum, reckon } = await import('../../engine/trade/sums/index.js');
    const sum = findSum(String(given['sum']));
    const texts = sum.arguments.flatMap(({ name }) => {
      const text = optionText(given, name);
      return text === undefined ? [] : [[name, text] as const];
    });
    const answer = reckon(sum.name, Object.fromEntries(texts), { ...(unit === undefined ? {} : { assume: unit, unit }), ...(shop === undefined ? {} : { shop }) });
    if (asJson) {
      process.stdout.write(`${JSON.stringify(answer.result, null, 2)}\n`);
      return;
    }
    const { workingText } = await import('../working-text.js');
    process.stdout.write(workingText(sum, new Map(texts), answer.steps));
  },
};

export default command;
