import { builtInPart } from './find-part.js';
import { FORMATS, printPart } from './print-part.js';
import { writeFiles } from './write-files.js';

/** Two parts that go together, enough to show what a print is. */
const shown = ['crosshead', 'crosshead-pin'] as const;

/** Prints them in both hands, at their defaults, into the folder out, and lists the files. */
const choices = { settings: {}, hand: 'both', units: undefined, secondary: false, paper: undefined, scale: undefined, angle: 'third' } as const;

for (const name of shown) {
  const prints = await printPart(await builtInPart(name), choices, FORMATS);
  for (const path of await writeFiles('out', prints.flatMap(({ files }) => files))) console.log(path);
}
