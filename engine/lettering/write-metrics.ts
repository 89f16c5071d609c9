import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { FontStyle } from './font.js';
import { metricsSource } from './metrics-source.js';

// Run after a change of font or of characters: `npx jiti engine/lettering/write-metrics.ts`.
const styles: readonly FontStyle[] = ['normal', 'bold'];
for (const style of styles) {
  await writeFile(fileURLToPath(new URL(`./metrics-${style}.ts`, import.meta.url)), await metricsSource(style));
}
