import { nearestClause } from '../units/nearest-name.js';
import { UserError } from '../units/user-error.js';
import { deviationSteps, holeJ, lowerDeviations, shaftJ, standardTolerances, toleranceSteps, upperDeviations } from './data/iso-286.js';

/** Limits as deviations from the nominal size. */
export interface Deviations {
  readonly upper: number;
  readonly lower: number;
}

const shaftLetters = [...Object.keys(upperDeviations), 'j', 'js', ...Object.keys(lowerDeviations)];
const largest = toleranceSteps.at(-1) ?? 0;

interface ClassName {
  readonly letter: string;
  readonly hole: boolean;
  readonly grade: number;
}

function readClass(text: string): ClassName {
  const match = /^(JS|js|[A-Za-z])\s*([1-9]\d?)$/.exec(text.trim());
  const letter = match?.[1]?.toLowerCase() ?? '';
  const grade = Number(match?.[2]);
  if (match?.[1] === undefined || !shaftLetters.includes(letter) || standardTolerances[grade] === undefined) {
    const usual = ['H6', 'H7', 'H8', 'H9', 'H11', 'F7', 'G7', 'K7', 'N7', 'P7', 'd9', 'e8', 'f7', 'g6', 'h6', 'h7', 'k6', 'm6', 'n6', 'p6', 'r6', 's6'];
    const sameCase = usual.filter((name) => (name < 'a') === (text.trim() < 'a'));
    throw new UserError(`tolerance class "${text.trim()}" does not exist: a class is a letter (A to Z for holes, a to z for shafts) and a grade 1 to 16, such as H7 or g6${nearestClause(text, sameCase)}.`);
  }
  return { letter, hole: match[1] !== match[1].toLowerCase(), grade };
}

function stepOf(steps: readonly number[], size: number): number {
  if (!(size > 0 && size <= largest)) {
    throw new UserError(`size ${+size.toFixed(4)} mm is outside the range of the table of tolerance classes: over 0 up to ${largest} mm.`);
  }
  return steps.findIndex((upTo) => size <= upTo + 1e-9);
}

const undefinedFor = (text: string, size: number): UserError =>
  new UserError(`tolerance class ${text} is not defined for ${+size.toFixed(4)} mm by ISO 286.`);

function shaftMicrometres({ letter, grade }: ClassName, size: number, tolerance: number): Deviations | undefined {
  const step = stepOf(deviationSteps, size);
  if (letter === 'js') return { upper: tolerance / 2, lower: -tolerance / 2 };
  if (letter === 'j') {
    const lower = shaftJ[grade]?.[stepOf(toleranceSteps, size)];
    return lower === undefined ? undefined : { upper: lower + tolerance, lower };
  }
  const upper = upperDeviations[letter]?.[step];
  if (upper !== undefined) return { upper, lower: upper - tolerance };
  const lower = letter === 'k' && (grade < 4 || grade > 7) ? 0 : (lowerDeviations[letter]?.[step] ?? Number.NaN);
  return Number.isNaN(lower) ? undefined : { upper: lower + tolerance, lower };
}

/**
 * Holes: A to H mirror a to h; K, M, N up to grade 8 and P to Z up to grade 7 stand the difference to the next finer
 * grade higher than the mirror of the shaft, above 3 mm (ISO 286-1, 4.3.2.5 and Table 3); coarser N is nought.
 */
function holeMicrometres(name: ClassName, size: number, tolerance: number): Deviations | undefined {
  const { letter, grade } = name;
  const step = stepOf(toleranceSteps, size);
  if (letter === 'js') return { upper: tolerance / 2, lower: -tolerance / 2 };
  if (letter === 'j') {
    const upper = holeJ[grade]?.[step];
    return upper === undefined ? undefined : { upper, lower: upper - tolerance };
  }
  const es = upperDeviations[letter]?.[stepOf(deviationSteps, size)];
  if (es !== undefined) return { upper: tolerance - es, lower: 0 - es };
  const ei = lowerDeviations[letter]?.[stepOf(deviationSteps, size)] ?? Number.NaN;
  if (Number.isNaN(ei)) return undefined;
  const first = step === 0;
  const inner = letter === 'k' || letter === 'm' || letter === 'n';
  if (letter === 'k' && grade > 8) return first ? { upper: 0, lower: -tolerance } : undefined;
  if (letter === 'n' && grade > 8 && !first) return { upper: 0, lower: -tolerance };
  const finer = standardTolerances[grade - 1]?.[step] ?? 0;
  const delta = !first && grade >= 3 && grade <= (inner ? 8 : 7) ? tolerance - finer : 0;
  const upper = delta - ei;
  return { upper, lower: upper - tolerance };
}

/** The standard tolerance of a grade at a size (mm), in micrometres. */
export function standardTolerance(grade: number, size: number): number {
  const tolerance = standardTolerances[grade]?.[stepOf(toleranceSteps, size)];
  if (tolerance === undefined) throw new UserError(`grade ${grade} is not in the table: allowed are 1 to 16.`);
  return tolerance;
}

/**
 * Deviations in whole (js: half) micrometres of an ISO 286 tolerance class at a nominal size, as the standard's table
 * prints them: upper case for holes, lower case for shafts.
 * @param size nominal size, mm, over 0 up to 250.
 * @throws UserError for a class that does not exist or is not defined at the size, or a size outside the table.
 */
export function toleranceMicrometres(className: string, size: number): Deviations {
  const name = readClass(className);
  const tolerance = standardTolerance(name.grade, size);
  if (size <= 1 && ['a', 'b'].includes(name.letter)) throw undefinedFor(className, size);
  const deviations = (name.hole ? holeMicrometres : shaftMicrometres)(name, size, tolerance);
  if (deviations === undefined) throw undefinedFor(className, size);
  return { upper: deviations.upper + 0, lower: deviations.lower + 0 };
}

/** As `toleranceMicrometres`, in millimetres. */
export function toleranceLimits(className: string, size: number): Deviations {
  const { upper, lower } = toleranceMicrometres(className, size);
  return { upper: upper / 1000, lower: lower / 1000 };
}

/** True for the name of a hole class, false for a shaft class. */
export const isHoleClass = (className: string): boolean => readClass(className).hole;
