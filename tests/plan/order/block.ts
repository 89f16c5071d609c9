import { cutsIn, rectangularStock, sized, stationBook, threadSize } from '../../../engine/part/author/index.js';
import type { CutsIn } from '../../../engine/part/author/cuts.js';
import type { Cut } from '../../../engine/part/cut.js';
import type { Operation, Part, SetUp } from '../../../engine/part/part.js';
import type { Station } from '../../../engine/part/station.js';
import type { Thread } from '../../../engine/trade/thread.js';

/** Places of a block: its faces and its middle, and any other place on an axis. */
export interface Places {
  readonly left: Station;
  readonly right: Station;
  readonly near: Station;
  readonly far: Station;
  readonly bottom: Station;
  readonly top: Station;
  readonly middle: readonly [Station, Station];
  at(axis: 'x' | 'y' | 'z', value: number): Station;
}

export interface BlockOperation {
  readonly cutter: string;
  readonly diameter?: number;
  readonly setUp?: string;
  readonly cuts: readonly Cut[];
}

/**
 * A block 40 x 30 x 20 of mild steel (x, y, z; its corner at zero), held by its long sides in a vice, top up; from there
 * counts set-up A. Other set-ups are added to that.
 */
export function block(
  operations: (cut: CutsIn, places: Places) => readonly BlockOperation[],
  { size = [40, 30, 20], setUps = [], material = 'mild steel' }: { readonly size?: readonly [number, number, number]; readonly setUps?: readonly SetUp[]; readonly material?: string } = {},
): Part {
  const book = stationBook();
  const [left, near, bottom] = [book.datum('x', 'left'), book.datum('y', 'near'), book.datum('z', 'bottom')];
  const [right, far, top] = [book.from(left, size[0], 'right'), book.from(near, size[1], 'far'), book.from(bottom, size[2], 'top')];
  const middle = [book.from(left, size[0] / 2, 'middle'), book.from(near, size[1] / 2, 'middle')] as const;
  const stock = rectangularStock({ along: 'x', x: [left, right], y: [near, far], z: [bottom, top] });
  const start = { x: left, y: near, z: bottom } as const;
  const places: Places = { left, right, near, far, bottom, top, middle, at: (axis, value) => book.from(start[axis], value, `${axis} ${value}`) };
  const made = operations(cutsIn(stock), places);
  return {
    name: 'block',
    title: 'Block',
    engine: 'trial',
    units: 'mm',
    quantity: 1,
    material: { name: material },
    stock,
    stations: book.all(),
    setUps: [{ id: 'A', machine: 'mill', holding: 'vice on parallels', grip: { kind: 'vice', between: [near.id, far.id] }, up: '+z', right: '+x', zero: [left.id, near.id, top.id] }, ...setUps],
    operations: made.map(({ cutter, diameter, setUp, cuts }, i): Operation => ({ number: 10 * (i + 1), title: cutter, setUp: setUp ?? 'A', cutter: { name: cutter, ...(diameter === undefined ? {} : { diameter }) }, cuts })),
    notes: [],
    cautions: [],
    attitude: { kind: 'milled', front: '-y', up: '+z' },
    handAxis: 'x',
    hand: 'right',
    texture: 3.2,
  };
}

export { sized, threadSize, type Thread };
