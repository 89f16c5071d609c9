import { wrapText } from '../../lettering/index.js';
import type { Column, FlowedSheet } from '../operations/flow.js';
import { flow } from '../operations/flow.js';
import type { Strip } from '../operations/strips.js';
import { house } from '../place/house.js';
import { lettering } from '../place/pieces.js';
import { phraseText, type Speech } from '../say/texts.js';
import type { PageSection } from './page-section.js';
import { ruledTable } from './ruled-table.js';

const group = 'pages';
const headingHeight = 5;

/** Lets sections of words and tables flow down the columns of as many sheets as they need. */
export function pageSheets(sections: readonly PageSection[], speech: Speech, columns: readonly Column[]): readonly FlowedSheet[] {
  const width = columns[0]!.right - columns[0]!.left;
  return flow(sections.map((section) => sectionStrips(section, speech, width)), columns);
}

/** The strips of one section at a width, and what is repeated where it goes on in another column. */
export function sectionStrips(section: PageSection, speech: Speech, width: number): { readonly strips: readonly Strip[]; readonly continued: readonly Strip[] } {
  const table = section.table === undefined ? undefined : ruledTable(section.table, speech, width);
  const mark = (i: number): string => (section.marks === 'numbers' ? String(i + 1) : section.marks === 'warnings' ? '▲' : '–');
  const words = section.lines.map((line, i) => sentence(phraseText(line, speech), width, mark(i)));
  const title: Strip = { items: [lettering(group, 'note', [0, -headingHeight - 1], section.heading, { height: headingHeight, style: 'bold' })], height: headingHeight + 4, withNext: true };
  const last = words.length - 1;
  const before = words.map((strip, i) => (i === last && table !== undefined ? { ...strip, withNext: true } : strip));
  return { strips: [title, ...before, ...(table === undefined ? [] : [table.heading, ...table.rows])], continued: table === undefined ? [] : [table.heading] };
}

/** Room for the mark before a sentence, mm: a dash, or more where it is a figure or a sign. */
const indents = { dash: 4, other: 6 } as const;

/** A sentence with a mark before it, its lines under each other. */
function sentence(text: string, width: number, mark: string): Strip {
  const indent = mark === '–' ? indents.dash : indents.other;
  const lines = wrapText(text, house.height, 'normal', width - indent);
  return {
    items: lines.flatMap((line, i) => [
      ...(i === 0 ? [lettering(group, 'note', [0, -house.height], mark)] : []),
      lettering(group, 'note', [indent, -house.height - i * house.linePitch], line),
    ]),
    height: lines.length * house.linePitch + 0.8,
    withNext: false,
  };
}
