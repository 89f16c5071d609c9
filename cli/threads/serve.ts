import { parentPort } from 'node:worker_threads';
import { UserError } from '../../engine/units/user-error.js';
import type { Told } from './second-thread.js';

/**
 * Works off, in a second thread, what the first orders, one order after another. An order that has no answer gives undefined.
 * Errors that are no user's mistake stop the thread.
 */
export function serve<Order, Answer>(work: (order: Order) => Promise<Answer | undefined>): void {
  const port = parentPort!;
  const tell = (told: Told<Answer>): void => {
    port.postMessage(told);
  };
  const done = async (order: Order): Promise<void> => {
    try {
      const answer = await work(order);
      if (answer !== undefined) tell({ kind: 'answer', answer });
    } catch (error) {
      if (!(error instanceof UserError)) throw error;
      tell({ kind: 'mistake', sentence: error.message });
    }
  };
  let last = Promise.resolve();
  port.on('message', (order: Order) => {
    last = last.then(() => done(order));
  });
}
