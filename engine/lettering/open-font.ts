import { readFile } from 'node:fs/promises';
import type { Font } from 'fontkit';
import type { FontStyle } from './font.js';
import { fontPath } from './font-path.js';
import { readTables } from './sfnt.js';

/** A font file, opened once however many sheets are lettered with it: opening takes longer than cutting a font down. */
export interface OpenFont {
  readonly font: Font;
  readonly os2: Uint8Array | undefined;
}

const opened = new Map<FontStyle, Promise<OpenFont>>();

async function open(style: FontStyle): Promise<OpenFont> {
  const [{ create }, bytes] = await Promise.all([import('fontkit'), readFile(fontPath(style))]);
  return { font: create(bytes), os2: readTables(bytes).get('OS/2') };
}

/** The font of a style, opened when it is first asked for. */
export function openFont(style: FontStyle): Promise<OpenFont> {
  const known = opened.get(style) ?? open(style);
  opened.set(style, known);
  return known;
}
