import { nutRows } from './nuts.js';
import { britishAssociation } from './british-association-threads.js';
import type { ScrewRow } from './screw-row.js';
import * as heads from './data/screw-heads.js';

export type { ScrewRow } from './screw-row.js';

const inch = (value: number): number => Number((value * 25.4).toFixed(4));

function simpleHeads(rows: readonly (readonly [string, number, number, number?])[], kind: ScrewRow['kind'], across: string, scale: (value: number) => number, source: string): readonly ScrewRow[] {
  return rows.map(([screw, size, height, key]) => ({
    name: `${screw} ${kind}`,
    screw,
    kind,
    sizes: { [across]: scale(size), height: scale(height), ...(key === undefined ? {} : { key: scale(key) }) },
    source,
  }));
}

const same = (value: number): number => value;

/**
 * British Association heads in proportion to the diameter: countersunk 90 degrees and hexagon both 1.75 D across (BS 57,
 * from memory; the countersunk ones uncertain by a few hundredths, for a stored copy of its round heads prints 0.319 in at
 * 2 BA and 0.252 in at 4 BA, where the proportion gives 0.324 and 0.248): measure the screws.
 */
const britishHeads: readonly ScrewRow[] = britishAssociation
  .filter(({ acrossFlats }) => acrossFlats !== undefined)
  .flatMap(({ designation: screw, major, acrossFlats = 0 }): readonly ScrewRow[] => [
    { name: `${screw} countersunk`, screw, kind: 'countersunk', sizes: { major, angle: 90, headTheoretical: Number((1.75 * major).toFixed(3)), height: Number((0.375 * major).toFixed(3)) }, source: 'BS 57:1951 proportion 1.75 D (memory, uncertain)' },
    { name: `${screw} hexagon head`, screw, kind: 'hexagon head', sizes: { acrossFlats: Number(acrossFlats.toFixed(4)), height: Number((0.75 * major).toFixed(3)) }, source: 'BS 57:1951 proportions: flats 1.75 D, height 0.75 D (memory)' },
  ]);

export const screwRows: readonly ScrewRow[] = [
  ...heads.countersunkInch.map(([screw, major, sharp, max, min, height]): ScrewRow => ({
    name: `${screw} countersunk`,
    screw,
    kind: 'countersunk',
    sizes: { major: inch(major), angle: 82, headTheoretical: inch(sharp), headMax: inch(max), headMin: inch(min), height: inch(height) },
    source: 'ASME B18.6.3-2013 (head and height read, No. 1, 5, 6, 1/4, 7/16, 1/2 memory); theoretical head of the 1972 edition (memory): the editions differ by the real edge',
  })),
  ...heads.countersunkMetric.map(([screw, theoretical, max, min, height]): ScrewRow => ({
    name: `${screw} countersunk`,
    screw,
    kind: 'countersunk',
    sizes: { major: Number(screw.slice(1)), angle: 90, headTheoretical: theoretical, headMax: max, headMin: min, height },
    source: 'ISO 2009 and ISO 7046-1 (memory; height = (theoretical head - d) / 2)',
  })),
  ...heads.socketCountersunkMetric.map(([screw, theoretical, min, height]): ScrewRow => ({
    name: `${screw} socket countersunk`,
    screw,
    kind: 'socket countersunk',
    sizes: { major: Number(screw.slice(1)), angle: 90, headTheoretical: theoretical, headMin: min, height },
    source: 'ISO 10642:2004 (memory): larger than slotted heads of the same screw',
  })),
  ...simpleHeads(heads.cheeseMetric, 'cheese head', 'head', same, 'ISO 1207 (memory)'),
  ...simpleHeads(heads.fillisterInch, 'fillister head', 'head', inch, 'ASME B18.6.3 (memory)'),
  ...simpleHeads(heads.hexagonMetric, 'hexagon head', 'acrossFlats', same, 'ISO 4017 (memory)'),
  ...simpleHeads(heads.capMetric, 'socket cap', 'head', same, 'ISO 4762 (memory)'),
  ...simpleHeads(heads.capInch, 'socket cap', 'head', inch, 'ASME B18.3 (memory)'),
  ...britishHeads,
  ...nutRows,
];
