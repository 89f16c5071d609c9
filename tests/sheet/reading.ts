import type { Vector2 } from '../../engine/geometry/vector.js';
import type { FillItem, Item, TextItem } from '../../engine/sheet/drawing.js';
import type { MadePrint } from '../../engine/sheet/make-print.js';
import type { PrintRecord, RecordedItem, RecordedView } from '../../engine/sheet/print-record.js';
import { isFill, isStroke, isText } from './crossings.js';
import type { Piece } from './paper-geometry.js';

export const millimetresOf = (units: 'in' | 'mm'): number => (units === 'in' ? 25.4 : 1);

/** The first number of a text as printed, in the print's unit, and half of what its last digit counts. */
export function firstNumber(text: string): { readonly value: number; readonly half: number } {
  const digits = /\d*\.\d+|\d+/.exec(text.replace(/^\(?\d+x /, ''))?.[0];
  if (digits === undefined) throw new Error(`no number in "${text}"`);
  const decimals = digits.includes('.') ? digits.length - digits.indexOf('.') - 1 : 0;
  return { value: Number(digits), half: 0.5 * 10 ** -decimals };
}

export const viewOf = (record: PrintRecord, dimension: RecordedItem): RecordedView => record.views.find(({ id }) => id === dimension.view)!;

export interface DrawnDimension {
  readonly recorded: RecordedItem;
  readonly view: RecordedView;
  readonly extensions: readonly Piece[];
  readonly lines: readonly Piece[];
  readonly arrows: readonly FillItem[];
  readonly texts: readonly TextItem[];
  readonly leaders: readonly Piece[];
}

/** What stands on paper for each recorded size, found by what the items say they are about. */
export function drawnDimensions({ record, drawing }: MadePrint): readonly DrawnDimension[] {
  return record.dimensions.map((recorded) => {
    const mine = drawing.sheets[recorded.sheet - 1]!.items.filter((item) => item.about === recorded.id && item.group === recorded.view);
    const straight = (role: string): readonly Piece[] =>
      mine.flatMap((item: Item): Piece[] => (isStroke(item) && item.role === role && item.curve.kind === 'line' ? [[item.curve.from, item.curve.to]] : []));
    return {
      recorded,
      view: viewOf(record, recorded),
      extensions: straight('extension'),
      lines: straight('dimension'),
      leaders: straight('leader'),
      arrows: mine.filter(isFill),
      texts: mine.filter(isText),
    };
  });
}

/** Sizes that stand along a straight dimension line. */
export const linearOnly = (all: readonly DrawnDimension[]): readonly DrawnDimension[] =>
  all.filter(({ extensions, lines }) => lines.length === 1 && extensions.length === 2);

export const isLevel = ([a, b]: Piece): boolean => Math.abs(a[1] - b[1]) < 1e-9;
export const isUpright = ([a, b]: Piece): boolean => Math.abs(a[0] - b[0]) < 1e-9;

/** The point of an arrowhead, the middle of its back, and its width. */
export function arrowOf(fill: FillItem): { readonly tip: Vector2; readonly back: Vector2; readonly length: number; readonly width: number } | undefined {
  if (fill.shape.kind !== 'polygon' || fill.shape.points.length !== 3) return undefined;
  const points = fill.shape.points;
  const side = (i: number): number => Math.hypot(points[(i + 1) % 3]![0] - points[(i + 2) % 3]![0], points[(i + 1) % 3]![1] - points[(i + 2) % 3]![1]);
  const sharp = [0, 1, 2].reduce((best, i) => (side(i) < side(best) ? i : best));
  const [p, q] = [points[(sharp + 1) % 3]!, points[(sharp + 2) % 3]!];
  const tip = points[sharp]!;
  const back: Vector2 = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  return { tip, back, length: Math.hypot(tip[0] - back[0], tip[1] - back[1]), width: side(sharp) };
}
