import type { Item } from './item.ts';
import { letters } from './lexicon.ts';

/** A sentence or line of a message. */
interface Sentence {
  readonly items: readonly Item[];
  readonly question: boolean;
}

/** Of the pot, and no past: "what bath temperature, mint lip balm" asks. */
const pot = new Set('melt melts melting melted heat hot cool cooling bath hard soft firm'.split(' '));

/** "Mrs. Dale": a stop that ends no sentence. */
const shortened = /^(?:mrs?|ms|dr|st|rev|prof)$/;
const ends = new Set(['.', '!', '?', '\n']);

const sentencesOf = (items: readonly Item[]): Sentence[] => {
  const list: Sentence[] = [];
  let current: Item[] = [];
  for (const item of items) {
    current.push(item);
    // "When you have a mo, could you …": a lead-in is talk of its own; later clauses belong to the request.
    const leadIn =
      item.letter === ',' &&
      current.some((each) => each.letter === 'Z' && !pot.has(each.word)) &&
      current.every((each) => /[wZ,yAFTI]/.test(each.letter));
    const ofTitle = item.letter === '.' && shortened.test(current.at(-2)?.word ?? '');
    if ((!ends.has(item.letter) || ofTitle) && !leadIn) continue;
    list.push({ items: current, question: item.letter === '?' });
    current = [];
  }
  if (current.length > 0) list.push({ items: current, question: false });
  return list;
};

/** Names, amounts, containers and the like: what requests are made of. A bare number alone is not. */
const substance = /[RigvdptrcMLQHSN%]/;

/** "Oils:" over a list names no ingredient. */
const isHeading = (item: Item): boolean => item.generic === true;

/**
 * "In grams please." and "How many grams is that?" ask for a unit; the "C" of "Phase C" and a column called "Percent" do
 * not.
 */
const asksUnit = (items: readonly Item[]): boolean =>
  items.every((item) => item.letter === 'u') ||
  items.some((item, at) => {
    const before = items[at - 1];
    return item.letter === 'u' && (/[TI]/.test(before?.letter ?? '') || before?.word === 'many');
  });

/** "It was about 50 degrees in there": a temperature, though no scale is named. */
const hasDegrees = (items: readonly Item[]): boolean =>
  items.some((item, at) => item.letter === 'n' && /^degrees?$/.test(items[at + 1]?.word ?? ''));

/** Whether a word stands in the name of a recipe. */
type Known = (word: string) => boolean;

/** "Will the hand balm hold up?": a recipe by part of its name. */
const pointsAt = (items: readonly Item[], isNamed: Known): boolean =>
  items.some(
    (item, at) => item.letter === letters.unknown && items[at + 1]?.letter === 'B' && isNamed(item.word),
  );

const carries = ({ items }: Sentence, isNamed: Known): boolean =>
  asksUnit(items) ||
  hasDegrees(items) ||
  items.some((item) => substance.test(item.letter) && !isHeading(item)) ||
  pointsAt(items, isNamed);

/** Talk may tell of the past and of the pot; it may not ask for anything else, and no question is passed over. */
const isTalk = (sentence: Sentence, expected: ReadonlySet<string>, isNamed: Known): boolean => {
  if (carries(sentence, isNamed)) return false;
  return sentence.items.every(
    (item) =>
      item.letter !== letters.danger &&
      !expected.has(item.word) &&
      !(sentence.question && item.letter === letters.past),
  );
};

/** A sentence with the words before its first item, which are small talk to the reader. */
const lineOf = ({ items }: Sentence, text: string): string => {
  const from = items[0]?.from ?? 0;
  const lead = /[^.!?\n]{0,40}$/.exec(text.slice(Math.max(0, from - 40), from))?.[0] ?? '';
  return lead + text.slice(from, items.at(-1)?.to ?? from);
};

export interface Parted {
  readonly items: readonly Item[];
  /** Sentences with a number or a question in them that were passed over: worth saying so. */
  readonly aside: readonly string[];
}

/** "We are 15.": read where it matters, and no news to whoever said it. */
const headcount =
  /^\W*(?:we|there)\s?(?:'re|are|will be|'ll be)\s+[\w\s-]{1,30}\W*$|\bhot ?plates?\b|\bjugs?\b|\b(?:group|class|party) of\b/i;

const isNotable = ({ items, question }: Sentence): boolean =>
  items.some((item) => item.letter === 'n') ||
  (question && items.filter((item) => item.letter === 'w').length > 1);

const plain = ({ items }: Sentence): readonly Item[] =>
  items.filter(({ letter }) => !/[\n,;:.)(\-=o]/.test(letter));

/** "Beeswax 22": a name and a bare number. */
const isBareLine = (sentence: Sentence | undefined): boolean =>
  sentence !== undefined &&
  /^(?:in|ni)$/.test(
    plain(sentence)
      .map(({ letter }) => letter)
      .join(''),
  );

/** "Goop 8" next to "beeswax 22" is a line of a list too, whatever it is. */
const isUnknownLine = (sentences: readonly Sentence[], at: number): boolean => {
  const sentence = sentences[at];
  return (
    sentence !== undefined &&
    /^(?:w{1,4}n|nw{1,4})$/.test(
      plain(sentence)
        .map(({ letter }) => letter)
        .join(''),
    ) &&
    (isBareLine(sentences[at - 1]) || isBareLine(sentences[at + 1]))
  );
};

/**
 * Parts the request from the talk around it: whole sentences and heading lines without a name, an amount or a
 * container, in a message that has such things elsewhere.
 * @param cues words that ask for something by themselves; a sentence with one of them is no talk.
 * @param isNamed whether a word stands in the name of a saved recipe.
 */
export const partTalk = (
  items: readonly Item[],
  cues: ReadonlySet<string>,
  text: string,
  isNamed: Known,
): Parted => {
  const sentences = sentencesOf(items);
  if (sentences.length < 2 || !sentences.some((sentence) => carries(sentence, isNamed)))
    return { items, aside: [] };
  const talk = sentences.filter(
    (sentence, at) => isTalk(sentence, cues, isNamed) && !isUnknownLine(sentences, at),
  );
  if (talk.length === 0) return { items, aside: [] };
  const kept = sentences.filter((sentence) => !talk.includes(sentence)).flatMap((sentence) => sentence.items);
  const aside = talk
    .filter((sentence) => isNotable(sentence) && !headcount.test(lineOf(sentence, text)))
    .map((sentence) => text.slice(sentence.items[0]?.from ?? 0, sentence.items.at(-1)?.to ?? 0).trim());
  return { items: kept, aside };
};
