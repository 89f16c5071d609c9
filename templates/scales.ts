/** A scale of a drawing: paper to part. */
export interface DrawingScale {
  readonly name: string;
  readonly factor: number;
}

const scale = (paper: number, part: number): DrawingScale => ({ name: `${paper}:${part}`, factor: paper / part });

/** The scales of ISO 5455, largest first. */
export const isoScales: readonly DrawingScale[] = [
  scale(50, 1),
  scale(20, 1),
  scale(10, 1),
  scale(5, 1),
  scale(2, 1),
  scale(1, 1),
  scale(1, 2),
  scale(1, 5),
  scale(1, 10),
  scale(1, 20),
];

/** Scales of inch practice, which halves and doubles (common practice). */
export const inchScales: readonly DrawingScale[] = [
  scale(20, 1),
  scale(10, 1),
  scale(8, 1),
  scale(4, 1),
  scale(2, 1),
  scale(1, 1),
  scale(1, 2),
  scale(1, 4),
  scale(1, 8),
  scale(1, 16),
];

/** All scales that may be asked for by name. */
export const scaleNames: readonly string[] = [...new Set([...isoScales, ...inchScales].map(({ name }) => name))];
