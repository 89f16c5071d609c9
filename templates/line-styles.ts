/** Line widths that ISO 128 knows, mm: each about the square root of two above the last (0.13 from memory). */
export const lineWidthSeries = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2] as const;

/** A pair of widths, wide to narrow 2:1, mm: `bold` reads best at the bench, `fine` suits a small, crowded sheet. */
export type LineGroup = 'bold' | 'fine';

export const lineGroups: Readonly<Record<LineGroup, { readonly wide: number; readonly narrow: number }>> = {
  bold: { wide: 0.7, narrow: 0.35 },
  fine: { wide: 0.5, narrow: 0.25 },
};

/** How a line is broken up: `dashed` 02, `chain` 04 (long dash, dot), `double-chain` 05 (long dash, two dots), also with short dashes for small pictures. */
export type DashKind = 'continuous' | 'dashed' | 'chain' | 'double-chain' | 'short double-chain';

/** Elements of a broken line in multiples of its width, in the manner of ISO 128-20 (from memory). */
export const dashElements = { dash: 12, longDash: 24, gap: 3, dot: 0.5 } as const;

/** Elements of a line in a picture of a few centimetres, where usual ones would leave most lines unbroken; dots that still show beside them. */
export const shortElements = { longDash: 10, gap: 2.8, dot: 1 } as const;

export interface LineStyle {
  /** Name of the line's layer as a reader sees it. */
  readonly layer: string;
  /** A width of the sheet's group, or a fixed one in mm. */
  readonly width: 'wide' | 'narrow' | number;
  readonly dashes: DashKind;
  /** Set where the first and the last dash of the line are drawn wide. */
  readonly wideEnds?: true;
}

/** The style of each role of a line, in the manner of ISO 128-2 (read in a textbook table). Lines drawn first stand first. */
export const lineStyles = {
  // Shading, no line of the geometry: thinner than all lines, so that they stand out from it.
  tint: { layer: 'Faces set apart', width: 0.18, dashes: 'continuous' },
  hatch: { layer: 'Hatching', width: 'narrow', dashes: 'continuous' },
  extension: { layer: 'Extension lines', width: 'narrow', dashes: 'continuous' },
  dimension: { layer: 'Dimension lines', width: 'narrow', dashes: 'continuous' },
  leader: { layer: 'Leaders', width: 'narrow', dashes: 'continuous' },
  centre: { layer: 'Centre lines', width: 'narrow', dashes: 'chain' },
  phantom: { layer: 'Phantom lines', width: 'narrow', dashes: 'double-chain' },
  'cutting-plane': { layer: 'Cutting planes', width: 'narrow', dashes: 'chain', wideEnds: true },
  break: { layer: 'Break lines', width: 'narrow', dashes: 'continuous' },
  // Outline of a finished part within its blank: ISO 128-2, line 05.1 (from memory).
  finished: { layer: 'Finished part in the metal', width: 'narrow', dashes: 'short double-chain' },
  removed: { layer: 'Metal taken off', width: 'narrow', dashes: 'dashed' },
  work: { layer: 'Work and what holds it', width: 'narrow', dashes: 'continuous' },
  hidden: { layer: 'Hidden lines', width: 'narrow', dashes: 'dashed' },
  smooth: { layer: 'Smooth edges', width: 'narrow', dashes: 'continuous' },
  flat: { layer: 'Marks of flat faces', width: 'narrow', dashes: 'continuous' },
  thread: { layer: 'Thread lines', width: 'narrow', dashes: 'continuous' },
  visible: { layer: 'Visible outlines', width: 'wide', dashes: 'continuous' },
  // A tenth of the usual letter height, as ISO 1302 and ISO 5456-2 ask of signs (from memory).
  symbol: { layer: 'Symbols', width: 0.35, dashes: 'continuous' },
  table: { layer: 'Tables', width: 'narrow', dashes: 'continuous' },
  // ISO 5457 (from memory).
  frame: { layer: 'Frame', width: 0.7, dashes: 'continuous' },
} as const satisfies Readonly<Record<string, LineStyle>>;
