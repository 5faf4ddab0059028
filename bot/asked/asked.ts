import { letters } from '../readers/lexicon.ts';
import { spokenLot } from '../readers/of-spoken-lot.ts';
import type { Reading } from '../reading.ts';
import type { Facet, Wish } from './facet.ts';
import { facets } from './facets.ts';
import { otherOf, type Subject, subjectsOf } from './subject.ts';

/** A question of the bench book, read by what it is about and what it asks of that. */
export interface Asked extends Wish {
  readonly subject: Subject;
  readonly sure: boolean;
  /** Asked in words that may ask for something else. */
  readonly faint: boolean;
  /** Asked of the other of two, where the first was spoken of. */
  readonly other?: true;
}

/** A longer message is a letter, in which much may be asked. */
const mostCharacters = 400;

const lead =
  /^\W*(?:(?:and|n|so|but|ok|okay|right|now|then|also|well|please|pls|hi|hey|hello|morning|good morning|sorry|quick one|quick question|by the way|btw|just|wait|hmm|kindly|oh|um|er|pipkin)\b\W*)*/i;
const listOf = (words: string): string => words.trim().split(/\s+/).join('|');
const whWords =
  "who whom whose who's whos what what's whats which where where's wheres where'd when when's why how how's hows";
const verbs = 'is are was were did does has have any anything until till if';
const orders =
  'show list state tell give print check identify determine display find prepare make trace read';
/** What is looked up, where nothing but that is said: "composition of 26-KUFE". */
const lookedUp = `balance quantity number composition dates? items? total status details? extract overview summary record data info use-by contents? ingredients
  materials recipients receivers buyers holders entries whereabouts stock level age page reactions history expiry makeup origin everything all`;
const asker = '(?:somebody|someone|an? \\w+|the \\w+)';
const wonders = '(?:asks?|asking|asked|wants? to know|needs? to know|wonders?|wondering)';
/** How a question begins. */
const asking = new RegExp(
  `^(?:${[
    `[^.?!]{0,60}\\b${wonders}\\b (?:me |us )?(?:about |to know )?(?:(?:on|in|from|for|by|until|to) )?(?:${listOf('what which who whose where how when if whether')})`,
    listOf(whWords),
    listOf(verbs),
    'do(?! not\\b)',
    'to whom|to which',
    `(?:${listOf('from into in of by for on at with')}) wh\\w+`,
    `${asker} (?:wants|needs|asks for|asked for)`,
    '(?:can|could|would|will) you|may i',
    listOf(orders),
    "[^.?!]{0,60}\\b(?:should|would|'d) like to (?:see|know|have)",
    'name (?:the|all|every|each|me)|say me|let (?:me|us) (?:know|see|have)|remind me|report (?:the|on)|look up|call back',
    "i (?:need|want|would like|should like|'d like|have) to (?:know|see|find|tell)|i'd like to (?:know|see)|i need|we need",
    "i (?:wonder|was wondering|am wondering|forgot|forget|can't remember|cannot remember)",
    `(?:the )?(?:(?:forward|backward|full|complete|whole|current|remaining) )?(?:${listOf(lookedUp)})`,
    '(?:the )?best before (?:of|to|from|for|on|in)',
  ].join('|')})\\b`,
  'i',
);
/** Advice, plans and sums are for others. */
const elsewhere =
  /\b(?:(?:should|shall) (?:i|we)|would it|what if|if we|would have|instead of|replace|substitute|swap|recipe for|melt(?:s|ing)?|labels?|stickers?|scale|design|workshop|where (?:can|could|do|should) (?:i|we)|margin|profit|charge|price (?:for|per)|undo|export|correct|(?:log|file|record|note|enter|register) (?:it|this|that))\b/i;

const coded = '(?:\\d\\d-[a-z]{4,6}|[a-z]{1,6}-?\\d{1,6})';
/** "LN4 and KB2: dates please". */
const codesAhead = new RegExp(
  `^${coded}(?:(?:,| and| &|,? or) ${coded}){0,9}\\s*(?::| -|,)\\s+(?!(?:is|are|was|were|has|have|all|everything)\\b)`,
  'i',
);

