import type { Cut, CutFace, Phrase, RadiusSize } from '../../cut.js';
import type { Axis, Direction, Station } from '../../station.js';
import { acrossOf, axisOf, indexOf, vectorOf } from '../directions.js';
import { arcMiddle, roundedRectangle } from '../outlines.js';
import { inWords, joined, spanInWords } from '../phrases.js';
import { boundsOf, clear, type End, type Room, type Span } from '../room.js';
import type { Frame } from '../../../geometry/frame.js';
import { unit, type Vector3 } from '../../../geometry/vector.js';
import { sized } from '../stations.js';
import { finishInWords, finishOf, type FinishAsked } from './finish-depth.js';

/**
 * A box milled away: a step, a slot, a groove or a closed pocket, as its ends are open or not. The cutter comes along `tool`;
 * where two closed walls meet along the tool's axis the corner has the radius `corner`.
 */
export interface PocketCut {
  readonly id: string;
  readonly name: string;
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
  /** The way the cutter points. */
  readonly tool: Direction;
  readonly corner?: number;
  readonly texture?: Partial<Record<Direction, number>>;
  /** First word of the instruction, "Mill" unless said. */
  readonly verb?: string;
  /** The walls along the tool are finished only so deep. */
  readonly finishTo?: FinishAsked;
}

/**
 * A frame whose x, y, z are three axes of the part, so that its coordinates are the part's own; or, about a centre given by
 * two stations, so that its z still counts the part's own coordinate.
 */
export function axisFrame(axis: Axis, centre: readonly Station[] = []): Frame {
  const [u, v] = acrossOf(axis);
  const origin: [number, number, number] = [0, 0, 0];
  for (const station of centre) if (station.axis !== axis) origin[indexOf(station.axis)] = station.value;
  return { origin, x: vectorOf(`+${u}`), y: vectorOf(`+${v}`), z: vectorOf(`+${axis}`) };
}

const stationsOf = (end: End): readonly string[] => (end === 'open' ? [] : [end.id]);

export function pocket(room: Room, cut: PocketCut): Cut {
  const axis = axisOf(cut.tool);
  const [u, v] = acrossOf(axis);
  const spans: Readonly<Record<Axis, Span>> = { x: cut.x, y: cut.y, z: cut.z };
  const [lowU, highU] = boundsOf(room, u, spans[u]);
  const [lowV, highV] = boundsOf(room, v, spans[v]);
  const [low, high] = boundsOf(room, axis, spans[axis]);
  const closed = (end: End): boolean => end !== 'open';
  const radius = cut.corner ?? 0;
  const round = (a: End, b: End): boolean => radius > 0 && closed(a) && closed(b);
  const outline = roundedRectangle(
    [lowU, lowV],
    [highU, highV],
    radius,
    {
      lowLow: round(spans[u][0], spans[v][0]),
      highLow: round(spans[u][1], spans[v][0]),
      highHigh: round(spans[u][1], spans[v][1]),
      lowHigh: round(spans[u][0], spans[v][1]),
    },
    { lowU: `low ${u}`, highU: `high ${u}`, lowV: `low ${v}`, highV: `high ${v}` },
  );
  const faces: Record<string, CutFace> = { corner: { stations: [] } };
  const walls: Station[] = [];
  for (const each of [u, v, axis] as const)
    for (const [side, end] of [['low', spans[each][0]], ['high', spans[each][1]]] as const) {
      // The wall at the low end faces the high way, and is named by its place, not its normal.
      const texture = cut.texture?.[`${side === 'low' ? '-' : '+'}${each}`];
      faces[`${side} ${each}`] = { stations: stationsOf(end), ...(texture === undefined ? {} : { texture }) };
      if (end !== 'open') walls.push(end);
    }
  const arcs = outline.filter((segment) => segment.kind === 'arc');
  const entry = cut.tool.startsWith('+') ? low : high;
  const place = (point: readonly [number, number]): Vector3 => {
    const at: [number, number, number] = [0, 0, 0];
    at[indexOf(u)] = point[0];
    at[indexOf(v)] = point[1];
    at[indexOf(axis)] = spans[axis][cut.tool.startsWith('+') ? 0 : 1] === 'open' ? entry + (cut.tool.startsWith('+') ? clear : -clear) : entry;
    return at;
  };
  const corners: RadiusSize[] =
    arcs.length === 0
      ? []
      : [
          {
            kind: 'radius',
            cut: cut.id,
            centres: arcs.map((arc) => place(arc.centre)),
            axis: vectorOf(cut.tool),
            radius: sized(radius),
            toward: arcs.map((arc) => {
              const from = place(arc.centre);
              const to = place(arcMiddle(arc));
              return unit([to[0] - from[0], to[1] - from[1], to[2] - from[2]]);
            }),
          },
        ];
  const corner: Phrase = arcs.length === 0 ? [] : ['corners ', inWords(sized(radius), 'radius')];
  return {
    id: cut.id,
    name: cut.name,
    forms: [{ kind: 'prism', frame: axisFrame(axis), outline, low, high, lowFace: `low ${axis}`, highFace: `high ${axis}` }],
    faces,
    sizes: corners,
    stations: walls.map((wall) => wall.id),
    ...finishOf(cut.finishTo, cut.name, fullDepth(spans[axis]), walls.filter((wall) => wall.axis !== axis).map((wall) => wall.id)),
    instruction: [
      `${cut.verb ?? 'Mill'} ${cut.name}: `,
      ...joined([spanInWords(u, spans[u]), spanInWords(v, spans[v]), spanInWords(axis, spans[axis]), corner, finishInWords(cut.finishTo)]),
    ],
  };
}

/** From the mouth of a cut to its floor where both are stations; undefined where the mouth is open air. */
const fullDepth = ([low, high]: Span): number | undefined => (low === 'open' || high === 'open' ? undefined : high.value - low.value);
