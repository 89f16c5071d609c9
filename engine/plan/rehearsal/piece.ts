import type { Operation, Part, SetUp } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import { oppositeOf, sideOf } from './side-words.js';
import { indexOf } from '../../part/author/directions.js';
import { roomOf } from '../../part/author/stock.js';
import { face } from '../../part/author/cuts/face.js';
import { DEFAULT_SEGMENTS } from '../../solid/grid.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import { UserError } from '../../units/user-error.js';
import { statesOf, type OperationState } from '../states/state.js';
import { blankOf, type Blank } from './blank.js';
import { extentOf, holesOf, longAxis, type Extent, type Generous, type More } from './blank-extent.js';
import type { Side } from './blank-sides.js';
import { pieceMaterial } from './cheaper.js';
import { entriesOf, facesNeeded, neededCuts, type Needed } from './needed.js';
import { countedAnew, stationsUsed } from './piece-stations.js';
import { regionOf, type Region } from './region.js';
import { standBeside } from './stand-beside.js';
import type { TestPiece } from './test-piece.js';

export type { Generous };
export type { TestPiece } from './test-piece.js';

/** What is asked of a test piece. */
export interface PieceChoice {
  /** Numbers of the operations to rehearse, at least one. */
  readonly rehearse: readonly number[];
  readonly material?: string;
  /** Trials on one bar, 1 if not given: side by side where that can be, else one after the other at its end. */
  readonly trials?: number;
  /** Set where trials are made in turn although they may stand side by side: why, for the middle of a sentence. */
  readonly inTurn?: string;
  /** How much of the part's own blank is taken, the least that will do if not given. */
  readonly generous?: Generous;
  /** Facets in a full turn with which the states of the part were made, the usual if not given. */
  readonly segments?: number;
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
  const found = settled(kernel, part, chosen, shop, states, choice.generous ?? 'least');
  const trials = choice.trials ?? 1;
  const first = pieceOn(part, found, choice);
  const inTurn: TestPiece = {
    // One and the same where there is one trial: its solid is made once.
    part: trials === 1 ? first : { ...first, quantity: trials },
    single: first,
    of: part,
    rehearsed,
    regions,
    blank: found.blank,
    leftOut: found.needed.leftOut,
    trials,
    barLength: trials * found.blank.stock.length + (trials - 1) * sawAndFace,
    segments: choice.segments ?? DEFAULT_SEGMENTS,
    states,
  };
  if (trials === 1) return inTurn;
  return choice.inTurn !== undefined ? { ...inTurn, whyInTurn: choice.inTurn } : standBeside(kernel, inTurn, (axis) => {
    if (axis === longAxis(first)) return { blank: found.blank, single: first };
    const blank = blankOf(part, found.extent, shop, axis);
    return { blank, single: pieceOn(part, { blank, needed: neededCuts(kernel, part, blank, regions) }, choice) };
  });
}

