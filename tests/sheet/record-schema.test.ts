import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printRecordJsonSchema, printRecordSchema } from '../../engine/sheet/record-schema.js';
import { printedParts, printsOf } from '../support/print.js';

const published = new URL('../../templates/print-record.schema.json', import.meta.url);

describe('the schema of the print record', () => {
  // Written anew by `npx vitest run tests/sheet/record-schema.test.ts --update`.
  it('is the one that is published', async () => {
    await expect(printRecordJsonSchema()).toMatchFileSnapshot(published.pathname);
  });

  it('is published as JSON Schema, closed against fields that it does not name', () => {
    const schema = JSON.parse(readFileSync(published, 'utf8')) as { readonly $schema: string; readonly additionalProperties: boolean; readonly required: readonly string[] };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.additionalProperties).toBe(false);
    expect(schema.required).toContain('dimensions');
  });
});

describe.each(printedParts)('the records of the %s', (name) => {
  it('hold to the schema, also after a journey through a file', async () => {
    for (const { record } of await printsOf(name)) {
      expect(printRecordSchema.parse(record)).toEqual(record);
      expect(printRecordSchema.parse(JSON.parse(JSON.stringify(record)))).toEqual(record);
    }
  });

  it('would be refused with a field too many or too few', async () => {
    const [{ record } = { record: undefined }] = await printsOf(name);
    const less = Object.fromEntries(Object.entries(record!).filter(([field]) => field !== 'units'));
    expect(printRecordSchema.safeParse(record).success).toBe(true);
    expect(printRecordSchema.safeParse({ ...record, mass: 3 }).success).toBe(false);
    expect(printRecordSchema.safeParse(less).success).toBe(false);
  });

  it('number the sheets, and name views that are there', async () => {
    for (const { record, drawing } of await printsOf(name)) {
      expect(record.sheets.map(({ number }) => number)).toEqual(drawing.sheets.map((_, i) => i + 1));
      expect(record.sheets.map(({ title }) => title)).toEqual(drawing.sheets.map(({ title }) => title));
      for (const { view, sheet } of record.dimensions) expect(record.views.filter(({ id }) => id === view).map((each) => each.sheet)).toEqual([sheet]);
      for (const { sheet } of record.operations) expect(record.sheets.map(({ number }) => number)).toContain(sheet);
    }
  });

  it('pass every check', async () => {
    for (const { record } of await printsOf(name)) for (const check of record.checks) expect([check.name, check.passed]).toEqual([check.name, true]);
  });

  it('keep every size between its limits', async () => {
    for (const { record } of await printsOf(name))
      for (const { id, nominal, lower, upper } of record.dimensions) {
        if (lower !== null && upper !== null) expect([id, lower < upper]).toEqual([id, true]);
        if (nominal !== null && lower !== null && upper !== null) expect([id, Math.abs(nominal - (lower + upper) / 2) < 0.2]).toEqual([id, true]);
      }
  });
});
