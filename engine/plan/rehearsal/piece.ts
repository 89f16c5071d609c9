import type { Operation, Part, SetUp } from '../../part/part.js';
import { oppositeOf, sideOf } from './side-words.js';
import { face } from '../../part/author/cuts/face.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import { UserError } from '../../units/user-error.js';
import { statesOf, type OperationState } from '../states/state.js';
import { blankOf, type Blank } from './blank.js';
import { extentOf } from './blank-extent.js';
import type { Side } from './blank-sides.js';
import { pieceMaterial } from './cheaper.js';
import { neededCuts, type Needed } from './needed.js';
import { stationsUsed } from './piece-stations.js';
import { regionOf, type Region } from './region.js';

/** What is asked of a test piece. */
export interface PieceChoice {
  /** Numbers of the operations to rehearse, at least one. */
  readonly rehearse: readonly number[];
  readonly material?: string;
  /** Trials on one bar, 1 if not given. */
  readonly trials?: number;
}

/** The sacrificial piece of a part: a part of its own, and what it has to do with the real one. */
export interface TestPiece {
  readonly part: Part;
  readonly of: Part;
  readonly rehearsed: readonly number[];
  readonly regions: readonly Region[];
  readonly blank: Blank;
  readonly leftOut: Needed['leftOut'];
  readonly trials: number;
  /** Length of bar for all trials, mm: each is sawn off, and the next begins on the fresh end. */
  readonly barLength: number;
  /** The real part's states, for comparing. */
  readonly states: readonly OperationState[];
}

/** A saw and the facing after it take so much of a bar, mm (common practice). */
const sawAndFace = 3;

/**
 * The test piece of a part on which some of its operations are rehearsed. Rehearsed operations keep their numbers.
 * @throws UserError for an operation that does not exist or in which nothing is cut.
 */
export function testPieceOf(kernel: Kernel, part: Part, choice: PieceChoice, shop: Shop | undefined, states: readonly OperationState[] = statesOf(kernel, part)): TestPiece {
  const rehearsed = [...new Set(choice.rehearse)].sort((a, b) => a - b);
  const chosen = rehearsed.map((number) => {
    const state = states.find(({ operation }) => operation.number === number);
    if (state === undefined) throw new UserError(`the ${part.name} has no operation ${number} to rehearse; it has ${numbersOf(part)}`);
    const region = regionOf(kernel, part, state);
    if (region === undefined) throw new UserError(`operation ${number} of the ${part.name} ("${state.operation.title}") cuts nothing, so there is nothing to rehearse; it has ${numbersOf(part)}`);
    return { state, region };
  });
  const regions = chosen.map(({ region }) => region);
  const blank = blankOf(part, extentOf(kernel, part, chosen), shop);
  const needed = neededCuts(kernel, part, blank, regions);
  const operations = part.operations.flatMap((operation): Operation[] => {
    const cuts = operation.cuts.filter(({ id }) => needed.cuts.has(id));
    return cuts.length === 0 ? [] : [{ ...operation, cuts }];
  });
  const prepared = facings(blank, operations[0]?.number ?? 10);
  const setUps = [...prepared.map(({ setUp }) => setUp), ...part.setUps.filter(({ id }) => operations.some(({ setUp }) => setUp === id))];
  const all = [...prepared.map(({ operation }) => operation), ...operations];
  const stations = [...part.stations, ...blank.stations];
  const faces = Object.values(blank.stock.faces).flatMap((each) => each.stations);
  const trials = choice.trials ?? 1;
  const piece: Part = {
    ...part,
    name: `${part.name}-test-piece`,
    title: `${part.title} test piece`,
    quantity: trials,
    material: pieceMaterial(part.material, choice.material),
    stock: blank.stock,
    stations: stationsUsed(stations, all.flatMap(({ cuts }) => cuts), setUps, faces),
    setUps,
    operations: all,
    notes: [],
  };
  return { part: piece, of: part, rehearsed, regions, blank, leftOut: needed.leftOut, trials, barLength: trials * blank.stock.length + (trials - 1) * sawAndFace, states };
}

const numbersOf = (part: Part): string => part.operations.map(({ number }) => number).join(', ');

/** Operations that face ends of the blank at faces of the part, before all others. */
function facings(blank: Blank, first: number): readonly { readonly setUp: SetUp; readonly operation: Operation }[] {
  return blank.toFace.map((side: Side, i) => {
    const direction = sideOf(side);
    const id = `blank ${i + 1}`;
    return {
      setUp: { id, machine: 'mill', holding: 'vice, end upward', up: direction, right: oppositeOf(side), zero: [side.station!.id] },
      operation: {
        number: Math.max(1, first - blank.toFace.length + i),
        title: `Face the ${side.station!.name} of the blank`,
        setUp: id,
        cutter: { name: 'end mill' },
        cuts: [face({ id: `blank-face-${i + 1}`, name: side.station!.name, at: side.station!, side: direction })],
        check: ['square to the sides by a try square'],
      },
    };
  });
}
