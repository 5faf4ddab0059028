import { plusDays, plusMonths } from '../../core/bench/days.ts';
import { defined } from '../../core/defined.ts';
import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { askWhich } from './ask-back.ts';
import { readBench } from './bench-reading.ts';
import { bodyWords, inventingWords, suggestingWords } from './design-words.ts';
import { claimDueAnswer } from './expiry-answers.ts';
import { askingOnly, strangers, textOf } from './expiry-clauses.ts';
import { dueCue, elsewhere, remindCue, showAll } from './expiry-cues.ts';
import { claimKeeps } from './expiry-keeps.ts';
import { type PeriodSaid, periodIn } from './expiry-period.ts';
import { claimRemind } from './expiry-remind.ts';
import { claimRemindAgain, shiftIn, withoutComplaint } from './expiry-remind-again.ts';
import { type About, requestOf } from './expiry-request.ts';
import { answerCues, dueWords, expiryCues, isAround, remindCues } from './expiry-words.ts';
import { lotsIn } from './lots.ts';
import { nextNamed, nextWeight } from './next-named.ts';
import { isOnlyTold, remindWish } from './remind-wish.ts';

/** Longer messages are recipes and stories. */
const longest = 400;

/** The words of the question, without what was read as something: names by their places in the text. */
const bareOf = (reading: Reading, rest: string): string => {
  const names = readBench(reading).rest.items.filter(({ letter }) => letter === 'i' || letter === 'R');
  return names.reduce((text, { from, to }) => text.replace(reading.text.slice(from, to), ' '), rest);
};

/** "Before the honey show": what a day is called after is not asked about. */
const ofEvent =
  /^ (?:shows?|fairs?|f[eê]tes?|festivals?|clubs?|markets?|sales?|days?|evenings?|workshops?|class)\b/i;

const aboutOf = (reading: Reading): { readonly about: About; readonly claim?: Claim } | undefined => {
  const { lots, rest } = readBench(reading);
  const named = rest.items.filter(
    ({ letter, to }) => (letter === 'i' || letter === 'R') && !ofEvent.test(rest.text.slice(to, to + 12)),
  );
  const [name, second] = named.filter(({ generic }) => !generic);
  if (second || lots.length > 10) return undefined;
  const codes = lots.length > 0 ? [...new Set(lots.map(({ code }) => code))] : undefined;
  const [ingredient, ...more] = name?.ingredients ?? [];
  if (name?.letter === 'i' && (ingredient === undefined || more.length > 0 || name.because))
    return { about: {}, claim: refuse(askWhich(name), 2.6) };
  return { about: defined({ lots: codes, ingredient, recipe: name?.recipe }) };
};