/** What asks in a message; a part that counts containers is the reason of a part that does not. */
const asksIn = (text: string): string => {
  const parts = text
    .split(/(?<=[.!?;])\s+|(?<!\d)\s-\s|(?<!\d):\s+|,\s+(?=(?:so|and|but)\b)/)
    .filter(
      (each) => asking.test(each.replace(lead, '').replace(codesAhead, '')) || each.trim().endsWith('?'),
    );
  const plain = parts.filter((each) => !counts.test(each));
  return (plain.length > 0 ? plain : parts).join(' ');
};
const counts = /\b\d+ (?:tins|jars|pots|sticks|tubes)\b/i;

/** Amounts, and counts of containers, are of what is told or planned. */
const isCounted = ({ items, text }: Reading, question: string): boolean =>
  items.some(
    ({ letter, from }, at) =>
      /[gv%tdp]/.test(letter) ||
      (letter === letters.number &&
        items[at + 1]?.letter === letters.container &&
        counts.test(question) &&
        !/\bthe $/i.test(text.slice(0, from))),
  );

/** "And the head teacher?", "n the wax?": the same is asked of another thing as was asked before. */
const goesOn = /^\W*(?:and|n|or|what about|how about|what of|ok and|but|same|likewise|ditto)\b/i;
const nameAlone = /^\W*(?:(?:the|our|my) )?[\p{L}\d-]+(?: [\p{L}\d-]+)?\?\W*$/iu;
const mostTokensOn = 7;
const sameAs: Readonly<Record<string, string>> = {
  stock: 'how much is left',
  batch: 'how many are left',
  expiry: 'until when is it good, what expires',
  trace: 'where are they',
};
const politely =
  /\b(?:would|could|can|will) you\b[^,.?!]{0,24}?(?=\b(?:tell|show|say|list|give|find|look|check|name)\b)/gi;
const questionIn = (reading: Reading): string => {
  const { text, tokens, items, last } = reading;
  if (elsewhere.test(text)) return '';
  const question = asksIn(text)
    .replace(politely, ' ')
    .replace(/\bgive (?:me|us)\b/gi, 'show me');
  const same = sameAs[last?.topic ?? ''];
  const isPlain = last?.topic === 'expiry' || !items.some(({ letter }) => letter === letters.number);
  const isShort = tokens.length <= mostTokensOn && isPlain;
  const isNext = same !== undefined && isShort && (goesOn.test(text) || nameAlone.test(text));
  return isNext && !facets.some(({ cue }) => cue.test(question)) ? same : question;
};

/** "What will expire", after one lot was spoken of, is of all of them. */
const ofAll = /\b(?:what|which|anything|everything|whatever|list)\b(?!.*\b(?:it|its|that|this)\b)/i;

/** A lot or batch that is only known from the message before stands against no other reading. */
const isPlainly = ({ kind, pointed }: Subject): boolean => pointed === true || !/^(?:lot|batch)$/.test(kind);

/** What a facet makes of a question, where its words are there. */
const wishOf = ({ cue, never, of }: Facet, subject: Subject, question: string, reading: Reading) =>
  cue.test(question) && !never?.test(question) ? of[subject.kind]?.(subject, reading) : undefined;

const askedOf = (subject: Subject, question: string, reading: Reading): Asked | undefined => {
  const isOfNone = subject.kind === 'none';
  if (!isOfNone && isCounted(reading, question)) return undefined;
  const isOfTime = isOfNone && spokenLot(reading) !== undefined && !ofAll.test(question);
  for (const facet of facets) {
    const wish = wishOf(facet, subject, question, reading);
    const isSure = facet.sure?.test(question) ?? false;
    if (wish && (!isOfTime || isSure))
      return { ...wish, subject, sure: isSure && isPlainly(subject), faint: facet.faint === true };
  }
  return undefined;
};

/**
 * What is asked of the bench book in whatever words: by the one thing the question is about and the first facet that its
 * words name. Undefined for what is no question, or not of the book.
 */
export const askedOfBench = (reading: Reading): Asked | undefined => {
  const { text, bench } = reading;
  if (bench.lots.size + bench.batches.size === 0 || text.length > mostCharacters) return undefined;
  const question = questionIn(reading);
  if (question === '') return undefined;
  const other = otherOf(reading);
  const next = other && askedOf(other, sameAs[reading.last?.topic ?? ''] ?? question, reading);
  if (next) return { ...next, other: true };
  const found = subjectsOf(reading).map((subject) => askedOf(subject, question, reading));
  return found.find((each) => each !== undefined);
};
