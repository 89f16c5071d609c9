import type { Cut } from '../../cut.js';
import type { Axis, Direction, Station } from '../../station.js';
import { axes, axisOf, senseOf } from '../directions.js';
import { inWords, joined, placeInWords, spanInWords } from '../phrases.js';
import type { Room, Span } from '../room.js';
import { finishInWords, finishOf, type FinishAsked } from './finish-depth.js';
import { pocket } from './pocket.js';

/** A slot between two walls, open at one end and right through across it; its root is flat. */
export interface OpenSlotCut {
  readonly id: string;
  readonly name: string;
  /** Low wall and high wall, most often a pair. */
  readonly walls: readonly [Station, Station];
  /** From the open end to the root. */
  readonly into: Direction;
  readonly root: Station;
  /** Where the open end is, on the axis of the root: depths count from it. */
  readonly mouth: Station;
  /** A slitting saw unless said. */
  readonly by?: 'slitting saw' | 'end mill';
  /** The width is finished only so deep. */
  readonly finishTo?: FinishAsked;
  /** Of the walls. */
  readonly texture?: number;
}

/** Throws RangeError where walls, root and mouth do not lie so, or the slot is finished deeper than it is. */
export function openSlot(room: Room, cut: OpenSlotCut): Cut {
  const [low, high] = cut.walls;
  const depth = (cut.root.value - cut.mouth.value) * senseOf(cut.into);
  const along = axisOf(cut.into);
  if (cut.root.axis !== along || cut.mouth.axis !== along || low.axis !== high.axis || low.axis === along) throw new RangeError(`the ${cut.name} has its walls, root and mouth on the wrong axes`);
  if (!(depth > 0)) throw new RangeError(`the ${cut.name} has no depth`);
  const open: Span = ['open', 'open'];
  const spanOf = (axis: Axis): Span => (axis === low.axis ? [low, high] : axis !== along ? open : senseOf(cut.into) > 0 ? ['open', cut.root] : [cut.root, 'open']);
  const [x, y, z] = axes.map(spanOf) as [Span, Span, Span];
  const texture = cut.texture === undefined ? {} : { texture: { [`-${low.axis}`]: cut.texture, [`+${low.axis}`]: cut.texture } };
  return {
    ...pocket(room, { id: cut.id, name: cut.name, tool: cut.into, x, y, z, ...texture }),
    ...finishOf(cut.finishTo, cut.name, depth, [low.id, high.id]),
    instruction: [
      `${cut.by === 'end mill' ? 'Mill' : 'Saw'} ${cut.name}: `,
      ...joined([
        spanInWords(low.axis, cut.walls),
        ['root ', ...placeInWords(cut.root), ...(cut.root.placing.kind === 'from' && cut.root.placing.station === cut.mouth.id ? [] : [', ', inWords({ value: depth, purpose: 'size' }), ` from ${cut.mouth.name}`])],
        finishInWords(cut.finishTo),
      ]),
    ],
  };
}