/** "What is their best before": of what was spoken of. */
const ofOne = /^\W*(?:so |and )?what(?:'s| is| are)? (?:its|their) (?:best|date|expiry)/i;

/** "What is the best before of 26-KIVO": a figure of the batch, which its own page shows. */
const isOfBatchDate = (reading: Reading, text: string): boolean => {
  const { lots } = readBench(reading);
  return (
    lots.every(({ kind }) => kind === 'batch') &&
    /\b(?:best[- ]before|dates?)\b/i.test(text) &&
    !/\b(?:when|until|till|how|still|expir\w+|goe?s?|past|over|out of|left|ends?)\b/i.test(text)
  );
};

/** "Can we still use the mango butter": of what stands on the shelf. */
const isOfHeld = ({ bench }: Reading, ingredient: string | undefined, text: string): boolean =>
  ingredient !== undefined &&
  /\b(?:still|our|ours|first)\b/i.test(text) &&
  [...bench.lots.values()].some((lot) => lot.ingredient === ingredient);

/** Less sure than the batch's own page of what that tells. */
const sureness = (reading: Reading, { lots, ingredient }: About, text: string): number => {
  if (lots === undefined) return isOfHeld(reading, ingredient, text) ? 3.15 : 3;
  return isOfBatchDate(reading, text) ? 2.95 : 3.1;
};

const isElsewhere = (text: string, named: boolean): boolean =>
  (named && /\bhow long\b.{0,30}\bopen(?:ed)?\b/i.test(text)) ||
  elsewhere.test(named ? text.replace(/\bhow (?:long|many (?:days|weeks|months))\b/gi, ' ') : text) ||
  (!named && ofOne.test(text));

const claimDue = (reading: Reading): Claim | undefined => {
  const whole = textOf(reading);
  const named = readBench(reading).lots.length > 0;
  if (isElsewhere(whole, named)) return undefined;
  if (showAll.test(whole)) return claim({ action: 'due', period: 'soon' }, 3);
  const said = periodIn(reading);
  if (said?.trouble) return refuse(said.trouble, 2.8);
  const found = aboutOf(reading);
  if (!found) return undefined;
  if (found.claim) return found.claim;
  const loose = strangers(bareOf(reading, said?.rest ?? textOf(readBench(reading).rest)), (word) =>
    isAround(dueWords, word),
  );
  if (loose.length > 0) return undefined;
  return claim(requestOf(said, found.about, whole), sureness(reading, found.about, whole));
};

const withoutOld = (reading: Reading): Reading => {
  const text = withoutComplaint(reading.text);
  return text === reading.text || text === '' ? reading : readAgain(text, reading);
};

const following =
  /^\W*(?:and|what about|how about|or|and what about)\b|^\W*(?:(?:ok|then|so|but|anything|now)\b\W*)*(?:next|this|in|by|before|until|within|for|during|between|only|just|over|already|past|overdue|the (?:next|following|coming))\b/i;

/** "And the month after": from the month that was asked about. */
const after = /\b(?:the )?(month|week|year) (?:after(?: that| next)?|afterwards?|following)\b/i;
const nextOf: Readonly<Record<string, string>> = {
  'this-month': 'next-month',
  'this-week': 'next-week',
  'this-year': 'next-year',
};

const afterThat = (
  text: string,
  { period, until }: Readonly<Record<string, unknown>>,
): PeriodSaid | undefined => {
  const match = after.exec(text);
  if (!match) return undefined;
  const rest = text.replace(after, ' ');
  const next = nextOf[String(period)];
  if (next?.endsWith(match[1]?.toLowerCase() ?? '')) return { period: next, rest };
  if (typeof until !== 'string' || !/^month$/i.test(match[1] ?? '')) return undefined;
  const from = plusDays(until, 1);
  return from.endsWith('-01') ? { from, until: plusDays(plusMonths(from, 1), -1), rest } : undefined;
};

const onlyKind =
  /^\W*(?:and |or )?(?:only|just)? ?(?:the )?(batches|tins|balms|lots|ingredients)(?: only| alone)?(?: please)?\W*$/i;

/** "And K12?", after the date of another was asked. */
const nextAbout = (reading: Reading, before: Readonly<Record<string, unknown>>): Claim | undefined => {
  const next = nextNamed(reading);
  if (!next || (before.lots ?? before.recipe ?? before.ingredient) === undefined) return undefined;
  const { lot, recipe, ingredient } = next;
  const about = defined({ lots: lot === undefined ? undefined : [lot], recipe, ingredient });
  return claim({ action: 'due', period: 'all', ...about }, nextWeight);
};

/** "and next month?" after a question of what expires. */
const claimFollowUp = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'expiry' || last.request.action !== 'due') return undefined;
  const next = nextAbout(reading, last.request);
  if (next) return next;
  const only = onlyKind.exec(reading.text)?.[1];
  if (only) {
    const kind = /lots|ingredients/i.test(only) ? 'lot' : 'batch';
    return claim({ ...last.request, kind }, 2.7);
  }
  if (!following.test(reading.text)) return undefined;
  const said = afterThat(textOf(reading), last.request) ?? periodIn(reading);
  if (!said || said.trouble) return undefined;
  const loose = strangers(said.rest, (word) => isAround(dueWords, word));
  if (loose.length > 0) return undefined;
  const { lots, ingredient, recipe, kind } = last.request as About;
  return claim(requestOf(said, defined({ lots, ingredient, recipe, kind }), ''), 2.7);
};

