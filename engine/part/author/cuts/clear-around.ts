import type { Cut } from '../../cut.js';
import type { Direction, Station } from '../../station.js';
import { acrossOf, axisOf, senseOf } from '../directions.js';
import { joined, placeInWords, spanInWords } from '../phrases.js';
import type { Room, Span } from '../room.js';
import { pocket } from './pocket.js';

/** A face milled down to `at` from the side `side`, all round a pad that is left standing between four stations. */
export interface ClearAroundCut {
  readonly id: string;
  readonly name: string;
  readonly at: Station;
  readonly side: Direction;
  /** The pad's ends along the two axes of the face, in the order x before y before z. */
  readonly keep: readonly [readonly [Station, Station], readonly [Station, Station]];
  readonly texture?: number;
}

export function clearAround(room: Room, cut: ClearAroundCut): Cut {
  const axis = axisOf(cut.side);
  const [p, q] = [...acrossOf(axis)].sort() as ['x' | 'y', 'y' | 'z'];
  const [keepP, keepQ] = cut.keep;
  const depth: Span = senseOf(cut.side) > 0 ? [cut.at, 'open'] : ['open', cut.at];
  const tool = `${senseOf(cut.side) > 0 ? '-' : '+'}${axis}` as Direction;
  const strip = (name: string, spanP: Span, spanQ: Span): Cut => {
    const open: Span = ['open', 'open'];
    const spans = { x: open, y: open, z: open, [p]: spanP, [q]: spanQ, [axis]: depth };
    return pocket(room, { id: cut.id, name, tool, ...spans });
  };
  const strips = [
    strip('low', ['open', keepP[0]], ['open', 'open']),
    strip('high', [keepP[1], 'open'], ['open', 'open']),
    strip('below', [keepP[0], keepP[1]], ['open', keepQ[0]]),
    strip('above', [keepP[0], keepP[1]], [keepQ[1], 'open']),
  ];
  const floor = `${senseOf(cut.side) > 0 ? 'low' : 'high'} ${axis}`;
  const [first, second, third, fourth] = strips as [Cut, Cut, Cut, Cut];
  const wall = (source: Cut, name: string): readonly string[] => source.faces[name]?.stations ?? [];
  return {
    id: cut.id,
    name: cut.name,
    forms: strips.flatMap((each) => each.forms),
    faces: {
      ...first.faces,
      [`high ${p}`]: { stations: wall(first, `high ${p}`) },
      [`low ${p}`]: { stations: wall(second, `low ${p}`) },
      [`high ${q}`]: { stations: wall(third, `high ${q}`) },
      [`low ${q}`]: { stations: wall(fourth, `low ${q}`) },
      [floor]: { stations: [cut.at.id], ...(cut.texture === undefined ? {} : { texture: cut.texture }) },
    },
    sizes: [],
    stations: [cut.at, ...keepP, ...keepQ].map((station) => station.id),
    instruction: [
      `Mill ${cut.name}: `,
      ...joined([placeInWords(cut.at), ['leave the pad standing ', ...joined([spanInWords(p, keepP), spanInWords(q, keepQ)])]]),
    ],
  };
}
