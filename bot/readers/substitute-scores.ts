import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { askWhich } from './ask-back.ts';
import { leftover } from './leftover.ts';
import { lastChange } from './substitute-last.ts';
import { boardOf } from './target.ts';

const asks =
  /\b(?:why|how come|scores?|points|breakdown|reason|explain|how did you (?:rank|score|get|choose))\b/i;

/** Words around such a question. */
const words = new Set(
  `why how come score scores scored scoring points point parts part breakdown break down explain reason first second third last best top better
  worse higher lower number one two rank ranked ranking chose choose choosing picked pick not and is are it that them those each all show see
  than over above before come comes came out what made make makes up did does get got so high low for in details detail full more
  behind likeness alike list did do said say`.split(/\s+/),
);

/** "Show the scores", "why avocado first?" after candidates: their scores taken apart. */
export const claimScores = (reading: Reading): Claim | undefined => {
  const last = lastChange(reading);
  if (typeof last?.replaces !== 'string' || !asks.test(reading.corrected)) return undefined;
  const board = boardOf(reading.items);
  const names = board.items.filter((item) => item.letter === 'i');
  for (const item of names) board.taken[board.items.indexOf(item)] = true;
  if (leftover(board, words, false).blocking.length > 0) return undefined;
  const named = names.find(({ ingredients = [] }) => !ingredients.includes(String(last.replaces)));
  const { about: _about, ...rest } = last;
  if (!named) return claim({ ...rest, scores: true }, 2.9);
  const [id, ...others] = named.ingredients ?? [];
  if (id === undefined || others.length > 0 || named.because) return refuse(askWhich(named), 2.9);
  return claim({ ...rest, scores: true, about: id }, 2.9);
};
