/**
 * A mistake that the user can put right: the message is one sentence that says what is wrong, where, what is allowed
 * and the nearest valid choice. Everything else that is thrown is a fault of the program.
 */
export class UserError extends Error {
  override readonly name = 'UserError';
}