/** "Turn them off", after the reminder was spoken of. */
const claimOffAgain = ({ last, text }: Reading): Claim | undefined => {
  const spoken = last?.topic === 'expiry' && /^(?:set|show)$/.test(String(last.request.action));
  return spoken && turnOff.test(text) ? claim({ action: 'stop' }, 3.5) : undefined;
};
const turnOff =
  /^\W*(?:(?:ok|please|then|so|and|now|no|actually|can you|could you|well)\b\W*)*(?:(?:turn|switch|put) (?:them|it|that|those)(?: all)? off|(?:stop|cancel|end) (?:them|it|that|those)|off)(?:,? (?:again|please|now|then|thanks|thank you))*\W*$/i;

/** "The reminder an hour later, please." */
const claimShift = ({ text, bench }: Reading): Claim | undefined =>
  /\bremind/i.test(text) ? shiftIn(text, bench.reminder) : undefined;

const claimAtOnce = (reading: Reading): Claim | undefined =>
  claimShift(reading) ??
  claimOffAgain(reading) ??
  claimRemindAgain(reading) ??
  remindWish(reading) ??
  claimKeeps(reading);

const cues = [
  ...remindCues,
  ...expiryCues,
  ...answerCues,
  'every',
  'each',
  'warning',
  'alert',
  'still',
  'older',
  'sooner',
  'first',
];

/** "Kokum butter to use up: ideas for a stick?" wants a recipe. */
const asksForIdeas = (reading: Reading): boolean =>
  anyWord(reading, [...inventingWords, ...suggestingWords]) && anyWord(reading, bodyWords);

/** "I've checked MO1, it still smells good. Ask me again about MO1 in a week": the sentence that asks. */
const claimAskedAgain = (reading: Reading): Claim | undefined => {
  const sentences = reading.text.split(/(?<=[.!;])\s+/);
  const asking = sentences.find((each) => /\bask (?:me|us)\b/i.test(each));
  if (asking === undefined || sentences.length < 2 || sentences.length > 4) return undefined;
  const [lot, second] = lotsIn(reading);
  const isOfIt = lot && !second && !asking.includes(lot.code);
  return claimDueAnswer(
    readAgain(isOfIt ? asking.replace(/\b(?:it|them|that)\b/i, lot.code) : asking, reading),
  );
};

/** What a message would mean to best-before dates: what expires, an answer to it, or the daily reminder. */
export const claimExpiry = (reading: Reading): Claim | undefined => {
  if (reading.text.length > longest || asksForIdeas(reading)) return undefined;
  const made = expiryIn(reading);
  const changes = made?.kind === 'request' && /^(?:set|stop)$/.test(String(made.request.action));
  return changes && isOnlyTold(reading.text) ? undefined : made;
};

const expiryIn = (reading: Reading): Claim | undefined => {
  const early = claimAtOnce(reading);
  if (early) return early;
  if (!anyWord(reading, cues)) return claimFollowUp(reading);
  const answered = anyWord(reading, [...remindCues, ...answerCues, 'up', 'ask'])
    ? (claimDueAnswer(reading) ?? claimAskedAgain(reading))
    : undefined;
  if (answered) return answered;
  if (anyWord(reading, remindCues) || remindCue.test(reading.text)) {
    const asking = askingOnly(withoutOld(reading), (each) => remindCue.test(each));
    return asking && claimRemind(textOf(asking).trim());
  }
  if (!dueCue.test(reading.text)) return claimFollowUp(reading);
  const asking = askingOnly(reading, (each) => dueCue.test(each));
  return asking && claimDue(asking);
};
