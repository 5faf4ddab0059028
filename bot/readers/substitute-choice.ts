import type { Reading } from '../reading.ts';
import type { Wish } from './scale-wish.ts';
import type { Board } from './target.ts';

/** How to choose among what would do: by price, from the shelf, or to see the scores. */
export interface Choice {
  readonly by?: 'price';
  readonly stocked?: true;
  readonly scores?: true;
  readonly gramForGram?: true;
  /** The chart in light on dark. */
  readonly dark?: true;
}

const priceWords = new Set(
  'cheap cheaper cheapest costly price prices budget thrifty economical save saves money single most biggest'.split(
    ' ',
  ),
);
const cheap =
  /\b(?:cheap(?:er|est)?|least expensive|less expensive|lowest price|save(?: \w+){0,3} money|saves(?: \w+){0,3} money|on a budget)\b/i;

const stockWords = new Set(
  'stock stocked cupboard shelf store larder only just have got already hand storeroom house'.split(' '),
);
const fromShelf =
  /\b(?:in|from|of|out of) (?:the |our |my )?(?:stock|cupboard|store ?room|larder)\b|\bin stock\b|\b(?:with|from|of|only|just|using|use|out of) (?:only |just )?(?:what|stuff|things|ingredients) (?:we|i)(?:'ve| have| got|ve)\b|\bwe (?:already )?have (?:in|on) (?:the |our )?(?:stock|shelf|cupboard|house)\b/i;

const scoreWords = new Set(
  'score scores scoring points parts breakdown broken down why first best'.split(' '),
);
const scored = /\b(?:scores?|points|score parts|breakdown)\b/i;

const takeWords = (board: Board, words: ReadonlySet<string>): void => {
  for (const [at, item] of board.items.entries())
    if (/[wzZy]/.test(item.letter) && words.has(item.word)) board.taken[at] = true;
};

const plainly =
  /\b(?:gram|weight|like)[- ]for[- ](?:gram|weight|like)\b|\b(?:the )?(?:same|equal) (?:amount|weight|grams)\b|\b1 ?: ?1\b|\bone[- ](?:to|for)[- ]one\b/i;

/** What a swap does anyhow: nothing more is asked with it. */
const asFirm =
  /\b(?:(?:at|with|keeping|of|to) )?(?:the )?(?:equal|same|similar) (?:firmness|hardness|set|consistency)\b/i;

/** "Undo that swap, use rice bran wax": another in its place. */
const undoing = /\bundo (?:that|the|this|my) swap\b/i;

const darkPicture =
  /\b(?:(?:with|in|and|as) )?(?:a |the )?dark(?:[- ](?:mode|theme))? ?(?:chart|graph|picture|curve)\b|\b(?:chart|graph|picture|curve)s?,? (?:in |on |as )?(?:the )?dark(?:[- ](?:mode|theme))?\b|\bdark[- ]mode\b/i;

/** Takes the items off the board that a stretch of the text was read into. */
const takeStretch = (board: Board, text: string, shape: RegExp): boolean => {
  const match = shape.exec(text);
  if (!match) return false;
  const end = match.index + match[0].length;
  for (const [at, item] of board.items.entries())
    if (item.from >= match.index && item.to <= end) board.taken[at] = true;
  return true;
};

/** "No beeswax in the cupboard" tells what is not there. */
const lacking =
  /\b(?:no|not|without|none|isn't|aren't|out of|don't have)\b[^.?!]{0,30}\b(?:in|on) (?:the |our |my )?(?:stock|cupboard|store ?room|larder|shelf|house)\b/i;

export const asksForShelf = ({ corrected }: Reading): boolean =>
  fromShelf.test(corrected) && !lacking.test(corrected);

/** "Only what is in stock", "with what we have". */
export const takeStocked = (board: Board, reading: Reading): Pick<Choice, 'stocked'> => {
  if (!asksForShelf(reading)) return {};
  takeWords(board, stockWords);
  return { stocked: true };
};

/** Takes words off the board that say how to choose. */
export const takeChoice = (board: Board, reading: Reading): Choice => {
  takeStretch(board, reading.text, asFirm);
  takeStretch(board, reading.text, undoing);
  const dark = takeStretch(board, reading.text, darkPicture);
  const gramForGram = takeStretch(board, reading.text, plainly);
  const price = cheap.test(reading.corrected);
  const scores = scored.test(reading.corrected);
  if (price) takeWords(board, priceWords);
  if (scores) takeWords(board, scoreWords);
  return {
    ...(price ? { by: 'price' } : {}),
    ...takeStocked(board, reading),
    ...(scores ? { scores: true } : {}),
    ...(gramForGram ? { gramForGram: true } : {}),
    ...(dark ? { dark: true } : {}),
  };
};

export const isChosen = ({ by, stocked, gramForGram, dark }: Choice): boolean =>
  by !== undefined || stocked === true || gramForGram === true || dark === true;

/** Adds the choice to a request; scores only mean something where candidates are asked for. */
export const withChoice = (request: Wish, { scores, gramForGram, ...choice }: Choice): Wish => ({
  ...request,
  ...choice,
  ...(gramForGram && request.from !== undefined ? { gramForGram } : {}),
  ...(scores && request.replaces !== undefined ? { scores } : {}),
});
