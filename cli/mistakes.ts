import { UserError } from '../engine/units/user-error.js';

/** Several mistakes of the user at once, each a sentence, as of a file that is checked from end to end. */
export class Mistakes extends UserError {
  constructor(readonly sentences: readonly string[]) {
    super(sentences.join(' '));
  }
}
