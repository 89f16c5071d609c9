import { bench, describe } from 'vitest';
import { formsToSolid } from '../../engine/solid/build.js';
import { compareSolidHands } from '../../engine/solid/hand.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { crossheadForms } from '../support/crosshead-forms.js';
import { formsToShape } from '../support/open-cascade-forms.js';
import { loadOpenCascade, shapeVolume } from '../support/open-cascade.js';
import { plateWithHoles } from '../support/plate.js';

const kernel = await loadKernel();
const oc = await loadOpenCascade();

type Body = { readonly stock: readonly TaggedForm[]; readonly removed: readonly TaggedForm[] };

/** The volume stands beside the time as a checksum: a faster but different solid is seen. */
const named = (name: string, volume: number): string => `${name} (volume ${volume.toFixed(3)} mm3)`;

const ours = (name: string, body: Body, segments: number): void => {
  const make = () => formsToSolid(kernel, body.stock, body.removed, { segments });
  bench(named(name, volumeOf(make())), () => void make(), { iterations: 5, time: 500 });
};

const exact = (body: Body): void => {
  const make = () => formsToShape(oc, body.stock, body.removed);
  bench(named('exact kernel', shapeVolume(oc, make())), () => void make(), { iterations: 2, warmupIterations: 0, time: 1 });
};

describe('a crosshead of 56 cuts', () => {
  const body = crossheadForms();
  ours('64 segments', body, 64);
  ours('128 segments', body, 128);
  exact(body);
});

describe('its hand', () => {
  const { stock, removed } = crossheadForms();
  const solid = formsToSolid(kernel, stock, removed, { segments: 32 });
  const left = compareSolidHands(kernel, solid, 'x').leftOver;
  bench(`compared (left over ${left.toFixed(3)} mm3)`, () => void compareSolidHands(kernel, solid, 'x'), { iterations: 5, time: 500 });
});

describe.each([25, 100, 400, 1600])('a plate of %i holes', (count) => {
  ours('64 segments', plateWithHoles(count), 64);
});
