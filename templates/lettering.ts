/** Heights of capital letters that ISO 3098-1 knows, mm (read in a table of the standard's sizes). */
export const letterHeightSeries = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20] as const;

/** The smallest height of a capital letter on a sheet, mm. */
export const smallestLettering = 2.5;

/** Height of a capital letter by what it says, mm: 3.5 reads at arm's length, captions may be smaller, headings larger. */
export const letterHeights = {
  dimension: 3.5,
  note: 3.5,
  table: 3.5,
  caption: 2.5,
  balloon: 5,
  label: 5,
  scale: 5,
  title: 7,
  hand: 14,
} as const;

/** From one base line to the next as a multiple of the capital height: ISO 3098 type B, capitals and small letters without accents. */
export const linePitch = 1.5;
