import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { everythingIn, inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

const readme = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');
const ownPart = /```ts\n(import [^]*?)```/.exec(readme)?.[1] ?? '';
/** The part of the README, held in the vice by two of its faces. */
const heldBy = (faces: string): string => ownPart.replace(/holding: 'vice on parallels',( grip: \{[^}]*\},)?/, `holding: 'vice on parallels', grip: { kind: 'vice', between: [${faces}] },`);

describe('plan', () => {
  it('writes an SVG for each sheet, a PDF and the record, and gives the same bytes twice', () =>
    inFolder({}, (folder) => {
      const runs = ['one', 'two'].map((out) => trialpiece(folder, 'plan', 'crosshead-pin', '--out', out));
      for (const { status, stderr } of runs) expect([status, stderr]).toEqual([0, '']);
      const names = everythingIn(join(folder, 'one'));
      expect(names).toEqual(expect.arrayContaining(['crosshead-pin-plan-1.svg', 'crosshead-pin-plan.pdf', 'crosshead-pin-plan.json']));
      expect(runs[0]?.stdout.trim().split('\n').sort()).toEqual(names.map((name) => join('one', name)));
      for (const name of names) expect([name, readFileSync(join(folder, 'one', name)).equals(readFileSync(join(folder, 'two', name)))]).toEqual([name, true]);
    }));

  it('writes with --record the record alone, of the hand asked for', () =>
    inFolder({}, (folder) => {
      const { status, stdout } = trialpiece(folder, 'plan', 'crosshead', '--hand', 'left', '--record');
      expect(status).toBe(0);
      expect(JSON.parse(stdout)).toMatchObject({ format: 'trialpiece plan record', version: 1, hand: 'left' });
      expect(everythingIn(folder)).toEqual([]);
    }));
});

describe('plan --check', () => {
  it('passes a sound part', () =>
    inFolder({ 'own.ts': heldBy('edges[0].id, edges[1].id') }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'plan', './own.ts', '--check');
      expect([status, stderr]).toEqual([0, '']);
      expect(stdout).not.toMatch(/^fatal/m);
      expect(everythingIn(join(folder, 'out'))).toContain('drop-link-plan.pdf');
    }));

  it('exits with 1 where something is fatal, says what, and writes the files all the same', () =>
    inFolder({ 'own.ts': heldBy('near.id, far.id') }, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'plan', './own.ts', '--check');
      expect([status, stderr]).toEqual([1, '']);
      expect(stdout).toMatch(/^fatal: operation 10: The faces for the vice \(.*\) do not stand upright/m);
      expect(everythingIn(join(folder, 'out'))).toContain('drop-link-plan.pdf');
      expect(trialpiece(folder, 'plan', './own.ts').status).toBe(0);
      const { status: silent, stdout: record } = trialpiece(folder, 'plan', './own.ts', '--check', '--record');
      expect(silent).toBe(1);
      expect((JSON.parse(record) as { findings: readonly { gravity: string }[] }).findings.some(({ gravity }) => gravity === 'fatal')).toBe(true);
    }));
});

it.each<[string, string[], RegExp]>([
  ['an unknown part', ['crosshed'], /^"crosshed" is not a part: .*; the nearest is crosshead/],
  ['an unknown paper', ['crosshead-pin', '--paper', 'A44'], /"A44".*; the nearest is A4\.$/],
  ['an unknown option', ['crosshead-pin', '--chek'], /check/],
])('%s cannot be planned', (_, words, sentence) => expectRefusal(['plan', ...words], sentence));
