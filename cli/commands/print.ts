import type { Arguments, Command } from '../command.js';
import { findPart } from '../find-part.js';
import { optionText, optionWord, optionWords, positionalText } from '../option.js';
import { say } from '../output.js';
import { filesOf, FORMATS, printPart, recordText } from '../print-part.js';
import type { PrintChoices } from '../print-part.js';
import { shopOf } from '../read-shop-file.js';
import { settingsOf } from '../settings.js';
import { writeFiles } from '../write-files.js';

const text = (describe: string) => ({ type: 'string', requiresArg: true, describe }) as const;

const command: Command = {
  name: 'print',
  takes: '<part>',
  summary: "A part's shop print, true to scale, as SVG and PDF with its record in JSON",
  positionals: { part: { type: 'string', describe: 'name of a built-in part, or the path of a module' } },
  options: {
    hand: text('right (usual), left or both'),
    set: { type: 'string', array: true, requiresArg: true, describe: 'parameters, each as name=value; after the part' },
    units: text("in or mm: of the print, and of lengths given without a unit (usual: the part's own, and none)"),
    brackets: { type: 'boolean', describe: 'each length in the other unit too, in brackets' },
    paper: text('A4, A3, Letter or Tabloid (usual: the smallest that reads well)'),
    scale: text('1:1, 2:1, 1:2 ... (usual: the best that fits)'),
    angle: text('third (usual) or first angle projection'),
    shop: text('the file of your shop: its machines and tools (usual: shop.yaml in this folder, where there is one; else a typical small lathe and mill)'),
    format: text('svg, pdf or both with a comma (usual: both)'),
    out: text('folder for the files (usual: out)'),
    record: { type: 'boolean', describe: 'write only the JSON record, to standard output; a list of two with --hand both' },
  },
  examples: [
    ['print crosshead', 'its right hand, in the folder out'],
    ['print crosshead --hand both --paper A4', 'both hands, on A4'],
    ['print crosshead --set bore="5/16 in"', 'one size changed'],
    ['print crosshead --shop shop.yaml', 'speeds and settings for your own machines'],
    ['print ./my-part.ts --record', 'the record of a part of your own'],
  ],
  run: async (given) => {
    const shop = await shopOf(optionText(given, 'shop'));
    const asked = choicesOf(given);
    // The shop's own paper and units serve where the command names none.
    const choices = { ...asked, units: asked.units ?? shop?.said?.unit, paper: asked.paper ?? shop?.said?.paper, shop };
    const formats = optionWords(given, 'format', FORMATS) ?? FORMATS;
    const folder = optionText(given, 'out') ?? 'out';
    const prints = await printPart(await findPart(positionalText(given, 'part')), choices);
    if (given['record'] === true) {
      const records = prints.map(({ record }) => record);
      say(recordText(choices.hand === 'both' ? records : records[0]));
      return;
    }
    for (const path of await writeFiles(folder, await filesOf(prints, formats))) say(`${path}\n`);
  },
};

const choicesOf = (given: Arguments): Omit<PrintChoices, 'shop'> => ({
  settings: settingsOf(given),
  hand: optionWord(given, 'hand', ['right', 'left', 'both']) ?? 'right',
  units: optionWord(given, 'units', ['in', 'mm']),
  secondary: given['brackets'] === true,
  paper: optionText(given, 'paper'),
  scale: optionText(given, 'scale'),
  angle: optionWord(given, 'angle', ['third', 'first']) ?? 'third',
});

export default command;
