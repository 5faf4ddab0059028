import type { Form } from '../../core/design/wishes.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { isElsewhere, isWrittenOut } from './design-elsewhere.ts';
import { claimNext, claimShown, continued } from './design-follow.ts';
import { sureness } from './design-sureness.ts';
import { type DesignRequest, readWishes, type WishesRead } from './design-wishes.ts';
import { bodyWords, designWords, followWords, groupOf } from './design-words.ts';
import { leftover } from './leftover.ts';
import { namesOwnBalm } from './second-look.ts';
import { type Board, boardOf } from './target.ts';

export const designExample = 'vegan stick that survives 38 C, no nuts, with shea and mango';

const before = (reading: Reading): DesignRequest | undefined =>
  reading.last?.topic === 'design' ? (reading.last.request as DesignRequest) : undefined;

const nothingWished: Trouble = {
  code: 'missing',
  text: `What should it be like? Say at least one wish: stick, tin or soft, the hottest day, vegan, what to leave out or put in. For example "${designExample}".`,
};

const defaultForm = (reading: Reading, wishes: DesignRequest): { form: Form; assumed: readonly string[] } => {
  if (wishes.form) return { form: wishes.form, assumed: [] };
  const stick = reading.words.has('lip') || reading.words.has('lips') || wishes.survivesC !== undefined;
  return stick
    ? { form: 'stick', assumed: ['I took it as a stick; say "in a tin" for a softer one.'] }
    : { form: 'tin', assumed: ['I took it as a balm for a tin; say "a stick" for a firmer one.'] };
};

const isPlaced = (
  board: Board,
  words: ReadonlySet<string>,
  tolerant = true,
): { blocked: boolean; aside: readonly string[] } => {
  const { blocking, aside } = leftover(board, words, tolerant);
  const hard = blocking.filter((item) => groupOf(item.word) === undefined);
  return { blocked: hard.length > 0, aside };
};

const fresh = (reading: Reading, board: Board, read: WishesRead): Claim | undefined => {
  const weight = sureness(reading, read);
  if (weight === 0) return undefined;
  if (read.trouble) return refuse(read.trouble, weight);
  // "Design us a poster for the summer fair": with no balm and no ingredient in it, every word counts.
  const ours = anyWord(reading, bodyWords) || (read.wishes.form ?? read.wishes.with) !== undefined;
  const { blocked, aside } = isPlaced(board, designWords, ours);
  if (blocked) return undefined;
  if (Object.keys(read.wishes).length === 0)
    return refuse(nothingWished, 1.4, read.wishes as Readonly<Record<string, unknown>>);
  const { form, assumed } = defaultForm(reading, read.wishes);
  const said = aside.length > 0 ? [`I set aside "${aside.join('", "')}".`] : [];
  return claim({ ...read.wishes, form }, weight, [...assumed, ...read.assumed, ...said]);
};

/** What a message would mean as wishes for a new recipe. */
export const claimDesign = (reading: Reading): Claim | undefined => {
  const old = before(reading);
  const shown = old && claimShown(reading, old);
  if (shown || isElsewhere(reading)) return shown;
  const next = old && claimNext(reading, old);
  if (next) return next;
  if (namesOwnBalm(reading)) return undefined;
  const board = boardOf(reading.items);
  const read = readWishes(board, reading, old?.vegan === true);
  if (isWrittenOut(board.items.filter((item, at) => item.letter === 'i' || !board.taken[at])))
    return undefined;
  const anew = fresh(reading, board, read);
  if (anew || !old) return anew;
  if (isPlaced(board, followWords).blocked) return undefined;
  return read.trouble ? refuse(read.trouble, 2) : continued(reading, old, read);
};
