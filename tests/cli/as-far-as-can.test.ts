import { expect, it } from 'vitest';
import { asFarAsCan } from '../../cli/as-far-as-can.js';
import { UserError } from '../../engine/units/user-error.js';

it('what a user could ask for and cannot be made is left out and told, in order; the rest is made', async () => {
  const { orNone, leftOut } = asFarAsCan();
  const refused = (sentence: string) => () => Promise.reject<readonly string[]>(new UserError(sentence));
  expect([await orNone(() => Promise.resolve(['print'])), await orNone(refused('the rod is too long.')), await orNone(refused('no view shows it.')), await orNone(() => Promise.resolve(['plan']))]).toEqual([['print'], [], [], ['plan']]);
  expect(leftOut).toEqual(['the rod is too long.', 'no view shows it.']);
});

it('a fault of the program is thrown on', async () => {
  const { orNone, leftOut } = asFarAsCan();
  await expect(orNone(() => Promise.reject(new RangeError('no ring')))).rejects.toThrow(new RangeError('no ring'));
  expect(leftOut).toEqual([]);
});
