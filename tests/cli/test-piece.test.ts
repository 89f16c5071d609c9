import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { everythingIn, inFolder, trialpiece } from './program.js';
import { expectRefusal } from './refusal.js';

describe('what cannot be rehearsed', () => {
  it.each<[string, string[], string | RegExp]>([
    ['an operation that does not exist', ['crosshead', '--rehearse', '95'], /^the crosshead has no operation 95; it has 10, 20, .*; the nearest is 90\.$/],
    ['an operation that cuts nothing', ['crosshead-pin', '--rehearse', '120'], /^operation 120 of the crosshead-pin \("Harden and temper"\) cannot be rehearsed: .*; those that can are .*\.$/],
    ['an operation in which nothing is tricky', ['crosshead', '--rehearse', '10'], /^operation 10 of the crosshead \("Face the front end"\) cannot be rehearsed: nothing in it is tricky; those that can are .*\.$/],
    ['no number', ['crosshead', '--rehearse', 'tap'], '--rehearse "tap" is no list of operations: "tap" is no whole number; write them as 90,100.'],
    ['no trials', ['crosshead', '--trials', '0'], '--trials "0" is no whole number from 1 to 12.'],
    ['too many trials', ['crosshead', '--trials', '500'], '--trials "500" is no whole number from 1 to 12.'],
    ['a ladder for several operations', ['crosshead', '--ladder'], /^a ladder is for one operation of the crosshead, and [\d, ]+ are rehearsed: name one with --rehearse; those that have are 100, 140, 170, 190\.$/],
    ['a ladder where no size is tried', ['crosshead', '--rehearse', '150', '--ladder'], 'operation 150 of the crosshead has no size that is tried in steps; those that have are 100, 140, 170, 190.'],
    ['a ladder and trials', ['crosshead', '--rehearse', '100', '--ladder', '--trials', '2'], '--ladder makes as many trials as there are sizes to try: leave --trials out.'],
    ['a ladder on what is held one by one', ['expansion-link', '--rehearse', '60', '--ladder'], 'the ladder for operation 60 of the expansion-link cannot stand on one blank: operation 30 is done in a fixture, which holds one piece; ask for --trials 3 instead.'],
    ['a material that is none', ['crosshead', '--rehearse', '100', '--material', 'cheese'], /"cheese"/],
    ['an unknown part', ['crosshed'], /^"crosshed" is not a part: .*; the nearest is crosshead/],
  ])('%s', (_, words, sentence) => expectRefusal(['test-piece', ...words], sentence));

  it('a part on which nothing is worth it, with what comes nearest', () =>
    expectRefusal(['test-piece', 'crosshead-pin'], /^no operation of the crosshead-pin is worth a test piece: operation \d+ comes nearest, with .* hours at stake against .* for its rehearsal; ask for it with --rehearse \d+\.$/));
});

interface Rehearsal {
  readonly of: string;
  readonly operations: readonly number[];
  readonly trials: number;
  readonly barLength: number;
  readonly beside: { readonly axis: string; readonly pitch: number } | null;
  readonly ladder: number | null;
  readonly likeness: readonly { readonly operation: number; readonly trial: number; readonly alike: boolean; readonly margin: number }[];
  readonly stakes: readonly { readonly operation: number; readonly atStake: number }[];
  readonly measures: readonly { readonly operation: number; readonly what: string; readonly lower: number; readonly upper: number }[];
}

interface PieceRecord {
  readonly title: string;
  readonly rehearsal: Rehearsal;
  readonly operations: readonly { readonly number: number }[];
  readonly checks: readonly { readonly passed: boolean }[];
}

describe('test-piece', () => {
  it('rehearses what the stakes call for, and records why and how like the piece is', () =>
    inFolder({}, (folder) => {
      const { status, stdout, stderr } = trialpiece(folder, 'test-piece', 'crosshead', '--record');
      expect([status, stderr]).toEqual([0, '']);
      const { rehearsal, operations, checks } = JSON.parse(stdout) as PieceRecord;
      expect(rehearsal.of).toBe('crosshead');
      // The 0-80 holes of the grooves are what the part is spoiled by: the smallest thread of the engine, in steel.
      expect(rehearsal.operations).toContain(100);
      expect(rehearsal.likeness.every(({ alike, margin }) => alike && margin >= 2)).toBe(true);
      expect(rehearsal.stakes.map(({ operation }) => operation)).toEqual(expect.arrayContaining([...rehearsal.operations]));
      for (const number of rehearsal.operations) {
        expect(operations.map((operation) => operation.number)).toContain(number);
        expect(rehearsal.measures.some(({ operation, lower, upper }) => operation === number && lower <= upper)).toBe(true);
      }
      expect(checks.every(({ passed }) => passed)).toBe(true);
      expect(everythingIn(folder)).toEqual([]);
    }));

  it('writes a full print with boxes for what is found, the same bytes twice', () =>
    inFolder({}, (folder) => {
      for (const out of ['one', 'two']) expect(trialpiece(folder, 'test-piece', 'crosshead', '--rehearse', '170', '--out', out, '--format', 'svg').stderr).toBe('');
      const names = everythingIn(join(folder, 'one'));
      expect(names.length).toBeGreaterThan(3);
      for (const name of names) expect(readFileSync(join(folder, 'one', name)).equals(readFileSync(join(folder, 'two', name)))).toBe(true);
      const text = names.filter((name) => name.endsWith('.svg')).map((name) => readFileSync(join(folder, 'one', name), 'utf8')).join('');
      for (const words of ['What the piece shows', 'What it does not show', 'How it differs from the part', 'Go or no-go', 'Settings found']) expect(text).toContain(words);
    }));

  it('tells of a softer material what it does not show, and how long the bar is for several trials', () =>
    inFolder({}, (folder) => {
      const recorded = (...words: string[]): Rehearsal => (JSON.parse(trialpiece(folder, 'test-piece', 'crosshead', ...words, '--record').stdout) as PieceRecord).rehearsal;
      const inTurn = recorded('--rehearse', '40', '--trials', '3', '--material', 'brass');
      expect([inTurn.trials, inTurn.beside]).toEqual([3, null]);
      // Three pieces and two saw cuts of 3 mm each with their facing.
      expect(inTurn.barLength).toBeCloseTo(3 * recorded('--rehearse', '40').barLength + 6, 6);
      const beside = recorded('--rehearse', '170', '--trials', '3');
      expect(beside.barLength).toBeCloseTo(recorded('--rehearse', '170').barLength + 2 * beside.beside!.pitch, 6);
      expect(beside.likeness.map(({ trial, alike }) => [trial, alike])).toEqual([[1, true], [2, true], [3, true]]);
      expect(trialpiece(folder, 'test-piece', 'crosshead', '--rehearse', '170', '--material', 'brass', '--format', 'svg').status).toBe(0);
      const text = everythingIn(join(folder, 'out')).filter((name) => name.endsWith('.svg')).map((name) => readFileSync(join(folder, 'out', name), 'utf8')).join('');
      expect(text).toContain('less energy');
    }));
});
