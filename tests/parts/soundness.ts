import fc from 'fast-check';
import { expect } from 'vitest';
import { checkPart } from '../../engine/part/check-part.js';
import type { PartGenerator } from '../../engine/part/generator.js';
import type { Parameters, Values } from '../../engine/part/parameters.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import type { Part } from '../../engine/part/part.js';
import { resolveValues } from '../../engine/part/resolve.js';
import { solidOf } from '../../engine/solid/build.js';
import { piecesOf } from '../../engine/solid/connected.js';
import type { Kernel } from '../../engine/solid/kernel.js';
import { volumeOf } from '../../engine/solid/measure.js';
import { settingsOf } from '../sheet/random-values.js';
import { unpairedEdges, worstVertex } from '../support/solid-checks.js';

type Settings = Readonly<Record<string, string>>;

export const builtWith = <P extends Parameters>(generator: PartGenerator<P>, settings: Settings = {}): Part => generator.build(resolveValues(generator, settings, undefined));

/**
 * Builds a part with many settings: each time one closed piece of metal whose corners lie on their surfaces, of the volume
 * that `volume` works out, and its mirror image too.
 */
export function staysSound<P extends Parameters>(kernel: Kernel, generator: PartGenerator<P>, volume: (values: Values<P>) => number, seed: number, numRuns: number): void {
  fc.assert(
    fc.property(settingsOf(generator as unknown as PartGenerator), (settings) => {
      const values = resolveValues(generator, settings, undefined);
      const part = generator.build(values);
      expect(checkPart(part, generator.name)).toBe(part);
      const expected = volume(values);
      for (const each of [part, mirrorPart(part)]) {
        const solid = solidOf(kernel, each, { segments: 96 });
        expect(unpairedEdges(solid)).toBe(0);
        expect(worstVertex(solid)).toBeLessThanOrEqual(solid.facetError + 1e-5);
        expect(piecesOf(solid)).toBe(1);
        expect(Math.abs(volumeOf(solid) / expected - 1)).toBeLessThan(2e-3);
      }
    }),
    { seed, numRuns },
  );
}

/** Integral of a smooth function by Simpson's rule. */
export function integral(f: (t: number) => number, from: number, to: number, steps = 400): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let i = 1; i < steps; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** A frustum of a cone. */
export const frustum = (height: number, a: number, b: number): number => (Math.PI * height * (a * a + a * b + b * b)) / 3;
