import type { Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { echo } from './ask-back.ts';
import { letters } from './lexicon.ts';
import { holds, matters, type Sentence, sentencesIn } from './sentences.ts';

/** More sentences than this are a letter, and what it asks is not looked for. */
const mostSentences = 12;

interface Told extends Sentence {
  /** True when something stands in it that a request may be made of; or a no. */
  readonly carries: boolean;
}

const asking = /\?\s*$|\b(?:(?:can|could|would|will) you|please|pls|kindly)\b/i;
/** "Can you word a Canadian label?" is what the message asks for, whatever else is in it. */
const asksElse = ({ items, text }: Reading, { from, to }: Sentence): boolean =>
  asking.test(text.slice(from, to)) &&
  items.some((item) => item.from >= from && item.to <= to && item.letter === letters.danger);

/** The sentences of a message; none where there is only one, or so many that it is no message. */
const sentencesOf = (reading: Reading): readonly Told[] => {
  const all = sentencesIn(reading.text).map((sentence) => ({
    ...sentence,
    carries:
      matters(reading.text.slice(sentence.from, sentence.to)) ||
      holds(reading, sentence) ||
      asksElse(reading, sentence),
  }));
  return all.length < 2 || all.length > mostSentences ? [] : all;
};

/** A message cut down to some of its sentences, and how the others began. */
export interface Gist {
  readonly reading: Reading;
  readonly passedOver: string;
  /** True for what follows "I wonder whether …": nothing in it was told, so nothing of it is written. */
  readonly asked?: true;
}

/** "Could you tell me, if it is not too much trouble, how many …", "I should be glad if you would remind us …". */
const leadIns: readonly RegExp[] = [
  /\b(?:tell|remind|asks?|asked|asking|know|knows|forgot|forget|forgotten|sure|unsure|wonder(?:ing)?|say|see|check|find out|look(?: up)?|remember|note of|track of|idea)\b[^.!?\n]{0,60}?(?=\b(?:how (?:much|many|long|often)|what|which|where|who|whom|when)\b)/i,
  /\b(?:tell|asks?|asked|asking|knows?|sure|wonder(?:ing)?|say|see|check|look)\b[^.!?\n]{0,40}?\b(?:whether|if)\s+(?=\w)/i,
  /^[^,.:;?!\n]{3,70}[,:;]\s+(?=(?:and |so |but )?(?:what|what's|which|who|whom|where|when|how|is|are|do|did|has|have|any|anything)\b)/i,
  /\b(?:would|could|can|will|kindly|please|to|and|must)\b[^.!?\n,]{0,20}?(?=\b(?:remind|stop|undo|redo|list|show|trace|recall|cancel)\b)/i,
];
const firstWords = (text: string, count: number): string =>
  text.trim().split(/\s+/).slice(0, count).join(' ');

const something = /[RigvdptrcMLHSn%]/;

/** "Whether there is any left": asked the other way round. */
const turned = /^(there|we|i|it|they|you|anyone|anybody) (is|are|was|were|have|has|had|can|do|did)\b/i;

/** The last of them leads to an order, the others to a question. */
const orders = leadIns.at(-1);

/** What a sentence asks after such a lead-in, where that holds nothing itself. */
const innerOf = (reading: Reading): Gist[] =>
  leadIns.flatMap((leadIn) => {
    const match = leadIn.exec(reading.text);
    const from = match ? match.index + match[0].length : 0;
    const led = reading.items.some((item) => item.from < from && something.test(item.letter));
    if (from === 0 || led || /\d/.test(reading.text.slice(0, from))) return [];
    const passedOver = echo(firstWords(reading.text.slice(0, from), 6));
    const said = reading.text.slice(from).replace(turned, '$2 $1');
    const inner = { reading: readAgain(said, reading), passedOver };
    return [leadIn === orders ? inner : { ...inner, asked: true }];
  });

/**
 * The message without sentences that hold nothing a request is made of, shortest first: from the first to the last that
 * do, and that with the one after ("How much would that make?") or before ("Could you plan the workshop?").
 */
export const gistsOf = (reading: Reading): Gist[] => [...stretchesOf(reading), ...innerOf(reading)];

/** The message from one sentence to another. */
const cutDown = (reading: Reading, sentences: readonly Told[], from: number, to: number): Gist => {
  const said = (one: Sentence): string => reading.text.slice(one.from, one.to).trim();
  const gone = [...sentences.slice(0, from), ...sentences.slice(to + 1)];
  return {
    reading: readAgain(
      sentences
        .slice(from, to + 1)
        .map(said)
        .join(' '),
      reading,
    ),
    passedOver: echo(
      gone
        .slice(0, 2)
        .map((one) => firstWords(said(one), 4))
        .join(' …, '),
    ),
  };
};

const stretchesOf = (reading: Reading): Gist[] => {
  const sentences = sentencesOf(reading);
  const first = sentences.findIndex(({ carries }) => carries);
  const last = sentences.findLastIndex(({ carries }) => carries);
  if (first < 0) return [];
  const ranges = [
    [first, last],
    [first, last + 1],
    [first - 1, last],
    [first - 1, last + 1],
  ] as const;
  return ranges
    .filter(([from, to]) => from >= 0 && to < sentences.length && to - from < sentences.length - 1)
    .map(([from, to]) => cutDown(reading, sentences, from, to));
};

/**
 * Each sentence by itself, the last first: for a letter that tells of this and that and asks in one sentence. Only what
 * is sure of itself may be read so, and only where no other sentence says what somebody cannot have.
 */
export const sentencesAlone = (reading: Reading): Gist[] => {
  const sentences = sentencesOf(reading);
  const matter = sentences.filter(({ from, to }) => matters(reading.text.slice(from, to)));
  return sentences
    .flatMap((sentence, at) => {
      const isFree = matter.every((one) => one === sentence);
      return isFree && sentence.carries ? [cutDown(reading, sentences, at, at)] : [];
    })
    .toReversed();
};
