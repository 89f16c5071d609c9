import { describe, expect, it } from 'vitest';
import { inFolder, trialpiece } from './program.js';

const output = (words: readonly string[], check: (text: string) => void, files: Readonly<Record<string, string>> = {}) =>
  inFolder(files, (folder) => {
    const { status, stdout, stderr } = trialpiece(folder, ...words);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    check(stdout);
  });

const line = (text: string, start: string) => text.split('\n').find((candidate) => candidate.startsWith(`${start} `)) ?? '';

describe('list', () => {
  it('tells the parts, one a line', () =>
    output(['list'], (text) => {
      expect(line(text, 'crosshead')).toMatch(/^crosshead {2,}Two-bar crosshead: /);
      expect(line(text, 'crosshead-pin')).toMatch(/^crosshead-pin {2,}Turned pin /);
    }));

  it('lists parts where nothing is said', () =>
    inFolder({}, (folder) => {
      expect(trialpiece(folder, 'list')).toEqual(trialpiece(folder, 'list', 'parts'));
    }));

  it('tells the papers with their sizes', () =>
    // ISO 216: A4 is 210 x 297 mm, A3 297 x 420 mm. ANSI/ASME Y14.1: sheets of 8.5 x 11 in and 11 x 17 in.
    output(['list', 'papers'], (text) => {
      expect(line(text, 'A4')).toMatch(/210 x 297 mm$/);
      expect(line(text, 'A3')).toMatch(/297 x 420 mm$/);
      expect(line(text, 'Letter')).toMatch(/215.9 x 279.4 mm$/);
      expect(line(text, 'Tabloid')).toMatch(/279.4 x 431.8 mm$/);
    }));

  it.each([
    ['threads', '0-80 UNF'],
    ['drills', '#53'],
    ['stock', '7/16 in'],
  ])('tells the %s', (what, name) => output(['list', what], (text) => expect(line(text, name)).not.toBe('')));
});

describe('show', () => {
  it('tells a parameter with its kind, default, limits and meaning', () =>
    output(['show', 'crosshead-pin'], (text) => {
      expect(line(text, 'tailThread')).toMatch(/^tailThread +thread +10-32 +0\.06 in to 0\.75 in +thread for the nut$/);
      expect(line(text, 'barDiameter')).toMatch(/^barDiameter +round stock +7\/16 in +3\/16 in to 2 in +diameter of the bar$/);
    }));

  it('tells the relations in the units asked for', () =>
    output(['show', 'crosshead-pin', '--units', 'mm'], (text) =>
      expect(text).toMatch(/the thread passes through the cross bore: thread diameter \(4\.826 mm\) < pin diameter \(6\.35 mm\)/),
    ));

  it('takes the path of a plain JavaScript module', () =>
    output(
      ['show', 'own.mjs'],
      (text) => {
        expect(line(text, 'end')).toMatch(/^end +choice +round +round, square +the end$/);
        expect(line(text, 'lean')).toMatch(/^lean +angle +5° +0° to 10° +the lean$/);
      },
      {
        'own.mjs': `export default { name: 'own', title: 'Own', summary: 'A part.', relations: () => [], build: () => ({}), parameters: {
          end: { kind: 'choice', label: 'the end', default: 'round', options: ['round', 'square'] },
          lean: { kind: 'angle', label: 'the lean', default: 5, minimum: 0, maximum: 10 } } };`,
      },
    ));
});
