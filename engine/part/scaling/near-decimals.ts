/** A number without the noise of binary sums, to so many decimals; never minus nought. */
export const nearDecimals = (value: number, decimals: number): number => Math.round(value * 10 ** decimals) / 10 ** decimals + 0;

/** To whole numbers, with its sign; nought has none. */
export const signedWhole = (value: number): string => `${Math.round(value) > 0 ? '+' : ''}${Math.round(value) + 0}`;
