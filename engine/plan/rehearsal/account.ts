import type { Cut, Phrase } from '../../part/cut.js';
import { indexOf } from '../../part/author/directions.js';
import { roomOf } from '../../part/author/stock.js';
import { joined } from '../../part/author/phrases.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Shop } from '../../trade/shop/shop.js';
import type { Stake } from '../stakes/stake.js';
import { materialGap } from './cheaper.js';
import { laddersOf, type Ladder } from './ladder.js';
import { likenessOf, type Likeness } from './likeness.js';
import { measuresOf, type Measure } from './measures.js';
import type { TestPiece } from './test-piece.js';

/** What is told of a test piece: why it is made, how like the part it is, what it shows and what not, and what to measure. */
export interface Account {
  readonly stakes: readonly Stake[];
  readonly likeness: readonly Likeness[];
  readonly proves: readonly Phrase[];
  readonly notProved: readonly Phrase[];
  readonly differs: readonly Phrase[];
  readonly trials: readonly Phrase[];
  readonly measures: readonly Measure[];
  readonly ladders: readonly Ladder[];
}

/** @param stakes of all operations of the part; those of the rehearsed ones are told. */
export function accountOf(kernel: Kernel, piece: TestPiece, stakes: readonly Stake[], shop: Shop | undefined): Account {
  const likeness = likenessOf(kernel, piece);
  const operations = piece.rehearsed.flatMap((number) => piece.of.operations.find((operation) => operation.number === number) ?? []);
  return {
    stakes: stakes.filter(({ operation }) => piece.rehearsed.includes(operation)),
    likeness,
    proves: provesOf(piece, likeness),
    notProved: [...likeness.flatMap(unlike), ...endsNotProved(likeness), ...thinnerThere(piece), ...otherMaterial(piece), ...notCut(piece)],
    differs: differsOf(piece),
    trials: trialsOf(piece),
    measures: operations.flatMap((operation) => measuresOf(piece.part, operation)),
    ladders: operations.flatMap((operation) => laddersOf(piece.part, operation, shop)),
  };
}

const size = (length: number): { readonly length: number } => ({ length });

function provesOf(piece: TestPiece, likeness: readonly Likeness[]): readonly Phrase[] {
  return likeness
    .filter(({ trial, operation }) => trial === 1 && likeness.every((each) => each.operation !== operation || each.alike))
    .map(({ operation, margin }): Phrase => {
      const { title, setUp } = piece.of.operations.find(({ number }) => number === operation)!;
      return [`Operation ${operation}, ${lower(title)}: settings, reach of cutter and holder, order of cuts and the look of the result, in set-up ${setUp} as on the part. Metal before the cut and faces after it are those of the part, to `, size(margin), ' beside and under the cut', ...(piece.beside === undefined ? ['.'] : [piece.ladder === undefined ? ', at each trial.' : ', at each trial but for the size that it tries.'])];
    });
}

const lower = (title: string): string => title.charAt(0).toLowerCase() + title.slice(1);

/** Where metal or faces differ within the region after all, by how much. */
function unlike({ operation, trial, alike, before, after }: Likeness): readonly Phrase[] {
  if (alike) return [];
  const share = (100 * Math.max(before.missing + before.extra, after.missing + after.extra)) / before.region;
  return [[`Operation ${operation}${trial > 1 ? `, trial ${trial}` : ''}: within its reach the piece differs from the part by ${share.toFixed(1)} per cent of the room there; judge only what lies clear of that.`]];
}

/** Sides on which the part goes on: what springs or rings there is not shown. */
function endsNotProved(likeness: readonly Likeness[]): readonly Phrase[] {
  return likeness.filter(({ trial }) => trial === 1).flatMap(({ operation, ends }): Phrase[] => {
    const far = ends.filter(({ follows }) => follows > 1);
    if (far.length === 0) return [];
    const each = far.map(({ distance, follows, side }): Phrase => [`${side.axis.toUpperCase()} `, size(distance), ' from the cut, where the part goes on for ', size(follows)]);
    return [[`Operation ${operation}: the piece ends along `, ...joined(each), '. How far the whole part springs, and how it must be held for its weight and length, is not shown.']];
  });
}

/** A chamfer bears the name of what it is on: beside that it says what it is. */
const nameOf = ({ name, sizes }: Cut): string => (sizes.length > 0 && sizes.every(({ kind }) => kind === 'chamfer') && !/chamfer/i.test(name) ? `chamfer of the ${name}` : name);

