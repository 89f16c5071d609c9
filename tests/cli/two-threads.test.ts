import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { collectFixtures } from '../../cli/collect-fixtures.js';
import { plainData } from '../../cli/plain-data.js';
import { filesOf, FORMATS } from '../../cli/print-files.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { makePack } from '../../engine/sheet/pack/make-pack.js';
import { generatorOf, makePrintsOf } from '../support/print.js';
import { everythingIn, inFolder, trialpiece } from './program.js';

/** The files in a folder by name, as texts of their bytes. */
const contents = (folder: string): Readonly<Record<string, string>> =>
  Object.fromEntries(everythingIn(folder).map((name) => [name, readFileSync(join(folder, name)).toString('latin1')]));

describe('the two threads of a print', () => {
  it('give both hands byte for byte as one thread does, one after the other', () =>
    inFolder({}, async (folder) => {
      expect(trialpiece(folder, 'print', 'crosshead', '--hand', 'both', '--paper', 'A3', '--out', 'both')).toMatchObject({ status: 0, stderr: '' });
      const printed = contents(join(folder, 'both'));
      const made: Record<string, string> = {};
      for (const print of await makePrintsOf('crosshead', { hand: 'both', paper: 'A3', secondary: false }))
        for (const { name, content } of await filesOf([print], FORMATS)) made[name] = Buffer.from(content).toString('latin1');
      expect(Object.keys(printed)).toEqual(Object.keys(made).sort());
      expect(Object.keys(made).filter((name) => printed[name] !== made[name])).toEqual([]);
    }));

  it('give a hand alone as they give it with the other', () =>
    inFolder({}, (folder) => {
      for (const hand of ['both', 'right', 'left'] as const) trialpiece(folder, 'print', 'crosshead', '--hand', hand, '--paper', 'A3', '--out', hand);
      const [both, right, left] = ['both', 'right', 'left'].map((hand) => contents(join(folder, hand))) as [Record<string, string>, Record<string, string>, Record<string, string>];
      const names = Object.keys(both).filter((name) => !name.endsWith('.json'));
      expect([...Object.keys(right), ...Object.keys(left)].sort()).toEqual(Object.keys(both).sort());
      expect(names.filter((name) => both[name] !== { ...right, ...left }[name])).toEqual([]);
    }));

  it('tell a mistake of the second as the first would: one sentence, and nothing written', () =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'print', 'crosshead', '--hand', 'left', '--paper', 'A4', '--scale', '20:1');
      expect([status, stdout]).toEqual([2, '']);
      expect(stderr).toMatch(/^the print of the crosshead does not fit A4 at 20:1: [^\n]*\n$/);
      expect(everythingIn(folder)).toEqual([]);
    }));
});

describe('the two threads of a pack', () => {
  it('give the documents of a part as one thread gives them', () =>
    inFolder({}, async (folder) => {
      expect(trialpiece(folder, 'pack', 'gland-nut', '--out', 'packed')).toMatchObject({ status: 0, stderr: '' });
      const generator = await generatorOf('gland-nut');
      const request = { generator, values: resolveValues(generator, {}, undefined), hand: 'both', units: undefined, paper: undefined, scale: undefined, angle: 'third', secondary: false } as const;
      const made = await filesOf([await makePack(request, await collectFixtures())], ['pdf']);
      const drawn = made.find(({ name }) => name.endsWith('.pdf'))!;
      expect(Buffer.from(drawn.content).equals(readFileSync(join(folder, 'packed', drawn.name)))).toBe(true);
    }));

  it('tell the mistake that one thread would meet first', () =>
    inFolder({}, (folder) => {
      const { status, stderr } = trialpiece(folder, 'pack', 'gland-nut', '--paper', 'A4', '--scale', '20:1');
      expect(status).toBe(2);
      expect(stderr).toMatch(/^the print of the gland-nut does not fit A4 at 20:1: [^\n]*\n$/);
      expect(everythingIn(folder)).toEqual([]);
    }));
});

describe('plain data', () => {
  it.each([
    ['figures, words and lists of them', { size: 1, names: ['a', undefined], none: null, deep: [[{ far: Infinity }]] }, true],
    ['a function', { build: () => 1 }, false],
    ['an object of a class', { when: [new Date(0)] }, false],
    ['a symbol among the keys', { [Symbol('odd')]: 1 }, false],
  ])('%s', (_, value, plain) => {
    expect(plainData(value)).toBe(plain);
  });
});
