import { UserError } from '../../units/user-error.js';
import { say, type Sum } from './sum.js';

/**
 * Packing (mm) under one jaw of a three-jaw chuck for a throw: 1.5 e - R + sqrt(R^2 - q^2), where the two other jaws touch
 * q = max(0, 0.866 e - b) off their own centre lines, b half the width of a flat jaw. With b = 0 it is the published
 * formula of narrow jaws; with wide jaws the packing is 1.5 e.
 */
export function jawPacking(offset: number, radius: number, halfJaw: number): number {
  const off = Math.max(0, (Math.sqrt(3) / 2) * offset - halfJaw);
  if (off >= radius) throw new UserError(`a throw of ${+offset.toFixed(4)} mm is too much for work of ${+radius.toFixed(4)} mm radius.`);
  return 1.5 * offset - radius + Math.sqrt(radius ** 2 - off ** 2);
}

export const jawPackingSum: Sum = {
  name: 'jaw-packing',
  summary: 'packing under one jaw of a three-jaw chuck to turn at an offset',
  example: { throw: '3mm', diameter: '25mm', jaw: '6mm' },
  source: 'geometry: p = 1.5 e - R + sqrt(R^2 - max(0, 0.866 e - b)^2), b half the width of the jaws; worn jaws differ, so measure the throw',
  arguments: [
    { name: 'throw', kind: 'length', about: 'offset wanted', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the work', required: true },
    { name: 'jaw', kind: 'length', about: 'width of the flat of a jaw', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const [offset, radius, half] = [values.number('throw'), values.number('diameter') / 2, values.number('jaw') / 2];
    const packing = jawPacking(offset, radius, half);
    const [narrow, wide] = [jawPacking(offset, radius, 0), 1.5 * offset];
    return {
      result: { packing, narrowJaws: narrow, wideJaws: wide, indicatorReading: 2 * offset },
      steps: [
        `packing ${say(packing, context)} (jaws to an edge would want ${say(narrow, context)}, very wide jaws ${say(wide, context)})`,
        `check: the indicator must read ${say(2 * offset, context)} in all; for each error of the throw change the packing by 1.5 times as much`,
      ],
    };
  },
};
