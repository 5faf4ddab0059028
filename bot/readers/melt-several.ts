import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import { leftover } from './leftover.ts';
import { meltWords } from './melt-words.ts';
import { boardOf } from './target.ts';

/** More names than fit a short table are no question of this kind. */
const mostNames = 8;

const aboutMelting = /\bmelt|\bmp\b|\bliquid\b|\bruns?\b/i;

/** Words that set several things side by side. */
const sideBySide = new Set([
  ...meltWords,
  ...'which what first last or versus vs than between difference compare compared comparing sooner earlier later lower higher lowest highest hottest coolest earliest both each one of two three them these those respectively'.split(
    ' ',
  ),
]);

/** "Which melts first, cocoa butter or shea": several ingredients by themselves, no recipe and no amounts. */
export const claimSeveral = (reading: Reading): Claim | undefined => {
  const named = reading.items.filter(({ letter }) => letter === 'i');
  if (named.length < 2 || named.length > mostNames || !aboutMelting.test(reading.text)) return undefined;
  const board = boardOf(reading.items);
  for (const [at, { letter }] of board.items.entries()) if (letter === 'i') board.taken[at] = true;
  if (leftover(board, sideBySide, false).blocking.length > 0) return undefined;
  const unclear = named.find(({ ingredients, because }) => ingredients?.length !== 1 || because);
  if (unclear) return refuse(askWhich(unclear), 2.6);
  const ids = [...new Set(named.flatMap(({ ingredients = [] }) => ingredients))];
  const [ingredient, ...others] = ids;
  return others.length === 0 ? undefined : claim({ ingredient, others }, 2.6);
};
