import type { Vector2 } from '../../engine/geometry/vector.js';
import type { Curve2 } from '../../engine/geometry/curve.js';
import type { Drawing, DrawingSheet, Item, LineRole, TextItem } from '../../engine/sheet/drawing.js';
import { drawingArea, paperNamed, printCheckBar, sheetFrame, sheetSize, titleBlock, type TitleFields } from '../../engine/sheet/frame.js';
import { arrow } from '../../templates/arrow.js';
import { lineStyles } from '../../templates/line-styles.js';
import type { Orientation } from '../../templates/paper.js';

export const fields: TitleFields = {
  part: 'Crosshead',
  supplement: 'Tormentil, 5 inch gauge',
  hand: 'R',
  documentNumber: 'TM-101-R',
  documentType: 'Shop print',
  owner: 'Tormentil drawings',
  creator: 'trialpiece',
  sheet: 1,
  sheets: 2,
  paper: 'A4',
  scale: '2:1',
  projection: 'third',
  units: 'mm',
  material: 'Mild steel, bright drawn',
  stock: 'Flat 30 × 20, 45 long',
  quantity: '1 right, 1 left',
  generalTolerance: '±0.1 to 30, ±0.2 to 120',
  generalTexture: 'Ra 3.2',
  finish: 'None',
  edges: 'Break 0.2 × 45°',
};

export const stroke = (role: LineRole, curve: Curve2, group = 'Sample', about?: string): Item => ({
  kind: 'stroke',
  group,
  role,
  curve,
  ...(about === undefined ? {} : { about }),
});

export const line = (from: Vector2, to: Vector2): Curve2 => ({ kind: 'line', from, to });

export const circle = (centre: Vector2, radius: number): Curve2 => ({ kind: 'arc', centre, radius, start: 0, sweep: 360 });

export const text = (words: string, at: Vector2, change: Partial<TextItem> = {}): TextItem => ({
  kind: 'text',
  group: 'Sample',
  at,
  height: 3.5,
  angle: 0,
  anchor: 'left',
  style: 'normal',
  text: words,
  use: 'dimension',
  ...change,
});

/** An arrowhead with its point at `tip`, flying in the direction of `angle` degrees. */
export function arrowHead(tip: Vector2, angle: number): Item {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const corner = (back: number, aside: number): Vector2 => [tip[0] - back * c - aside * s, tip[1] - back * s + aside * c];
  const points = [tip, corner(arrow.length, arrow.width / 2), corner(arrow.length, -arrow.width / 2)];
  return { kind: 'fill', group: 'Sample', role: 'dimension', shape: { kind: 'polygon', points } };
}

/** A line 100 mm long by which readers of a file find its scale. */
export const knownLine = { from: [40, 250], to: [140, 250] } as const;

/** Every kind of item, each role of line as a straight one and as a circle, in the upper part of an A4 sheet. */
export function sampleItems(): readonly Item[] {
  const roles = Object.keys(lineStyles) as LineRole[];
  const samples = roles.flatMap((role, index): Item[] => {
    const y = 240 - 7 * index;
    return [
      stroke(role, line([40, y], [95, y]), 'Line roles', role),
      stroke(role, line([98, y], [110, y]), 'Line roles'),
      stroke(role, line([113, y], [118, y]), 'Line roles'),
      text(role, [150, y - 1.5], { group: 'Line roles', use: 'label' }),
    ];
  });
  return [
    stroke('dimension', line(knownLine.from, knownLine.to), 'Sample', 'known line'),
    arrowHead(knownLine.to, 0),
    arrowHead(knownLine.from, 180),
    stroke('extension', line([40, 245], [40, 252.5])),
    stroke('extension', line([140, 245], [140, 252.5])),
    text('100 ±0.05', [90, 251], { anchor: 'middle', about: 'length' }),
    text('4× ⌀5.5 H8 (+0.018/0) ↧12', [40, 262], { about: 'hole' }),
    text('⌴ ⌀9 ↧4   ⌵ ⌀11 × 90°', [40, 256], { about: 'hole' }),
    text('M6×0.75', [192, 160], { angle: 90, anchor: 'middle', style: 'bold' }),
    text('slanted 30°', [150, 262], { angle: 30, height: 5 }),
    stroke('visible', circle([60, 115], 14)),
    stroke('hidden', circle([60, 115], 10)),
    stroke('centre', circle([60, 115], 18), 'Sample', 'pitch circle'),
    stroke('centre', line([39, 115], [81, 115])),
    stroke('centre', line([60, 94], [60, 136])),
    stroke('hidden', circle([60, 115], 2)),
    stroke('visible', { kind: 'arc', centre: [95, 115], radius: 12, start: 20, sweep: 250 }),
    stroke('thread', { kind: 'arc', centre: [95, 115], radius: 10, start: -10, sweep: 275 }),
    stroke('visible', { kind: 'ellipse', centre: [130, 115], radiusX: 16, radiusY: 8, rotation: 30, start: 0, sweep: 360 }),
    stroke('hidden', { kind: 'ellipse', centre: [130, 115], radiusX: 13, radiusY: 5, rotation: 30, start: 0, sweep: 360 }),
    stroke('phantom', { kind: 'ellipse', centre: [130, 115], radiusX: 19, radiusY: 11, rotation: 30, start: 40, sweep: -200 }),
    stroke('visible', { kind: 'spline', points: [[155, 105], [160, 120], [165, 120], [170, 110], [175, 100], [180, 100], [185, 115]] }),
    stroke('hidden', { kind: 'spline', points: [[155, 110], [160, 125], [165, 125], [170, 115], [175, 105], [180, 105], [185, 120]] }),
    { kind: 'fill', group: 'Sample', role: 'leader', shape: { kind: 'disc', centre: [170, 130], radius: 0.75 } },
    stroke('leader', line([170, 130], [180, 140])),
    stroke('leader', circle([184.3, 144.3], 6)),
    text('12', [184.3, 141.8], { anchor: 'middle', height: 5, use: 'balloon' }),
    ...samples,
  ];
}

/** A sheet with frame, title block and print check bar round the items. */
export function sheetOf(paper: string, orientation: Orientation, items: readonly Item[], changes: Partial<TitleFields> = {}): DrawingSheet {
  const page = paperNamed(paper);
  const area = drawingArea(page, orientation);
  const block = titleBlock({ ...fields, paper: page.name, ...changes }, [area.right, area.bottom]);
  const bar = printCheckBar([area.left + 5, block.box.left > area.left + 130 ? area.bottom + 5 : block.box.top + 4], 'mm');
  return {
    size: sheetSize(page, orientation),
    paper: page.name,
    title: `Sheet ${changes.sheet ?? 1}`,
    items: [...sheetFrame(page, orientation, { grid: page.long > 300 }), ...block.items, ...bar.items, ...items],
  };
}

export function sampleDrawing(): Drawing {
  return {
    title: 'Crosshead, right hand',
    subject: 'Shop print of a crosshead for Tormentil, 5 inch gauge',
    keywords: ['crosshead', 'Tormentil'],
    sheets: [sheetOf('A4', 'portrait', sampleItems()), sheetOf('A3', 'landscape', sampleItems(), { sheet: 2, projection: 'first' })],
  };
}
