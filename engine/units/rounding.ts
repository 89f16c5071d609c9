/** Noise of sums in binary, in units of the last place kept: less than any size that a machine could tell. */
const noise = 1e-6;

/**
 * `value` with `decimals` digits behind the point: halves go away from nought, and a half that binary arithmetic left a
 * hair low still counts as a half. Never "-0".
 * @throws RangeError for a value that is not finite.
 */
export function roundedText(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`cannot write ${value} as a number`);
  const whole = Math.floor(Math.abs(value) * 10 ** decimals + 0.5 + noise);
  const text = BigInt(whole).toString().padStart(decimals + 1, '0');
  const sign = value < 0 && whole > 0 ? '-' : '';
  return decimals === 0 ? sign + text : `${sign}${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
}

/** As `roundedText`, read back as a number. */
export const roundTo = (value: number, decimals: number): number => Number(roundedText(value, decimals));
