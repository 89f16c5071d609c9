import { beforeAll, describe, expect, it } from 'vitest';
import { mirrorPart } from '../../../engine/part/mirror.js';
import type { Part } from '../../../engine/part/part.js';
import { besideOf, type Beside } from '../../../engine/plan/order/beside.js';
import { statesOf } from '../../../engine/plan/states/state.js';
import { loadKernel, type Kernel } from '../../../engine/solid/kernel.js';
import { builtInPart } from '../../support/built-in-part.js';

let kernel: Kernel;
let crosshead: Part;
beforeAll(async () => {
  kernel = await loadKernel();
  crosshead = await builtInPart('crosshead');
});

const besideOperation = (part: Part, number: number): readonly Beside[] => besideOf(part, statesOf(kernel, part).find(({ operation }) => operation.number === number)!);
const at = (part: Part, id: string): number => part.stations.find((station) => station.id === id)!.value;

describe('what stands beside a cut', () => {
  it('is the boss, by the room that the bevel and the boss leave: worked from their sizes', () => {
    const [angle, start, shoulder] = [Math.PI / 6, at(crosshead, 'z:start of the bevels'), at(crosshead, 'z:shoulder')];
    const half = at(crosshead, 'x:cheek faces, high');
    const boss = crosshead.operations.find(({ number }) => number === 20)!.cuts[0]!.sizes.find((size) => size.kind === 'diameter')!;
    const radius = boss.kind === 'diameter' ? boss.diameter.value / 2 : 0;
    // Along the bevel from its edge at the shoulder to where the boss stands 0.05 above its plane.
    const height = start - (0.05 + (half - radius) * Math.cos(angle)) / Math.sin(angle);
    const edge = (start - shoulder) / Math.cos(angle);
    const room = (half - radius) * Math.sin(angle) + (start - height) * Math.cos(angle) - edge;
    for (const part of [crosshead, mirrorPart(crosshead)]) {
      const [nearest] = besideOperation(part, 210);
      expect(nearest?.what).toEqual({ cut: 'boss', face: 'step 1' });
      expect(nearest!.distance).toBeLessThanOrEqual(room + 1e-3);
      expect(nearest!.distance).toBeGreaterThan(room - 0.1);
    }
  });

  it('are both walls of the groove for a hole drilled in its floor, as high as it is deep', () => {
    const found = besideOperation(crosshead, 90);
    const radius = 0.0469 / 2;
    // Half the groove less half the rows' spacing less the drill's radius, in inches: 1/4 - 3/16 - r.
    const clearance = (0.25 - 0.1875 - radius) * 25.4;
    expect(found.map(({ what }) => `${what.cut} ${what.face}`).sort()).toEqual(['groove-upper high x', 'groove-upper low x']);
    for (const { distance, height } of found) {
      expect(distance).toBeCloseTo(clearance, 1);
      expect(height).toBeCloseTo(0.1875 * 25.4, 3);
    }
  });

  it('is nothing for a face right across, a pocket in a level face, and on the lathe', () => {
    for (const number of [20, 60, 70, 80, 200]) expect(besideOperation(crosshead, number)).toEqual([]);
  });

  it('leaves out what is farther than asked', () => {
    const state = statesOf(kernel, crosshead).find(({ operation }) => operation.number === 210)!;
    expect(besideOf(crosshead, state, 3)).toEqual([]);
  });
});
