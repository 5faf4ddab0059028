import { type Claim, claim, type Reading } from '../reading.ts';
import { takeItem } from './body.ts';
import { leftover } from './leftover.ts';
import { lastChange } from './substitute-last.ts';
import { type Board, boardOf } from './target.ts';
import { wordSet } from './word-list.ts';

/** "Swap the olive oil in it for sunflower": of what was spoken of. */
export const withoutInIt = (reading: Reading): Reading => {
  if (!reading.last) return reading;
  const items = reading.items.filter(
    ({ letter, to }) =>
      letter !== 'I' || !/^ (?:it|that|there|this one)\b/i.test(reading.text.slice(to, to + 9)),
  );
  return items.length === reading.items.length ? reading : { ...reading, items };
};

const around = wordSet('same for and also do with what how about too as well the one');

/** "Same for the mint one" after a change: the same change of another recipe. */
export const sameChange = (reading: Reading): Claim | undefined => {
  const last = lastChange(reading);
  const [item, second] = reading.items.filter(({ letter }) => letter === 'R');
  const again = /\b(?:same|also|too|and|(?:what|how) about)\b/i.test(reading.text);
  if (!last || !item || second || !again) return undefined;
  const board = boardOf(reading.items);
  takeItem(board, item);
  if (leftover(board, around, false).blocking.length > 0) return undefined;
  const { lines: _lines, ...change } = last;
  return claim({ ...change, recipe: item.recipe }, 2.7);
};

/** "Sugar-free": of what nobody here knows how to leave out, so that it is no talk. */
export const strangeFree = ({ items, taken }: Board): string | undefined => {
  const at = items.findIndex((item, index) => item.word === 'free' && !taken[index]);
  const before = items[at - 1]?.letter === '-' ? at - 2 : at - 1;
  const item = at < 0 || taken[before] ? undefined : items[before];
  return item?.letter === 'w' && item.word !== 'feel' ? item.word : undefined;
};
