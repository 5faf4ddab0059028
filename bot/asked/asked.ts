import { letters } from '../readers/lexicon.ts';
import { spokenLot } from '../readers/of-spoken-lot.ts';
import type { Reading } from '../reading.ts';
import { facets, type Wish } from './facets.ts';
import { reminderWish } from './reminder.ts';
import { type Subject, subjectsOf } from './subject.ts';

/** A question of the bench book, read by what it is about and what it asks of that. */
export interface Asked extends Wish {
  readonly subject: Subject;
  readonly sure: boolean;
}

/** A longer message is a letter, in which much may be asked. */
const mostCharacters = 400;

const lead =
  /^\W*(?:(?:and|n|so|but|ok|okay|right|now|then|also|well|please|pls|hi|hey|hello|morning|good morning|sorry|quick one|quick question|by the way|btw|just|pipkin)\b\W*)*/i;
const asking =
  /^(?:who|whom|whose|who's|whos|what|what's|whats|which|where|where's|wheres|where'd|when|when's|why|how|how's|hows|is|are|was|were|do(?! not\b)|does|did|has|have|any|anything|until|till|to whom|to which|from wh\w+|in wh\w+|of wh\w+|by wh\w+|for wh\w+|on wh\w+|at wh\w+|with wh\w+|if|can you|could you|would you|will you|show|list|state|name (?:the|all|every|each|me)|tell|give me|say me|let me know|print|remind me|check|look up|i (?:need|want|would like|'d like|have) to (?:know|see|find|tell)|i'd like to (?:know|see)|i (?:wonder|was wondering|am wondering|forgot|forget|can't remember|cannot remember))\b/i;
/** Advice, plans and sums are for others. */
const elsewhere =
  /\b(?:(?:should|shall) (?:i|we)|would it|what if|if we|would have|instead of|replace|substitute|swap|recipe for|melt(?:s|ing)?|labels?|stickers?|scale|design|workshop|margin|profit|charge|price (?:for|per)|undo|export|correct)\b/i;

const asksIn = (text: string): string =>
  text
    .split(/(?<=[.!?;])\s+|\s-\s|:\s+/)
    .filter((each) => asking.test(each.replace(lead, '')) || each.trim().endsWith('?'))
    .join(' ');

/** Amounts, and counts of containers, are of what is told or planned. */
const isCounted = ({ items }: Reading): boolean =>
  items.some(
    ({ letter }, at) =>
      /[gv%tdp]/.test(letter) || (letter === letters.number && items[at + 1]?.letter === letters.container),
  );

/** "And the head teacher?", "n the wax?": the same is asked of another thing as was asked before. */
const goesOn = /^\W*(?:and|n|or|what about|how about|what of|ok and|but)\b/i;
const nameAlone = /^\W*(?:(?:the|our|my) )?[\p{L}\d-]+(?: [\p{L}\d-]+)?\?\W*$/iu;
const mostTokensOn = 7;
const sameAs: Readonly<Record<string, string>> = {
  stock: 'how much is left',
  batch: 'how many are left',
  expiry: 'until when is it good',
  trace: 'where are they',
};
const questionIn = (reading: Reading): string => {
  const { text, tokens, items, last } = reading;
  if (elsewhere.test(text)) return '';
  const question = asksIn(text);
  const same = sameAs[last?.topic ?? ''];
  const isShort = tokens.length <= mostTokensOn && !items.some(({ letter }) => letter === letters.number);
  const isNext = same !== undefined && isShort && (goesOn.test(text) || nameAlone.test(text));
  return isNext && !facets.some(({ cue }) => cue.test(question)) ? same : question;
};

const askedOf = (subject: Subject, question: string, reading: Reading): Asked | undefined => {
  if (subject.kind !== 'none' && isCounted(reading)) return undefined;
  const isOfTime = subject.kind === 'none' && spokenLot(reading) !== undefined;
  for (const { cue, never, sure, of } of facets) {
    const wish =
      cue.test(question) && !never?.test(question) ? of[subject.kind]?.(subject, reading) : undefined;
    if (wish && (!isOfTime || sure?.test(question)))
      return { ...wish, subject, sure: sure?.test(question) ?? false };
  }
  return undefined;
};

/**
 * What is asked of the bench book in whatever words: by the one thing the question is about and the first facet that its
 * words name. Undefined for what is no question, or not of the book.
 */
export const askedOfBench = (reading: Reading): Asked | undefined => {
  const { text, bench } = reading;
  const reminder = reminderWish(reading);
  if (reminder) return { ...reminder, subject: { kind: 'none', name: '', assumed: [] }, sure: true };
  if (bench.lots.size + bench.batches.size === 0 || text.length > mostCharacters) return undefined;
  const question = questionIn(reading);
  if (question === '') return undefined;
  const found = subjectsOf(reading).map((subject) => askedOf(subject, question, reading));
  return found.find((each) => each !== undefined);
};
