/** A number without the noise of binary sums, to so many decimals; never minus nought. */
export const nearDecimals = (value: number, decimals: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals + 0;
