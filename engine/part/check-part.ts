import { UserError } from '../units/user-error.js';
import { contradictionIn } from './check-references.js';
import { issueWords } from './issue-words.js';
import type { Part } from './part.js';
import { partShape } from './shapes/part.js';

/**
 * What a user's own `build` gave, checked to be a part that the program can work on.
 * @param file names the module in the sentence of an error.
 * @throws UserError for the first thing that is wrong: a field missing or of the wrong kind, a number that is none, a set-up,
 * station or cut that is named twice or not there, a station that is not where its placing says.
 */
export function checkPart(candidate: unknown, file: string): Part {
  const refuse = (what: string): never => {
    throw new UserError(`${file}: build gives no sound part: ${what}.`);
  };
  if (candidate instanceof Promise) return refuse('it is a promise: build must not be async');
  const { error } = partShape.safeParse(candidate);
  const [issue] = error?.issues ?? [];
  if (issue !== undefined) return refuse(issueWords(issue, candidate, 'the part'));
  const part = candidate as Part;
  const contradiction = contradictionIn(part);
  return contradiction === undefined ? part : refuse(contradiction);
}
