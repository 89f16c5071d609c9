import type { Paper } from '../paper.js';
import { a3 } from './a3.js';
import { a4 } from './a4.js';
import { letter } from './letter.js';
import { tabloid } from './tabloid.js';

/** Every size of paper that a print may use, in the order in which they are offered. */
export const papers: readonly Paper[] = [a4, a3, letter, tabloid];
