import { describe, expect, it } from 'vitest';
import { expectRefusal } from './refusal.js';
import { inFolder, PARTS, trialpiece } from './program.js';

const OPTIONS_OF_PRINT = '--hand, --gauge, --set, --units, --brackets, --paper, --scale, --angle, --shop, --format, --out, --record, --help, --version';

describe('a command line that is not understood', () => {
  it.each<[string, string[], string | RegExp]>([
    ['no command', [], 'A command is missing: there are fixture, list, pack, plan, print, reckon, scale, shop, show, table, test-piece, and trialpiece --help tells more.'],
    ['an unknown command', ['pirnt', 'crosshead'], '"pirnt" is not a command: there are fixture, list, pack, plan, print, reckon, scale, shop, show, table, test-piece; the nearest is print.'],
    ['an unknown list', ['list', 'thread'], 'list "thread" is not known: there are parts, fixtures, papers, threads, drills, stock; the nearest is threads.'],
    ['an empty command', [''], '"" is not a command: there are fixture, list, pack, plan, print, reckon, scale, shop, show, table, test-piece.'],
    ['an empty part', ['show', ''], `The part's name is empty: there are ${PARTS}.`],
    ['a part that is a dash', ['print', '-'], 'The word - has no use here: leave it out.'],
    ['a part that cannot name a file', ['print', '..'], `".." is not a part: there are ${PARTS}; a file of your own is given with its path, as in ./my-part.ts.`],
    ['a part after the settings', ['print', '--set', 'a=1', 'crosshead'], 'print needs <part>, as in trialpiece print crosshead; put it before --set, which takes all words that follow.'],
    ['an option that takes no value with one', ['print', 'crosshead', '--record', 'false'], '--record takes no value: write --record alone.'],
    ['a word of great length', ['list', 'x'.repeat(5000)], /^list "x{80}\.\.\." is not known: /],
    ['no part', ['print'], 'print needs <part>, as in trialpiece print crosshead.'],
    ['two parts', ['print', 'crosshead', 'crosshead-pin'], '"crosshead-pin" is one word too many: print takes just <part>.'],
    ['an unknown option', ['print', '--papr', 'A4', 'crosshead'], `--papr is not an option of print: there are ${OPTIONS_OF_PRINT}; the nearest is --paper.`],
    ['an unknown option before any command', ['--verbose'], '--verbose is not an option: there are --help, --version; the nearest is --version.'],
    ['an option of another command', ['show', 'crosshead', '--paper', 'A4'], '--paper is not an option of show: there are --units, --help, --version.'],
    ['an option without its value', ['print', 'crosshead', '--hand'], '--hand needs a value after it.'],
    ['an option with an empty value', ['print', 'crosshead', '--paper='], '--paper needs a value after it.'],
    ['an option twice', ['print', 'crosshead', '--hand', 'left', '--hand', 'right'], '--hand is given more than once: give it one value.'],
    ['an unknown hand', ['print', 'crosshead', '--hand', 'lft'], '--hand "lft" is not known: there are right, left, both; the nearest is left.'],
    ['unknown units', ['print', 'crosshead', '--units', 'cm'], '--units "cm" is not known: there are in, mm; the nearest is mm.'],
    ['an unknown angle', ['print', 'crosshead', '--angle', 'frist'], '--angle "frist" is not known: there are third, first; the nearest is first.'],
    ['an unknown format', ['print', 'crosshead', '--format', 'svg,pfd'], '--format "pfd" is not known: there are svg, pdf; the nearest is pdf.'],
    ['a setting that is none', ['print', 'crosshead', '--set', 'bore'], '--set "bore" is not name=value: write it as in --set bore="5/16 in", and put the part\'s name before --set.'],
    ['a setting twice', ['print', 'crosshead', '--set', 'bore=1 in', 'bore=2 in'], 'bore is set twice, to "1 in" and to "2 in": set it once.'],
  ])('%s', (_, words, sentence) => expectRefusal(words, sentence));
});

describe('help', () => {
  it.each([
    ['of the program', ['--help'], ['trialpiece <command>', 'trialpiece list [what]', 'trialpiece print <part>', 'trialpiece reckon <sum>', 'trialpiece shop <check> [file]', 'trialpiece show <part>', 'trialpiece table <table> [row..]']],
    ['of list', ['list', '--help'], ['trialpiece list [what]', 'trialpiece list threads']],
    ['of show', ['show', '--help'], ['trialpiece show <part>', '--units', 'trialpiece show crosshead']],
    ['of print', ['print', '--help'], ['trialpiece print <part>', ...OPTIONS_OF_PRINT.split(', '), 'trialpiece print ./my-part.ts --record']],
  ])('%s is in English, with examples, on standard output', (_, words, contents) =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, ...words);
      for (const content of [...contents, 'Examples:']) expect(stdout).toContain(content);
      expect(stderr).toBe('');
      expect(status).toBe(0);
    }),
  );
});
