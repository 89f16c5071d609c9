import { describe, expect, it } from 'vitest';
import crosshead from '../../generators/parts/crosshead.js';
import crossheadPin from '../../generators/parts/crosshead-pin.js';
import { resolveValues } from '../../engine/part/resolve.js';
import type { Part } from '../../engine/part/part.js';
import { checkWords } from '../../engine/sheet/check-words.js';
import { UserError } from '../../engine/units/user-error.js';

const pin = crossheadPin.build(resolveValues(crossheadPin, {}, undefined));

it('passes the words of the parts that there are', () => {
  expect(() => checkWords(pin)).not.toThrow();
  expect(() => checkWords(crosshead.build(resolveValues(crosshead, {}, undefined)))).not.toThrow();
});

describe('refuses', () => {
  const [operation, ...operations] = pin.operations;
  it.each<[string, Partial<Part>, RegExp]>([
    ['an unknown caution of the part', { cautions: ['eye'] }, /^the crosshead-pin has no caution "eye": there are rotating-work, .*; the nearest is eyes$/],
    ['an unknown caution of an operation', { operations: [{ ...operation!, caution: ['chuckkey'] }, ...operations] }, /no caution "chuckkey": .*; the nearest is chuck-key$/],
    ['a title longer than its field', { title: 'Weighbar shaft reversing arm' }, /^the title "Weighbar shaft reversing arm" has 28 characters: the title block holds 25 at most$/],
    ['a letter that the font lacks', { notes: [['polish \u{1F600}']] }, /^the crosshead-pin has the text "polish .*" with a character that can't be lettered: U\+1F600 /],
    ['a character that is none', { notes: [['a\0b']] }, /can't be lettered: U\+0000$/],
    ['a text without end', { notes: [['word '.repeat(100)]] }, /^the crosshead-pin has a text of 500 characters, "word .*": 400 at most$/],
  ])('%s', (_, changes, sentence) => {
    const check = () => checkWords({ ...pin, ...changes });
    expect(check).toThrow(UserError);
    expect(check).toThrow(sentence);
  });
});
