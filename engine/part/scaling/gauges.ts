import { railwayGauges } from '../../trade/data/railways.js';
import { parseLength } from '../../units/length.js';

/** A scale in which a gauge is built: mm to the foot, as written, its ratio, and where that is from. */
export interface Scale {
  readonly perFoot: number;
  readonly text: string;
  readonly source: string;
}

/** A gauge, mm between the rails, with every scale that it is built in. */
export interface Gauge {
  readonly name: string;
  readonly size: number;
  readonly scales: readonly Scale[];
}

/** Gauges that have a number for their name; all others are called by their size. */
const numbered = ['0', '1'];

/** Small to large. */
export const gauges: readonly Gauge[] = [...new Set(railwayGauges.map(([, inches]) => inches))]
  .sort((a, b) => a - b)
  .map((inches): Gauge => {
    const rows = railwayGauges.filter(([, gauge]) => gauge === inches);
    const name = rows[0]![0].replace(/ (?:\(.*|fine)$/, '');
    return {
      name: numbered.includes(name) ? `gauge ${name}` : name,
      size: inches === 1.772 ? 45 : inches === 1.26 ? 32 : inches * 25.4,
      scales: rows.map(([, , text, , source]) => ({ perFoot: parseLength(text), text: `${text} to the foot`, source })),
    };
  });

/** Printed gauges are rounded to whole millimetres or hundredths of an inch: so near they are the same, mm. */
const NEAR = 0.6;

/** The gauge of a size, if it is one. */
export const gaugeOf = (size: number): Gauge | undefined => gauges.find((gauge) => Math.abs(gauge.size - size) <= NEAR);
