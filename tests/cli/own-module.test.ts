import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { everythingIn, inFolder, trialpiece } from './program.js';
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
    ['does not parse', 'export default {', 'own.ts cannot be loaded: ParseError: Unexpected token at line 1, column 16.'],
    ['imports what is not there', "import { a } from './nowhere.js';\nexport default a;\n", /^own\.ts cannot be loaded: Cannot find module '\.\/nowhere\.js'.*\.$/],
    ['throws nothing', "throw new Error('');", 'own.ts cannot be loaded: Error without a message.'],
    ['throws what cannot be written', 'throw { toString() { throw 1; } };', 'own.ts cannot be loaded: something that cannot be written as text.'],
    ['ends the program', module({ head: 'process.exit(0);' }), 'own.ts ends the program: take process.exit out of it.'],
    ['never finishes loading', 'await new Promise(() => {});', 'own.ts never finishes loading: what it awaits does not come.'],
    ['leaves a promise that fails', `void Promise.reject(new Error('late'));\n${module({})}`, 'own.ts throws outside of its functions: late.'],
    ['exports a promise', 'export default Promise.resolve(1);', 'own.ts does not describe a part: the default export is a promise; write await before it.'],
    ['throws when it is read', "export default { get name() { throw new Error('shy'); } };", 'own.ts does not describe a part: reading it throws: shy.'],
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
    ['has a limit that is none', module({ bore: LENGTH.replace("'1/8 in'", "'low'") }), /^own\.ts does not describe a part: parameters\.bore: limit "low" is not a length: /],
    ['has its limits the wrong way round', module({ bore: LENGTH.replace("'1/8 in'", "'1 in'") }), 'own.ts does not describe a part: parameters.bore: minimum "1 in" is more than maximum "1/2 in".'],
    ['gives no list of relations', module({ relations: '() => 3' }), 'own.ts: relations gives no sound list: the list must be a list.'],
    ['gives half a relation', module({ relations: "() => [{ says: 'it fits' }]" }), 'own.ts: relations gives no sound list: 0.left is missing.'],
    ['gives a relation of no kind', module({ relations: "() => [{ says: 'it fits', left: { text: 'a', value: 1 }, is: '!=', right: { text: 'b', value: 2 }, measure: 'length' }]" }), 'own.ts: relations gives no sound list: 0.is "!=" must be one of <, <=, =, >=, >; the nearest is <=.'],
    ['throws when judged', module({ relations: "() => { throw new Error('odd'); }" }), 'own.ts: relations throws: odd.'],
    ['builds nothing', module({ build: '() => undefined' }), 'own.ts: build gives no sound part: the part is missing.'],
    ['builds half a part', module({ build: "() => ({ name: 'own', title: 'Own', engine: 'E', units: 'inch' })" }), 'own.ts: build gives no sound part: units "inch" must be one of in, mm; the nearest is in.'],
    ['throws when built', module({}), 'own.ts: build throws: no.'],
  ])('it %s', (_, text, sentence) => expectRefusal(['print', 'own.ts'], sentence, { 'own.ts': text }));

  it('it is not there', () => expectRefusal(['print', './own.ts'], 'There is no file ./own.ts.'));

  it('its path is no path', () => expectRefusal(['print', `./${'x'.repeat(300)}.ts`], /^\.\/x{200,}\.\.\. cannot be read: the name is too long\.$/));

  it('its path runs through a file', () => expectRefusal(['print', 'own.ts/part.ts'], 'There is no file own.ts/part.ts.', { 'own.ts': '' }));

  it('it is a folder', () => expectRefusal(['print', './parts/'], './parts/ is not a file: give the path of a module that describes a part.', { 'parts/a.ts': '' }));
});

it('a module that writes leaves the record alone, and one that goes elsewhere leaves the files here', () => {
  const readme = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');
  const own = `process.chdir('/');\nprocess.stdout.write('noise');\n${/```ts\n(import [^]*?)```/.exec(readme)?.[1]?.replace('build: (p) => {', "build: (p) => { console.log('more');") ?? ''}`;
  return inFolder({ 'own.ts': own }, (folder) => {
    const { status, stdout, stderr } = trialpiece(folder, 'print', 'own.ts', '--record');
    expect([status, stderr]).toEqual([0, 'noisemore\n']);
    expect(JSON.parse(stdout)).toMatchObject({ part: 'drop-link' });
    const shown = trialpiece(folder, 'show', 'own.ts');
    expect(shown.stdout).toMatch(/^drop-link: Drop link\n/);
    expect(trialpiece(folder, 'print', 'own.ts', '--format', 'svg').stdout).toMatch(/^out\/drop-link/);
    expect(everythingIn(folder)).toEqual(expect.arrayContaining(['out', 'out/drop-link.json', 'own.ts']));
  });
});
