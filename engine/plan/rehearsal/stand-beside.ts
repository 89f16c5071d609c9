import type { Part } from '../../part/part.js';
import type { Axis } from '../../part/station.js';
import { axes } from '../../part/author/directions.js';
import type { Kernel } from '../../solid/kernel.js';
import { UserError } from '../../units/user-error.js';
import type { Blank } from './blank.js';
import { longAxis } from './blank-extent.js';
import { likenessOf } from './likeness.js';
import { whyNotBeside } from './may-stand-beside.js';
import type { TestPiece } from './test-piece.js';
import { pitchOf } from './pitch.js';
import { freeEnd, lengthAlong, sideBySide } from './side-by-side.js';

/** A bar longer than this does not lie on a small mill, mm (common practice). */
const longest = 300;

/**
 * The piece with all its trials side by side on one blank, along its own bar if that may be, else across on another bar; as
 * it was, with the reason, where that cannot be, or where some trial would be less like the part than one by itself.
 * @param along one trial, with its blank, on a bar along an axis.
 */
export function standBeside(kernel: Kernel, piece: TestPiece, along: (axis: Axis) => { readonly blank: Blank; readonly single: Part }): TestPiece {
  const own = longAxis(piece.single);
  let why: string | undefined;
  for (const axis of [own, ...axes.filter((each) => each !== own)]) {
    const refused = whyNotBeside(piece.single, axis);
    if (refused !== undefined) {
      why ??= refused;
      continue;
    }
    const found = tried(kernel, piece, along(axis), axis);
    if (typeof found !== 'string') return found;
    why ??= found;
  }
  return { ...piece, whyInTurn: why! };
}

/** The trials along an axis, or why they do not do. */
function tried(kernel: Kernel, piece: TestPiece, { blank, single }: { readonly blank: Blank; readonly single: Part }, axis: Axis): TestPiece | string {
  const refused = whyNotBeside(single, axis);
  if (refused !== undefined) return refused;
  const way = freeEnd(single, axis, new Set(blank.stations.map(({ id }) => id)));
  if (way === undefined) return 'both ends of the blank are faces of the part';
  const pitch = way * pitchOf(kernel, single, piece.regions, axis);
  const length = lengthAlong(single, axis) + (piece.trials - 1) * Math.abs(pitch);
  if (length > longest) return 'the blank would be too long for the table';
  const beside = { axis, pitch };
  const whole: TestPiece = { ...piece, blank, single, part: sideBySide(single, beside, piece.trials), beside, barLength: length };
  return everyTrialIsAlike(kernel, whole) ? whole : 'beside each other they would not be like the part';
}

function everyTrialIsAlike(kernel: Kernel, piece: TestPiece): boolean {
  try {
    return likenessOf(kernel, piece).every(({ alike }) => alike);
  } catch (error) {
    if (error instanceof UserError) return false;
    throw error;
  }
}
