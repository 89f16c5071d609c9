/** A field of the title block. */
export interface TitleField {
  /** The small heading over the field. */
  readonly caption: string;
  /** Most characters that ISO 7200 allows (read on a page that restates it); absent for fields of our own. */
  readonly longest?: number;
  /** Set where ISO 7200 asks for the field on every sheet. */
  readonly mandatory?: true;
}

/** Greatest width of a title block, mm: ISO 7200, which fills an A4 sheet between its margins (from memory). */
export const titleBlockWidth = 180;

/** The fields of the title block: those of ISO 7200, and those that the bench needs. */
export const titleFields = {
  owner: { caption: 'Owner', mandatory: true },
  documentNumber: { caption: 'Document no.', longest: 16, mandatory: true },
  dateOfIssue: { caption: 'Date of issue', longest: 10, mandatory: true },
  sheet: { caption: 'Sheet', longest: 4, mandatory: true },
  part: { caption: 'Title', longest: 25, mandatory: true },
  supplement: { caption: 'Title, continued', longest: 25 },
  approval: { caption: 'Approved', longest: 20, mandatory: true },
  creator: { caption: 'Drawn by', longest: 20, mandatory: true },
  documentType: { caption: 'Document type', longest: 30, mandatory: true },
  revision: { caption: 'Revision', longest: 2 },
  paper: { caption: 'Paper', longest: 10 },
  hand: { caption: 'Hand' },
  scale: { caption: 'Scale' },
  projection: { caption: 'Projection' },
  units: { caption: 'Units' },
  material: { caption: 'Material' },
  stock: { caption: 'Stock' },
  quantity: { caption: 'Quantity' },
  generalTolerance: { caption: 'General tolerance' },
  generalTexture: { caption: 'General texture' },
  finish: { caption: 'Finish and heat treatment' },
  edges: { caption: 'Edges' },
} as const satisfies Readonly<Record<string, TitleField>>;
