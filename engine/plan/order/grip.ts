import type { Grip } from '../../part/part.js';
import type { Finding } from '../finding.js';
import { commonPractice, isFirst, type Check } from './context.js';
import { gripBetweenCentres } from './grip-centres.js';
import { gripInChuck } from './grip-chuck.js';
import { gripByClamps } from './grip-clamps.js';
import { gripInVice } from './grip-vice.js';

const byKind: Readonly<Record<Grip['kind'], Check>> = {
  'three-jaw chuck': gripInChuck,
  'four-jaw chuck': gripInChuck,
  collet: gripInChuck,
  'between centres': gripBetweenCentres,
  vice: gripInVice,
  clamps: gripByClamps,
  fixture: gripByClamps,
};

/** Whether something is left to hold the work by, and whether the cuts leave it alone. */
export const grip: Check = (context, state) => {
  const { setUp, operation } = state;
  if (setUp.machine === 'bench') return [];
  if (setUp.grip !== undefined) return byKind[setUp.grip.kind](context, state);
  if (!isFirst(context, state)) return [];
  const unknown: Finding = {
    check: 'grip',
    operation: operation.number,
    gravity: 'remark',
    figures: { setUp: setUp.id },
    sentence: [`Set-up ${setUp.id} does not say by which faces the work is held (${setUp.holding}): whether there is something to hold cannot be told`],
    source: commonPractice,
  };
  return [unknown];
};
