import type { Curve2 } from '../geometry/curve.js';
import type { Vector2 } from '../geometry/vector.js';
import type { FillItem, LetterStyle } from '../sheet/drawing.js';

/** Curves drawn with one pen; each curve is a stretch of ink from end to end. Paper mm, y up, as everywhere in this file. */
export interface InkStroke {
  readonly kind: 'stroke';
  readonly about?: string;
  /** Width of the pen, mm. */
  readonly width: number;
  /** How the pen ends: broken lines are cut square, so that a dash is as long as it says. */
  readonly ends: 'round' | 'square';
  readonly curves: readonly Curve2[];
}

export interface InkFill {
  readonly kind: 'fill';
  readonly about?: string;
  readonly shape: FillItem['shape'];
}

/** Letters set in the font, from `x` mm along the text's base line. */
export interface InkLetters {
  readonly text: string;
  readonly x: number;
  readonly width: number;
}

/** A line of lettering: letters in the font, and signs as strokes already in their place. */
export interface InkText {
  readonly kind: 'text';
  readonly about?: string;
  /** The whole line, signs as characters. */
  readonly text: string;
  readonly use: string;
  /** The base line's left end, and its turn, degrees counter-clockwise. */
  readonly origin: Vector2;
  readonly angle: number;
  /** Font size (em), mm. */
  readonly size: number;
  readonly style: LetterStyle;
  readonly letters: readonly InkLetters[];
  /** The signs' characters and where they begin, for readers that search or copy. */
  readonly signs: readonly InkLetters[];
  readonly strokes: readonly InkStroke[];
}

export type Ink = InkStroke | InkFill | InkText;

/** What one group of the drawing holds of one layer. */
export interface InkLayer {
  /** Short name: the line role, or `lettering`. */
  readonly role: string;
  /** The layer's name as a reader sees it. */
  readonly name: string;
  readonly ink: readonly Ink[];
}

export interface InkGroup {
  readonly name: string;
  /** Layers from the lowest to the topmost. */
  readonly layers: readonly InkLayer[];
}

/** A sheet as both writers draw it. */
export interface InkSheet {
  readonly size: Vector2;
  readonly title: string;
  readonly chapter?: string;
  readonly groups: readonly InkGroup[];
}
