import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { row, RowSpace } from '../../engine/sheet/dimension/row-space.js';

const names = ['a', 'b', 'c', 'd', 'e', 'f'] as const;

/** Rank by elimination with fractions on a plain table: the schoolbook way, written apart from the engine's. */
function rankOf(table: readonly (readonly number[])[]): number {
  const rows = table.map((line) => line.map((value) => new Fraction(value)));
  let rank = 0;
  for (let column = 0; column < names.length; column += 1) {
    const pivot = rows.findIndex((line, i) => i >= rank && !line[column]!.equals(0));
    if (pivot < 0) continue;
    [rows[rank], rows[pivot]] = [rows[pivot]!, rows[rank]!];
    const by = rows[rank]!;
    rows.forEach((line, i) => {
      if (i === rank) return;
      const share = line[column]!.div(by[column]!);
      rows[i] = line.map((value, k) => value.sub(share.mul(by[k]!)));
    });
    rank += 1;
  }
  return rank;
}

const rowOf = (line: readonly number[]) => row(...line.map((value, i) => [names[i]!, value] as const));

const tables = fc.array(fc.array(fc.integer({ min: -3, max: 3 }), { minLength: names.length, maxLength: names.length }), { minLength: 1, maxLength: 9 });

describe('RowSpace', () => {
  it('has the rank that elimination with fractions gives', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const space = new RowSpace();
        const kept = table.filter((line) => space.add(rowOf(line)));
        expect(space.rank).toBe(rankOf(table));
        expect(kept.length).toBe(space.rank);
      }),
      { seed: 20, numRuns: 300 },
    );
  });

  it('spans a row just when the row does not raise the rank', () => {
    fc.assert(
      fc.property(tables, fc.array(fc.integer({ min: -3, max: 3 }), { minLength: names.length, maxLength: names.length }), (table, line) => {
        const space = new RowSpace();
        for (const each of table) space.add(rowOf(each));
        expect(space.spans(rowOf(line))).toBe(rankOf([...table, line]) === rankOf(table));
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it('keeps apart what decimals would call equal', () => {
    const space = new RowSpace();
    const big = 2 ** 52;
    expect(space.add(row(['a', big], ['b', big + 1]))).toBe(true);
    expect(space.add(row(['a', big + 1], ['b', big + 2]))).toBe(true);
    expect(space.add(row(['a', 2 * big], ['b', 2 * big + 2]))).toBe(false);
  });

  it('adds up the coefficients of one name', () => {
    expect([...row(['a', 1], ['b', 2], ['a', -1])]).toEqual([['b', 2n]]);
  });
});
