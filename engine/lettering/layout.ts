import type { Curve2 } from '../geometry/curve.js';
import { moveCurve, scaleCurve } from './place-curve.js';
import type { FontStyle } from './font.js';
import { glyphOf, unitSize } from './glyphs.js';
import { signs, signThickness, type SignName } from './signs.js';

/** Width along the base line, and the ink's greatest reach above and below it; mm, none negative. */
export interface TextMeasure {
  readonly width: number;
  readonly ascent: number;
  readonly descent: number;
}

/** Letters set in the font, from `x` mm along the base line. */
export interface LetterRun {
  readonly kind: 'letters';
  readonly x: number;
  readonly width: number;
  readonly text: string;
}

/** A sign drawn as strokes, placed in the line of text: mm from the base line's left end, y up. */
export interface SignRun {
  readonly kind: 'sign';
  readonly x: number;
  readonly width: number;
  readonly text: string;
  readonly name: SignName;
  readonly strokes: readonly Curve2[];
  /** Width of the strokes, mm. */
  readonly thickness: number;
}

export type TextRun = LetterRun | SignRun;

export interface TextLayout extends TextMeasure {
  readonly runs: readonly TextRun[];
}

/**
 * Sets one line of text at a capital height of `height` mm: runs of letters and signs from the base line's left end. Letters stand at
 * their plain advances, without kerning or ligatures, so that every output sets them alike.
 * Throws RangeError for a height that is not positive and for a character that can't be lettered.
 */
export function layoutText(text: string, height: number, style: FontStyle): TextLayout {
  if (!(height > 0)) throw new RangeError(`lettering must have a positive height, not ${height}`);
  const unit = unitSize(height, style);
  const runs: TextRun[] = [];
  let x = 0;
  let letters = { text: '', x: 0 };
  let ascent = 0;
  let descent = 0;
  const endLetters = (): void => {
    if (letters.text !== '') runs.push({ kind: 'letters', text: letters.text, x: letters.x, width: x - letters.x });
  };
  for (const character of text) {
    const sign = signs.get(character);
    if (sign) {
      endLetters();
      const thickness = signThickness[style] * height;
      const strokes = sign.strokes.map((stroke) => moveCurve(scaleCurve(stroke, height), [x, 0]));
      const width = sign.advance * height;
      runs.push({ kind: 'sign', text: character, name: sign.name, x, width, strokes, thickness });
      ascent = Math.max(ascent, sign.top * height + thickness / 2);
      descent = Math.max(descent, thickness / 2 - sign.bottom * height);
      x += width;
      letters = { text: '', x };
    } else {
      const glyph = glyphOf(character, style);
      letters = { text: letters.text + character, x: letters.x };
      ascent = Math.max(ascent, glyph.top * unit);
      descent = Math.max(descent, -glyph.bottom * unit);
      x += glyph.advance * unit;
    }
  }
  endLetters();
  return { runs, width: x, ascent, descent };
}

/** Measures one line of text at a capital height of `height` mm: as layoutText does, without setting it. Throws as layoutText does. */
export function measureText(text: string, height: number, style: FontStyle): TextMeasure {
  if (!(height > 0)) throw new RangeError(`lettering must have a positive height, not ${height}`);
  const unit = unitSize(height, style);
  const half = (signThickness[style] * height) / 2;
  let ascent = 0;
  let descent = 0;
  for (const character of text) {
    const sign = signs.get(character);
    const { top, bottom } = sign ?? glyphOf(character, style);
    const scale = sign ? height : unit;
    const beyond = sign ? half : 0;
    ascent = Math.max(ascent, top * scale + beyond);
    descent = Math.max(descent, beyond - bottom * scale);
  }
  return { width: widthAfter(0, text, height, style), ascent, descent };
}

/** How far a line of text reaches whose beginning reaches so far already, mm. Throws RangeError for a character that can't be lettered. */
export function widthAfter(beginning: number, text: string, height: number, style: FontStyle): number {
  const unit = unitSize(height, style);
  let width = beginning;
  for (const character of text) {
    const sign = signs.get(character);
    width += sign ? sign.advance * height : glyphOf(character, style).advance * unit;
  }
  return width;
}
