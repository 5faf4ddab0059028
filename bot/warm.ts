import { emptyBook } from '../core/book.ts';
import { choose } from './choose.ts';
import { readSayings } from './likeness/likely.ts';
import { warmPictures } from './pictures/warm.ts';
import { topics } from './topics.ts';
import { giveWay, inTurns } from './turns.ts';
import { understand } from './understand.ts';

/** Reads one example of each topic and forgets it: whatever reading does only once is then done. */
export const warmReading = async (at: number): Promise<void> => {
  await inTurns(readSayings());
  for (const { examples } of topics) {
    await giveWay();
    choose(understand(examples[0].say, emptyBook, emptyBook.settings, undefined, at), topics);
  }
};

/**
 * Does ahead of the first message what costs most the first time: the drawing thread is started with its fonts, and the
 * readers have each read something. For front-ends that stay; others have their turn in between.
 */
export const warmUp = (at: number): Promise<void> => {
  warmPictures();
  // A fault shows itself at the first real message.
  return warmReading(at).catch(() => {});
};
