import { createRequire } from 'node:module';
import { fontFiles, type FontStyle } from './font.js';

/** The path of a style's font file on this machine. */
export function fontPath(style: FontStyle): string {
  return createRequire(import.meta.url).resolve(fontFiles[style]);
}
