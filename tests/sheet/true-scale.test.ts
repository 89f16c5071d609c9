import { describe, expect, it } from 'vitest';
import type { Direction } from '../../engine/part/station.js';
import { axisOf, vectorOf } from '../../engine/part/author/directions.js';
import { dot } from '../../engine/geometry/vector.js';
import { inchScales, isoScales } from '../../templates/scales.js';
import { partShown, printedParts, printsOf } from '../support/print.js';
import { arrowOf, drawnDimensions, isLevel, isUpright, linearOnly } from './reading.js';
import { isText } from './crossings.js';
import { distance } from './paper-geometry.js';

describe.each(printedParts.flatMap((name) => (['in', 'mm'] as const).map((units) => [name, units] as const)))('the %s in %s', (name, units) => {
  it('has each length on paper as its value and the scale say, to 0.02 mm', async () => {
    for (const print of await printsOf(name, { units })) {
      const linear = linearOnly(drawnDimensions(print));
      expect(linear.length).toBeGreaterThanOrEqual(name === 'crosshead' ? 20 : 4);
      for (const { recorded, view, extensions } of linear) {
        const [a, b] = extensions;
        const apart = isUpright(a!) ? Math.abs(a![0][0] - b![0][0]) : Math.abs(a![0][1] - b![0][1]);
        expect([recorded.id, Math.abs(apart - recorded.nominal! * view.scale) <= 0.02]).toEqual([recorded.id, true]);
      }
    }
  });

  it('has the points of its arrows on the extension lines, and these square to the dimension line', async () => {
    for (const print of await printsOf(name, { units }))
      for (const { recorded, extensions, lines, arrows } of linearOnly(drawnDimensions(print))) {
        const [line] = lines;
        expect([recorded.id, isLevel(line!) ? extensions.every(isUpright) : extensions.every(isLevel)]).toEqual([recorded.id, true]);
        const tips = arrows.map((arrow) => arrowOf(arrow)!.tip);
        expect(tips).toHaveLength(2);
        for (const [a] of extensions) expect([recorded.id, tips.some((tip) => Math.abs(isLevel(line!) ? tip[0] - a[0] : tip[1] - a[1]) < 0.05)]).toEqual([recorded.id, true]);
      }
  });

  it('shows distances at true length: their axis lies in the paper of their view', async () => {
    for (const print of await printsOf(name, { units }))
      for (const { recorded, view } of drawnDimensions(print)) {
        if (recorded.axis === null) continue;
        expect([recorded.id, [view.right, view.up].map((each) => axisOf(each as Direction)).includes(recorded.axis as 'x')]).toEqual([recorded.id, true]);
      }
  });

  it('calls holes out where they are seen round or laid open, and milled radii where they are round', async () => {
    for (const print of await printsOf(name, { units })) {
      const part = await partShown(print);
      const sizes = part.operations.flatMap((operation) => operation.cuts.flatMap((cut) => cut.sizes));
      for (const { recorded, view } of drawnDimensions(print)) {
        const eye = vectorOf(view.eye as Direction);
        const size = sizes.find((each) => each.cut === recorded.feature && (recorded.kind === 'hole' ? each.kind === 'hole' : recorded.kind === 'radius' && each.kind === 'radius'));
        if (size?.kind === 'hole') {
          const facing = Math.abs(dot(size.direction, eye));
          const laidOpen = view.section !== null && size.points.some((point) => Math.abs(point['xyz'.indexOf(view.section!.axis) as 0] - view.section!.value) < 1e-6);
          expect([recorded.id, facing > 0.999 || (facing < 1e-6 && laidOpen)]).toEqual([recorded.id, true]);
        }
        if (size?.kind === 'radius' && size.axis !== undefined) expect([recorded.id, Math.abs(dot(size.axis, eye))]).toEqual([recorded.id, expect.closeTo(1, 6)]);
        if (recorded.kind === 'diameter') expect([recorded.id, Math.abs(dot(vectorOf('+z'), eye))]).toEqual([recorded.id, expect.closeTo(0, 6)]);
      }
    }
  });

  it('is drawn at standard scales, and no larger one would fit its sheet', async () => {
    for (const { record } of await printsOf(name, { units })) {
      const allowed = units === 'mm' ? isoScales : [...isoScales, ...inchScales];
      for (const { scale, scaleName } of record.views) expect(allowed.find((each) => each.name === scaleName)?.factor).toBe(scale);
      const chosen = allowed.find((each) => each.name === record.scale)!;
      const proof = String(record.checks.find((check) => check.name === 'no larger standard scale fits')?.figures['larger']);
      // Larger than 5:1 nothing is drawn unless asked for.
      for (const larger of allowed.filter(({ factor }) => factor > chosen.factor && factor <= 5))
        expect(proof).toMatch(new RegExp(`(^|; )${larger.name} on ${record.paper.name}: (the views need|no room for)`));
    }
  });

  it('names the scale of every view that differs from the sheet’s', async () => {
    for (const { record, drawing } of await printsOf(name, { units }))
      for (const view of record.views.filter(({ scaleName }) => scaleName !== record.scale)) {
        const labels = drawing.sheets[view.sheet - 1]!.items.filter(isText).filter((item) => item.group === view.id && item.use === 'label');
        expect(labels.map(({ text }) => text)).toContain(`${view.id.replace('detail ', '')} (${view.scaleName})`);
      }
  });

  it('draws details larger than their view', async () => {
    for (const { record } of await printsOf(name, { units })) {
      const main = record.views.find(({ id }) => id === 'front view')!;
      for (const view of record.views.filter(({ id }) => id.startsWith('detail'))) expect(view.scale).toBeGreaterThan(main.scale);
    }
  });
});

describe('the outline of the crosshead', () => {
  it('measures what the part measures, from edge to edge on paper', async () => {
    const [print] = await printsOf('crosshead', { units: 'in' });
    const { record, drawing } = print!;
    const front = record.views.find(({ id }) => id === 'front view')!;
    const visible = drawing.sheets[front.sheet - 1]!.items.flatMap((item) => (item.kind === 'stroke' && item.group === front.id && item.role === 'visible' && item.about === undefined && item.curve.kind === 'line' ? [item.curve] : []));
    const xs = visible.flatMap(({ from, to }) => [from[0], to[0]]);
    const ys = visible.flatMap(({ from, to }) => [from[1], to[1]]);
    // 1 5/8 in long and 1 in high.
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(1.625 * 25.4 * front.scale, 3);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(25.4 * front.scale, 3);
    expect(distance([Math.max(...xs), (Math.max(...ys) + Math.min(...ys)) / 2], front.origin)).toBeLessThan(0.01);
  });
});
