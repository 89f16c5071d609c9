export { fontFamily, type FontStyle } from './font.js';
export { fontPath } from './font-path.js';
export { fontSize, missingCharacters } from './glyphs.js';
export { layoutText, measureText, type LetterRun, type SignRun, type TextLayout, type TextMeasure, type TextRun } from './layout.js';
export { anchorShare, textCorners, type PlacedText } from './place-text.js';
export { moveCurve, scaleCurve, turn2, turnCurve } from './place-curve.js';
export { signs, signThickness, type SignName } from './signs.js';
export { subsetFont } from './subset-font.js';
export { wrapText } from './wrap.js';
