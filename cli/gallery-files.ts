import { builtInPart } from './find-part.js';
import { printAlone } from './print-alone.js';
import { requestOf } from './print-request.js';
import type { NamedFile } from './write-files.js';

/** Parts whose first sheet stands in the gallery, and the hand that is shown. */
const shown = [
  ['crosshead', 'right'],
  ['crosshead-pin', 'right'],
] as const;

/** The first sheet of some built-in parts at their defaults, as the README shows them. */
export async function galleryFiles(): Promise<readonly NamedFile[]> {
  const files: NamedFile[] = [];
  for (const [name, hand] of shown) {
    const prints = await printAlone(requestOf(await builtInPart(name), {
      settings: {},
      hand,
      units: undefined,
      secondary: false,
      paper: undefined,
      scale: undefined,
      angle: 'third',
    }), ['svg']);
    files.push(prints.flatMap((print) => print.files).find((file) => file.name.endsWith('.svg'))!);
  }
  return files;
}
