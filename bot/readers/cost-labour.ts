import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { currencyTrouble, type MoneyRead, moneyAt } from './cost-money.ts';
import { aroundMoney, labourCues, labourHow, lastCost } from './cost-words.ts';
import { readDuration } from './duration.ts';
import type { Item } from './item.ts';
import { leftover } from './leftover.ts';
import { boardOf } from './target.ts';

/** Working hours for one batch, with the items that say so. */
export interface Hours {
  readonly hours?: number;
  readonly items: readonly Item[];
}

/** Hours are kept as they were said; a third of one has no end. */
const inHours = (minutes: number): number => Number((minutes / 60).toFixed(4));

/** "Three hours to drive there", "two hours on the train": nobody is paid for those. */
const isUnpaid =
  /^(?: ?ago\b| late\b|(?: it took(?: us| me)?)?(?: just| only)?(?: to| of| in| on| by)?(?: the| a| my| our)? ?(?:drive|driving|driv\w*|train|bus|road|motorway|car|traffic|travel\w*|journey|trip|flight|queue|queuing|waiting|wait|walk\w*|sleep\w*|park\w*|get (?:here|there|home)|find (?:it|the))\b)/i;

/** True for a message of such hours: "it took us 3 hours to drive there". */
export const tellsOfTime = ({ tokens, text }: Reading): boolean => {
  const duration = readDuration(tokens);
  return duration !== undefined && isUnpaid.test(text.slice(duration.to));
};

/** How long the work takes, with those of `items` that say so. */
export const takeHours = ({ tokens, text }: Reading, items: readonly Item[]): Hours => {
  const duration = readDuration(tokens);
  if (!duration || isUnpaid.test(text.slice(duration.to))) return { items: [] };
  const { from, to, minutes } = duration;
  return { hours: inHours(minutes), items: items.filter((item) => item.from < to && item.to > from) };
};

/** "Two hours work at 15", after a cost. */
const hoursAt = /\b(?:hours?|hrs?)'?(?: of)?(?: (?:work|labou?r|time|my time))? at [€£$]?\s?\d/i;

/** True for a message about work: its rate or its hours. */
export const hasWork = (reading: Reading): boolean =>
  (lastCost(reading)?.batch !== undefined && hoursAt.test(reading.text)) ||
  anyWord(reading, labourCues) ||
  /\b(?:an|per) hour\b|\bhourly\b|\/\s*h(?:r|our)?\b/i.test(reading.text);

const rateIn = (items: readonly Item[], currency: string, taken: readonly Item[]): MoneyRead | undefined =>
  items.flatMap((item, at) => (taken.includes(item) ? [] : (moneyAt(items, at, currency) ?? [])))[0];

const noLabour =
  /\b(?:no|without|zero|stop|drop|clear|don't|dont|not|leave|ignore|skip)\b.*\blabou?r\b|\blabou?r\b.*\b(?:none|off|nothing|free|out)\b/i;

const isPlain = (reading: Reading, used: readonly Item[]): boolean => {
  const rest = reading.items.filter(
    (item) => !used.includes(item) && item.letter !== 'N' && !/^[€$£/]$/.test(item.word),
  );
  return leftover(boardOf(rest), aroundMoney, false).blocking.length === 0;
};

/** Hours alone: counted for the batch that was asked about, at the rate that is set. */
const hoursOnly = (reading: Reading, hours: number | undefined): Claim => {
  const before = lastCost(reading);
  const counted = hours !== undefined && before?.batch !== undefined;
  return counted ? claim({ ...before, action: 'cost', hours }, 2.6) : refuse(labourHow, 1.8);
};

/** A rate and hours said with the batch they are for, with the items that say so. */
export interface WorkRead {
  readonly rate?: string;
  readonly hours?: number;
  readonly items: readonly Item[];
}

/** "… with labour 15 an hour, 2 hours": work said beside a batch. */
export const takeWork = (reading: Reading): WorkRead | undefined => {
  if (!hasWork(reading) || noLabour.test(reading.text)) return undefined;
  const { hours, items } = takeHours(reading, reading.items);
  const around = reading.items.findIndex(
    (item) => labourCues.includes(item.word) || /^(?:h|hrs?|hours?)$/.test(item.word),
  );
  const near = reading.items.slice(Math.max(0, around - 2), around + 4);
  const money = rateIn(near, reading.settings.currency, items);
  if (money?.price === undefined || money.trouble || currencyTrouble(reading)) return undefined;
  return { rate: money.price, items: [...items, ...money.items], ...defined({ hours }) };
};

/** "labour 15 an hour, 2 hours": the rate is kept, the hours too; after a cost it is counted at once. */
export const claimLabour = (reading: Reading): Claim | undefined => {
  const before = lastCost(reading);
  const batch =
    before?.batch === undefined ? {} : defined({ batch: before.batch, container: before.container });
  if (noLabour.test(reading.text)) {
    return isPlain(reading, []) ? claim({ action: 'labour', rate: null, ...batch }, 2.8) : undefined;
  }
  const { hours, items } = takeHours(reading, reading.items);
  const money = rateIn(reading.items, reading.settings.currency, items);
  if (!isPlain(reading, [...items, ...(money?.items ?? [])])) return undefined;
  const trouble = currencyTrouble(reading) ?? money?.trouble;
  if (trouble) return refuse(trouble, 2.7);
  if (money?.price === undefined) return hoursOnly(reading, hours);
  return claim({ action: 'labour', rate: money.price, ...defined({ hours }), ...batch }, 2.8);
};
