import type { Work } from '../../core/work.ts';
import { echo } from '../readers/ask-back.ts';
import type { Reading } from '../reading.ts';
import { allSayings } from '../sayings/all.ts';
import { readAgain } from '../understand.ts';
import { stem } from './features.ts';
import { Sayings } from './nearest.ts';
import { sayingsIn } from './sayings.ts';

const known = new Sayings();
const unread = [...allSayings];

const readNext = (): void => {
  const list = unread.shift();
  if (list !== undefined) known.add(sayingsIn(list));
};

/** Reads the sayings a list at a time: together they take longer than anybody should wait for. */
export function* readSayings(): Work<void> {
  while (unread.length > 0) {
    readNext();
    yield;
  }
}

/** All of them; whoever was not waited for is read now. */
const sayings = (): Sayings => {
  while (unread.length > 0) readNext();
  return known;
};

/** True for a word that some saying has, in any of its forms. */
export const isInSayings = (word: string): boolean => sayings().knows(stem(word));

/** A message read as the plain form of a saying that is like it, and what is told about that. */
export interface Likely {
  readonly reading: Reading;
  readonly assumed: string;
}

/**
 * Reads a message as the plain forms of the sayings it is most like, likeliest first; several where they are about as
 * likely, none where no saying is like it.
 * @param leastAlike from 0 to 1: how much of the words a message and a saying have to share.
 */
export const likely = (reading: Reading, leastAlike: number): readonly Likely[] => {
  return sayings()
    .plainsOf(reading, leastAlike)
    .map((plain) => ({
      reading: readAgain(plain, reading),
      assumed: `I read that as "${echo(plain)}".`,
    }));
};

/** So like, and no more, has a saying to be for it to be offered. */
const alikeForAGuess = 0.15;

/** Plain forms of what a message might have meant, for whoever was not understood. */
export const guessesAt = (reading: Reading): readonly string[] => sayings().plainsOf(reading, alikeForAGuess);

const alikeToGoOn = 0.97;
/** Whoever goes on says little; a whole recipe need not wait for the sayings to be read. */
const mostToGoOn = 8;

/** A message that is, word for word, a known way to go on from the message before, in its plain form. */
export const likelyGoingOn = (reading: Reading): Reading | undefined => {
  if (!reading.last || reading.items.length > mostToGoOn) return undefined;
  const [plain, second] = sayings().plainsOf(reading, alikeToGoOn, true);
  return plain === undefined || second !== undefined ? undefined : readAgain(plain, reading);
};
