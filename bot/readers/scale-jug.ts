import { type Claim, claim, type Reading } from '../reading.ts';
import { ouncesBeside } from './in-ounces.ts';
import { leftover } from './leftover.ts';
import { type Board, boardOf, free, take } from './target.ts';

const jugs = new Set(['jug', 'jugs', 'beaker', 'beakers', 'pitcher', 'pan', 'saucepan']);

/** "My jug is 500 ml", "a 600 ml jug": what it is poured from is no amount to make. The answer says what jug it takes. */
export const takeJug = (board: Board): void => {
  for (const [at, item] of board.items.entries()) {
    if (!jugs.has(item.word) || board.taken[at]) continue;
    const size = [at - 1, at + 1, at + 2].find(
      (place) => /[vg]/.test(board.items[place]?.letter ?? '') && !board.taken[place],
    );
    if (size !== undefined) take(board, Math.min(at, size), Math.max(at, size) + 1);
    else take(board, at, at + 1);
  }
};

/** Words about the pour, the jug and the ounces that a weigh-out answers by itself. */
export const pourWords: ReadonlySet<string> = new Set(
  `first pour pouring poured top topping topup top-up up back hold keep kept reserve dent dents shrink shrinks sink sinks jug jugs big large enough fit fits fill line ounces ounce oz
  how much many is should do i set aside later after second go goes need big size what which instead show in it them that same`.split(
    /\s+/,
  ),
);

const aboutPour = /\bfirst (?:pour|fill)\b|\btop(?:ped|ping)?[- ]?(?:up|off)\b|\bdents?\b/i;

/** The first pour and the top-up are told with a weigh-out and with nothing else. */
export const asksForPour = ({ text }: Reading): boolean => aboutPour.test(text);

/** "How big a jug?", "and the first pour?", "in ounces" after a weigh-out: the same again. */
export const askedAgain = (reading: Reading, last: Readonly<Record<string, unknown>>): Claim | undefined => {
  const units = ouncesBeside(reading);
  const asks =
    units !== undefined || asksForPour(reading) || [...jugs].some((word) => reading.words.has(word));
  if (!asks) return undefined;
  const board = boardOf(reading.items);
  takeJug(board);
  for (const item of free(board))
    if (item.letter === 'u' || item.letter === 'c')
      take(board, board.items.indexOf(item), board.items.indexOf(item) + 1);
  if (leftover(board, pourWords, false).blocking.length > 0) return undefined;
  return claim({ ...last, ...(units ? { units } : {}) }, 2.7);
};
