import type { Vector2 } from '../geometry/vector.js';
import { measureText } from '../lettering/index.js';
import { letterHeights } from '../../templates/lettering.js';
import type { Item } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { letteringItem, lineItem } from './frame-items.js';

const group = 'Print check';
const tick = 2;

/** The bar's whole length and the length of its steps, mm, and what stands beside it. */
const bars = {
  mm: { length: 50, step: 10, name: '50 mm' },
  in: { length: 50.8, step: 12.7, name: '2 in' },
} as const;

/**
 * A bar of a known length with its lower left at `at`, to check that the printer kept the scale; its words stand beside it, or over it where
 * room is narrow. The box holds the bar and its words.
 */
export function printCheckBar(
  at: Vector2,
  units: 'mm' | 'in',
  options: { readonly words?: 'beside' | 'over' } = {},
): { readonly items: readonly Item[]; readonly box: PaperBox } {
  const [left, bottom] = at;
  const { length, step, name } = bars[units];
  const capital = letterHeights.note;
  const words = `check: ${name}, print at 100 %`;
  const wordsAt: Vector2 = options.words === 'over' ? [left, bottom + capital + 1.5] : [left + length + 2, bottom];
  const { width, ascent, descent } = measureText(words, capital, 'normal');
  const steps = Math.round(length / step);
  const ticks = Array.from({ length: steps + 1 }, (_, index) => {
    const x = left + (index * length) / steps;
    return lineItem(group, 'symbol', [x, bottom], [x, bottom + (index === 0 || index === steps ? capital : tick)]);
  });
  return {
    items: [
      lineItem(group, 'symbol', [left, bottom], [left + length, bottom]),
      ...ticks,
      letteringItem(group, words, wordsAt, capital, { use: 'note' }),
    ],
    box: { left, bottom: Math.min(bottom, wordsAt[1] - descent), right: Math.max(left + length, wordsAt[0] + width), top: wordsAt[1] + ascent },
  };
}
