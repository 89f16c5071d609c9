import { describe, it } from 'vitest';
import { expectRefusal } from './refusal.js';

const LENGTH = "{ kind: 'length', label: 'bore', default: '1/4 in', minimum: '1/8 in', maximum: '1/2 in' }";

/** A module with one thing in it changed. */
const module = ({ head = '', name = "'block'", bore = LENGTH, relations = '() => []', build = '() => { throw new RangeError("no\\nidea"); }', more = '' }) => `
import { definePart } from 'trialpiece';
${head}
interface Unused { readonly size: number }
export default definePart({ name: ${name}, title: 'Block', summary: 'A block.', parameters: { bore: ${bore} }, relations: ${relations}, build: ${build}, ${more} } as never);
`;

describe('a module that is no part', () => {
  it.each<[string, string, string | RegExp]>([
    ['throws when loaded', module({ head: "throw new Error('out of cheese');" }), 'own.ts cannot be loaded: out of cheese.'],
    ['throws no error but a word', module({ head: "throw 'cheese';" }), 'own.ts cannot be loaded: cheese.'],
    ['does not parse', 'export default {', /^own\.ts cannot be loaded: ParseError: .*\.$/],
    ['imports what is not there', "import { a } from './nowhere.js';\nexport default a;\n", /^own\.ts cannot be loaded: Cannot find module '\.\/nowhere\.js'.*\.$/],
    ['exports nothing', 'export const part = 1;\n', 'own.ts has no default export: end it with export default definePart({ ... }).'],
    ['exports a number', 'export default 3;\n', 'own.ts does not describe a part: the default export must be an object.'],
    ['has no name', module({ name: 'undefined' }), 'own.ts does not describe a part: name is missing.'],
    ['has a name with spaces', module({ name: "'My Block'" }), 'own.ts does not describe a part: name "My Block" must be small letters and digits, words joined by hyphens.'],
    ['has a parameter of no kind', module({ bore: LENGTH.replace('length', 'lenght') }), 'own.ts does not describe a part: parameters.bore.kind "lenght" is not a kind: there are length, clearance, allowance, wall, thread, drill, stock, angle, count, choice; the nearest is length.'],
    ['has a number where a text belongs', module({ bore: LENGTH.replace("'1/8 in'", '3') }), 'own.ts does not describe a part: parameters.bore.minimum must be a string.'],
    ['lacks a limit', module({ bore: LENGTH.replace("minimum: '1/8 in', ", '') }), 'own.ts does not describe a part: parameters.bore.minimum is missing.'],
    ['has a word too many', module({ more: 'colour: 1' }), 'own.ts does not describe a part: the default export has "colour", which is not known.'],
    ['has no function to build', module({ build: '3' }), 'own.ts does not describe a part: build must be a function.'],
    ['has a default out of its limits', module({ bore: LENGTH.replace("'1/4 in'", "'1 in'") }), 'default of bore "1 in" is more than this part allows: at most 1/2 in.'],
    ['throws when judged', module({ relations: "() => { throw new Error('odd'); }" }), 'own.ts: relations throws: odd.'],
    ['builds nothing', module({ build: '() => undefined' }), 'own.ts: build gives no sound part: the part is missing.'],
    ['builds half a part', module({ build: "() => ({ name: 'own', title: 'Own', engine: 'E', units: 'inch' })" }), 'own.ts: build gives no sound part: units "inch" must be one of in, mm.'],
    ['throws when built', module({}), 'own.ts: build throws: no.'],
  ])('it %s', (_, text, sentence) => expectRefusal(['print', 'own.ts'], sentence, { 'own.ts': text }));

  it('it is not there', () => expectRefusal(['print', './own.ts'], 'There is no file ./own.ts.'));

  it('it is a folder', () => expectRefusal(['print', './parts/'], './parts/ is not a file: give the path of a module that describes a part.', { 'parts/a.ts': '' }));
});
