import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openPdf, textsOf } from '../support/read-pdf.js';
import { everythingIn, inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

interface PackRecord {
  readonly pages: number;
  readonly documents: readonly { readonly name: string; readonly firstPage: number; readonly pages: number }[];
}

describe('pack', () => {
  it('binds all sheets into one PDF whose pages are where its contents and its record say', () =>
    inFolder({}, async (folder) => {
      const { status, stderr, stdout } = trialpiece(folder, 'pack', 'gland-nut');
      expect([status, stderr]).toEqual([0, '']);
      expect(stdout.trim().split('\n').sort()).toEqual(everythingIn(join(folder, 'out')).map((name) => join('out', name)));
      const record = JSON.parse(readFileSync(join(folder, 'out', 'gland-nut-pack.json'), 'utf8')) as PackRecord;
      const pdf = await openPdf(readFileSync(join(folder, 'out', 'gland-nut-pack.pdf')));
      expect(pdf.numPages).toBe(record.pages);
      let next = record.documents[0]!.firstPage;
      for (const { name, firstPage, pages } of record.documents) {
        expect(firstPage).toBe(next);
        next += pages;
        for (let page = firstPage; page < next; page += 1) expect((await textsOf(await pdf.getPage(page))).map(({ text }) => text)).toContain(`${name}: page ${String(page)} of ${String(record.pages)}`);
      }
      expect(next - 1).toBe(record.pages);
      // The outline has the contents, then a bookmark for each document with its sheets under it.
      const outline = await pdf.getOutline();
      expect(outline.map(({ title }) => title)).toEqual(['Contents', ...record.documents.map(({ name }) => name)]);
      expect(outline.slice(1).map(({ items }) => items.length)).toEqual(record.documents.map(({ pages }) => pages));
    }));

  it('refuses what print refuses', () => expectRefusal(['pack', 'gland-nut', '--paper', 'A9'], /"A9"/));
});
