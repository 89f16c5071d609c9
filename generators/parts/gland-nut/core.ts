import { holeForPercent } from '../../../engine/trade/thread-percent.js';
import type { Thread } from '../../../engine/trade/threads.js';

/** Depth of thread that is asked for, per cent: more than in a drilled hole, for the bore is turned to it and the thread is short. */
const percent = 75;

/** Bore of the thread, mm, to a hundredth. */
export const coreOf = (thread: Thread): number => Math.round(holeForPercent(thread, percent) * 100) / 100;