/** Earlier cuts of the part that the piece does without: the part is thinner there. */
function thinnerThere({ leftOut, rehearsed }: TestPiece): readonly Phrase[] {
  const near = leftOut.filter(({ cut, gap, operation }) => gap < 10 && cut.forms.length > 0 && operation < Math.max(...rehearsed)).sort((a, b) => a.gap - b.gap);
  if (near.length === 0) return [];
  const each = near.slice(0, 4).map(({ cut, gap }): Phrase => (gap < 1e-6 ? [`${nameOf(cut)}, beside the cut`] : [`${nameOf(cut)}, `, size(gap), ' away']));
  return [['The part is thinner than the piece at: ', ...joined(each), '. Spring and thin walls there are not shown.']];
}

function otherMaterial({ of, part }: TestPiece): readonly Phrase[] {
  const gap = materialGap(of.material, part.material);
  const hardened = of.material.treatment === undefined ? [] : [['The piece is not heat treated: how the part moves and scales in that is not shown.'] as Phrase];
  if (gap === undefined) return hardened;
  const more = Math.abs(100 * (gap.energy - 1)).toFixed(0);
  const softer = gap.energy < 1;
  const figures = Number(more) === 0 ? 'about the same energy' : `${more} per cent ${softer ? 'less' : 'more'} energy`;
  return [
    [`The piece is ${gap.piece.name}, the part ${gap.part.name}: it takes ${figures} to cut (${gap.piece.cuttingEnergy} against ${gap.part.cuttingEnergy} J/mm³). Torque on the tap, heat, burr and finish are not shown; speeds are those of the piece's own material.`],
    ...hardened,
  ];
}

/** Operations of the part for which the piece has no cut although they come before the last rehearsed one. */
function notCut({ of, part, rehearsed }: TestPiece): readonly Phrase[] {
  const after = of.operations.filter(({ number, cuts }) => number > Math.max(...rehearsed) && cuts.length > 0).map(({ number }) => number);
  const between = of.operations.filter(({ number, cuts }) => number < Math.max(...rehearsed) && cuts.length > 0 && part.operations.every((other) => other.number !== number)).map(({ number }) => number);
  const out = [...between, ...after];
  return out.length === 0 ? [] : [[`Operations of the part that are not on the piece: ${out.join(', ')}.`]];
}

function differsOf(piece: TestPiece): readonly Phrase[] {
  const { part, of, leftOut } = piece;
  const bar = ({ stock }: typeof part): Phrase => [...stock.section.flatMap((side, i): Phrase => (i === 0 ? [size(side)] : [' x ', size(side)])), `${stock.shape === 'round' ? ' round' : stock.shape === 'hexagon' ? ' across flats' : ''}, `, size(stock.length), ' long'];
  const less = leftOut.map(({ cut }) => nameOf(cut));
  return [
    ['Blank: ', ...bar(part), '; the part: ', ...bar(of), '.'],
    ...(part.material.name === of.material.name ? [['Material: the same as the part.'] as Phrase] : [[`Material: ${part.material.name}; the part: ${of.material.name}.`] as Phrase]),
    ...(less.length === 0 ? [] : [[`Left out where the piece has metal: ${[...new Set(less)].join(', ')}.`] as Phrase]),
    ...zeroAway(piece),
    ['Sizes, places and numbers of operations are those of the part: what is found on the piece goes to the row of the same number.'],
  ];
}

/** Where a face that is zero on the part is none of the piece's. */
function zeroAway({ part, of }: TestPiece): readonly Phrase[] {
  const bounds = roomOf(part.stock);
  const zeros = part.stations.filter(({ id, placing }) => placing.kind === 'datum' && part.setUps.some(({ zero }) => zero.includes(id)));
  return zeros.flatMap((station): Phrase[] => {
    const i = indexOf(station.axis);
    const [below, above] = [bounds.low[i] - station.value, station.value - bounds.high[i]];
    const away = Math.max(below, above);
    if (away < 1e-6) return [];
    return [[`The ${station.name} of the ${of.title.toLowerCase()}, which is zero, is not on the piece: it would be `, size(away), ' outside of it. Touch on the nearest face of the piece and set that figure there; all settings are then those of the part.']];
  });
}

function trialsOf({ trials, barLength, part, beside, ladder, whyInTurn }: TestPiece): readonly Phrase[] {
  if (trials === 1) return [['One trial. For more on one bar ask for so many trials.']];
  if (beside !== undefined)
    return [
      [`${trials} trials side by side on one blank, `, size(barLength), ' long, ', size(Math.abs(beside.pitch)), ` from one to the next along ${beside.axis.toUpperCase()} of the part. In each set-up do all of them, or set zero on by what the table says and work as at the first.`],
      ladder === undefined ? ['Between the trials change one thing only.'] : ['Each trial is a rung of the ladder: its size stands at its place on the print, and in an operation of its own.'],
    ];
  return [[`${trials} trials on one bar, `, size(barLength), ' long: do all operations at its end, saw off ', size(part.stock.length), ' and go on with the fresh end; between the trials change one thing only.'], ...(whyInTurn === undefined ? [] : [[`They are made in turn because ${whyInTurn}.`] as Phrase])];
}
