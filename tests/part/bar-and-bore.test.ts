import { describe, expect, it } from 'vitest';
import type { Vector2 } from '../../engine/geometry/vector.js';
import { cutsIn, hexagonStock, overCorners, sized, stationBook } from '../../engine/part/author/index.js';

const at = stationBook();
const x = at.datum('x', 'axis');
const y = at.datum('y', 'axis', 3);
const end = at.datum('z', 'end');
const centre = [x, y] as const;
const across = at.pair(x, 10, 'flats');
const upright = at.pair(y, 12, 'flats');
const far = at.from(end, 20, 'far end');
const thread = { designation: 'M6', major: 6, pitch: 1, minor: 4.917 };

describe('hexagon bar', () => {
  it('is over its corners 2 / sqrt 3 of its flats', () => {
    expect(overCorners(10)).toBeCloseTo(11.547, 3);
  });

  it.each([
    ['x', across, 0],
    ['y', upright, 1],
  ] as const)('has flats at the two stations of %s, counter-clockwise, and equal sides', (_, flats, axis) => {
    const { forms, section, faces } = hexagonStock({ along: 'z', centre, flats, ends: [0, far] });
    const [form] = forms;
    if (form?.kind !== 'prism') throw new Error('no prism');
    const width = section[0]!;
    let area = 0;
    for (const { from, to } of form.outline) {
      area += (from[0] * to[1] - from[1] * to[0]) / 2;
      expect(Math.hypot(to[0] - from[0], to[1] - from[1])).toBeCloseTo(width / Math.sqrt(3), 9);
    }
    expect(area).toBeCloseTo((Math.sqrt(3) / 2) * width * width, 9);
    const ends = (face: string): readonly number[] => form.outline.filter((segment) => segment.face === face).flatMap(({ from, to }) => [from[axis], to[axis]]);
    for (const [face, station] of [['low flat', flats[0]], ['high flat', flats[1]]] as const) {
      expect(faces[face]!.stations).toEqual([station.id]);
      // The frame stands on the axis of the bar.
      for (const value of ends(face)) expect(value + form.frame.origin[axis]).toBeCloseTo(station.value, 9);
    }
  });

  it('refuses flats that are not about its axis, and ends in the wrong order', () => {
    expect(() => hexagonStock({ along: 'z', centre: [x, at.datum('y', 'other')], flats: upright, ends: [0, far] })).toThrow('not midway about its centre');
    expect(() => hexagonStock({ along: 'x', centre, flats: across, ends: [0, 5] })).toThrow('the axis of the bar');
    expect(() => hexagonStock({ along: 'z', centre, flats: across, ends: [far, 0] })).toThrow('the low end comes first');
  });
});

describe('in a bore', () => {
  const cut = cutsIn(hexagonStock({ along: 'z', centre, flats: across, ends: [0, far] }));
  const bore = { axis: 'z', centre } as const;
  const start = at.from(end, 6, 'start of the groove');
  const shoulder = at.from(start, 2, 'shoulder');

  it('an undercut lies between its two stations and says its diameter', () => {
    const groove = cut.undercut({ id: 'g', name: 'groove', ...bore, from: start, to: shoulder, diameter: sized(7) });
    expect(groove.sizes).toEqual([{ kind: 'diameter', cut: 'g', from: [0, 3, 6], to: [0, 3, 8], diameter: { value: 7, purpose: 'size' }, internal: true }]);
    expect([groove.faces['start']!.stations, groove.faces['shoulder 1']!.stations]).toEqual([[start.id], [shoulder.id]]);
    expect(() => cut.undercut({ id: 'g', name: 'groove', ...bore, from: start, to: start, diameter: sized(7) })).toThrow(new RangeError('the groove has no width'));
  });

  it('a thread ends where its tool runs out, and needs metal', () => {
    const threaded = { id: 't', name: 'bore', ...bore, from: end, to: start, thread, core: 5 } as const;
    expect(cut.internalThread(threaded)).toMatchObject({ forms: [], instruction: ['Tap bore: M6, full thread from end to start of the groove'], sizes: [{ method: 'tap', from: [0, 3, 0], to: [0, 3, 6] }] });
    expect(cut.internalThread({ ...threaded, method: 'screw-cut' }).instruction).toEqual(['Screw-cut bore: M6, full thread from end to start of the groove']);
    expect(() => cut.internalThread({ ...threaded, core: 6 })).toThrow(new RangeError('the bore of the bore is as wide as its thread'));
  });

  it('chamfered corners leave the circle asked for on the face, at the angle to it', () => {
    const corners = cut.cornerChamfer({ id: 'c', name: 'corners', centre, at: far, outward: '+z', across: overCorners(10), circle: sized(9.5) });
    const [form] = corners.forms;
    if (form?.kind !== 'revolution') throw new Error('no revolution');
    const cone = form.outline.find(({ face }) => face === 'chamfer')!;
    const [onFace, onCorner] = [cone.from, cone.to].sort((a, b) => a[0] - b[0]) as [Vector2, Vector2];
    expect(onFace).toEqual([expect.closeTo(4.75, 9), 20]);
    expect(onCorner[0]).toBeCloseTo(overCorners(10) / 2, 9);
    // Thirty degrees from the end face: down 0.5774 for each mm outward.
    expect((20 - onCorner[1]!) / (onCorner[0]! - onFace[0]!)).toBeCloseTo(0.57735, 5);
    expect(corners.sizes).toMatchObject([{ kind: 'chamfer', angle: 60, face: { angle: 30, diameter: { value: 9.5 } } }]);
    expect(() => cut.cornerChamfer({ id: 'c', name: 'corners', centre, at: far, outward: '+z', across: 9, circle: sized(9.5) })).toThrow(new RangeError('the circle of the corners is not inside the corners'));
  });
});
