import { parseLength } from '../../units/length.js';
import { parseNumber } from '../../units/number.js';
import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';
import { gaugeOf, gauges, type Gauge, type Scale } from './gauges.js';

/** What a part is scaled from or to, as a user writes it. */
export type Target =
  | { readonly kind: 'gauge'; readonly text: string; readonly gauge: Gauge; readonly size: number }
  | { readonly kind: 'scale'; readonly text: string; readonly scale: Scale }
  | { readonly kind: 'factor'; readonly text: string; readonly factor: number };

const forms = 'write a gauge (5 in), a scale (1-1/16 in/ft) or a factor (1.45)';
const known = gauges.map(({ name }) => name);

const unknownGauge = (what: string, text: string, size?: number): UserError => {
  const near = size === undefined ? nearestClause(text, known) : `; the nearest is ${gauges.reduce((best, gauge) => (Math.abs(gauge.size - size) < Math.abs(best.size - size) ? gauge : best)).name}`;
  return new UserError(`${what} "${text}" is no gauge that is known: there are ${known.join(', ')}${near}; or ${forms}.`);
};

/**
 * A gauge, a scale to the foot, or a factor.
 * @param what names it in the sentence of an error: "--to".
 * @throws UserError for anything else, and for a gauge that is not in the list.
 */
export function readTarget(word: string, what: string): Target {
  const text = word.trim();
  const factor = /^(?:x|×)?\s*((?:\d+[ -]+)?\d+\/\d+|\d*\.?\d+)\s*(%)?$/i.exec(text);
  if (factor?.[1] !== undefined) {
    const value = parseNumber(factor[1], what) / (factor[2] === undefined ? 1 : 100);
    return { kind: 'factor', text, factor: checkedFactor(value, text, what) };
  }
  const numbered = /^(?:gauge|no\.?)\s*(\d)$/i.exec(text)?.[1];
  if (numbered !== undefined) {
    const gauge = gauges.find(({ name }) => name === `gauge ${numbered}`);
    if (gauge === undefined) throw unknownGauge(what, text);
    return { kind: 'gauge', text, gauge, size: gauge.size };
  }
  const scale = /^(.*?)\s*(?:\/|per|to the|to a)\s*(?:ft|foot)\.?$/i.exec(text)?.[1];
  if (scale !== undefined) {
    const perFoot = parseLength(scale, { what, sign: 'positive' });
    return { kind: 'scale', text, scale: { perFoot, text: `${scale} to the foot`, source: 'as given' } };
  }
  if (!/^[\d.]/.test(text)) throw unknownGauge(what, text);
  const size = parseLength(text.replace(/\s*gauge$/i, ''), { what, sign: 'positive' });
  const gauge = gaugeOf(size);
  if (gauge === undefined) throw unknownGauge(what, text, size);
  return { kind: 'gauge', text, gauge, size: gauge.size };
}

const figure = (value: number): string => String(Number(value.toPrecision(5)));
const inches = (mm: number): string => String(Number((mm / 25.4).toFixed(3)));

/** A target for the name of a file: "7.25in", "1-1-2in-ft", "x1.45". */
export function labelOf(target: Target): string {
  if (target.kind === 'factor') return `x${figure(target.factor)}`;
  if (target.kind === 'gauge') return `${inches(target.size)}in`;
  return `${target.scale.text.replace(' to the foot', '').replace(/\s+/g, '').replace(/[/.]/g, '-')}-ft`;
}

/** From a tenth to ten times: beyond that nothing of the part is alike. */
const [LEAST, MOST] = [0.1, 10];

export function checkedFactor(value: number, text: string, what: string): number {
  if (value >= LEAST && value <= MOST) return value;
  throw new UserError(`${what} "${text}" makes a part ${Number(value.toPrecision(4))} times as large: a factor from ${LEAST} to ${MOST} is taken; a gauge is written with its unit, as in 7.25 in.`);
}
