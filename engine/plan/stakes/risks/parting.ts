import { isPartingOff } from '../parting-off.js';
import { between, riskOf, type RiskFinder } from '../chance.js';

/** Parting off: the blade jams, or the part falls with its last face torn. */
export const parting: RiskFinder = (facts) => {
  const { operation, part, cutters, setUp } = facts;
  if (setUp.machine !== 'lathe') return [];
  if (!isPartingOff(operation)) return [];
  const diameter = cutters.find(({ kind }) => kind === 'parting' || kind === 'facing')?.diameter ?? part.stock.section[0] ?? 0;
  return [riskOf(facts, { kind: 'parting', factor: between(diameter / 12, 0.5, 3), because: ['parting off at ', { length: diameter, sign: 'diameter' }, ': a blade that jams takes the part with it'], figures: { diameter } })];
};
