import type { Dial } from '../trade/shop/shop.js';
import { dialSetting } from '../trade/sums/handwheel.js';
import { formatLength } from '../units/format.js';
import type { LengthUnit } from '../units/length.js';
import { roundedText, roundTo } from '../units/rounding.js';

/** What a read-out shows: four decimals of an inch, three of a millimetre. */
export const readoutDecimals = (unit: LengthUnit): number => (unit === 'in' ? 4 : 3);

/** A size to set, as a read-out shows it. */
export const figure = (mm: number, unit: LengthUnit): string => formatLength(mm, unit, readoutDecimals(unit));

/** A coordinate with its sign, "+.3125", "\u2212.6875"; nought is "0". */
export function coordinate(mm: number, unit: LengthUnit): string {
  const text = figure(Math.abs(mm), unit);
  if (Number(text) === 0) return '0';
  return `${mm < 0 ? '\u2212' : '+'}${text}`;
}

/** Turns and divisions of a dial: whole turns from the zero (negative behind it), then divisions forward of them. */
export interface DialReading {
  readonly turns: number;
  /** To a tenth, which is as fine as an eye parts a division. */
  readonly divisions: number;
}

/** @param position mm that the slide moves from its zero. */
export function readDial(position: number, dial: Dial): DialReading {
  const { turns, divisions } = dialSetting(position, dial);
  const tenths = roundTo(divisions, 1);
  // A turn may be no whole number of divisions; the last one is then short.
  return tenths >= dial.perTurn / dial.division - 0.05 + 1e-9 ? { turns: turns + 1, divisions: 0 } : { turns, divisions: tenths };
}

/** "3 t + 97.5 d", "\u22129 t + 26.9 d", "12 d". */
export function dialWords(position: number, dial: Dial): string {
  const { turns, divisions } = readDial(position, dial);
  const part = `${roundedText(divisions, 1).replace(/\.0$/, '')} d`;
  if (turns === 0) return part;
  return `${turns < 0 ? '\u2212' : ''}${Math.abs(turns)} t + ${part}`;
}
