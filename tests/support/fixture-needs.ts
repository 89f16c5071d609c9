import { compareSolidHands, HAND_SEGMENTS } from '../../engine/solid/hand.js';
import { loadKernel, type Kernel } from '../../engine/solid/kernel.js';
import { soundSolid } from '../../engine/solid/sound-solid.js';
import { checkPart } from '../../engine/part/check-part.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import type { Part } from '../../engine/part/part.js';
import { fixtureCase } from '../../engine/plan/fixture/fixture-case.js';
import type { Fixture, FixtureKind } from '../../engine/plan/fixture/fixture.js';
import { interferences } from '../../engine/plan/fixture/interference.js';
import type { Need } from '../../engine/plan/fixture/need.js';
import { needFor, needsOf } from '../../engine/plan/fixture/needs-of.js';
import { statesOf, type OperationState } from '../../engine/plan/states/state.js';
import type { Shop } from '../../engine/trade/shop/shop.js';
import { builtInPart } from './built-in-part.js';

export const partNames = ['connecting-rod', 'crosshead', 'crosshead-pin', 'expansion-link', 'gland-nut', 'valve-rod-fork'] as const;

export interface NeedsOfPart {
  readonly kernel: Kernel;
  readonly part: Part;
  readonly states: readonly OperationState[];
  readonly needs: readonly Need[];
  /** The need of one operation. */
  readonly of: (operation: number, shop?: Shop) => Need;
}

const made = new Map<string, Promise<NeedsOfPart>>();

/** What a built-in part asks of its fixtures; made once in a file of tests. */
export function needsOfPart(name: string, hand: 'right' | 'left' = 'right'): Promise<NeedsOfPart> {
  const key = `${name} ${hand}`;
  const known = made.get(key) ?? make(name, hand);
  made.set(key, known);
  return known;
}

async function make(name: string, hand: 'right' | 'left'): Promise<NeedsOfPart> {
  const kernel = await loadKernel();
  const right = await builtInPart(name);
  const comparison = compareSolidHands(kernel, soundSolid(kernel, right, { segments: HAND_SEGMENTS }), right.handAxis);
  const part = hand === 'right' ? right : mirrorPart(right);
  const states = statesOf(kernel, part);
  const context = (shop?: Shop) => ({ shop, unit: part.units, comparison });
  return { kernel, part, states, needs: needsOf(kernel, part, states, context()), of: (operation, shop) => needFor(kernel, part, states, context(shop), operation) };
}

/** What is wrong with a fixture: pieces that are no sound parts, and pieces that want the room of the work or of one another. */
export function faultsOf({ kernel, states }: NeedsOfPart, fixture: Fixture): readonly string[] {
  for (const { part } of fixture.pieces) {
    checkPart(part, part.name);
    soundSolid(kernel, part);
  }
  const wrong = fixture.pieces.filter(({ quantity, places }) => quantity !== places.length).map(({ part }) => `${part.name} has not a place for each`);
  const words = interferences(fixtureCase(kernel, fixture, states)).map(({ sentence }) => sentence.map((word) => (typeof word === 'string' ? word : word.length.toFixed(3))).join(''));
  return [...wrong, ...words];
}

export interface Survey {
  readonly served: readonly string[];
  readonly faults: readonly string[];
  readonly refused: readonly string[];
}

/** A kind over every need of every built-in part. */
export async function surveyOf(kind: FixtureKind, hand: 'right' | 'left' = 'right'): Promise<Survey> {
  const served: string[] = [];
  const faults: string[] = [];
  const refused: string[] = [];
  for (const name of partNames) {
    const needs = await needsOfPart(name, hand);
    for (const need of needs.needs) {
      const place = `${name} ${need.setUp.id} ${need.operations[0]!.number}`;
      const service = kind.serves(need);
      const because = service.because.map((word) => (typeof word === 'string' ? word : word.length.toFixed(3))).join('');
      if (!service.serves) refused.push(`${place}: ${because}`);
      else {
        served.push(place);
        faults.push(...faultsOf(needs, kind.build(need)).map((fault) => `${place}: ${fault}`));
      }
    }
  }
  return { served, faults, refused };
}
