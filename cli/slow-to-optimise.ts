import { setFlagsFromString } from 'node:v8';

/**
 * The engine under Node compiles again, better, what has run for a while, on threads of its own; that pays for programs that
 * run on. A print is done in seconds on all the processors there are, and then this second compiling takes as much time as
 * it saves: only what is run most is worth it. The number is bytes of bytecode run in one function, eight times the usual.
 */
export const slowToOptimise = (): void => {
  setFlagsFromString('--interrupt-budget=1000000');
};
