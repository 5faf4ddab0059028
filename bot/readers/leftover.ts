import type { Item } from './item.ts';
import type { Board } from './target.ts';

/** What a topic did not account for. `set aside` is harmless talk around the request; `blocking` is not. */
export interface Leftover {
  readonly blocking: readonly Item[];
  readonly aside: readonly string[];
}

/** Letters that carry no request by themselves when they are left over. */
const quiet = /^[,;.:()\-=?!>"@<\n/*TFIWoAexbBycu]$/;
/** Most words of small talk that are set aside; more than that is a message about something else. */
const mostAside = 9;

const isBreak = (item: Item | undefined): boolean =>
  item === undefined || /^[,;.:()?!\n-]$/.test(item.letter);

interface Run {
  readonly from: number;
  readonly to: number;
  readonly items: readonly Item[];
}

const runsOf = (board: Board, isLoose: (item: Item) => boolean): Run[] => {
  const runs: Run[] = [];
  let current: { from: number; to: number; items: Item[] } | undefined;
  for (const [index, item] of board.items.entries()) {
    if (board.taken[index] || !isLoose(item)) {
      if (board.taken[index] || isBreak(item)) current = undefined;
      continue;
    }
    if (!current) {
      current = { from: index, to: index, items: [] };
      runs.push(current);
    }
    current.to = index;
    current.items.push(item);
  }
  return runs;
};

const nextTaken = (board: Board, from: number, step: 1 | -1): boolean => {
  for (let index = from + step; index >= 0 && index < board.items.length; index += step) {
    if (board.taken[index]) return true;
    if (isBreak(board.items[index])) return false;
  }
  return false;
};

/** Talk stands apart when nothing of the request follows it, or precedes it, in the same clause. */
const standsApart = (board: Board, run: Run): boolean =>
  !nextTaken(board, run.to, 1) || !nextTaken(board, run.from, -1);

/**
 * Sorts what is left of a message once a topic has taken its part. Words the topic knows (`expected`) are fine; up to
 * nine unknown words at the edge of a clause are set aside and said so; everything else blocks the claim, so that a
 * message asking for something more is never answered as if it did not.
 * @param tolerant false when the topic's words are so common that any unknown word may change the question.
 */
export const leftover = (board: Board, expected: ReadonlySet<string>, tolerant: boolean): Leftover => {
  const isLoose = (item: Item): boolean => item.letter === 'w' && !expected.has(item.word);
  const hard = board.items.filter(
    (item, index) =>
      !board.taken[index] && item.letter !== 'w' && !quiet.test(item.letter) && !expected.has(item.word),
  );
  const runs = runsOf(board, isLoose);
  const loose = runs.flatMap((run) => run.items);
  const apart = tolerant && loose.length <= mostAside ? runs.filter((run) => standsApart(board, run)) : [];
  const blocking = [...hard, ...runs.filter((run) => !apart.includes(run)).flatMap((run) => run.items)];
  return {
    blocking,
    aside: apart.map((run) => run.items.map((item) => item.word).join(' ')),
  };
};
