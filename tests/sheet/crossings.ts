import type { Vector2 } from '../../engine/geometry/vector.js';
import type { DrawingSheet, FillItem, Item, LineRole, StrokeItem, TextItem } from '../../engine/sheet/drawing.js';
import { boxesShare, boxRound, distance, grownBox, inkBox, lengthInside, meeting, piecesOf, type Box, type Piece } from './paper-geometry.js';

/** One thing on a sheet that runs where it must not. */
export interface Fault {
  readonly pair: string;
  readonly first: string;
  readonly second: string;
  readonly at: Vector2;
}

interface Inked {
  readonly item: StrokeItem;
  readonly pieces: readonly Piece[];
  readonly box: Box;
}

/** A line may run through the point of another dimension's arrow, where both hold on to one face; mm. */
const atTip = 0.35;

export const isText = (item: Item): item is TextItem => item.kind === 'text';
export const isStroke = (item: Item): item is StrokeItem => item.kind === 'stroke';
export const isFill = (item: Item): item is FillItem => item.kind === 'fill';

const nameOf = (item: Item): string => (isText(item) ? `"${item.text}"` : `${item.group}: ${item.about ?? item.role}`);

/**
 * Everything on a sheet that crosses what it must not: dimension lines each other and extension lines, leaders each other and
 * dimension lines, text any text and any line.
 */
export function faultsOf(sheet: DrawingSheet): readonly Fault[] {
  const inked = sheet.items.filter(isStroke).map((item): Inked => {
    const pieces = piecesOf(item.curve);
    return { item, pieces, box: boxRound(pieces.flat()) };
  });
  const of = (role: LineRole): readonly Inked[] => inked.filter(({ item }) => item.role === role);
  const tips = tipsOf(sheet.items);
  const [dimensions, extensions, leaders] = [of('dimension'), of('extension'), of('leader')];
  return [
    ...linesAcross('dimension x dimension', dimensions, dimensions, tips),
    ...linesAcross('extension x dimension', extensions, dimensions, tips),
    ...linesAcross('leader x leader', leaders, leaders, new Map()),
    ...linesAcross('leader x dimension', leaders, dimensions, new Map()),
    ...textOnText(sheet.items.filter(isText)),
    ...textOnLines(sheet.items.filter(isText), inked),
    ...textOnFills(sheet.items.filter(isText), sheet.items.filter(isFill)),
  ];
}

/** Points of the arrows of each dimension: the corner opposite the shortest side. */
function tipsOf(items: readonly Item[]): ReadonlyMap<string, readonly Vector2[]> {
  const tips = new Map<string, Vector2[]>();
  for (const item of items.filter(isFill)) {
    if (item.role !== 'dimension' || item.shape.kind !== 'polygon') continue;
    const key = keyOf(item);
    tips.set(key, [...(tips.get(key) ?? []), item.shape.points[0]!]);
  }
  return tips;
}

const keyOf = (item: Item): string => `${item.group} | ${item.about ?? ''}`;

function linesAcross(pair: string, first: readonly Inked[], second: readonly Inked[], tips: ReadonlyMap<string, readonly Vector2[]>): readonly Fault[] {
  const faults: Fault[] = [];
  first.forEach((a, i) => {
    for (const b of first === second ? second.slice(i + 1) : second) {
      if (keyOf(a.item) === keyOf(b.item) || !boxesShare(grownBox(a.box, 1e-6), grownBox(b.box, 1e-6))) continue;
      const at = crossing(a, b, tips);
      if (at !== undefined) faults.push({ pair, first: nameOf(a.item), second: nameOf(b.item), at });
    }
  });
  return faults;
}

function crossing(a: Inked, b: Inked, tips: ReadonlyMap<string, readonly Vector2[]>): Vector2 | undefined {
  const free = [...(tips.get(keyOf(a.item)) ?? []), ...(tips.get(keyOf(b.item)) ?? [])];
  for (const p of a.pieces)
    for (const q of b.pieces) {
      const at = meeting(p, q);
      if (at !== undefined && !free.some((tip) => distance(tip, at) < atTip)) return at;
    }
  return undefined;
}

function textOnText(texts: readonly TextItem[]): readonly Fault[] {
  const boxes = texts.map(inkBox);
  return texts.flatMap((text, i) =>
    texts.slice(i + 1).flatMap((other, j): Fault[] => {
      const [a, b] = [boxes[i]!, boxes[i + 1 + j]!];
      return boxesShare(a, b, 1e-6) ? [{ pair: 'text x text', first: nameOf(text), second: nameOf(other), at: other.at }] : [];
    }),
  );
}

function textOnLines(texts: readonly TextItem[], inked: readonly Inked[]): readonly Fault[] {
  return texts.flatMap((text) => {
    const box = inkBox(text);
    return inked.flatMap(({ item, pieces, box: around }): Fault[] => {
      if (!boxesShare(box, grownBox(around, 1e-6)) || !pieces.some((piece) => lengthInside(piece, box) > 1e-3)) return [];
      return [{ pair: `text x ${item.role}`, first: nameOf(text), second: nameOf(item), at: text.at }];
    });
  });
}

/** Arrows and dots against text: a triangle meets a box where a side runs into it or the box lies inside. */
function textOnFills(texts: readonly TextItem[], fills: readonly FillItem[]): readonly Fault[] {
  return texts.flatMap((text) => {
    const box = inkBox(text);
    return fills.flatMap((fill): Fault[] => {
      const { shape } = fill;
      const sides: readonly Piece[] =
        shape.kind === 'polygon'
          ? shape.points.map((point, i): Piece => [point, shape.points[(i + 1) % shape.points.length]!])
          : piecesOf({ kind: 'arc', centre: shape.centre, radius: shape.radius, start: 0, sweep: 360 });
      if (!sides.some((side) => lengthInside(side, box) > 1e-3)) return [];
      return [{ pair: 'text x arrow', first: nameOf(text), second: nameOf(fill), at: text.at }];
    });
  });
}
