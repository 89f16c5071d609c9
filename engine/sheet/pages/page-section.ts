import type { Phrase } from '../../part/cut.js';

/** A ruled table: a cell that holds nothing is a box to write in. */
export interface PageTable {
  /** Headings with their shares of the width. */
  readonly columns: readonly { readonly heading: string; readonly share: number }[];
  readonly rows: readonly { readonly cells: readonly Phrase[]; readonly operation?: number }[];
  /** Room to write in: rows are at least so high, mm. */
  readonly writing?: boolean;
}

/** A heading with sentences and a table under it, as plain data. */
export interface PageSection {
  readonly heading: string;
  readonly lines: readonly Phrase[];
  /** What stands before each line: a dash unless said. */
  readonly marks?: 'numbers' | 'warnings';
  readonly table?: PageTable;
}

/** Sheets of words and tables that go with a print. */
export interface PageSet {
  /** What the sheets are, in the title block. */
  readonly documentType: 'test piece' | 'fixture' | 'gauge';
  readonly sections: readonly PageSection[];
}
