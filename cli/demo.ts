import { builtInPart, builtInParts } from './find-part.js';
import { filesOf, FORMATS, printPart } from './print-part.js';
import { writeFiles } from './write-files.js';

/** Prints every built-in part in both hands, at its defaults, into the folder out, and lists the files. */
const choices = { settings: {}, hand: 'both', units: undefined, secondary: false, paper: undefined, scale: undefined, angle: 'third' } as const;

for (const name of builtInParts()) {
  const prints = await printPart(await builtInPart(name), choices);
  for (const path of await writeFiles('out', await filesOf(prints, FORMATS))) console.log(path);
}
