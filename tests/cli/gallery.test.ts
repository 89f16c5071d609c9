import { readFile, readdir } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { galleryFiles } from '../../cli/gallery-files.js';

describe('the gallery', () => {
  it('holds the sheets as the program makes them now, and nothing else', async () => {
    const files = await galleryFiles();
    expect([...(await readdir('out/gallery'))].sort()).toEqual(files.map(({ name }) => name).sort());
    for (const { name, content } of files) expect(await readFile(`out/gallery/${name}`, 'utf8'), `${name}: run npm run gallery`).toBe(String(content));
  });
});
