import type { Amount, ScaleLine } from '../../part/scaling/index.js';
import { formatAngle, formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';

/** Headings of the report's lines, in the order of their cells. */
export const lineHeadings = (unit: LengthUnit): readonly string[] => ['parameter', 'before', 'exact', 'chosen', unit === 'in' ? 'off, thou' : 'off, 0.01 mm', 'off, %', 'rule'];

/** A line of the report in words, a cell a heading. */
export function lineCells(line: ScaleLine, unit: LengthUnit): readonly string[] {
  const scales = line.measure === 'length';
  const off = scales && line.deviation !== 0;
  return [
    line.parameter,
    amountText(line.before, line.measure, unit),
    amountText(line.exact, line.measure, unit),
    amountText(line.chosen, line.measure, unit),
    off ? signed(line.deviation / (unit === 'in' ? 0.0254 : 0.01), 1) : line.deviation === 0 ? '0' : signed(line.deviation, 0),
    line.deviation === 0 ? '0' : signed(line.percent, 1),
    line.fixed === true ? 'as set' : line.rule,
  ];
}

/** Why a line came out so, and what it brings with it, as sentences. */
export const lineReasons = (line: ScaleLine): readonly string[] => [
  line.because,
  ...(line.mended ?? []).map((says) => `moved so that ${says}`),
  ...line.knockOn,
  ...(line.mate === undefined ? [] : [`shared by ${line.mate}: the same in both`]),
];

/** A value as the trade says it: a thing by its name with its size, a length in the unit. */
export function amountText({ size, name }: Amount, measure: ScaleLine['measure'], unit: LengthUnit): string {
  if (measure === 'word') return name ?? '';
  if (size === undefined) return name ?? '';
  if (measure === 'angle') return formatAngle(size);
  if (measure === 'count') return String(size);
  const length = formatLength(size, unit, unit === 'in' ? 4 : 3);
  return name === undefined ? length : `${name} (${length})`;
}

/** With its sign; nought has none. */
export function signed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? '0' : value > 0 ? `+${text}` : text;
}
