import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/**
 * A full collection of this thread's garbage, at once. For threads whose objects are small but hold much memory outside
 * the heap: the collector sees the little they weigh in it and comes far too seldom.
 */
export const collector = (): (() => void) => {
  // The flag makes the function for contexts begun after it; this one had begun before.
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as () => void;
};
