import type { Answer } from './answer.ts';

const lasting = new WeakSet<Answer>();

/** Marks an answer that is kept to be given again: what is made of it is worth keeping too. */
export const markLasting = (answer: Answer): void => {
  lasting.add(answer);
};

export const isLasting = (answer: Answer): boolean => lasting.has(answer);
