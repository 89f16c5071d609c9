import { UserError } from '../../units/user-error.js';
import type { Gauge, Scale } from './gauges.js';
import { checkedFactor, labelOf, readTarget, type Target } from './target.js';

/** One way to reckon the factor. */
export interface Way {
  readonly by: 'gauge' | 'scale' | 'factor';
  readonly factor: number;
  /** How it comes about, in words: "7-1/4 in / 5 in". */
  readonly says: string;
  /** Against the factor taken, per cent. */
  readonly percent: number;
}

/** By how much a part is to grow, and what the other ways to reckon it would give. */
export interface Factor {
  readonly value: number;
  readonly by: Way['by'];
  readonly says: string;
  readonly ways: readonly Way[];
  /** For the engine's line on the prints, which has room for 25 letters: "7.25 in gauge", "1.4118 x size". */
  readonly title: string;
  /** For the names of files: "7.25in". */
  readonly label: string;
}

export interface FactorAsked {
  /** As a user writes it; the gauge that the part says it is for, if not given. */
  readonly from?: string | undefined;
  readonly to: string;
  /** The line in which the part says for which engine it is: "Tormentil, 5 inch gauge". */
  readonly engine?: string | undefined;
}

/**
 * The factor from one gauge or scale to another, or the plain factor given. The three ways do not agree (5 to 7-1/4 in is 1.45
 * by gauge, and 1.41 or 1.5 by scale), so all are told; the one asked for is taken.
 * @throws UserError for what is no gauge, scale or factor, where one end is a gauge that is built in several scales and the
 * other a scale, and where it is not known from what the part is scaled.
 */
export function factorOf(asked: FactorAsked): Factor {
  const to = readTarget(asked.to, '--to');
  const from = fromOf(asked);
  if (to.kind === 'factor') {
    const ways = from === undefined || from.kind === 'factor' ? [] : [...gaugeAt(from, to.factor)];
    return { value: to.factor, by: 'factor', says: `factor ${figure(to.factor)}`, ways: [way('factor', to.factor, `${figure(to.factor)} as given`, to.factor), ...ways], title: `${figure(to.factor)} x size`, label: labelOf(to) };
  }
  if (from === undefined) throw new UserError('the part does not say for which gauge it is: give a factor itself, as in 1.45, or tell scale with --from, a gauge or a scale, as in --from "5 in".');
  if (from.kind === 'factor') throw new UserError(`--from "${from.text}" is a factor: give the gauge or the scale that the part is for, as in --from "5 in".`);
  if (to.kind === 'gauge' && from.kind === 'gauge') {
    const value = checkedFactor(withoutNoise(to.size / from.size), to.text, '--to');
    return { value, by: 'gauge', says: `${to.gauge.name} / ${from.gauge.name}`, ways: [way('gauge', value, `${to.gauge.name} / ${from.gauge.name}`, value), ...byScales(scalesOf(from), scalesOf(to), value)], title: `${inches(to.size)} in gauge`, label: labelOf(to) };
  }
  const [fromScale, toScale] = [oneScale(from, '--from'), oneScale(to, '--to')];
  const value = checkedFactor(withoutNoise(toScale.perFoot / fromScale.perFoot), to.text, '--to');
  const gaugeWay = from.kind === 'gauge' ? gaugeAt(from, value) : [];
  return { value, by: 'scale', says: `${toScale.text} / ${fromScale.text}`, ways: [way('scale', value, `${toScale.text} / ${fromScale.text}`, value), ...gaugeWay], title: toScale.text.replace(' to the foot', '/ft'), label: labelOf(to) };
}

function fromOf({ from, engine }: FactorAsked): Target | undefined {
  if (from !== undefined) return readTarget(from, '--from');
  const said = /([\d][\d\s./-]*?)\s*-?\s*(?:inch|in)\b\s*gauge/i.exec(engine ?? '')?.[1];
  return said === undefined ? undefined : readTarget(`${said} in`, 'the gauge of the part');
}

const way = (by: Way['by'], factor: number, says: string, taken: number): Way => ({ by, factor: withoutNoise(factor), says, percent: 100 * (factor / taken - 1) });

const scalesOf = (target: Exclude<Target, { kind: 'factor' }>): readonly Scale[] => (target.kind === 'gauge' ? target.gauge.scales : [target.scale]);

/** The factors of all scales in which the two gauges are built; each factor once. */
function byScales(from: readonly Scale[], to: readonly Scale[], taken: number): readonly Way[] {
  const all = from.flatMap((a) => to.map((b) => way('scale', b.perFoot / a.perFoot, `${b.text} / ${a.text}`, taken)));
  return all.filter(({ factor }, i) => all.findIndex((other) => Math.abs(other.factor - factor) < 1e-9) === i);
}

/** What the gauge comes to when a part of one gauge is scaled otherwise. */
function gaugeAt(from: Target, factor: number): readonly Way[] {
  if (from.kind !== 'gauge') return [];
  return [way('gauge', factor, `${from.gauge.name} x ${figure(factor)} is a gauge of ${inches(from.size * factor)} in`, factor)];
}

function oneScale(target: Exclude<Target, { kind: 'factor' }>, option: string): Scale {
  const [first, ...more] = scalesOf(target);
  if (target.kind === 'gauge' && more.length > 0) throw new UserError(`${option} "${target.text}": the gauge ${gaugeName(target.gauge)} is built in several scales, ${target.gauge.scales.map(({ text }) => text).join(' and ')}: give the scale, as in ${option} "${first!.text.replace(' to the foot', '/ft')}".`);
  return first!;
}

/** A ratio without the noise of binary sums. */
const withoutNoise = (ratio: number): number => Number(ratio.toPrecision(14));

const gaugeName = (gauge: Gauge): string => gauge.name;
const figure = (value: number): string => String(Number(value.toPrecision(5)));
const inches = (mm: number): string => String(Number((mm / 25.4).toFixed(3)));
