import type { Phrase } from '../../part/cut.js';
import type { PageSection } from '../pages/page-section.js';

/** A document of a pack: what it is called there, and how many sheets it has. */
export interface PackDocument {
  readonly name: string;
  readonly sheets: number;
  /** On which of its sheets each operation has its row. */
  readonly operations: ReadonlyMap<number, number>;
}

/** Where a document begins in a pack, its contents taking the first `contents` pages. */
export function firstPages(documents: readonly PackDocument[], contents: number): readonly number[] {
  let page = contents + 1;
  return documents.map(({ sheets }) => {
    const first = page;
    page += sheets;
    return first;
  });
}

/** The contents of a pack: its documents with their pages, and for each operation the page of its row in each. */
export function contentsSections(
  documents: readonly PackDocument[],
  operations: readonly { readonly number: number; readonly title: string }[],
  contents: number,
  remarks: readonly Phrase[],
): readonly PageSection[] {
  const first = firstPages(documents, contents);
  const listed = documents.flatMap((document, i) => (document.operations.size > 0 ? [{ document, first: first[i]! }] : []));
  const pageOf = (number: number, at: (typeof listed)[number]): Phrase => {
    const sheet = at.document.operations.get(number);
    return sheet === undefined ? ['–'] : [String(at.first + sheet - 1)];
  };
  return [
    {
      heading: 'In this pack',
      lines: remarks,
      table: {
        columns: [
          { heading: 'Document', share: 0.7 },
          { heading: 'Pages', share: 0.3 },
        ],
        rows: documents.map(({ name, sheets }, i) => ({ cells: [[name], [sheets === 1 ? String(first[i]) : `${first[i]} to ${first[i]! + sheets - 1}`]] })),
      },
    },
    {
      heading: 'Where each operation stands',
      lines: [],
      table: {
        columns: [
          { heading: 'Op.', share: 0.08 },
          { heading: 'What is done', share: 0.32 },
          ...listed.map(({ document }) => ({ heading: document.name, share: 0.6 / listed.length })),
        ],
        rows: operations.map(({ number, title }) => ({ operation: number, cells: [[String(number)], [title], ...listed.map((at) => pageOf(number, at))] })),
      },
    },
  ];
}
