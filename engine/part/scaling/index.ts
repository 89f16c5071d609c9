/** Parts at another size, as the trade scales them. */
export { factorOf, type Factor, type FactorAsked, type Way } from './factor.js';
export { gauges, type Gauge, type Scale } from './gauges.js';
export { freedomOf } from './freedom.js';
export type { ValuesByName } from './mend.js';
export { nameOf, sizeOf, type ParameterValue } from './rule.js';
export { scaledPart } from './scaled-part.js';
export { scaleValues, type ScaleChoices, type Scaled } from './scale-values.js';
export type { Amount, ScaleLine } from './scale-line.js';
export { labelOf, readTarget, type Target } from './target.js';
export { seriesAsked, seriesNames, type SeriesAsked } from './series.js';
