/** Columns of the operation table as shares of its width; readings are left to the pen. */
export const columns = [
  { heading: 'No.', share: 0.075 },
  { heading: 'Operation', share: 0.41 },
  { heading: 'Cutter', share: 0.19 },
  { heading: 'Speed, feed', share: 0.245 },
  { heading: 'Read', share: 0.08 },
] as const;

/** A cell of a row: where it starts, and how wide it is, mm. */
export interface Cell {
  readonly left: number;
  readonly width: number;
}

/** The cells of a row of a table of the given width. */
export function cells(width: number): readonly [Cell, Cell, Cell, Cell, Cell] {
  let left = 0;
  const all = columns.map(({ share }): Cell => {
    const cell = { left, width: share * width };
    left += cell.width;
    return cell;
  });
  return all as unknown as readonly [Cell, Cell, Cell, Cell, Cell];
}
