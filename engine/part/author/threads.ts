import type { Thread } from '../../trade/threads.js';
import type { ThreadSize } from '../cut.js';

/** What a cut needs to know of a standard thread. */
export const threadSize = (thread: Thread, tolerance?: string): ThreadSize => ({
  designation: thread.designation,
  major: thread.major,
  pitch: thread.pitch,
  minor: thread.minorInternal,
  ...(tolerance === undefined ? {} : { class: tolerance }),
});
