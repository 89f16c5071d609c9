import { describe, expect, it } from 'vitest';
import type { Size } from '../../engine/part/cut.js';
import { partShown, printedParts, printsOf } from '../support/print.js';
import { millimetresOf } from './reading.js';

/** A callout of a hole, read back from its text alone. Sizes in the print's unit. */
interface ReadHole {
  readonly count: number;
  readonly diameter: number;
  readonly fit?: string;
  readonly depth: number | 'through' | 'into';
  readonly thread?: { readonly designation: string; readonly depth: number | 'through' };
  readonly counterbore?: { readonly diameter: number; readonly depth: number };
  readonly countersink?: { readonly diameter: number; readonly angle: number };
}

const number = String.raw`(\d*\.?\d+)`;
const limits = String.raw`(?: ([A-Z]+\d+))?(?: \([\d.]+\/[\d.]+\))?(?: ±[\d.]+)?`;
/** Count, diameter, fit with its limits, the drill's name, and how deep. */
const holePattern = new RegExp(String.raw`^(?:(\d+)x )?⌀${number}${limits}(?: \([^)]*\))? (?:(THRU)|↧${number}|(into [a-z ]+?))(?: flat bottom)?(?: ream)?(?: Ra [\d.]+)?(?: (\d+) each side)?(?= |$)`);
const borePattern = new RegExp(String.raw`⌴⌀${number}${limits} ↧${number}`);
const sinkPattern = new RegExp(String.raw`⌵⌀${number}${limits} x ${number}°`);
const threadPattern = new RegExp(String.raw`(?:^| )(\d[\w/-]*[-x]\d+ \w+|M[\d.]+(?:x[\d.]+)?|\d+BA)\S* (?:(THRU)|↧${number})`);

function readHole(lines: readonly string[]): ReadHole {
  const text = lines.join(' ').replaceAll(' ▲', '');
  const hole = holePattern.exec(text);
  if (hole === null) throw new Error(`"${text}" is not written as a hole`);
  const rest = text.slice(hole[0].length);
  const [bore, sink, thread] = [borePattern.exec(rest), sinkPattern.exec(rest), threadPattern.exec(rest)];
  return {
    count: Number(hole[1] ?? 1),
    diameter: Number(hole[2]),
    ...(hole[3] === undefined ? {} : { fit: hole[3] }),
    depth: hole[4] !== undefined ? 'through' : hole[5] !== undefined ? Number(hole[5]) : 'into',
    ...(thread === null ? {} : { thread: { designation: thread[1]!, depth: thread[2] !== undefined ? ('through' as const) : Number(thread[3]) } }),
    ...(bore === null ? {} : { counterbore: { diameter: Number(bore[1]), depth: Number(bore[3]) } }),
    ...(sink === null ? {} : { countersink: { diameter: Number(sink[1]), angle: Number(sink[3]) } }),
  };
}

