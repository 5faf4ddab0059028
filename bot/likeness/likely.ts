import { echo } from '../readers/ask-back.ts';
import type { Reading } from '../reading.ts';
import { allSayings } from '../sayings/all.ts';
import { readAgain } from '../understand.ts';
import { Sayings } from './nearest.ts';
import { sayingsIn } from './sayings.ts';

let known: Sayings | undefined;

/** All sayings, read when a message first needs them. */
const sayings = (): Sayings => {
  known ??= new Sayings(allSayings.flatMap(sayingsIn));
  return known;
};

/** A message read as the plain form of a saying that is like it, and what is told about that. */
export interface Likely {
  readonly reading: Reading;
  readonly assumed: string;
}

/**
 * Reads a message as the plain form of the saying it is most like; undefined where none is.
 * @param leastAlike from 0 to 1: how much of the words a message and a saying have to share.
 */
export const likely = (reading: Reading, leastAlike: number): Likely | undefined => {
  const plain = sayings().plainOf(reading, leastAlike);
  if (plain === undefined) return undefined;
  return { reading: readAgain(plain, reading), assumed: `I read that as "${echo(plain)}".` };
};
