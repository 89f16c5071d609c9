import type { Part } from '../../part/part.js';
import type { StrengthRow } from '../strength/compare.js';

/** What is to be kept in mind with a scaled part, in sentences. */
export function cautionsOf(part: Part, strength: readonly StrengthRow[], factor: number): readonly string[] {
  const grown = `${Number(factor.toPrecision(4))}`;
  return [
    ...(part.cautions.includes('pressure') ? ['This part bears on steam or water under pressure: nothing of that is reckoned here. Its making and test come under local codes and the inspector of the club.'] : []),
    'No boiler or pressure part is designed here: plates, stays, tubes and safety valves follow their own code, never a factor.',
    `At the same boiler pressure exact scaling leaves the stresses of steam as they were, for load and area both become ${grown} x ${grown} times what they were; sizes put to what can be bought do not. What weight loads (axleboxes, frames, drawbar) is pressed ${grown} times as hard: weight goes by the cube, area by the square.`,
    ...(strength.length === 0 ? ['What loads this part is not known here: its strength was not looked at.'] : ['Speed of turning, shock and wear are not in these figures; they are for a check, not a proof.']),
    'Wheels: tread, flange and back to back follow the wheel standard of the gauge, not the factor.',
  ];
}
