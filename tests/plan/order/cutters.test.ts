import { beforeAll, describe, expect, it } from 'vitest';
import type { Part } from '../../../engine/part/part.js';
import { builtInPart } from '../../support/built-in-part.js';
import { block } from './block.js';
import { findingsIn, of, sentence, short, withOperation } from './found.js';

let pin: Part;
beforeAll(async () => {
  pin = await builtInPart('crosshead-pin');
});

const reach = (part: Part) => of(findingsIn(part), 'cutter reach');
/** A pocket 20 x 16, as deep as asked, in the middle of the block. */
const pocketed = (depth: number, corner: number, cutter: string, diameter?: number) =>
  reach(
    block((cut, { at }) => [{ cutter, ...(diameter === undefined ? {} : { diameter }), cuts: [cut.pocket({ id: 'pocket', name: 'pocket', tool: '-z', x: [at('x', 10), at('x', 30)], y: [at('y', 7), at('y', 23)], z: [at('z', 30 - depth), 'open'], corner })] }], { size: [40, 30, 30] }),
  );

describe('the diameter of a cutter', () => {
  it('is sound up to twice the radius of the corner', () => {
    expect(pocketed(10, 3, 'end mill', 6)).toEqual([]);
    expect(pocketed(10, 3, 'end mill')).toEqual([]);
  });

  it('is fatal where it is larger, and where no cutter is so small', () => {
    const [found] = pocketed(10, 3, 'end mill', 8);
    expect(found).toMatchObject({ gravity: 'fatal', figures: { diameter: 8, room: 6 } });
    expect(sentence(found!.sentence)).toBe('The cutter does not enter: it is 8, and the narrowest place (the width, or a corner’s radius twice) has 6');
    expect(pocketed(1, 0.3, 'end mill')[0]).toMatchObject({ gravity: 'fatal', figures: { room: 0.6, least: 1 } });
  });

  it('is fatal for a grooving tool wider than its groove', () => {
    const groove = pin.operations.find(({ cuts }) => cuts.some(({ id }) => id === 'undercut'))!;
    const wide = withOperation(pin, groove.number, (operation) => ({ ...operation, cutter: { ...operation.cutter, diameter: 2 } }));
    expect(short(of(findingsIn(wide), 'cutter reach'))).toEqual([`${groove.number} fatal cutter reach`]);
    expect(of(findingsIn(pin), 'cutter reach')).toEqual([]);
  });
});

describe('the length of an end mill', () => {
  it.each([
    // DIN 844: flutes of 6 mm are 13 short, 24 long.
    [12, 'end mill', 6, undefined],
    [20, 'end mill', 6, 'remark'],
    [20, 'long end mill', 6, undefined],
    [26, 'long end mill', 6, 'warning'],
    [26, 'long end mill', 3, 'fatal'],
  ] as const)('%d deep with a %s of %d', (depth, cutter, diameter, gravity) => {
    expect(pocketed(depth, 3, cutter, diameter)[0]?.gravity).toBe(gravity);
  });
});

describe('the holder', () => {
  /** A step 12 deep at the right, and then a small slot at `gap` from its wall, 2 wide and 3 deep in the floor. */
  const beside = (gap: number) =>
    reach(
      block((cut, { at }) => [
        { cutter: 'end mill', cuts: [cut.pocket({ id: 'step', name: 'step', tool: '-z', x: [at('x', 10), 'open'], y: ['open', 'open'], z: [at('z', 18), 'open'] })] },
        { cutter: 'slot drill', diameter: 2, cuts: [cut.pocket({ id: 'slot', name: 'slot', tool: '-z', x: [at('x', 10 + gap), at('x', 12 + gap)], y: ['open', 'open'], z: [at('z', 15), 'open'] })] },
      ], { size: [40, 30, 30] }),
    ).filter(({ operation }) => operation === 20);

  it('strikes what stands higher beside the cut than the cutter sticks out', () => {
    const [found] = beside(4);
    // Flutes of 2 mm are 7 long (DIN 844), and 6 of shank are seen: the wall is 15 above the floor of the slot.
    expect(found).toMatchObject({ gravity: 'warning', figures: { height: 15, distance: 4, stickOut: 13, holder: 40 } });
    expect(sentence(found!.sentence)).toContain('step');
  });

  it('clears what stands farther off than half of it', () => expect(beside(22)).toEqual([]));
});

describe('walls', () => {
  const walls = (y: number, floor: number) =>
    of(findingsIn(block((cut, { at }) => [{ cutter: 'end mill', diameter: 6, cuts: [cut.pocket({ id: 'pocket', name: 'pocket', tool: '-z', x: [at('x', 10), at('x', 30)], y: [at('y', y), at('y', 24)], z: [at('z', floor), 'open'], corner: 3 })] }])), 'wall left');

  it('are sound, thin, slender or none', () => {
    expect(walls(3, 12)).toEqual([]);
    expect(walls(0.6, 12)[0]).toMatchObject({ gravity: 'warning', figures: { wall: 0.6, height: 8, limit: 0.8 } });
    expect(walls(0.1, 12)[0]).toMatchObject({ gravity: 'fatal', figures: { wall: 0.1 } });
    expect(walls(1.2, 6)[0]).toMatchObject({ gravity: 'warning', figures: { wall: 1.2, height: 14 } });
  });

  it('count below a pocket too', () => expect(walls(5, 0.5)[0]).toMatchObject({ gravity: 'warning', figures: { wall: 0.5, height: 0 } }));
});
