import type { Sized, Tolerance } from '../../part/tolerance.js';
import { formatAngle, formatDeviation, formatLength } from '../../units/format.js';
import type { Phrase } from '../../part/cut.js';

/** In which unit a print speaks, and whether it adds the other in brackets. */
export interface Speech {
  readonly unit: 'in' | 'mm';
  readonly other: boolean;
}

export const signs = { diameter: '\u2300', depth: '\u21a7', counterbore: '\u2334', countersink: '\u2335' } as const;

/** Decimals that a tolerance needs to be seen, at least the unit's usual ones. */
function decimalsFor(tolerance: Tolerance | undefined, unit: 'in' | 'mm'): number | undefined {
  if (tolerance === undefined || tolerance.kind === 'maximum' || tolerance.kind === 'minimum') return undefined;
  if (tolerance.kind === 'fit') return unit === 'in' ? 4 : 3;
  const values = tolerance.kind === 'plus-minus' ? [tolerance.value] : [tolerance.upper, tolerance.lower];
  const most = unit === 'in' ? 4 : 3;
  for (let decimals = unit === 'in' ? 3 : 2; decimals < most; decimals += 1) {
    const step = (unit === 'in' ? 25.4 : 1) * 10 ** -decimals;
    if (values.every((value) => Math.abs(value / step - Math.round(value / step)) < 1e-6)) return decimals;
  }
  return most;
}

function oneUnit(size: Sized, unit: 'in' | 'mm'): string {
  const { tolerance, value } = size;
  const asked = decimalsFor(tolerance, unit);
  // The nominal must not be rounded away from itself: 1 1/16 with a thou either way is 1.0625.
  const plain = formatLength(value, unit);
  const needed = plain.includes('.') ? plain.length - plain.indexOf('.') - 1 : 0;
  const decimals = asked === undefined ? undefined : Math.max(asked, needed);
  const nominal = formatLength(value, unit, decimals);
  if (tolerance === undefined) return nominal;
  switch (tolerance.kind) {
    case 'plus-minus':
      return `${nominal} ±${formatLength(tolerance.value, unit, decimals)}`;
    case 'deviations':
      return `${nominal} ${formatDeviation(tolerance.upper, unit, decimals)}/${formatDeviation(tolerance.lower, unit, decimals)}`;
    case 'fit':
      return `${nominal} ${tolerance.class} (${formatLength(value + tolerance.upper, unit, decimals)}/${formatLength(value + tolerance.lower, unit, decimals)})`;
    case 'maximum':
      return `${nominal} max`;
    case 'minimum':
      return `${nominal} min`;
  }
}

/** A size as it stands on a print, with its sign before it and the other unit in square brackets where asked. */
export function sizeText(size: Sized, speech: Speech, sign = ''): string {
  const main = `${sign}${oneUnit(size, speech.unit)}`;
  if (!speech.other) return main;
  return `${main} [${formatLength(size.value, speech.unit === 'in' ? 'mm' : 'in')}]`;
}

/** A size as `sizeText`, but with the other unit on a line of its own. */
export function sizeLines(size: Sized, speech: Speech, sign = ''): readonly string[] {
  const main = sizeText(size, { ...speech, other: false }, sign);
  return speech.other ? [main, `[${formatLength(size.value, speech.unit === 'in' ? 'mm' : 'in')}]`] : [main];
}

/** A phrase in the print's unit; tolerances go with their sizes. */
export function phraseText(phrase: Phrase, speech: Speech): string {
  return phrase
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      const sign = piece.sign === 'diameter' ? signs.diameter : piece.sign === 'radius' ? 'R' : '';
      return sizeText({ value: piece.length, purpose: 'size', ...(piece.tolerance === undefined ? {} : { tolerance: piece.tolerance }) }, speech, sign);
    })
    .join('');
}

export const angleText = formatAngle;

/** A count before a size, "4x ", nothing for one. */
export const countText = (count: number): string => (count > 1 ? `${count}x ` : '');

/** The least and greatest length that a size allows, mm. */
export function limitsOf(size: Sized): { readonly lower?: number; readonly upper?: number } {
  const { tolerance, value } = size;
  if (tolerance === undefined) return {};
  switch (tolerance.kind) {
    case 'plus-minus':
      return { lower: value - tolerance.value, upper: value + tolerance.value };
    case 'deviations':
    case 'fit':
      return { lower: value + tolerance.lower, upper: value + tolerance.upper };
    case 'maximum':
      return { upper: value };
    case 'minimum':
      return { lower: value };
  }
}
