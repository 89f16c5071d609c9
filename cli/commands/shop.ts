import type { Command } from '../command.js';
import { Mistakes } from '../mistakes.js';
import { positionalText, wordOf } from '../option.js';
import { shopText, USUAL_SHOP } from '../read-shop-file.js';
import { table } from '../table.js';

const command: Command = {
  name: 'shop',
  takes: '<check> [file]',
  summary: 'Checks the file that says what is in your own drawers and machines, and tells what it says',
  positionals: {
    check: { type: 'string', describe: 'the word check' },
    file: { type: 'string', default: USUAL_SHOP, describe: 'the file' },
  },
  options: {},
  examples: [
    ['shop check', `checks ${USUAL_SHOP} in this folder`],
    ['shop check workshop/mine.yaml', 'checks another file'],
  ],
  run: async (given) => {
    wordOf(positionalText(given, 'check'), 'shop', ['check']);
    const file = positionalText(given, 'file');
    const text = shopText(file);
    const { checkShop } = await import('../../engine/trade/shop/read-shop.js');
    const { shop, problems } = checkShop(text);
    if (shop === undefined) throw new Mistakes(problems.map((problem) => `${file}, ${problem}`));
    const { describeShop } = await import('../../engine/trade/shop/describe.js');
    process.stdout.write(`${file} is in order.\n\n${table(describeShop(shop))}`);
  },
};

export default command;
