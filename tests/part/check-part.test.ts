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
  it.each<[string, Partial<Record<keyof Part, unknown>> | Promise<Part>, string]>([
    ['no operations', { operations: [] }, 'operations is empty'],
    ['half a piece', { quantity: 0.5 }, 'quantity must be a whole number'],
    ['no piece', { quantity: 0 }, 'quantity is 0: it must be at least 1'],
    ['an unknown hand', { hand: 'both' }, 'hand "both" must be one of right, left'],
    ['an unknown machine', { setUps: [{ ...setUp, machine: 'press' }] }, 'setUps.0.machine "press" must be one of lathe, mill, drill, bench'],
    ['a number that is none', { stations: [{ ...station, value: NaN }, ...stations] }, 'stations.0.value must be a number'],
    ['a number without end', { stock: { ...sound.stock, length: Infinity } }, 'stock.length must be a number'],
    ['a station twice', { stations: [station, ...sound.stations] }, `the station "${station!.id}" stands twice`],
    ['a set-up twice', { setUps: [setUp, ...sound.setUps] }, `the set-up "${setUp!.id}" stands twice`],
    ['a cut twice', { operations: [operation, operation, ...operations] }, `the cut "${cut!.id}" stands twice`],
    ['a set-up that is not there', { operations: [{ ...operation, setUp: 'Q' }, ...operations] }, 'operation 10 is in the set-up "Q", which is not there'],
    ['a station that is not there', { operations: [{ ...operation, cuts: [{ ...cut, stations: ['x:gone'] }] }, ...operations] }, `the cut "${cut!.id}" stands on the station "x:gone", which is not there`],
    ['a name that is a path', { name: '../other' }, 'name "../other" must be small letters and digits, words joined by hyphens'],
    ['a left hand', { hand: 'left' }, 'hand is "left": describe the right-hand part, of which the left is made'],
    ['a front that is its own up', { attitude: { kind: 'turned', front: '-x', up: '+x' } }, 'attitude.up "+x" is not square to attitude.front "-x"'],
    ['a bar of no length', { stock: { ...sound.stock, length: 0 } }, 'stock.length is 0: it must be more than 0'],
    ['a face of the stock untold', { stock: { ...sound.stock, faces: {} } }, 'the stock has a face "low end" that its faces do not tell of'],
    ['numbers that fall', { operations: [...sound.operations].reverse() }, 'operation 120 follows operation 130: the numbers must rise'],
    ['a set-up turned along its own up', { setUps: [{ ...setUp, up: '+z', right: '-z' }, ...sound.setUps.slice(1)] }, `in the set-up "${setUp!.id}" right is not square to up`],
    ['a set-up that points nowhere', { setUps: [{ ...setUp, up: 'up' }] }, 'setUps.0.up "up" must be a direction such as +x, or a vector of length one'],
    ['a zero that is not there', { setUps: [{ ...setUp, zero: ['gone'] }, ...sound.setUps.slice(1)] }, `the set-up "${setUp!.id}" has its zero at the station "gone", which is not there`],
    ['a form of no kind', { operations: [{ ...operation, cuts: [{ ...cut, forms: [{ kind: 'prsm' }] }] }, ...operations] }, 'operations.0.cuts.0.forms.0.kind "prsm" is not a kind: there are half-space, prism, revolution; the nearest is prism'],
    ['words that are no phrase', { notes: ['mind the gap'] }, 'notes.0 "mind the gap" must be a list'],
    ['a size in words that is none', { notes: [[{ length: NaN }]] }, 'notes.0.0 must be a text, or a size such as { length: 3 }'],
    ['a station of no place', { stations: [{ ...station, placing: { kind: 'frm' } }, ...stations] }, 'stations.0.placing.kind "frm" is not a kind: there are datum, from, derived, row, pair; the nearest is from'],
    ['a promise', Promise.resolve(sound), 'it is a promise: build must not be async'],
  ])('%s', (_, changes, what) => {
    expect(() => checkPart(changes instanceof Promise ? changes : { ...sound, ...changes }, 'own.ts')).toThrow(new UserError(`own.ts: build gives no sound part: ${what}.`));
  });
});
