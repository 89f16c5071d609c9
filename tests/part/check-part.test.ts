import { describe, expect, it } from 'vitest';
import crossheadPin from '../../generators/parts/crosshead-pin.js';
import { checkPart } from '../../engine/part/check-part.js';
import type { Part } from '../../engine/part/part.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { UserError } from '../../engine/units/user-error.js';

const sound = crossheadPin.build(resolveValues(crossheadPin, {}, undefined));

it('a sound part passes as it is', () => {
  expect(checkPart(sound, 'own.ts')).toBe(sound);
});

describe('refuses', () => {
  const [station, ...stations] = sound.stations;
  const [setUp] = sound.setUps;
  const [operation, ...operations] = sound.operations;
  const [cut] = operation!.cuts;
  it.each<[string, Partial<Record<keyof Part, unknown>>, string]>([
    ['no operations', { operations: [] }, 'operations is empty'],
    ['half a piece', { quantity: 0.5 }, 'quantity must be a whole number'],
    ['no piece', { quantity: 0 }, 'quantity is 0, too small'],
    ['an unknown hand', { hand: 'both' }, 'hand "both" must be one of right, left'],
    ['an unknown machine', { setUps: [{ ...setUp, machine: 'press' }] }, 'setUps.0.machine "press" must be one of lathe, mill, drill, bench'],
    ['a number that is none', { stations: [{ ...station, value: NaN }, ...stations] }, 'stations.0.value is not a number'],
    ['a number without end', { stock: { ...sound.stock, length: Infinity } }, 'stock.length is not a number'],
    ['a station twice', { stations: [station, ...sound.stations] }, `the station "${station!.id}" stands twice`],
    ['a set-up twice', { setUps: [setUp, ...sound.setUps] }, `the set-up "${setUp!.id}" stands twice`],
    ['a cut twice', { operations: [operation, operation, ...operations] }, `the cut "${cut!.id}" stands twice`],
    ['a set-up that is not there', { operations: [{ ...operation, setUp: 'Q' }, ...operations] }, 'operation 10 is in the set-up "Q", which is not there'],
    ['a station that is not there', { operations: [{ ...operation, cuts: [{ ...cut, stations: ['x:gone'] }] }, ...operations] }, `the cut "${cut!.id}" stands on the station "x:gone", which is not there`],
  ])('%s', (_, changes, what) => {
    expect(() => checkPart({ ...sound, ...changes }, 'own.ts')).toThrow(new UserError(`own.ts: build gives no sound part: ${what}.`));
  });
});