/** The piece on a blank, one trial of it. */
function pieceOn(part: Part, { blank, needed }: { readonly blank: Blank; readonly needed: Needed }, choice: PieceChoice): Part {
  const operations = part.operations.flatMap((operation): Operation[] => {
    const cuts = operation.cuts.filter(({ id }) => needed.cuts.has(id));
    return cuts.length === 0 ? [] : [{ ...operation, cuts }];
  });
  const prepared = facings(blank, operations[0]?.number ?? 10);
  const setUps = [...prepared.map(({ setUp }) => setUp), ...part.setUps.filter(({ id }) => operations.some(({ setUp }) => setUp === id))];
  const all = [...prepared.map(({ operation }) => operation), ...operations];
  const stations = [...part.stations, ...blank.stations];
  const faces = Object.values(blank.stock.faces).flatMap((each) => each.stations);
  const used = stationsUsed(stations, all.flatMap(({ cuts }) => cuts), setUps, faces);
  // A datum that is a line (an axis, a middle) needs no face; one that is a face of the part must be a face of the piece.
  const facesHere = new Set([...faces, ...all.flatMap(({ cuts }) => cuts.flatMap((cut) => Object.values(cut.faces).flatMap((each) => each.stations)))]);
  const facesOfPart = new Set([...Object.values(part.stock.faces).flatMap((each) => each.stations), ...part.operations.flatMap(({ cuts }) => cuts.flatMap((cut) => Object.values(cut.faces).flatMap((each) => each.stations)))]);
  const room = roomOf(blank.stock);
  const isInside = ({ axis, value }: Station): boolean => value > room.low[indexOf(axis)] - 1e-6 && value < room.high[indexOf(axis)] + 1e-6;
  const isThere = (station: Station): boolean => isInside(station) && (facesHere.has(station.id) || !facesOfPart.has(station.id));
  return {
    ...part,
    name: `${part.name}-test-piece`,
    kin: { of: part.kin?.of ?? part.name, mark: part.kin === undefined ? 'TP' : `${part.kin.mark}TP` },
    title: `${part.title} test piece`,
    quantity: 1,
    material: pieceMaterial(part.material, choice.material),
    stock: blank.stock,
    stations: countedAnew(used, isThere, used.filter((station) => facesHere.has(station.id) && isInside(station))),
    setUps,
    operations: all,
    notes: [],
  };
}

/** What is needed first may need a larger blank, on which more may be needed: at most so often. */
const rounds = 4;

/** The blank with the cuts that it needs, of which each asks for the other. */
function settled(kernel: Kernel, part: Part, chosen: readonly { readonly state: OperationState; readonly region: Region }[], shop: Shop | undefined, states: readonly OperationState[], generous: Generous): { readonly blank: Blank; readonly needed: Needed; readonly extent: Extent } {
  const regions = chosen.map(({ region }) => region);
  const last = Math.max(...regions.map(({ operation }) => operation));
  let more: More = { faces: [], holes: [], wholeSection: false, states: [], generous };
  for (let round = 1; ; round += 1) {
    const extent = extentOf(kernel, part, chosen, more);
    const blank = blankOf(part, extent, shop);
    const needed = neededCuts(kernel, part, blank, regions);
    const used = states.filter(({ operation }) => operation.cuts.some(({ id }) => needed.cuts.has(id)));
    const next: More = {
      faces: facesNeeded(part, needed.cuts, last).filter(({ id }) => keepsFace(part, used, id)),
      generous,
      holes: used.flatMap(({ operation }) => operation.cuts.filter(({ id }) => needed.cuts.has(id)).flatMap(holesOf)),
      wholeSection: part.stock.shape === 'rectangular' && used.some(({ setUp }) => setUp.machine === 'lathe'),
      states: used,
    };
    if (round === rounds || sameNeeds(next, more)) return { blank, needed, extent };
    more = next;
  }
}

/** A zero that is far off need not be on the piece, unless work turns on it; what holds or where a hole begins must be. */
const keepsFace = (part: Part, used: readonly OperationState[], id: string): boolean => {
  const zeros = used.filter(({ setUp }) => setUp.zero.includes(id));
  const onlyZero = zeros.length > 0 && used.every(({ setUp }) => !seats(setUp, id)) && !isEntry(part, used, id);
  return !onlyZero;
};

const seats = ({ grip }: SetUp, id: string): boolean => (grip?.kind === 'clamps' || grip?.kind === 'fixture') && grip.between.includes(id);

function isEntry(part: Part, used: readonly OperationState[], id: string): boolean {
  return used.some(({ operation }) => operation.cuts.some((cut) => entriesOf(part, cut).some((station) => station.id === id)));
}

const sameNeeds = (a: More, b: More): boolean =>
  a.wholeSection === b.wholeSection && a.states.length === b.states.length && a.holes.length === b.holes.length && a.faces.every(({ id }) => b.faces.some((other) => other.id === id)) && a.faces.length === b.faces.length;

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
