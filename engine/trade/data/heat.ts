/** Temperatures in degrees Celsius; colours are subjective and sources differ by up to 15 degrees. */
type Heat = readonly [name: string, low: number, high: number, use: string, source: string];

const old = 'machine-shop text of about 1922, average of up to five authorities (read)';
const hobby = 'hobby page on heat treating silver steel (read)';
const texts = 'workshop textbooks (memory)';

export const temperingColours: readonly Heat[] = [
  ['faint yellow', 221, 221, 'scrapers, lathe tools for brass', old],
  ['light straw', 232, 238, 'lathe tools, milling cutters', texts],
  ['dark straw', 232, 260, 'drills, taps, dies (average 248)', old],
  ['brown', 254, 260, 'taps, reamers, punches', texts],
  ['reddish purple', 266, 277, 'punches, cold sets (average 273)', old],
  ['purple', 275, 282, 'cold chisels for steel', texts],
  ['bluish purple', 288, 290, 'cold chisels, screwdrivers (average 288)', old],
  ['dark blue', 293, 300, 'screwdrivers, springs', texts],
  ['greenish blue', 329, 332, 'too soft for most tools (average 331)', old],
  ['pale yellow', 221, 221, '', hobby],
  ['straw', 230, 230, '', hobby],
  ['brown (hobby page)', 254, 254, '', hobby],
  ['brown to purple', 266, 266, '', hobby],
  ['purple (hobby page)', 277, 277, '', hobby],
  ['dark blue (hobby page)', 316, 316, '', hobby],
  ['pale straw', 221, 221, '', 'encyclopedia article on tempering (read)'],
  ['straw (encyclopedia)', 238, 238, '', 'encyclopedia article on tempering (read)'],
  ['purple (encyclopedia)', 277, 277, '', 'encyclopedia article on tempering (read)'],
  ['blue', 304, 304, '', 'encyclopedia article on tempering (read)'],
  ['deep blue', 310, 310, '', 'encyclopedia article on tempering (read)'],
];

export const hardeningTemperatures: readonly Heat[] = [
  ['harden silver steel', 770, 780, 'quench in water; about 5 minutes soak for each 6 mm', hobby],
  ['harden silver steel (maker)', 770, 790, 'quench in water', 'maker data sheets (memory)'],
  ['harden gauge plate (O1)', 790, 815, 'quench in oil', 'tool-steel handbook, 1450 to 1500 F (memory)'],
  ['harden W1 tool steel', 760, 845, 'quench in water or brine', 'tool-steel handbook, 1400 to 1550 F (memory)'],
  ['anneal silver steel', 760, 780, 'cool in the furnace', 'maker data sheets (memory, uncertain)'],
  ['anneal gauge plate (O1)', 770, 790, 'cool 20 C an hour', 'tool-steel handbook (memory, uncertain)'],
  ['case-harden mild steel', 880, 930, 'carburise; then quench from 760 to 780', 'standard texts (memory)'],
  ['set piston rings', 580, 620, 'iron, on a spacer', 'hobby practice (memory)'],
];

export const heatColours: readonly Heat[] = [
  ['just visible red', 500, 600, '', hobby],
  ['dull cherry red', 700, 750, '', 'workshop textbooks (memory)'],
  ['cherry red', 750, 825, '', hobby],
  ['bright cherry red', 825, 875, '', hobby],
  ['brightest red', 900, 950, '', hobby],
  ['orange', 950, 1000, '', 'workshop textbooks (memory)'],
  ['lemon', 1100, 1200, '', hobby],
  ['white', 1200, 1300, '', hobby],
];
