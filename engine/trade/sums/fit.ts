import { fitLimits, type Deviations } from '../fits.js';
import { roundTo } from '../../units/rounding.js';
import { formatDeviation, formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import { say, type Sum } from './sum.js';

const micrometres = (mm: number): number => {
  const exact = roundTo(mm * 1000, 2);
  return Number.isInteger(exact * 2) ? exact : roundTo(exact, 0);
};

/** As many decimals as the tables print: whole or half micrometres, tenths or twentieths of a thou. */
const decimals = (mm: number, unit: LengthUnit): number => {
  const value = unit === 'in' ? mm / 25.4 : mm;
  const few = unit === 'in' ? 4 : 3;
  return roundTo(value, few) === roundTo(value, few + 1) ? few : few + 1;
};
const deviation = (mm: number, unit: LengthUnit): string => formatDeviation(mm, unit, decimals(mm, unit));
const limit = (mm: number, unit: LengthUnit): string => `${formatLength(mm, unit, decimals(mm, unit))} ${unit}`;

const side = ({ upper, lower }: Deviations) => ({ upper: micrometres(upper), lower: micrometres(lower) });

export const fit: Sum = {
  name: 'fit',
  summary: 'limits of hole and shaft of a fit, and the clearance',
  example: { size: '8mm', class: 'H7/g6' },
  source: 'ISO 286-2 as tabulated; ANSI B4.1 for RC, LC, LT, LN and FN fits',
  arguments: [
    { name: 'size', kind: 'length', about: 'nominal size', required: true },
    { name: 'class', kind: 'class', about: 'H7/g6, RC4, or one side alone: H7, g6', required: true },
  ],
  compute(values, context) {
    const size = values.number('size');
    const { hole, shaft, clearance, source } = fitLimits(values.text('class'), size);
    const line = (name: string, limits: Deviations): string =>
      `${name} ${say(size, context)} ${deviation(limits.upper, context.unit)} / ${deviation(limits.lower, context.unit)}: ${limit(size + limits.lower, context.unit)} to ${limit(size + limits.upper, context.unit)}`;
    return {
      result: {
        ...(hole === undefined ? {} : { hole: side(hole) }),
        ...(shaft === undefined ? {} : { shaft: side(shaft) }),
        ...(clearance === undefined ? {} : { clearance: { max: micrometres(clearance.max), min: micrometres(clearance.min) } }),
        limits: {
          ...(hole === undefined ? {} : { hole: { max: size + hole.upper, min: size + hole.lower } }),
          ...(shaft === undefined ? {} : { shaft: { max: size + shaft.upper, min: size + shaft.lower } }),
        },
        source,
      },
      steps: [
        ...(hole === undefined ? [] : [line('hole', hole)]),
        ...(shaft === undefined ? [] : [line('shaft', shaft)]),
        ...(clearance === undefined ? [] : [`${clearance.max < 0 ? 'interference' : 'clearance'} from ${say(clearance.min, context)} to ${say(clearance.max, context)} (negative is interference)`]),
      ],
    };
  },
};
