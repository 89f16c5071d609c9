import type { Reading } from '../../plan/bench/readings.js';
import type { Item } from '../drawing.js';
import type { Piece } from '../operations/set-blocks.js';
import { house } from '../place/house.js';
import { lettering, textWidth } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import { boxItems } from './tick-box.js';
import { group } from './words.js';

/** A box to write a reading in with a pencil, mm. */
const box = { width: 16, height: 6.5 } as const;
const pitch = box.height + 1;
const gap = 1.2;

/** What a reading says in words, boxes as lines. */
export const readingText = ({ pieces }: Reading, speech: Speech): string => pieces.map((piece) => (typeof piece === 'object' && 'blank' in piece ? '____' : phraseText([piece], speech))).join('');

/** A reading with boxes to write in; it goes on in a next line where the words are wider than the room. */
export function readingPiece({ pieces }: Reading, speech: Speech, width: number, about: string): Piece {
  const items: Item[] = [];
  const indent = 4;
  let [x, y] = [0, 0];
  const next = (): void => {
    x = indent;
    y -= pitch;
  };
  for (const piece of pieces) {
    if (typeof piece === 'object' && 'blank' in piece) {
      if (x + box.width > width) next();
      items.push(...boxItems(group, 'table', [x, y - 0.4], box.width, box.height, about));
      x += box.width + gap;
      continue;
    }
    for (const word of phraseText([piece], speech).split(' ').filter((each) => each !== '')) {
      const wide = textWidth(word);
      if (x > indent && x + wide > width && !/^[;,.]/.test(word)) next();
      // A mark of punctuation follows its box closely.
      const at = /^[;,.]/.test(word) ? x - gap + 0.6 : x;
      items.push(lettering(group, 'table', [at, y - 0.4 - (box.height + house.height) / 2], word, { about }));
      x = at + wide + gap;
    }
  }
  return { items, height: -y + pitch };
}
