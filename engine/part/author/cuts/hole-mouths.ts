import type { Cut, ThreadSize } from '../../cut.js';
import type { Sized } from '../../tolerance.js';
import { polygonOutline } from '../outlines.js';
import { inWords, joined } from '../phrases.js';
import { finishInWords, finishOf, type FinishAsked } from './finish-depth.js';
import { entryPoints, holeFrame, patternOf, placeStations, wayIn, type HolePlaces } from './hole.js';

interface OnHoles {
  readonly id: string;
  readonly name: string;
  /** The holes it belongs to. */
  readonly holes: HolePlaces;
}

/** A cone at the mouths of holes. */
export interface CountersinkCut extends OnHoles {
  readonly diameter: Sized;
  readonly angle: number;
  readonly texture?: number;
}

/** A flat-bottomed wider mouth; a register or a seat for a screw's head. */
export interface CounterboreCut extends OnHoles {
  readonly diameter: Sized;
  readonly depth: Sized;
  readonly verb?: string;
  readonly texture?: number;
  /** The diameter is finished only so deep. */
  readonly finishTo?: FinishAsked;
}

/** A thread cut into holes. No depth: right through. */
export interface TapCut extends OnHoles {
  readonly thread: ThreadSize;
  readonly depth?: Sized;
}

/** How far above the entry face a mouth's form reaches, mm. */
const above = 0.5;

const each = (cut: OnHoles): string => (entryPoints(cut.holes).length > 1 ? `${entryPoints(cut.holes).length}x ` : '');

export function countersink(cut: CountersinkCut): Cut {
  const direction = wayIn(cut.holes);
  const radius = cut.diameter.value / 2;
  const tip = radius / Math.tan((cut.angle * Math.PI) / 360);
  const outline = polygonOutline([[0, -above], [radius, -above], [radius, 0], [0, tip]], ['mouth', 'rim', 'cone', 'axis']);
  return {
    id: cut.id,
    name: cut.name,
    forms: entryPoints(cut.holes).map((point) => ({ kind: 'revolution', frame: holeFrame(point, direction), outline })),
    faces: {
      mouth: { stations: [] },
      rim: { stations: [] },
      cone: { stations: [], ...(cut.texture === undefined ? {} : { texture: cut.texture }) },
      axis: { stations: [] },
    },
    sizes: [{ kind: 'countersink', cut: cut.id, points: entryPoints(cut.holes), direction, ...patternOf(cut.holes), diameter: cut.diameter, angle: cut.angle }],
    stations: placeStations(cut.holes),
    instruction: [`Countersink ${cut.name}: ${each(cut)}`, inWords(cut.diameter, 'diameter'), ` x ${cut.angle}°`],
  };
}

export function counterbore(cut: CounterboreCut): Cut {
  const direction = wayIn(cut.holes);
  const radius = cut.diameter.value / 2;
  const outline = polygonOutline(
    [[0, -above], [radius, -above], [radius, cut.depth.value], [0, cut.depth.value]],
    ['mouth', 'wall', 'floor', 'axis'],
  );
  return {
    id: cut.id,
    name: cut.name,
    forms: entryPoints(cut.holes).map((point) => ({ kind: 'revolution', frame: holeFrame(point, direction), outline })),
    faces: {
      mouth: { stations: [] },
      wall: { stations: [], ...(cut.texture === undefined ? {} : { texture: cut.texture }) },
      floor: { stations: [] },
      axis: { stations: [] },
    },
    sizes: [
      { kind: 'counterbore', cut: cut.id, points: entryPoints(cut.holes), direction, ...patternOf(cut.holes), diameter: cut.diameter, depth: cut.depth },
    ],
    stations: placeStations(cut.holes),
    ...finishOf(cut.finishTo, cut.name, cut.depth.value),
    instruction: [
      `${cut.verb ?? 'Counterbore'} ${cut.name}: ${each(cut)}`,
      ...joined([[inWords(cut.diameter, 'diameter'), ' x ', inWords(cut.depth), ' deep'], finishInWords(cut.finishTo)]),
    ],
  };
}

export function tap(cut: TapCut): Cut {
  return {
    id: cut.id,
    name: cut.name,
    forms: [],
    faces: {},
    sizes: [
      {
        kind: 'tapping',
        cut: cut.id,
        points: entryPoints(cut.holes),
        direction: wayIn(cut.holes),
        ...patternOf(cut.holes),
        thread: cut.thread,
        ...(cut.depth === undefined ? {} : { depth: cut.depth }),
      },
    ],
    stations: placeStations(cut.holes),
    instruction: [
      `Tap ${cut.name}: ${each(cut)}${cut.thread.designation}`,
      ...(cut.depth === undefined ? [' through'] : [', ', inWords(cut.depth), ' full thread']),
    ],
  };
}
