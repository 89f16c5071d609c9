export interface NamedFile {
  readonly name: string;
  readonly content: string | Uint8Array;
  /** Set for a sheet in a file of its own: the stem of its document's files, after which the sheets are numbered. */
  readonly sheetOf?: string;
}
