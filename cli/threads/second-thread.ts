import { Worker } from 'node:worker_threads';
import { UserError } from '../../engine/units/user-error.js';

/** What a thread tells of an order: what came of it, or the sentence of a UserError, whose class does not pass from thread to thread. */
export type Told<Answer> = { readonly kind: 'answer'; readonly answer: Answer } | { readonly kind: 'mistake'; readonly sentence: string };

/** A second thread, which works its orders off one after another. */
export interface SecondThread<Order, Answer> {
  readonly order: (given: Order) => void;
  /** The next answer, in the order of the orders. Rejects with the mistake of that order, or with what stopped the thread. */
  readonly next: () => Promise<Answer>;
  readonly end: () => void;
}

/**
 * Starts a thread, which loads its libraries at once. The module calls `serve`; both sides name the same kinds of order.
 * @param module beside this one.
 * @param young room for what the thread makes and drops again, MB.
 */
export function startThread<Order, Answer>(module: string, young: number): SecondThread<Order, Answer> {
  const worker = new Worker(new URL(module, import.meta.url), { resourceLimits: { maxYoungGenerationSizeMb: young } });
  const told: Told<Answer>[] = [];
  const waiting: { readonly settle: (answer: Answer) => void; readonly refuse: (reason: Error) => void }[] = [];
  let stopped: Error | undefined;
  const settleThose = (): void => {
    while (waiting.length > 0 && (told.length > 0 || stopped !== undefined)) {
      const { settle, refuse } = waiting.shift()!;
      const given = told.shift();
      if (given === undefined) refuse(stopped!);
      else if (given.kind === 'answer') settle(given.answer);
      else refuse(new UserError(given.sentence));
    }
  };
  worker.on('message', (given: Told<Answer>) => {
    told.push(given);
    settleThose();
  });
  worker.on('error', (error) => {
    stopped = error instanceof Error ? error : new Error(String(error));
    settleThose();
  });
  return {
    order: (given) => {
      worker.postMessage(given);
    },
    next: () =>
      unwatched(
        new Promise<Answer>((settle, refuse) => {
          waiting.push({ settle, refuse });
          settleThose();
        }),
      ),
    end: () => void worker.terminate(),
  };
}

/** A promise that may fail before anybody waits for it, and after nobody does. */
export function unwatched<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => undefined);
  return promise;
}
