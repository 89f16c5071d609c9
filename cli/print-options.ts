import type { Options } from 'yargs';
import type { Arguments } from './command.js';
import { optionFlag, optionText, optionWord, optionWords } from './option.js';
import { FORMATS, type Format, type PrintChoices } from './print-part.js';
import { shopOf } from './read-shop-file.js';
import { settingsOf } from './settings.js';
import { slowToOptimise } from './slow-to-optimise.js';

const text = (describe: string) => ({ type: 'string', requiresArg: true, describe }) as const;

export const printPositionals = { part: { type: 'string', describe: 'name of a built-in part, or the path of a module' } } as const;

/** The options of all commands that make sheets. */
export const printOptions = {
  hand: text('right (usual), left or both'),
  gauge: text('another gauge, scale or factor, to which the part is first scaled as by scale --to, with what was fixed for it'),
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
} as const satisfies Readonly<Record<string, Options>>;

/** What a command line asks of sheets: how they are made, in which formats, and where they go. */
export interface PrintAsked {
  readonly choices: PrintChoices;
  readonly formats: readonly Format[];
  readonly folder: string;
  /** Only the record is wanted, on standard output. */
  readonly recordOnly: boolean;
}

/** Reads the options; the shop's own paper and units serve where the command line names none. Throws UserError for a wrong one. */
export async function printAsked(given: Arguments): Promise<PrintAsked> {
  slowToOptimise();
  const shop = await shopOf(optionText(given, 'shop'));
  const choices: PrintChoices = {
    settings: settingsOf(given),
    hand: optionWord(given, 'hand', ['right', 'left', 'both']) ?? 'right',
    units: optionWord(given, 'units', ['in', 'mm']) ?? shop?.said?.unit,
    secondary: optionFlag(given, 'brackets'),
    paper: optionText(given, 'paper') ?? shop?.said?.paper,
    scale: optionText(given, 'scale'),
    angle: optionWord(given, 'angle', ['third', 'first']) ?? 'third',
    shop,
    gauge: optionText(given, 'gauge'),
  };
  const formats = optionWords(given, 'format', FORMATS) ?? FORMATS;
  return { choices, formats, folder: optionText(given, 'out') ?? 'out', recordOnly: optionFlag(given, 'record') };
}