describe.each((['in', 'mm'] as const).map((units) => [units] as const))('hole callouts of the crosshead in %s', (units) => {
  it('read back as the holes that the cuts make', async () => {
    const unit = millimetresOf(units);
    const near = (said: number, value: number): boolean => Math.abs(said * unit - value) <= (units === 'in' ? 0.00005 * 25.4 : 0.0005) + 1e-9;
    for (const print of await printsOf('crosshead', { units })) {
      const part = await partShown(print);
      const sizes = part.operations.flatMap(({ cuts }) => cuts.flatMap((cut) => cut.sizes));
      const callouts = print.record.dimensions.filter(({ kind }) => kind === 'hole');
      const seen = new Set<Size>();
      for (const { id, text } of callouts) {
        const said = readHole(text);
        const cuts = id.split(' ').slice(1);
        const mine = sizes.filter((size) => cuts.includes(size.cut));
        const find = <K extends Size['kind']>(kind: K) => mine.find((size): size is Extract<Size, { kind: K }> => size.kind === kind);
        const [hole, tapping, bore, sink] = [find('hole')!, find('tapping'), find('counterbore'), find('countersink')];
        for (const size of mine) seen.add(size);
        expect([id, near(said.diameter, hole.diameter.value)]).toEqual([id, true]);
        expect([id, said.depth === 'through', said.depth === 'into']).toEqual([id, hole.depth === undefined && hole.into === undefined, hole.into !== undefined]);
        if (hole.depth !== undefined) expect([id, near(said.depth as number, hole.depth.value)]).toEqual([id, true]);
        expect(said.fit).toBe(hole.diameter.tolerance?.kind === 'fit' ? hole.diameter.tolerance.class : undefined);
        const twins = sizes.filter((size) => size.kind === 'hole' && size !== hole && text.some((line) => line.includes('each side')) && size.points.length === hole.points.length && size.diameter.value === hole.diameter.value);
        for (const twin of twins) {
          seen.add(twin);
          for (const size of sizes) if (size.kind === 'tapping' && 'points' in twin && size.points.join() === twin.points.join()) seen.add(size);
        }
        expect([id, said.count]).toEqual([id, hole.points.length * (1 + twins.length)]);
        expect(said.thread?.designation).toBe(tapping?.thread.designation);
        if (tapping?.depth !== undefined) expect([id, near(said.thread!.depth as number, tapping.depth.value)]).toEqual([id, true]);
        expect([id, said.counterbore === undefined, said.countersink === undefined]).toEqual([id, bore === undefined, sink === undefined]);
        if (bore !== undefined) expect([id, near(said.counterbore!.diameter, bore.diameter.value), near(said.counterbore!.depth, bore.depth.value)]).toEqual([id, true, true]);
        if (sink !== undefined) expect([id, near(said.countersink!.diameter, sink.diameter.value), said.countersink!.angle]).toEqual([id, true, sink.angle]);
      }
      const atHoles = sizes.filter(({ kind }) => ['hole', 'tapping', 'counterbore', 'countersink'].includes(kind));
      expect(atHoles.filter((size) => !seen.has(size)).map(({ cut }) => cut)).toEqual([]);
    }
  });
});

describe.each(printedParts)('what is said of the %s', (name) => {
  it('says every size of every cut', async () => {
    for (const print of await printsOf(name)) {
      const part = await partShown(print);
      for (const { cuts } of part.operations)
        for (const { sizes } of cuts)
          for (const size of sizes) {
            // The lower groove's holes share the callout of those over them; the thread says the diameter that it is cut on.
            const elsewhere = /^pad-(holes|threads)-lower$|^tail$/.test(size.cut);
            const shown = print.record.dimensions.some(({ id, feature }) => feature === size.cut || id.split(' ').includes(size.cut));
            expect([size.kind, size.cut, shown || elsewhere]).toEqual([size.kind, size.cut, true]);
          }
    }
  });

  it('sets signs right before their values, angles with their degrees, chamfers as leg x angle', async () => {
    for (const { record } of await printsOf(name))
      for (const { kind, text } of record.dimensions) {
        const [first] = text;
        if (kind === 'diameter') expect(first).toMatch(/^⌀[\d.]/);
        if (kind === 'radius') expect(first).toMatch(/^(\d+x )?R[\d.]/);
        if (kind === 'angle') expect(first).toMatch(/^\d+(\.\d+)?°( ▲)?$/);
        if (kind === 'chamfer') expect(first).toMatch(/^[\d.]+ x \d+°/);
        if (kind === 'texture') expect(['Ra 0.4', 'Ra 0.8', 'Ra 1.6', 'Ra 3.2', 'Ra 6.3', 'Ra 12.5']).toContain(first);
      }
  });

  it('gives limits beside a fit: as many decimals on both, the upper first', async () => {
    for (const { record } of await printsOf(name))
      for (const { text } of record.dimensions)
        for (const [, upper, lower] of text.join(' ').matchAll(/[A-Za-z]+\d+ \(([\d.]+)\/([\d.]+)\)/g)) {
          expect(upper!.length).toBe(lower!.length);
          expect(Number(upper)).toBeGreaterThan(Number(lower));
        }
  });
});
