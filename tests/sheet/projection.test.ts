import { describe, expect, it } from 'vitest';
import type { RecordedView } from '../../engine/sheet/print-record.js';
import { cross } from '../../engine/geometry/vector.js';
import { vectorOf } from '../../engine/part/author/directions.js';
import type { Direction } from '../../engine/part/station.js';
import { printedParts, printsOf } from '../support/print.js';
import { isStroke } from './crossings.js';

const middle = ({ box }: RecordedView): readonly [number, number] => [(box[0] + box[2]) / 2, (box[1] + box[3]) / 2];

describe.each(printedParts.flatMap((name) => (['third', 'first'] as const).map((angle) => [name, angle] as const)))('the %s in %s angle', (name, angle) => {
  it('has its views on the side that the method asks for, in line with the front view', async () => {
    for (const { record } of await printsOf(name, { angle })) {
      const front = record.views.find(({ id }) => id === 'front view')!;
      const outside = record.views.filter(({ id, section, sheet }) => section === null && !id.startsWith('detail') && id !== front.id && sheet === front.sheet);
      if (name === 'crosshead') expect(outside.length).toBeGreaterThan(0);
      for (const view of outside) {
        // From where the front view's right or up the eye of this view stands, as signs of a dot product.
        const toward = (direction: string): number => vectorOf(direction as Direction).reduce((sum, value, i) => sum + value * vectorOf(view.eye as Direction)[i as 0 | 1 | 2], 0);
        const [across, upward] = [toward(front.right), toward(front.up)];
        if (across === 0 && upward === 0) continue;
        const sense = angle === 'third' ? 1 : -1;
        const [x, y] = [middle(view)[0] - middle(front)[0], middle(view)[1] - middle(front)[1]];
        if (across !== 0) {
          expect([view.id, Math.sign(x)]).toEqual([view.id, sense * across]);
          expect([view.id, view.origin[1]]).toEqual([view.id, expect.closeTo(front.origin[1], 2)]);
        } else {
          expect([view.id, Math.sign(y)]).toEqual([view.id, sense * upward]);
          expect([view.id, view.origin[0]]).toEqual([view.id, expect.closeTo(front.origin[0], 2)]);
        }
      }
    }
  });

  it('sees the part itself in every view, not its mirror image', async () => {
    for (const { record } of await printsOf(name, { angle }))
      for (const { id, right, up, eye } of record.views)
        expect([id, cross(vectorOf(right as Direction), vectorOf(up as Direction)).map((value) => value + 0)]).toEqual([id, vectorOf(eye as Direction).map((value) => value + 0)]);
  });

  it('carries the symbol of the method once a sheet that has views', async () => {
    for (const { drawing, record } of await printsOf(name, { angle })) {
      const sheets = new Set(record.views.map(({ sheet }) => sheet));
      for (const number of sheets) {
        const symbols = drawing.sheets[number - 1]!.items.filter(isStroke).filter(({ group, role }) => group === 'Title block' && role === 'symbol');
        const circles = symbols.flatMap(({ curve }) => (curve.kind === 'arc' ? [curve] : []));
        if (circles.length === 0) continue;
        expect(circles).toHaveLength(2);
        expect(circles[1]!.radius / circles[0]!.radius).toBeCloseTo(2, 9);
        const cone = Math.min(...symbols.flatMap(({ curve }) => (curve.kind === 'line' ? [curve.from[0], curve.to[0]] : [])));
        expect(circles[0]!.centre[0] < cone).toBe(angle === 'third');
      }
      expect(record.projection).toBe(angle);
    }
  });
});
