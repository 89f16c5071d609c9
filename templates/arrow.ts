/**
 * The filled arrowhead at the end of a dimension line or a leader, mm: as long as a dimension's letters are high, three times as long
 * as wide (ASME Y14.2, read), which includes an angle of 18.9 degrees (ISO 129-1 allows 15 to 30, from memory).
 */
export const arrow = { length: 3.5, width: 3.5 / 3 } as const;

/** Diameter of the dot that ends a leader on a face, mm (ASME Y14.2, read). */
export const dotDiameter = 1.5;
