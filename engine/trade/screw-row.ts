/** A screw head or a nut, mm and degrees. */
export interface ScrewRow {
  /** "No. 4 countersunk", "M3 cheese head", "4 BA nut". */
  readonly name: string;
  readonly screw: string;
  readonly kind: 'countersunk' | 'socket countersunk' | 'cheese head' | 'fillister head' | 'hexagon head' | 'socket cap' | 'machine screw nut' | 'hexagon nut';
  readonly sizes: Readonly<Record<string, number>>;
  readonly source: string;
}
