import { lineGroups, lineStyles, type LineGroup, type LineStyle } from '../../templates/line-styles.js';
import { papers } from '../../templates/papers/index.js';
import type { Curve2 } from '../geometry/curve.js';
import type { DrawingSheet, Item, LineRole, StrokeItem } from '../sheet/drawing.js';
import { dashSpans } from './dash-spans.js';
import type { Ink, InkGroup, InkLayer, InkSheet, InkStroke } from './ink.js';
import { inkText } from './ink-text.js';
import { measureCurve } from './measured-curve.js';

const styles: Readonly<Record<LineRole, LineStyle>> = lineStyles;
const roles = Object.keys(lineStyles) as readonly LineRole[];

/** The layer that holds all lettering, above all lines. */
const lettering = { role: 'lettering', name: 'Lettering' } as const;

/** The names of every layer, from the lowest to the topmost. */
export const layerNames: readonly string[] = [...roles.map((role) => styles[role].layer), lettering.name];

/** The pair of line widths in use on a sheet: its paper's, or the bold one for a paper that is not ours. */
const groupFor = (paper: string): LineGroup => papers.find(({ name }) => name === paper)?.lineGroup ?? 'bold';

/** The width of a role's lines on a sheet of that paper, mm. */
export function lineWidth(role: LineRole, paper: string): number {
  const { width } = styles[role];
  return typeof width === 'number' ? width : lineGroups[groupFor(paper)][width];
}

const about = (item: Item): { readonly about?: string } => (item.about === undefined ? {} : { about: item.about });

/** A stroke as the pen draws it: broken into its dashes, and in two widths where the style asks for wide ends. */
function inkStrokes(item: StrokeItem, paper: string): readonly InkStroke[] {
  const { dashes, wideEnds } = styles[item.role];
  const width = lineWidth(item.role, paper);
  if (dashes === 'continuous') return [{ kind: 'stroke', ...about(item), width, ends: 'round', curves: [item.curve] }];
  const measured = measureCurve(item.curve);
  const spans = dashSpans(dashes, measured.length, measured.closed, width);
  const whole = spans.length === 1 && !measured.closed;
  const curves = whole ? [item.curve] : spans.map(({ from, to }) => measured.part(from, to));
  const pen = (wide: number, drawn: readonly Curve2[]): InkStroke => ({ kind: 'stroke', ...about(item), width: wide, ends: 'square', curves: drawn });
  if (wideEnds !== true) return [pen(width, curves)];
  const ends = whole ? [measured.part(0, measured.length / 3), measured.part((measured.length * 2) / 3, measured.length)] : [...curves.slice(0, 1), ...curves.slice(-1)];
  return [pen(width, whole ? curves : curves.slice(1, -1)), pen(lineWidth('visible', paper), ends)];
}

function inkOf(item: Item, paper: string): readonly Ink[] {
  switch (item.kind) {
    case 'stroke':
      return inkStrokes(item, paper);
    case 'fill':
      return [{ kind: 'fill', ...about(item), shape: item.shape }];
    case 'text':
      return item.text === '' ? [] : [inkText(item)];
  }
}

function layersOf(items: readonly Item[], paper: string): readonly InkLayer[] {
  const byRole = new Map<string, Ink[]>();
  for (const item of items) {
    const role = item.kind === 'text' ? lettering.role : item.role;
    const ink = byRole.get(role) ?? [];
    ink.push(...inkOf(item, paper));
    byRole.set(role, ink);
  }
  const order = [...roles.map((role) => ({ role, name: styles[role].layer })), lettering];
  return order.flatMap(({ role, name }) => {
    const ink = byRole.get(role);
    return ink === undefined || ink.length === 0 ? [] : [{ role, name, ink }];
  });
}

/**
 * A sheet of the drawing as ink: groups in the order in which they first come, in each the layers by role, every broken line cut into its
 * dashes, every line of text set. Both writers draw this and nothing else, so that they agree.
 * Throws RangeError for a curve that is not well formed and for text that can't be lettered.
 */
export function inkSheet(sheet: DrawingSheet): InkSheet {
  const byGroup = new Map<string, Item[]>();
  for (const item of sheet.items) {
    const items = byGroup.get(item.group) ?? [];
    items.push(item);
    byGroup.set(item.group, items);
  }
  const groups: readonly InkGroup[] = [...byGroup].map(([name, items]) => ({ name, layers: layersOf(items, sheet.paper) }));
  return { size: sheet.size, title: sheet.title, ...(sheet.chapter === undefined ? {} : { chapter: sheet.chapter }), groups };
}
