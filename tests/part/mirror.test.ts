import { describe, expect, it } from 'vitest';
import type { Vector3 } from '../../engine/geometry/vector.js';
import { mirrorPart } from '../../engine/part/mirror.js';
import type { Part } from '../../engine/part/part.js';
import type { Axis } from '../../engine/part/station.js';
import { builtInPart } from '../support/built-in-part.js';

const index = { x: 0, y: 1, z: 2 } as const;
const reversedAlong = (axis: Axis, point: Vector3): Vector3 =>
  point.map((value, k) => (k === index[axis] && value !== 0 ? -value : value)) as unknown as Vector3;

const sizesOf = (part: Part) => part.operations.flatMap(({ cuts }) => cuts).flatMap(({ sizes }) => sizes);

describe.each(['crosshead', 'crosshead-pin', 'expansion-link', 'connecting-rod'])('the mirrored %s', async (name) => {
  const part = await builtInPart(name);
  const mirrored = mirrorPart(part);
  const axis = part.handAxis;

  it('mirrored again is the part', () => {
    // Through JSON, in which minus zero is zero.
    const plain = (given: Part): unknown => JSON.parse(JSON.stringify(given));
    expect(plain(mirrorPart(mirrored))).toEqual(plain(part));
  });

  it('is of the other hand', () => {
    expect([part.hand, mirrored.hand]).toEqual(['right', 'left']);
  });

  it('has its stations reversed along the hand axis, and no others', () => {
    part.stations.forEach((station, i) => {
      const expected = station.axis === axis && station.value !== 0 ? -station.value : station.value;
      expect(mirrored.stations[i]).toMatchObject({ id: station.id, name: station.name, value: expected });
    });
  });

  it('has every distance from a station to the next as before, the other way along the hand axis', () => {
    const value = new Map(mirrored.stations.map((station) => [station.id, station.value]));
    for (const { value: own, placing } of mirrored.stations) {
      if (placing.kind !== 'from') continue;
      const origin = value.get(placing.station) ?? NaN;
      expect(own - origin).toBeCloseTo(placing.sense * placing.distance.value, 9);
    }
  });

  it('has the places of its holes reversed and their sizes and threads untouched', () => {
    const before = sizesOf(part);
    const after = sizesOf(mirrored);
    expect(after).toHaveLength(before.length);
    before.forEach((size, i) => {
      const other = after[i];
      if (size.kind !== 'hole' && size.kind !== 'tapping') return;
      if (other?.kind !== size.kind) throw new Error('a size changed its kind');
      expect(other.points).toEqual(size.points.map((point) => reversedAlong(axis, point)));
      expect(other.direction).toEqual(reversedAlong(axis, size.direction));
      expect({ ...other, points: 0, direction: 0 }).toEqual({ ...size, points: 0, direction: 0 });
    });
  });

  it('keeps names, ids, instructions and notes', () => {
    const texts = (given: Part) => [
      given.name,
      given.title,
      given.notes,
      given.operations.map(({ title, leave, check, cuts }) => [title, leave, check, cuts.map(({ id, name: cut, instruction }) => [id, cut, instruction])]),
      given.setUps.map(({ id, holding, zero, note }) => [id, holding, zero, note]),
    ];
    expect(texts(mirrored)).toEqual(texts(part));
  });
});

it('a set-up that is open along the hand axis is open the other way', async () => {
  const part: Part = { ...(await builtInPart('crosshead')), handAxis: 'z' };
  const flipped: Record<string, string> = { '+z': '-z', '-z': '+z' };
  mirrorPart(part).setUps.forEach((setUp, i) => {
    const up = part.setUps[i]?.up;
    expect(setUp.up).toEqual(typeof up === 'string' ? (flipped[up] ?? up) : up && reversedAlong('z', up));
  });
});
