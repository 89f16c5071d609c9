import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { lettering, stroke, textWidth } from '../place/pieces.js';
import { boxesMeet } from '../place/plane.js';

const group = 'operations';
const words = 'finished part, in metal to go';
const height = 2.5;
const sample = 10;
const gap = 2;

/** The sample and the words that tell on every sheet what no picture explains by itself, and the room that they take. */
export interface FootKey {
  readonly items: readonly Item[];
  readonly box: PaperBox;
}

/** Beside the bar to check the printer by where there is room, else over it. `taken`: the title block, that bar, the marks of the frame. */
export function footKey(area: PaperBox, taken: readonly PaperBox[]): FootKey {
  const bar = taken[1]!;
  const width = sample + gap + textWidth(words, height);
  const at = (left: number, bottom: number): PaperBox => ({ left, right: left + width, bottom: bottom - 1, top: bottom + height + 1 });
  const beside = at(bar.right + 4, bar.bottom + 1);
  const free = beside.right <= area.right - 2 && taken.every((box) => !boxesMeet(box, beside));
  const box = free ? beside : at(bar.left, bar.top + 3);
  const y = box.bottom + 1;
  return {
    items: [stroke(group, 'finished', [box.left, y + height / 2], [box.left + sample, y + height / 2]), lettering(group, 'note', [box.left + sample + gap, y], words, { height })],
    box,
  };
}
