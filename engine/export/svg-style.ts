import { fontFamily, subsetFont, type FontStyle } from '../lettering/index.js';
import type { InkSheet } from './ink.js';

const weights: Readonly<Record<FontStyle, string>> = { normal: 'normal', bold: 'bold' };
const styles = Object.keys(weights) as readonly FontStyle[];

/** Characters that stand on the sheet in a style, signs included. */
function charactersOf(sheet: InkSheet, style: FontStyle): ReadonlySet<string> {
  const ink = sheet.groups.flatMap((group) => group.layers.flatMap((layer) => layer.ink));
  return new Set(ink.flatMap((each) => (each.kind === 'text' && each.style === style ? [...each.text] : [])));
}

/** The style sheet of a page: its fonts, cut down to the characters that stand on it, and how letters are set. */
export async function styleSheet(sheet: InkSheet): Promise<string> {
  const rules: string[] = [];
  for (const style of styles) {
    const characters = charactersOf(sheet, style);
    if (characters.size === 0) continue;
    const data = Buffer.from(await subsetFont(style, characters)).toString('base64');
    rules.push(`@font-face{font-family:"${fontFamily}";font-weight:${weights[style]};src:url(data:font/ttf;base64,${data}) format("truetype")}`);
  }
  rules.push('.stroke{fill:none;stroke:#000000;stroke-linejoin:round}');
  rules.push(`text{font-family:"${fontFamily}","DejaVu Sans",sans-serif;font-kerning:none;font-variant-ligatures:none;white-space:pre}`);
  return rules.join('\n');
}
