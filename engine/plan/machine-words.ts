import type { Phrase } from '../part/cut.js';
import { vectorOf } from '../part/author/directions.js';
import type { Axis } from '../part/station.js';
import { directionOnMachine, type MachineFrame } from './machine-frame.js';

const letters = ['X', 'Y', 'Z'] as const;

/** How an axis of the part lies on the machine; undefined where it stands at an angle to all of its axes. */
function onMachine(frame: MachineFrame, axis: Axis): { readonly letter: string; readonly sense: 1 | -1 } | undefined {
  const direction = directionOnMachine(frame, vectorOf(`+${axis}`));
  const i = direction.findIndex((value) => Math.abs(value) > 1 - 1e-9);
  const letter = letters[i];
  return letter === undefined ? undefined : { letter, sense: (direction[i] ?? 0) > 0 ? 1 : -1 };
}

/** The machine's letter for an axis of the part; undefined where the part stands at an angle. */
export const machineLetter = (frame: MachineFrame, axis: Axis): string | undefined => onMachine(frame, axis)?.letter;

/**
 * Words in which X, Y and Z are the part's own axes, in the machine's instead, so that one sheet has one meaning of each
 * letter. Where the part stands at an angle the letter stays and is said to be the part's.
 */
export function inMachineWords(text: string, frame: MachineFrame): string {
  return text.replace(/(^|[^\w.])([+-]?)([XYZ])(?![\w.-])/g, (_, before: string, sign: string, letter: string) => {
    const named = onMachine(frame, letter.toLowerCase() as Axis);
    if (named === undefined) return `${before}the part\u2019s ${sign}${letter}`;
    if (sign === '') return `${before}${named.letter}`;
    return `${before}${(sign === '-') === (named.sense > 0) ? '-' : '+'}${named.letter}`;
  });
}

/** More pieces than this in a phrase are a list of places, which the settings give better. */
const mostPieces = 24;

/** As `inMachineWords`, for what stands between the sizes of a phrase; a long list of places is left to the settings. */
export function phraseOnMachine(phrase: Phrase, frame: MachineFrame): Phrase {
  const places = phrase.indexOf('; ');
  const kept = phrase.length > mostPieces && places > 0 ? [...phrase.slice(0, places), '; places as set below'] : phrase;
  return kept.map((piece) => (typeof piece === 'string' ? inMachineWords(piece, frame) : piece));
}
