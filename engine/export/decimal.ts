/** A number in plain decimals, at most `places` of them, without trailing zeros, exponent or negative zero. Throws RangeError unless it is finite. */
export function decimal(value: number, places = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds finite numbers only, not ${value}`);
  const text = value.toFixed(places).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
