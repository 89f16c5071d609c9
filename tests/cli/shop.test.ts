import { describe, expect, it } from 'vitest';
import { inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const GOOD = `units: in
paper: Letter
machines:
  - name: lathe
    kind: lathe
    swing: 7
    speeds: [60, 120, 240]
    dials: {cross: {per-turn: 0.1, division: 0.001, reads: diameter}}
  - {name: mill, kind: mill, speeds: {from: 100, to: 3000}, read-out: true}
drills: ["#1 to #60", letters]
taps: [0-80, 2 BA]
dies: []
`;

describe('shop check', () => {
  it('tells what a file says that is in order', () =>
    inFolder({ 'shop.yaml': GOOD }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'shop', 'check');
      expect([status, stderr]).toEqual([0, '']);
      expect(stdout).toMatch(/^shop\.yaml is in order\.\n\n/);
      for (const line of [
        /^units +in$/m,
        /^paper +letter$/m,
        /^lathe +lathe: swing 7\.000 in; speeds 60, 120, 240 a minute; cross dial \.100 in a turn by \.001 in, reading the diameter; no read-out$/m,
        /^mill +mill: any speed from 100 to 3000 a minute; with read-out$/m,
        /^drills +86: #60; #59; /m,
        /^taps +2: 0-80 UNF; 2 BA$/m,
        /^dies +none$/m,
        /^reamers +not listed: all in the tables count as at hand$/m,
        /^running fit +H8\/f7$/m,
      ]) expect(stdout).toMatch(line);
    }));

  it('takes an empty file as the usual shop, and a mark of byte order', () =>
    inFolder({ 'empty.yaml': '', 'marked.yaml': '\uFEFFunits: in\r\n' }, (folder) => {
      expect(trialpiece(folder, 'shop', 'check', 'empty.yaml').stdout).toMatch(/^units +mm$/m);
      expect(trialpiece(folder, 'shop', 'check', 'marked.yaml').stdout).toMatch(/^units +in$/m);
    }));

  it('tells everything that is wrong, from the top down, each with its line and column', () =>
    inFolder({ 'mine.yaml': 'units: cm\npapr: A4\nmachines:\n  - {name: a, kind: lath, speeds: [-5]}\ndrills: ["#99"]\ntaps: [0-81]\nreamers: [0]\n' }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'shop', 'check', 'mine.yaml');
      expect([status, stdout]).toEqual([2, '']);
      const lines = stderr.trimEnd().split('\n');
      expect(lines.map((line) => /^mine\.yaml, (line \d+, column \d+): .*\.$/.exec(line)?.[1])).toEqual([
        'line 1, column 8', 'line 2, column 1', 'line 4, column 21', 'line 4, column 36', 'line 5, column 10', 'line 6, column 8', 'line 7, column 11',
      ]);
      expect(lines[1]).toMatch(/a shop has no "papr": .*; the nearest is paper\.$/);
      expect(lines[5]).toMatch(/thread "0-81" .*; the nearest is 0-80\.$/);
    }));

  it.each<[string, string, string | RegExp]>([
    ['a list', '- a\n', 'shop.yaml, line 1, column 1: the file is a list: it must be a group of keys.'],
    ['a key twice', 'units: mm\nunits: in\n', 'shop.yaml, line 2, column 1: "units" stands here a second time: a key may stand once.'],
    ['a bare #', 'drills: [#53, #54]\n', /^shop\.yaml, line 1, column 10: a # begins a comment: put a name that begins with # in quotes, as in "#53"\.$/m],
    ['two documents', 'units: mm\n---\nunits: in\n', /^shop\.yaml, line 2, column 1: a second document begins here: /],
    ['a tab', '\tunits: mm\n', 'shop.yaml, line 1, column 1: Tabs are not allowed as indentation.'],
    ['a key that is a list', '? [a]\n: 1\n', 'shop.yaml, line 1, column 3: a key must be a word.'],
    ['__proto__', 'machines:\n  - {name: a, kind: lathe, speeds: [1], travels: {__proto__: 5}}\n', 'shop.yaml, line 2, column 51: "__proto__" is not a key of a shop.'],
    ['constructor', 'constructor: 3\n', /^shop\.yaml, line 1, column 1: a shop has no "constructor": /],
    ['a reference to nothing', 'units: *none\n', 'shop.yaml, line 1, column 8: *none refers to nothing: no &none stands before it.'],
    ['no text', 'units: \0\n', 'shop.yaml is not a text in UTF-8.'],
  ])('refuses %s', (_, text, sentence) =>
    inFolder({ 'shop.yaml': text }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'shop', 'check');
      expect([status, stdout]).toEqual([2, '']);
      if (typeof sentence === 'string') expect(stderr).toBe(`${sentence}\n`);
      else expect(stderr).toMatch(sentence);
      expect(stderr).not.toContain('    at ');
    }));

  it('refuses references that multiply', () => {
    const rows = ['a: &a [x,x,x,x,x,x,x,x,x]', ...['ab', 'bc', 'cd', 'de'].map(([from = '', to = '']) => `${to}: &${to} [${Array.from({ length: 9 }, () => `*${from}`).join(',')}]`)];
    return expectRefusal(['shop', 'check'], 'shop.yaml, line 1, column 1: the references of the file multiply beyond use: write its lists out.', { 'shop.yaml': `${rows.join('\n')}\n` });
  });

  it.each<[string, string[], string]>([
    ['no file', ['check'], 'There is no file shop.yaml.'],
    ['a folder', ['check', '.'], '. is not a file: give the path of a shop file.'],
    ['an empty name', ['check', ''], 'The name of the file is empty.'],
    ['no word', [], 'shop needs <check> [file], as in trialpiece shop check.'],
    ['another word', ['chek'], 'shop "chek" is not known: there are check; the nearest is check.'],
    ['a word too many', ['check', 'a', 'b'], '"b" is one word too many: shop takes just <check> [file].'],
  ])('refuses %s', (_, words, sentence) => expectRefusal(['shop', ...words], sentence));
});
