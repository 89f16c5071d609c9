import { hexagonNutsInch, hexagonNutsMetric, machineScrewNuts } from './data/nuts.js';
import type { ScrewRow } from './screw-row.js';

const inch = (value: number): number => Number((value * 25.4).toFixed(4));

type Row = readonly [string, number, number, number, number, number, number?];

function nut([screw, flatsMax, flatsMin, corners, thickMax, thickMin, thinMax]: Row, kind: ScrewRow['kind'], cornersName: string, scale: (value: number) => number, source: string): ScrewRow {
  return {
    name: `${screw} ${kind}`,
    screw,
    kind,
    sizes: {
      acrossFlats: scale(flatsMax),
      acrossFlatsMin: scale(flatsMin),
      [cornersName]: scale(corners),
      thickness: scale(thickMax),
      thicknessMin: scale(thickMin),
      ...(thinMax === undefined ? {} : { thinThickness: scale(thinMax) }),
    },
    source,
  };
}

export const nutRows: readonly ScrewRow[] = [
  ...machineScrewNuts.map((row) => nut(row, 'machine screw nut', 'acrossCornersMax', inch, "ASME B18.6.3 (read in two makers' tables; Nos. 1, 5, 6 and 1/4 memory)")),
  ...hexagonNutsInch.map((row) => nut(row, 'hexagon nut', 'acrossCornersMax', inch, 'ASME B18.2.2-2015 (read; 5/16 memory); thin: jam nut')),
  ...hexagonNutsMetric.map((row) => nut(row, 'hexagon nut', 'acrossCornersMin', (value) => value, 'ISO 4032 (read; M2, M4, M5, M12 memory); thin: ISO 4035 (memory)')),
];
