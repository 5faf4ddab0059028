/**
 * Work that pauses between its steps, so that whoever drives it can let others have a turn. It looks at no clock: how
 * long to go on without a pause is the driver's to say.
 */
export type Work<T> = Generator<undefined, T, undefined>;

/** Does all of it in one go. */
export const finish = <T>(work: Work<T>): T => {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
};
