import { describe, expect, it } from 'vitest';
import type { InkStroke } from '../../engine/export/ink.js';
import { inkSheet, lineWidth } from '../../engine/export/strokes.js';
import type { Item, LineRole } from '../../engine/sheet/drawing.js';
import { lineStyles, lineWidthSeries } from '../../templates/line-styles.js';
import { line, sampleItems, sheetOf, stroke, text } from './sample.js';

const inkOf = (items: readonly Item[], paper = 'A3'): readonly InkStroke[] =>
  inkSheet({ size: [420, 297], paper, title: 'Sheet', items }).groups.flatMap((group) =>
    group.layers.flatMap((layer) => layer.ink.flatMap((ink) => (ink.kind === 'stroke' ? [ink] : []))),
  );

describe('line widths', () => {
  const roles = Object.keys(lineStyles) as LineRole[];

  it.each(['A4', 'A3', 'Letter', 'Tabloid'])('on %s geometry has two widths, two to one (ISO 128-20)', (paper) => {
    // Frame and signs have widths of their own; a tint is shading and no line.
    const widths = new Set(roles.filter((role) => role !== 'frame' && role !== 'symbol' && role !== 'tint').map((role) => lineWidth(role, paper)));
    const [narrow = 0, wide = 0] = [...widths].sort((a, b) => a - b);
    expect(widths.size).toBe(2);
    expect(wide / narrow).toBeCloseTo(2, 9);
  });

  it('all come from the series', () => {
    for (const paper of ['A4', 'A3']) for (const role of roles) expect(lineWidthSeries).toContain(lineWidth(role, paper));
  });

  it('the frame is 0.7 (ISO 5457, from memory)', () => {
    expect(lineWidth('frame', 'A4')).toBe(0.7);
  });
});

describe('inkSheet', () => {
  it('gives a cutting plane wide ends and a narrow middle', () => {
    const [middle, ends] = inkOf([stroke('cutting-plane', line([0, 0], [100, 0]))]);
    expect(middle?.width).toBe(0.35);
    expect(ends?.width).toBe(0.7);
    expect(ends?.curves).toHaveLength(2);
  });

  it('gives a short cutting plane wide ends too', () => {
    const [middle, ends] = inkOf([stroke('cutting-plane', line([0, 0], [6, 0]))]);
    expect(middle?.curves).toEqual([line([0, 0], [6, 0])]);
    expect(ends?.curves).toHaveLength(2);
  });

  it('draws dashes with square ends, so that their length is true', () => {
    const [dashed, whole] = inkOf([stroke('hidden', line([0, 0], [50, 0])), stroke('visible', line([0, 0], [50, 0]))]);
    expect(dashed?.ends).toBe('square');
    expect(dashed?.curves.length).toBeGreaterThan(5);
    expect(whole?.ends).toBe('round');
    expect(whole?.curves).toHaveLength(1);
  });

  it('keeps groups in their order, hatching under outlines, lettering on top', () => {
    const items = [text('A', [5, 5], { group: 'Second' }), stroke('visible', line([0, 0], [1, 0]), 'First'), stroke('hatch', line([0, 0], [1, 1]), 'First')];
    const { groups } = inkSheet({ size: [210, 297], paper: 'A4', title: 'Sheet', items: [...items, text('B', [1, 1], { group: 'First' })] });
    expect(groups.map((group) => group.name)).toEqual(['Second', 'First']);
    expect(groups[1]?.layers.map((layer) => layer.role)).toEqual(['hatch', 'visible', 'lettering']);
  });

  it('anchors text by its left, middle or right', () => {
    const at = (anchor: 'left' | 'middle' | 'right'): number => {
      const [group] = inkSheet({ size: [210, 297], paper: 'A4', title: 'Sheet', items: [text('12.5', [50, 50], { anchor })] }).groups;
      const ink = group?.layers[0]?.ink[0];
      if (ink?.kind !== 'text') throw new Error('text');
      return ink.origin[0];
    };
    expect(at('left')).toBe(50);
    expect(at('left') - at('middle')).toBeCloseTo((at('left') - at('right')) / 2, 9);
  });

  it('keeps all ink of a sheet 5 mm off its edge', () => {
    const sheet = inkSheet(sheetOf('A4', 'portrait', sampleItems()));
    const lines = sheet.groups.flatMap((group) => group.layers.flatMap((layer) => layer.ink.flatMap((ink) => (ink.kind === 'stroke' ? ink.curves : []))));
    for (const curve of lines) {
      if (curve.kind !== 'line') continue;
      for (const [x, y] of [curve.from, curve.to]) {
        expect(Math.min(x, y, sheet.size[0] - x, sheet.size[1] - y)).toBeGreaterThanOrEqual(5);
      }
    }
  });

  it('refuses letters that the font lacks', () => {
    expect(() => inkSheet({ size: [210, 297], paper: 'A4', title: 'Sheet', items: [text('漢', [5, 5])] })).toThrow(RangeError);
  });
});
