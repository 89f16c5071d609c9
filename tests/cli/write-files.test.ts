import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeFiles } from '../../cli/write-files.js';
import { UserError } from '../../engine/units/user-error.js';
import { everythingIn, inFolder } from './program.js';

const FILES = [
  { name: 'a.svg', content: '<svg/>' },
  { name: 'b.pdf', content: new Uint8Array([37, 80, 68, 70]) },
];

const within = (use: (folder: string) => Promise<void>) => inFolder({}, use);

describe('writing the files of a print', () => {
  it('makes the folder and gives the paths', () =>
    within(async (folder) => {
      const out = join(folder, 'some/where');
      expect(await writeFiles(out, FILES)).toEqual([join(out, 'a.svg'), join(out, 'b.pdf')]);
      expect(readFileSync(join(out, 'a.svg'), 'utf8')).toBe('<svg/>');
      expect([...readFileSync(join(out, 'b.pdf'))]).toEqual([37, 80, 68, 70]);
      expect(everythingIn(out)).toEqual(['a.svg', 'b.pdf']);
    }));

  it('replaces older files and leaves others alone', () =>
    within(async (folder) => {
      writeFileSync(join(folder, 'a.svg'), 'a longer text than the new one');
      writeFileSync(join(folder, 'mine.txt'), 'mine');
      await writeFiles(folder, FILES);
      expect(readFileSync(join(folder, 'a.svg'), 'utf8')).toBe('<svg/>');
      expect(everythingIn(folder)).toEqual(['a.svg', 'b.pdf', 'mine.txt']);
    }));

  it('takes away sheets that a longer print of the same document left, and nothing else', () =>
    within(async (folder) => {
      const old = ['rod-1.svg', 'rod-2.svg', 'rod-3.svg', 'rod-12.svg', 'rod-plan-3.svg', 'rod-03.svg', 'rod-3.pdf', 'rod-3-old.svg', 'pushrod-3.svg', 'rod-7.svg', 'rod-7.json', 'Rod-3.svg', 'rod-.svg'];
      for (const name of old) writeFileSync(join(folder, name), 'older');
      mkdirSync(join(folder, 'rod-4.svg'));
      const sheets = ['rod-1.svg', 'rod-2.svg'].map((name) => ({ name, content: 'new', sheetOf: 'rod' }));
      await writeFiles(folder, [...sheets, { name: 'rod.json', content: '{}' }]);
      const gone = ['rod-3.svg', 'rod-12.svg'];
      expect(everythingIn(folder)).toEqual([...old.filter((name) => !gone.includes(name)), 'rod-4.svg', 'rod.json'].sort());
      expect(readFileSync(join(folder, 'rod-2.svg'), 'utf8')).toBe('new');
    }));

  it('takes away numbered sheets where one sheet is left of many, and the one where many are made of it', () =>
    within(async (folder) => {
      const write = (...names: string[]) => writeFiles(folder, [...names.map((name) => ({ name, content: '', sheetOf: 'rod' })), { name: 'rod.json', content: '' }]);
      await write('rod-1.svg', 'rod-2.svg');
      await write('rod.svg');
      expect(everythingIn(folder)).toEqual(['rod.json', 'rod.svg']);
      await write('rod-1.svg', 'rod-2.svg');
      expect(everythingIn(folder)).toEqual(['rod-1.svg', 'rod-2.svg', 'rod.json']);
      // A print without sheets of its own leaves them.
      await writeFiles(folder, [{ name: 'rod.pdf', content: '' }]);
      expect(everythingIn(folder)).toEqual(['rod-1.svg', 'rod-2.svg', 'rod.json', 'rod.pdf']);
    }));

  it('keeps older sheets where the new ones cannot be written', () =>
    within(async (folder) => {
      const long = { name: 'x'.repeat(252), content: '' };
      writeFileSync(join(folder, long.name), 'older');
      writeFileSync(join(folder, 'rod-2.svg'), 'older');
      await expect(writeFiles(folder, [{ name: 'rod.svg', content: '', sheetOf: 'rod' }, long])).rejects.toThrow(UserError);
      expect(everythingIn(folder)).toEqual(['rod-2.svg', long.name]);
    }));

  it('writes none where a folder stands in the place of one', () =>
    within(async (folder) => {
      mkdirSync(join(folder, 'b.pdf'));
      await expect(writeFiles(folder, FILES)).rejects.toThrow(
        new UserError(`${join(folder, 'b.pdf')} is a folder: the print cannot be written in its place.`),
      );
      expect(everythingIn(folder)).toEqual(['b.pdf']);
    }));

  it('takes a folder that it made away again where a file cannot be written', () =>
    within(async (folder) => {
      const long = { name: `${'x'.repeat(300)}.svg`, content: '' };
      await expect(writeFiles(join(folder, 'new/out'), [...FILES, long])).rejects.toThrow(
        new UserError(`The folder ${join(folder, 'new/out')} cannot be written: the name is too long; nothing was written.`),
      );
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('leaves every file as it was where one cannot be replaced', () =>
    within(async (folder) => {
      writeFileSync(join(folder, 'a.svg'), 'older');
      // The second name can be written, but what stands in its place cannot be put aside under a longer one.
      const long = { name: 'x'.repeat(252), content: '' };
      writeFileSync(join(folder, long.name), 'older too');
      await expect(writeFiles(folder, [FILES[0]!, long])).rejects.toThrow(new UserError(`The folder ${folder} cannot be written: the name is too long; nothing was written.`));
      expect(readFileSync(join(folder, 'a.svg'), 'utf8')).toBe('older');
      expect(readFileSync(join(folder, long.name), 'utf8')).toBe('older too');
      expect(everythingIn(folder)).toEqual(['a.svg', long.name]);
    }));

  it('ends where a file system makes no folders', async () => {
    await expect(writeFiles('/proc/nowhere/out', FILES)).rejects.toThrow(new UserError('The folder /proc/nowhere/out cannot be written: there is no such place; nothing was written.'));
  });

  it.each([
    ['out', 'a file of that name is in the way'],
    ['out/deeper', 'a file is in the way'],
  ])('tells that a file is in the way of the folder %s', (out, reason) =>
    within(async (folder) => {
      writeFileSync(join(folder, 'out'), 'mine');
      await expect(writeFiles(join(folder, out), FILES)).rejects.toThrow(
        new UserError(`The folder ${join(folder, out)} cannot be written: ${reason}; nothing was written.`),
      );
      expect(readFileSync(join(folder, 'out'), 'utf8')).toBe('mine');
    }),
  );
});
