import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';

/** What a line is for; the line style (width and dashes) follows from it. Terms of ISO 128-2. */
export type LineRole =
  | 'visible'
  | 'hidden'
  | 'centre'
  | 'dimension'
  | 'extension'
  | 'leader'
  | 'hatch'
  | 'cutting-plane'
  | 'break'
  | 'phantom'
  | 'thread'
  | 'smooth'
  /** The crossed diagonals of a flat on a round. */
  | 'flat'
  /** Work, and what holds it, that an operation's picture shows beside what is cut. */
  | 'work'
  /** Edges that the finished part has where there still is metal, in an operation's picture. */
  | 'finished'
  /** Edges of metal that an operation takes away. */
  | 'removed'
  /** Strokes that set a face apart. */
  | 'tint'
  | 'frame'
  | 'table'
  | 'symbol';

/** Fields that every item of a drawing has. */
interface ItemBase {
  /** The view, table or block that the item belongs to; items of one group stand together in the file. */
  readonly group: string;
  /** The feature, dimension or operation that the item speaks of. */
  readonly about?: string;
}

/** A stroked curve, paper mm, origin at the sheet's lower left, x right, y up. */
export interface StrokeItem extends ItemBase {
  readonly kind: 'stroke';
  readonly role: LineRole;
  readonly curve: Curve2;
}

/** A filled shape (arrowhead, dot, band): closed polygon, or a disc. */
export interface FillItem extends ItemBase {
  readonly kind: 'fill';
  readonly role: LineRole;
  readonly shape: { readonly kind: 'polygon'; readonly points: readonly Vector2[] } | { readonly kind: 'disc'; readonly centre: Vector2; readonly radius: number };
}

export type LetterStyle = 'normal' | 'bold';

/**
 * A line of lettering. `at` is the base line's point named by `anchor`, turned counter-clockwise by `angle` degrees about `at`.
 * The string may hold the signs of engine/lettering (diameter, depth, counterbore, countersink), drawn as paths.
 */
export interface TextItem extends ItemBase {
  readonly kind: 'text';
  readonly at: Vector2;
  /** Height of a capital letter, mm. */
  readonly height: number;
  readonly angle: number;
  readonly anchor: 'left' | 'middle' | 'right';
  readonly style: LetterStyle;
  readonly text: string;
  /** What the lettering is: `dimension`, `note`, `title`, `balloon`, `table`, `label`. */
  readonly use: string;
}

export type Item = StrokeItem | FillItem | TextItem;

export interface DrawingSheet {
  /** Width and height of the paper, mm. */
  readonly size: Vector2;
  readonly paper: string;
  readonly title: string;
  /** The document that it belongs to, in a pack of several. */
  readonly chapter?: string;
  readonly items: readonly Item[];
}

/** A print: one or more sheets, drawn alike in SVG and PDF. */
export interface Drawing {
  readonly title: string;
  readonly subject: string;
  readonly keywords: readonly string[];
  readonly sheets: readonly DrawingSheet[];
}
