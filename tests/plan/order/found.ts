import type { Part, Operation, SetUp } from '../../../engine/part/part.js';
import type { Cut } from '../../../engine/part/cut.js';
import type { Finding, Gravity } from '../../../engine/plan/finding.js';
import { findingsOf } from '../../../engine/plan/order/findings.js';
import { statesOf } from '../../../engine/plan/states/state.js';
import { loadKernel } from '../../../engine/solid/kernel.js';
import { defaultShop } from '../../../engine/trade/shop/shop.js';
import { formatLength } from '../../../engine/units/format.js';
import type { Phrase } from '../../../engine/part/cut.js';

const kernel = await loadKernel();

/** No part of these tests is handed by what is looked for. */
const unhanded = { handed: false, rotation: { matrix: [[1, 0, 0], [0, 1, 0], [0, 0, 1]], shift: [0, 0, 0] }, leftOver: 0, makers: [] } as const;

export const findingsIn = (part: Part): readonly Finding[] => findingsOf(kernel, part, statesOf(kernel, part), defaultShop, part.units, unhanded);

/** Findings as "operation gravity check", sorted as they come. */
export const short = (findings: readonly Finding[]): readonly string[] => findings.map(({ operation, gravity, check }) => `${operation} ${gravity} ${check}`);

export const of = (findings: readonly Finding[], check: string, gravity?: Gravity): readonly Finding[] => findings.filter((finding) => finding.check === check && (gravity === undefined || finding.gravity === gravity));

/** A sentence with its lengths in millimetres. */
export const sentence = (phrase: Phrase): string => phrase.map((piece) => (typeof piece === 'string' ? piece : formatLength(piece.length, 'mm'))).join('');

/** The part with one operation changed. */
export const withOperation = (part: Part, number: number, change: (operation: Operation) => Operation): Part => ({ ...part, operations: part.operations.map((operation) => (operation.number === number ? change(operation) : operation)) });

export const withSetUp = (part: Part, id: string, change: Partial<SetUp>): Part => ({ ...part, setUps: part.setUps.map((setUp) => (setUp.id === id ? { ...setUp, ...change } : setUp)) });

/** The part without some operations. */
export const without = (part: Part, ...numbers: readonly number[]): Part => ({ ...part, operations: part.operations.filter(({ number }) => !numbers.includes(number)) });

/** The part with operations in another order, given by their old numbers; they are numbered anew in tens. */
export const inOrder = (part: Part, numbers: readonly number[]): Part => ({ ...part, operations: numbers.map((number, i) => ({ ...part.operations.find((operation) => operation.number === number)!, number: 10 * (i + 1) })) });

/** A cut that takes all beyond a plane. */
export const beyond = (id: string, point: readonly [number, number, number], normal: readonly [number, number, number]): Cut => ({ id, name: id, forms: [{ kind: 'half-space', point, normal, face: 'face' }], faces: { face: { stations: [] } }, sizes: [], stations: [], instruction: [id] });
