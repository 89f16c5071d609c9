import { UserError } from '../units/user-error.js';
import { issueWords } from './issue-words.js';
import type { Relation } from './relation.js';
import { relationsShape } from './shapes/relations.js';

/**
 * What a user's own `relations` gave, checked to be a list of relations.
 * @param file names the module in the sentence of an error.
 * @throws UserError for the first thing that is wrong.
 */
export function checkRelations(candidate: unknown, file: string): readonly Relation[] {
  const [issue] = relationsShape.safeParse(candidate).error?.issues ?? [];
  if (candidate instanceof Promise) throw new UserError(`${file}: relations gives a promise: it must not be async.`);
  if (issue !== undefined) throw new UserError(`${file}: relations gives no sound list: ${issueWords(issue, candidate, 'the list')}.`);
  return candidate as readonly Relation[];
}
