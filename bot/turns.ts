import type { Work } from '../core/work.ts';

/** Milliseconds that work may go on before others have their turn. */
const turnMs = 8;

/** Lets whatever else waits have its turn. */
export const giveWay = (): Promise<void> =>
  new Promise((done) => {
    setImmediate(done);
  });

/** Does work a few milliseconds at a time; others are answered in between. */
export const inTurns = async <T>(work: Work<T>): Promise<T> => {
  let since = performance.now();
  let step = work.next();
  while (!step.done) {
    if (performance.now() - since > turnMs) {
      await giveWay();
      since = performance.now();
    }
    step = work.next();
  }
  return step.value;
};
