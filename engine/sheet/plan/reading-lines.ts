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
  for (const cluster of clustersOf(tokens)) {
    if (x > indent && x + widthOf(cluster) > width) next();
    for (const word of cluster) {
      if (word === undefined) {
        items.push(...boxItems(group, 'table', [x, y - 0.4], box.width, box.height, about));
        x += box.width + gap;
        continue;
      }
      // A stop stands close to what it follows.
      if (isStop(word)) x -= gap - 0.6;
      items.push(lettering(group, 'table', [x, y - 0.4 - (box.height + house.height) / 2], word, { about }));
      x += textWidth(word) + gap;
    }
  }
  return { items, height: -y + pitch + 0.6 };
}

const isStop = (word: string | undefined): boolean => word === ',' || word === ';' || word === '.';

const widthOf = (cluster: readonly (string | undefined)[]): number => cluster.reduce((sum, word) => sum + gap + (word === undefined ? box.width : textWidth(word)), -gap);

/** Words with the boxes and stops that follow them, which stay on one line. */
function clustersOf(tokens: readonly (string | undefined)[]): readonly (readonly (string | undefined)[])[] {
  const clusters: (string | undefined)[][] = [];
  for (const token of tokens) {
    const last = clusters[clusters.length - 1];
    if (last !== undefined && (token === undefined || isStop(token))) last.push(token);
    else clusters.push([token]);
  }
  return clusters;
}
