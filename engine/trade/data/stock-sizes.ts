/**
 * Sizes that hobby metal suppliers commonly stock (common practice, from memory; no standard): inch sizes as fractions,
 * metric ones in mm. What is larger than those keep is listed as mills draw it (from memory): inch squares and hexagons over
 * 1-1/2 and 1 in, and flats over 3 in wide or 1 in thick, as commonly drawn to ASTM A108; metric ones over 40 and 27 mm, and
 * flats over 75 mm wide or 25 mm thick, among the sizes of EN 10278 (bright) and EN 10058 (hot rolled).
 */
const roundInch = '1/16 3/32 1/8 5/32 3/16 7/32 1/4 5/16 3/8 7/16 1/2 9/16 5/8 11/16 3/4 7/8 1 1-1/8 1-1/4 1-3/8 1-1/2 1-3/4 2 2-1/4 2-1/2 3';
const roundMetric = '1.5 2 2.5 3 4 5 6 7 8 9 10 12 14 15 16 18 20 22 25 28 30 32 35 40 45 50 55 60';

export const stockLists: Readonly<Record<string, { readonly in: string; readonly mm: string }>> = {
  'round bar': { in: roundInch, mm: roundMetric },
  'square bar': { in: '1/8 3/16 1/4 5/16 3/8 7/16 1/2 5/8 3/4 7/8 1 1-1/4 1-1/2 1-3/4 2 2-1/4 2-1/2 3 3-1/2 4', mm: '3 4 5 6 8 10 12 14 16 18 20 22 25 30 40 50 60 70 80 100' },
  'hexagon bar': {
    in: '5/32 3/16 7/32 1/4 9/32 5/16 11/32 3/8 7/16 1/2 9/16 5/8 11/16 3/4 7/8 1 1-1/8 1-1/4 1-3/8 1-1/2 1-5/8 1-3/4 2 2-1/4 2-1/2 3',
    mm: '3 4 5 5.5 6 7 8 9 10 11 12 13 14 17 19 22 24 27 30 32 36 41 46 50 55 60 65 70 75 80',
  },
  'flat thickness': { in: '1/16 3/32 1/8 5/32 3/16 1/4 5/16 3/8 1/2 5/8 3/4 1 1-1/4 1-1/2 2 2-1/2 3', mm: '1.5 2 2.5 3 4 5 6 8 10 12 15 16 20 25 30 40 50 60' },
  'sheet/plate': { in: '1/64 1/32 3/64 1/16 3/32 1/8 5/32 3/16 1/4 5/16 3/8 1/2', mm: '0.5 0.7 0.8 0.9 1 1.2 1.5 2 2.5 3 4 5 6 8 10 12' },
  'silver steel': {
    in: '1/16 5/64 3/32 7/64 1/8 9/64 5/32 11/64 3/16 7/32 1/4 9/32 5/16 3/8 7/16 1/2 9/16 5/8 3/4 7/8 1',
    mm: '1 1.5 2 2.5 3 3.5 4 4.5 5 5.5 6 6.5 7 8 9 10 11 12 13 14 15 16 18 20 22 25',
  },
  tube: { in: '1/16 3/32 1/8 5/32 3/16 7/32 1/4 9/32 5/16 3/8 7/16 1/2 9/16 5/8 3/4 7/8 1', mm: '2 3 4 5 6 8 10 12 15 18 20 22 25 28' },
  shim: {
    in: '0.0010 0.0015 0.0020 0.0030 0.0040 0.0050 0.0060 0.0070 0.0080 0.0100 0.0120 0.0150 0.0200 0.0250 0.0310',
    mm: '0.025 0.05 0.075 0.1 0.125 0.15 0.2 0.25 0.3 0.4 0.5 0.8',
  },
};

const widths = '3/8 1/2 5/8 3/4 1 1-1/4 1-1/2 2 2-1/2 3';
const metricWidths = '10 12 15 16 20 25 30 40 50 60 75';

/** Flat bar as thickness, then the widths in which it is stocked. */
export const flatBars: readonly (readonly [unit: 'in' | 'mm', thickness: string, widths: string])[] = [
  ...['1/16', '3/32', '1/8', '5/32', '3/16'].map((thickness) => ['in', thickness, `1/4 5/16 ${widths}`] as const),
  ['in', '1/4', `${widths} 4`],
  ['in', '5/16', '1/2 5/8 3/4 1 1-1/4 1-1/2 2 3 4'],
  ['in', '3/8', '1/2 5/8 3/4 1 1-1/4 1-1/2 2 3 4'],
  ['in', '1/2', '5/8 3/4 1 1-1/4 1-1/2 2 2-1/2 3 4 5 6'],
  ['in', '5/8', '1 1-1/4 1-1/2 2 3 4 5 6'],
  ['in', '3/4', '1 1-1/4 1-1/2 2 3 4 5 6'],
  ['in', '1', '1-1/4 1-1/2 2 3 4 5 6'],
  ['in', '1-1/4', '1-1/2 2 2-1/2 3 4 5 6'],
  ['in', '1-1/2', '2 2-1/2 3 4 5 6'],
  ['in', '2', '2-1/2 3 4 5 6'],
  ['in', '2-1/2', '3 4'],
  ['in', '3', '4'],
  ...['1.5', '2', '2.5', '3', '4', '5', '6'].map((thickness) => ['mm', thickness, metricWidths] as const),
  ['mm', '8', '12 15 16 20 25 30 40 50 60 80'],
  ['mm', '10', '15 16 20 25 30 40 50 60 75 80 100'],
  ['mm', '12', '20 25 30 40 50 60 75 80 100'],
  ['mm', '15', '20 25 30 40 50 60 80 100'],
  ['mm', '16', '20 25 30 40 50'],
  ['mm', '20', '25 30 40 50 60 75 80 100'],
  ['mm', '25', '30 40 50 60 75 80 100'],
  ['mm', '30', '40 50 60 80 100'],
  ['mm', '40', '50 60 80 100'],
  ['mm', '50', '60 80 100'],
  ['mm', '60', '80 100'],
];
