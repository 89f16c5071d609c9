import type { Phrase } from '../part/cut.js';
import { vectorOf } from '../part/author/directions.js';
import type { Direction } from '../part/station.js';
import { directionOnMachine, type MachineFrame } from './machine-frame.js';

const letters = ['X', 'Y', 'Z'] as const;

/** The machine's name for an axis of the part; undefined where the part stands at an angle to the machine. */
function machineLetter(frame: MachineFrame, letter: string): { readonly letter: string; readonly sense: 1 | -1 } | undefined {
  const direction = directionOnMachine(frame, vectorOf(`+${letter.toLowerCase()}` as Direction));
  const i = direction.findIndex((value) => Math.abs(value) > 1 - 1e-9);
  const name = letters[i];
  return name === undefined ? undefined : { letter: name, sense: (direction[i] ?? 0) > 0 ? 1 : -1 };
}

/**
 * Words in which X, Y and Z are the part's own axes, in the machine's instead, so that one sheet has one meaning of each
 * letter. Where the part stands at an angle the letter stays and is said to be the part's.
 */
export function inMachineWords(text: string, frame: MachineFrame): string {
  return text.replace(/(^|[^\w.])([+-]?)([XYZ])(?![\w.-])/g, (_, before: string, sign: string, letter: string) => {
    const named = machineLetter(frame, letter);
    if (named === undefined) return `${before}the part\u2019s ${sign}${letter}`;
    if (sign === '') return `${before}${named.letter}`;
    return `${before}${(sign === '-') === (named.sense > 0) ? '-' : '+'}${named.letter}`;
  });
}

/** As `inMachineWords`, for what stands between the sizes of a phrase. */
export const phraseOnMachine = (phrase: Phrase, frame: MachineFrame): Phrase =>
  phrase.map((piece) => (typeof piece === 'string' ? inMachineWords(piece, frame) : piece));
