import { plusDays, plusMonths } from '../../core/bench/days.ts';
import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { findEither } from '../words/find-lot.ts';
import { orList } from './ask-back.ts';
import { readBench } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { askingOnly, strangers, textOf } from './expiry-clauses.ts';
import { answerWords, isAround } from './expiry-words.ts';
import type { LotSaid } from './lots.ts';
import { smallNumbers } from './number.ts';

const again =
  /\b(?:remind|ask|tell|nudge)\b.*\b(?:again|later|until|in (?:a|an|one|\d+)|next|tomorrow|on)\b|\bsnooze\b|^\W*_+\W*later\b|\b(?:leave|park)\b.*\b(?:till|until|for)\b|\bput (?:off|back)\b|\bput\b.*\boff\b|\bpostpone\b|\b(?:again|later|back) (?:in|on|next|tomorrow|to)\b|\b(?:can|may|should|must) wait\b|\bwait (?:until|till|for)\b|\bcome back to\b|\bnot (?:now|yet|today)\b.{0,20}\b(?:ask|remind|tell)\b/i;
const usedUp =
  /\b(?:is|are|was|were|has been|all|it's|now)?\s*(?:used up|all used|all gone|finished(?! with)|used it up)\b|\bused up\b|\buse(?:d)? .{0,40} up\b|\bfinished (?!with)/i;
const done =
  /\b(?:all )?done\b|\bdealt with\b|\bsorted\b|\bticked? off\b|\btick\b|\bcross(?:ed)? off\b|\bfinished with\b/i;

const spanOf =
  /\b(?:in|for|by)\s+(\d{1,3}|an?|one|two|three|four|five|six|a couple of|a few)\s+(days?|weeks?|months?|fortnights?)\b/i;
const words: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  ...smallNumbers,
  'a couple of': 2,
  'a few': 3,
};

/** The day something is put off to: a week unless it is said. */
const untilOf = (text: string, today: string, said: string | undefined): string => {
  if (said !== undefined) return said;
  if (/\btomorrow\b/i.test(text)) return plusDays(today, 1);
  if (/\bnext month\b/i.test(text)) return plusMonths(today, 1);
  const match = spanOf.exec(text);
  if (!match) return plusDays(today, 7);
  const word = (match[1] ?? '').toLowerCase();
  const count = Object.hasOwn(words, word) ? (words[word] ?? 1) : Number(word);
  const unit = (match[2] ?? '').charAt(0).toLowerCase();
  if (unit === 'm') return plusMonths(today, count);
  return plusDays(today, count * (unit === 'w' ? 7 : unit === 'f' ? 14 : 1));
};

const allOfThem =
  /\b(?:all of (?:them|those|it)|them all|those|them|everything|every one|everyone|all (?:the )?(?:lots|batches|items|things))\b/i;

/** "K12 will be used up soon" is no answer. */
const notYet = /\b(?:will be|going to be|nearly|almost|soon|not yet|should be|to be|hope|if)\b/i;

const kindOf = (text: string, dated = false): 'again' | 'used-up' | 'done' | undefined => {
  if (again.test(text) || (dated && /\b(?:remind|ask|tell|nudge|leave|park)\b/i.test(text))) return 'again';
  if (notYet.test(text)) return undefined;
  if (usedUp.test(text)) return 'used-up';
  return done.test(text) ? 'done' : undefined;
};

const unsure = ({ others = [] }: LotSaid): Trouble => ({
  code: 'missing',
  text: `Which one: ${orList(others)}? Say its whole code, for example "done with ${others[0]}".`,
});

const troubleWith = (lots: readonly LotSaid[], reading: Reading): Trouble | undefined => {
  for (const lot of lots) {
    if (lot.others) return unsure(lot);
    const found = findEither(lot.code, reading.bench);
    if ('code' in found) return found;
  }
  return undefined;
};

const past: Trouble = {
  code: 'out-of-range',
  text: 'That day is not ahead. Say for example "ask about K12 again in a week" or "… on 5 January".',
};

/** Nothing else is in the sentence: figures belong to the span, the rest is around an answer. */
const isWhole = (text: string): boolean =>
  strangers(text.replace(spanOf, ' '), (word) => isAround(answerWords, word)).length === 0;

/** A batch that is used up is its own topic's: the book says the same afterwards. */
const weightOf = (answer: 'again' | 'used-up' | 'done', lots: readonly LotSaid[]): number =>
  answer === 'used-up' && lots.some(({ kind }) => kind === 'batch') ? 3.05 : 3.45;

const wishOf = (reading: Reading): Claim | undefined => {
  const { lots, days, rest, today, trouble } = readBench(reading);
  const text = textOf(rest).replaceAll('"', ' ');
  const answer = kindOf(text, days.length > 0);
  // "Everything is done", "they are all gone" may be about anything; only what is due can be put off.
  const all = lots.length === 0 && answer === 'again' && allOfThem.test(text);
  if (answer === undefined || (lots.length === 0 && !all) || !isWhole(text)) return undefined;
  if (answer !== 'again' && asksOrPlans(reading.text)) return undefined;
  const problem = trouble ?? troubleWith(lots, reading);
  if (problem) return refuse(problem, 2.7);
  const until = answer === 'again' ? untilOf(text, today, days[0]?.future) : undefined;
  if (until !== undefined && until <= today) return refuse(past, 2.9);
  const codes = [...new Set(lots.map(({ code }) => code))];
  return claim(
    { action: 'answer', answer, ...(all ? { all } : { lots: codes }), ...defined({ until }) },
    weightOf(answer, lots),
  );
};

/** "done with K12", "KIVO is used up", "remind me of K12 again in a week": an answer to something that is due. */
export const claimDueAnswer = (reading: Reading): Claim | undefined => {
  const asking = askingOnly(
    reading,
    (clause) => kindOf(clause, readBench(reading).days.length > 0) !== undefined,
  );
  return asking && wishOf(asking);
};
