import { Worker } from 'node:worker_threads';
import type { Making, Shown } from '../engine/sheet/print-ground.js';
import { UserError } from '../engine/units/user-error.js';
import type { PrintedHand } from './print-files.js';
import type { Answer, Order, PrintJob } from './print-job.js';

/** A second thread that works out what is to be seen of a part, and prints its left hand. */
export interface Helper {
  readonly take: (job: PrintJob) => void;
  readonly makeLeft: (making: Making) => void;
  /** What is to be seen of the right hand. Rejects with what the thread throws, as `left` does. */
  readonly shown: Promise<Shown>;
  readonly left: Promise<PrintedHand>;
  readonly end: () => void;
}

/** Room for what the thread makes and drops again, MB: more of it would save no time. */
const young = 24;

/** Starts the thread, which loads its libraries at once. */
export function startHelper(): Helper {
  const worker = new Worker(new URL('print-worker.js', import.meta.url), { resourceLimits: { maxYoungGenerationSizeMb: young } });
  const order = (given: Order): void => {
    worker.postMessage(given);
  };
  const answer = <T>(read: (given: Answer) => T | undefined): Promise<T> => {
    const promise = new Promise<T>((settle, refuse) => {
      worker.on('message', (given: Answer) => {
        const found = read(given);
        if (found !== undefined) settle(found);
        if (given.kind === 'mistake') refuse(new UserError(given.sentence));
      });
      worker.on('error', refuse);
    });
    // It may fail before anybody waits for it, and after nobody does.
    promise.catch(() => undefined);
    return promise;
  };
  return {
    take: (job) => {
      order({ kind: 'take', job });
    },
    makeLeft: (making) => {
      order({ kind: 'left', making });
    },
    shown: answer((given) => (given.kind === 'shown' ? given.shown : undefined)),
    left: answer((given) => (given.kind === 'left' ? given.print : undefined)),
    end: () => void worker.terminate(),
  };
}
