import { stationName } from '../../part/author/phrases.js';
import type { Finding } from '../finding.js';
import { workingZero } from '../working-zero.js';
import { commonPractice, isFirst, stretchOf, type Check } from './context.js';
import { stationsThere } from './stations-there.js';

/** Whether the faces from which a set-up counts are there when it begins, and stay while it is needed. Centre lines have no face. */
export const datum: Check = (context, state) => {
  const { part, states } = context;
  const { operation, setUp } = state;
  if (setUp.machine === 'bench') return [];
  const finding = (gravity: Finding['gravity'], station: string, sentence: string): Finding => ({ check: 'datum', operation: operation.number, gravity, figures: { station, setUp: setUp.id }, sentence: [sentence], source: commonPractice });
  const here = states.indexOf(state);
  const stretch = stretchOf(context, state);
  return workingZero(part, setUp).flatMap(({ id }): readonly Finding[] => {
    const name = stationName(id);
    const there = stationsThere(part, state.before).has(id);
    const after = stationsThere(part, state.after).has(id);
    if (there && !after && state !== stretch.at(-1)) return [finding('warning', id, `This operation cuts away ${name}, from which set-up ${setUp.id} counts, and more is to be cut in it: the zero of the dials must be kept, for it cannot be picked up again`)];
    if (there || !isFirst(context, state)) return [];
    const before = states.slice(0, here).find((earlier) => stationsThere(part, earlier.after).has(id) || stationsThere(part, earlier.before).has(id));
    if (before !== undefined) {
      const gone = states.slice(states.indexOf(before), here).find((earlier) => stationsThere(part, earlier.before).has(id) && !stationsThere(part, earlier.after).has(id));
      return [finding('fatal', id, `Set-up ${setUp.id} counts from ${name}, which operation ${gone?.operation.number ?? before.operation.number} has cut away: this must come before, or count from another face`)];
    }
    const makes = states.slice(here).find((later) => stationsThere(part, later.after).has(id));
    if (makes === undefined || makes === state) return [];
    if (stretch.includes(makes)) return [finding('remark', id, `Set-up ${setUp.id} counts from ${name}, which its operation ${makes.operation.number} is the first to cut: until then the zero is taken from the metal still to come off`)];
    return [finding(setUp.machine === 'lathe' ? 'remark' : 'warning', id, `Set-up ${setUp.id} counts from ${name}, which is not there before operation ${makes.operation.number}: the zero has to be worked out from another face`)];
  });
};
