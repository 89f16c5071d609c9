import { describe, expect, it } from 'vitest';
import { arrow } from '../../templates/arrow.js';
import { cautions } from '../../templates/cautions.js';
import { letterHeights, letterHeightSeries, smallestLettering } from '../../templates/lettering.js';
import { lineGroups, lineStyles, lineWidthSeries } from '../../templates/line-styles.js';
import { notes } from '../../templates/notes.js';
import { printerMargin } from '../../templates/paper.js';
import { papers } from '../../templates/papers/index.js';
import { titleBlockWidth, titleFields } from '../../templates/title-block.js';

// ISO 216 for A4 and A3; ASME Y14.1 sizes A and B: 8.5 x 11 in and 11 x 17 in.
const published = { A4: [210, 297], A3: [297, 420], Letter: [8.5 * 25.4, 11 * 25.4], Tabloid: [11 * 25.4, 17 * 25.4] };

describe('papers', () => {
  it.each(Object.entries(published))('%s has its published size', (name, [short, long]) => {
    const paper = papers.find((each) => each.name === name);
    expect(paper?.short).toBeCloseTo(short ?? 0, 9);
    expect(paper?.long).toBeCloseTo(long ?? 0, 9);
  });

  it('have the margins of ISO 5457 (from memory): 20 for filing, else 10', () => {
    for (const paper of papers) expect(paper.margins).toEqual({ left: 20, right: 10, top: 10, bottom: 10 });
  });

  it('keep ink within reach of a printer', () => {
    for (const { margins } of papers) expect(Math.min(...Object.values(margins)) - 5).toBeGreaterThanOrEqual(printerMargin);
  });

  it('hold a title block as wide as ISO 7200 allows, on the narrowest sheet too', () => {
    expect(titleBlockWidth).toBeLessThanOrEqual(180);
    for (const { short, margins } of papers) expect(short - margins.left - margins.right).toBeGreaterThanOrEqual(titleBlockWidth - 1e-9);
  });
});

describe('line styles', () => {
  it('have two widths, two to one, from the series of ISO 128', () => {
    for (const { wide, narrow } of Object.values(lineGroups)) {
      expect(wide / narrow).toBeCloseTo(2, 9);
      expect(lineWidthSeries).toContain(wide);
      expect(lineWidthSeries).toContain(narrow);
    }
  });

  it('rise by about the square root of two', () => {
    lineWidthSeries.slice(1).forEach((width, index) => {
      const ratio = width / (lineWidthSeries[index] ?? 1);
      expect(ratio).toBeGreaterThan(1.35);
      expect(ratio).toBeLessThan(1.45);
    });
  });

  // Table of line types in "Manual of Engineering Drawing", after ISO 128-24.
  it.each([
    ['visible', 'wide', 'continuous'],
    ['hidden', 'narrow', 'dashed'],
    ['centre', 'narrow', 'chain'],
    ['dimension', 'narrow', 'continuous'],
    ['extension', 'narrow', 'continuous'],
    ['leader', 'narrow', 'continuous'],
    ['hatch', 'narrow', 'continuous'],
    ['cutting-plane', 'narrow', 'chain'],
    ['phantom', 'narrow', 'double-chain'],
    ['thread', 'narrow', 'continuous'],
    ['smooth', 'narrow', 'continuous'],
  ] as const)('%s lines are %s and %s', (role, width, dashes) => {
    expect(lineStyles[role]).toMatchObject({ width, dashes });
  });
});

describe('lettering', () => {
  it('has heights of ISO 3098-1, none below the smallest', () => {
    for (const height of Object.values(letterHeights)) {
      expect(letterHeightSeries).toContain(height);
      expect(height).toBeGreaterThanOrEqual(smallestLettering);
    }
  });

  it('dimensions subtend 20 minutes of arc at 600 mm (legibility, ISO 9241-3 as restated)', () => {
    expect((Math.atan(letterHeights.dimension / 600) * 180 * 60) / Math.PI).toBeGreaterThanOrEqual(20);
  });
});

describe('arrow', () => {
  it('is three times as long as wide (ASME Y14.2) and includes 15 to 30 degrees (ISO 129-1, from memory)', () => {
    expect(arrow.length / arrow.width).toBeCloseTo(3, 9);
    const included = (2 * Math.atan(arrow.width / 2 / arrow.length) * 180) / Math.PI;
    expect(included).toBeGreaterThan(15);
    expect(included).toBeLessThan(30);
  });
});

describe('title block fields', () => {
  // EN ISO 7200, as restated on a page of help: the mandatory fields and the longest texts.
  const published = { documentNumber: 16, dateOfIssue: 10, sheet: 4, part: 25, approval: 20, creator: 20, documentType: 30 } as const;

  it('are those of ISO 7200', () => {
    const mandatory = Object.entries(titleFields).filter(([, field]) => 'mandatory' in field).map(([name]) => name);
    expect(mandatory.sort()).toEqual(['owner', ...Object.keys(published)].sort());
  });

  it.each(Object.entries(published))('%s holds %d characters', (name, longest) => {
    expect(titleFields[name as keyof typeof published].longest).toBe(longest);
  });
});

describe('standing words', () => {
  it.each([...Object.entries(cautions), ...Object.entries(notes)])('%s is made of whole sentences', (_, text) => {
    expect(text).toMatch(/^[A-Z{].*\.$/);
    expect(text).not.toMatch(/ {2}|\s$/);
  });

  it('defer to local codes and licensed practice where pressure is held', () => {
    expect(cautions.pressure).toMatch(/local codes/);
    expect(cautions.pressure).toMatch(/licensed/);
  });
});
