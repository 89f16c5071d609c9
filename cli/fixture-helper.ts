import { Worker } from 'node:worker_threads';
import type { FixtureRecord } from '../engine/sheet/fixture/fixture-record.js';
import { UserError } from '../engine/units/user-error.js';
import type { FixtureAnswer, FixtureOrder, PrintedFixtures } from './fixture-job.js';

/** A second thread that prints fixtures while others are chosen. */
export interface FixtureHelper {
  readonly order: (given: FixtureOrder) => void;
  /** So many fixtures, in the order in which they were told. Rejects with what the thread throws. */
  readonly printed: (count: number) => Promise<readonly PrintedFixtures<FixtureRecord>[]>;
  readonly end: () => void;
}

/** Room for what the thread makes and drops again, MB: more of it would save no time. */
const young = 24;

/** Starts the thread, which loads its libraries at once. */
export function startFixtureHelper(): FixtureHelper {
  const worker = new Worker(new URL('fixture-worker.js', import.meta.url), { resourceLimits: { maxYoungGenerationSizeMb: young } });
  const prints: PrintedFixtures<FixtureRecord>[] = [];
  let failure: unknown;
  let waiting: (() => void) | undefined;
  worker.on('message', (given: FixtureAnswer) => {
    if (given.kind === 'printed') prints.push(given.printed);
    else failure ??= new UserError(given.sentence);
    waiting?.();
  });
  worker.on('error', (error) => {
    failure ??= error;
    waiting?.();
  });
  return {
    order: (given) => {
      worker.postMessage(given);
    },
    printed: (count) =>
      new Promise((settle, refuse) => {
        waiting = () => {
          if (failure !== undefined) refuse(failure instanceof Error ? failure : new Error(String(failure)));
          else if (prints.length >= count) settle(prints);
        };
        waiting();
      }),
    end: () => void worker.terminate(),
  };
}
