/** How far a datum, or a way of holding, can be trusted: half the spread, mm, its source, and where to measure. */
export interface Spread {
  readonly spread: number;
  readonly source: string;
  readonly measure: string;
}

const practice = 'common practice';

export const datumSpreads: Readonly<Record<string, Spread>> = {
  'screwed-on': { spread: 0.14, source: 'float of an M6 6H/6g thread and its hole, 0.29 on the diameter (ISO 965, worked)', measure: 'from a plug or the bore itself to each face, never from the screw' },
  spigot: { spread: 0.01, source: 'H7/h6 at 6 to 10 mm: 0.024 of play at most (ISO 286)', measure: 'from the register to each face' },
  dowels: { spread: 0.015, source: 'H7/h6 at 6 mm and hole positions as bored; common practice', measure: 'over the dowel to each face' },
  'edge-finder': { spread: 0.01, source: practice, measure: 'from the edge picked up to each face, with a micrometer' },
  'paper-touch': { spread: 0.03, source: practice, measure: 'from the face touched to each finished face' },
  'scribed-line': { spread: 0.15, source: practice, measure: 'from the nearest machined face to each side of the feature' },
  'centre-punch': { spread: 0.2, source: practice, measure: 'from the nearest machined face to each side of the feature' },
  'indicated-bore': { spread: 0.01, source: practice, measure: 'over a plug in the bore to each face' },
  'indicated-bar': { spread: 0.01, source: 'four-jaw with an indicator to 0.02 in all; common practice', measure: 'from the bar to each face, turning the bar half round' },
};

/** Run-out that re-holding the work adds, and the lift when it is clamped. */
export const holdingSpreads: Readonly<Record<string, { readonly runOut: number; readonly lift: number; readonly source: string }>> = {
  undisturbed: { runOut: 0, lift: 0, source: 'not taken out' },
  vice: { runOut: 0, lift: 0.02, source: practice },
  clamps: { runOut: 0, lift: 0.01, source: practice },
  'three-jaw': { runOut: 0.05, lift: 0.01, source: 'scroll chuck re-chucked, 0.1 in all; common practice' },
  'four-jaw': { runOut: 0.01, lift: 0.01, source: 'indicated to 0.02 in all; common practice' },
  collet: { runOut: 0.015, lift: 0, source: practice },
  'soft-jaws': { runOut: 0.015, lift: 0, source: 'bored to the work under the same clamping; common practice' },
  'between-centres': { runOut: 0.005, lift: 0, source: practice },
};
