/**
 * Minutes of a cut: (length + overrun) x passes / (feed x turns); any handbook's machining time.
 * @param feed mm for each turn, on a mill of all teeth together.
 */
export const cutMinutes = ({ length, overrun = 0, feed, turns, passes = 1 }: { readonly length: number; readonly overrun?: number; readonly feed: number; readonly turns: number; readonly passes?: number }): number =>
  ((length + overrun) * passes) / (feed * turns);

/** How far the point of a drill reaches beyond its full diameter, mm: d / (2 tan(half the included angle)); nought for a flat one. */
export const drillPoint = (diameter: number, pointAngle: number): number => (pointAngle >= 180 ? 0 : diameter / 2 / Math.tan((pointAngle * Math.PI) / 360));
