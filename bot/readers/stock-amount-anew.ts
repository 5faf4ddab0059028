import type { Reading } from '../reading.ts';
import { readBench } from './bench-reading.ts';
import { asksOrPlans, withoutCorrect } from './bench-text.ts';
import { isGroupNumber } from './group-number.ts';
import type { Request } from './instead.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount } from './stock-amount.ts';
import { isWhatIs } from './stock-told.ts';

const mostTokens = 34;

/** That something told before was otherwise. */
const rights =
  /\b(?:sorry|apolog\w+|wrong(?:ly)?|mistake\w*|mistaken|error|correct(?:ion|ed)?|should (?:be|have been|read|say)|meant|the (?:right )?amount (?:was|is)|oops|whoops|slip|typo|confess|misread|miscounted|actually|in fact|really|no(?=,)|not|only)\b/i;
/** Something new is told, and nothing put right. */
const tellsNew =
  /\b(?:bought|another|also|more|again (?:today|used|took)|new|and then|later|arrived|delivered|opened|poured|now (?:i|we)|today (?:i|we)|warn\w*|below|under|left|remain\w*|still|how|what|which)\b/i;
const denied =
  /\b(?:not|instead of|rather than|wrote|said|noted|put(?: down)?|typed|told you|entered|was) (?:(?:the|only|just|down|it was|it as) )?$/i;

const isOther = (item: Item, text: string): boolean =>
  /[RMctn%]/.test(item.letter) && !isGroupNumber(item, text);

/** The one amount that is told and not denied. */
const amountSaid = ({ items, text }: Reading): Item | undefined => {
  const amounts = items.filter(isAmount);
  const said = amounts.filter(({ from }) => !denied.test(text.slice(Math.max(0, from - 24), from)));
  const [amount, second] = said.length === 0 && amounts.length === 1 ? amounts : said;
  if (!amount || second) return undefined;
  const isThere = amounts.length === 1 && isWhatIs(amount, text) && !/\bonly\b/i.test(text);
  return isThere ? undefined : amount;
};

const isPutRight = (text: string): boolean =>
  !text.includes('?') &&
  rights.test(text) &&
  !tellsNew.test(text.replace(/\b(?:a (?:bit|little) more|more like|more than that)\b/i, '')) &&
  !asksOrPlans(text.replace(/\bmust confess\b/i, ''));

/**
 * "I must confess to a mistake: it was only forty grams", "that was not the mice, and it was only 25 g": one amount,
 * a word that puts right, and no other thing than what was told of before. In grams; undefined where it may be otherwise.
 */
export const amountPutRight = (reading: Reading, last: Request): number | undefined => {
  const { rest, lots, days } = readBench(reading);
  if (reading.tokens.length > mostTokens || lots.length + days.length > 0) return undefined;
  if (!isPutRight(withoutCorrect(rest.text))) return undefined;
  const ingredient = typeof last.ingredient === 'string' ? last.ingredient : '';
  const isElse = rest.items.some(
    (item) =>
      isOther(item, rest.text) ||
      (item.letter === 'i' && !item.generic && !item.ingredients?.includes(ingredient)),
  );
  const amount = isElse ? undefined : amountSaid(rest);
  const grams = amount && gramsRead(amount, ingredient, reading.settings.region).grams;
  return grams !== undefined && grams !== last.grams ? grams : undefined;
};
