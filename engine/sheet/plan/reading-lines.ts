import type { Reading } from '../../plan/bench/readings.js';
import type { Item } from '../drawing.js';
import type { Piece } from '../operations/set-blocks.js';
import { house } from '../place/house.js';
import { lettering, textWidth } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import { boxItems } from './tick-box.js';
import { group } from './words.js';

/** A box to write a reading in with a pencil, mm. */
const box = { width: 14, height: 6.5 } as const;
const pitch = box.height + 0.8;
const gap = 1.1;

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
  const tokens = pieces.flatMap((piece): readonly (string | undefined)[] => (typeof piece === 'object' && 'blank' in piece ? [undefined] : phraseText([piece], speech).split(' ').filter((each) => each !== '')));
  tokens.forEach((word, i) => {
    if (word === undefined) {
      items.push(...boxItems(group, 'table', [x, y - 0.4], box.width, box.height, about));
      x += box.width + gap;
      return;
    }
    const wide = textWidth(word);
    const stop = /^[;,.]/.test(word);
    // A word stays with the box that follows it, and a stop with what stands before it.
    const needed = wide + (i + 1 < tokens.length && tokens[i + 1] === undefined ? gap + box.width : 0);
    if (x > indent && x + needed > width && !stop) next();
    const at = stop ? x - gap + 0.6 : x;
    items.push(lettering(group, 'table', [at, y - 0.4 - (box.height + house.height) / 2], word, { about }));
    x = at + wide + gap;
  });
  return { items, height: -y + pitch + 0.6 };
}
