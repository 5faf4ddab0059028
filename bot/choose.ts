import { defined } from '../core/defined.ts';
import { askedAnyhow, askedRather, isPointed } from './choose-asked.ts';
import { toldInstead, writer } from './choose-told.ts';
import { chooseWhole } from './choose-whole.ts';
import { type Chosen, withAssumed } from './chosen.ts';
import { gathered } from './gathered/gather.ts';
import { likelyGoingOn } from './likeness/likely.ts';
import { echo } from './readers/ask-back.ts';
import { isOfOthers } from './readers/beside.ts';
import { isCalledOff } from './readers/called-off.ts';
import { type Gist, gistsOf, sentencesAlone } from './readers/gist.ts';
import { askedOfSpoken } from './readers/of-spoken-lot.ts';
import { pointedNames } from './readers/pointed-name.ts';
import { spokenOf } from './readers/spoken-of.ts';
import type { Veils } from './readers/veiled-names.ts';
import type { Reading } from './reading.ts';
import { isOpen, isPuzzle, isRequest, sureAlone, surest, writes } from './surest.ts';
import { writtenInTurn } from './told/written.ts';
import type { Topic } from './topic.ts';
import { readAgain } from './understand.ts';
import { unveiled } from './unveiled.ts';

/** "When do we pour" after a workshop is about that, whatever it would mean by itself. */
const goingOn = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const plain = likelyGoingOn(pointedNames(reading).reading);
  const chosen = plain && surest(plain, topics);
  return isRequest(chosen) && chosen.topic.name === reading.last?.topic ? chosen : undefined;
};

/** One more way to look at a message, and how sure what is read there has to be. */
interface Look {
  readonly assumed: string;
  readonly read: () => Chosen | undefined;
}

/** What is read off part of a message, or off a plain form that somebody else would have said, never writes. */
const sure = (chosen: Chosen | undefined, least: number): Chosen | undefined =>
  isRequest(chosen) && chosen.claim.weight >= least && !writes(chosen) ? chosen : undefined;

const meantBy = ({ reading, asked }: Gist, topics: readonly Topic[]): Chosen | undefined => {
  const chosen = chooseWhole(reading, topics);
  // "I have eczema, what can I do?" asks for no list of topics.
  if (asked && chosen?.topic.name === 'help') return undefined;
  return asked ? sure(chosen, 0) : chosen;
};

/** "No, the US one": what is put right, after an answer. */
const rightened =
  /^\W*(?:no|nope|nah|sorry|wait)(?:\s*[,.;:!-]+\s*|\s+)(?:(?:sorry|wait|i)\W+)*(?:(?:i )?(?:meant|mean|said) )?(?=\S)/i;
const putRight = (named: Reading): Reading | undefined => {
  const said = named.last ? rightened.exec(named.text) : null;
  return said && /[,.;:!-]|\bmean/.test(said[0])
    ? readAgain(named.text.slice(said[0].length), named)
    : undefined;
};

/** Plain forms that the things in a message are put to. */
function* gatheredLooks(named: Reading, topics: readonly Topic[]): Generator<Look> {
  for (const { reading, plain, after } of gathered(named)) {
    const read = (): Chosen | undefined => {
      const chosen = sure(surest(reading, topics), 0);
      return after === undefined || chosen?.topic.name === after ? chosen : undefined;
    };
    yield { assumed: `I read that as "${echo(plain)}".`, read };
  }
}

/** By the things in a message; where it asks of what was spoken of before, with that among them. */
function* looksByThings(named: Reading, topics: readonly Topic[]): Generator<Look> {
  yield* gatheredLooks(named, topics);
  for (const { reading, assumed } of askedOfSpoken(named)) {
    for (const { read } of gatheredLooks(reading, topics)) yield { assumed, read };
  }
}

/** Reminders and undoing are written of words alone, in which a slip may be put right. */
const inWordsAlone = new Set(['expiry', 'book']);

const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}']+/gu) ?? [];

/** "We replaced the wax last week" is no slip of "replace". */
const changesTense = ({ text, corrected }: Reading): boolean => {
  const plain = wordsIn(corrected);
  return wordsIn(text).some((word, at) => {
    const other = plain[at] ?? '';
    return word !== other && word.startsWith(other) && /^(?:e?d|s|ing)$/.test(word.slice(other.length));
  });
};

/** "Stokc", "remind us dayly at 8": with the slips in its carrying words put right. */
function* spelledLook(named: Reading, whole: Chosen | undefined, topics: readonly Topic[]): Generator<Look> {
  if (named.corrected === named.text || !isOpen(whole) || changesTense(named)) return;
  const spelled = readAgain(named.corrected, named);
  const read = (): Chosen | undefined => {
    const chosen = chooseWhole(spelled, topics);
    return isRequest(chosen) && inWordsAlone.has(chosen.topic.name) ? chosen : sure(chosen, sureAlone);
  };
  yield { assumed: `I read that as "${echo(spelled.text)}".`, read };
}

/** Ways to look at a message that nobody understood as a whole, one after the other. */
function* looksAt(named: Reading, whole: Chosen | undefined, topics: readonly Topic[]): Generator<Look> {
  if (isCalledOff(named.text)) return;
  yield* spelledLook(named, whole, topics);
  for (const gist of gistsOf(named)) {
    yield { assumed: passedOver(gist), read: () => meantBy(gist, topics) };
  }
  if (isPuzzle(whole)) {
    for (const { reading, assumed } of spokenOf(named)) {
      yield { assumed, read: () => sure(chooseWhole(reading, topics), sureAlone) };
    }
  }
  if (isOpen(whole)) yield* looksByThings(named, topics);
  const right = putRight(named);
  if (right) {
    const read = (): Chosen | undefined => {
      const chosen = sure(chooseWhole(right, topics), 0);
      return chosen?.topic.name === named.last?.topic ? chosen : undefined;
    };
    yield { assumed: 'I took that to put right what was said before.', read };
  }
  if (isPuzzle(whole)) {
    for (const alone of sentencesAlone(named)) {
      yield { assumed: passedOver(alone), read: () => sure(chooseWhole(alone.reading, topics), sureAlone) };
    }
  }
}

/** Topics that take a name alone for a question, and words by which it is asked what the book has of it. */
const byName = new Set(['recipe', 'ingredient', 'substitute', 'melt']);
const ofBook =
  /\b(?:status|situation|amount\W*$|levels?|supply|possess|batches|mark|in the house|left|is there|do we (?:have|own)|have we|we (?:still )?(?:have|own)|(?:when|how often)\b.{0,24}\b(?:made|make|pour(?:ed)?))\b/i;

/** "Any Quarry balm in the house?" asks what the bench book has of it, and not for the recipe. */
const askedOfBook = (whole: Chosen, reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  if (!byName.has(whole.topic.name) || !ofBook.test(reading.text)) return undefined;
  if (reading.bench.batches.size === 0 && reading.bench.lots.size === 0) return undefined;
  for (const found of gathered(pointedNames(reading).reading)) {
    const chosen = sure(surest(found.reading, topics), sureAlone);
    if (chosen?.topic.name === 'batch' || chosen?.topic.name === 'stock')
      return withAssumed(chosen, [`I read that as "${echo(found.plain)}".`]);
  }
  return undefined;
};

const passedOver = (gist: { readonly passedOver: string }): string => `I passed over "${gist.passedOver}".`;

/** What part of a message, or another look at it, comes to. */
const byLooks = (
  reading: Reading,
  whole: Chosen | undefined,
  topics: readonly Topic[],
): Chosen | undefined => {
  for (const { read, assumed } of looksAt(pointedNames(reading).reading, whole, topics)) {
    const part = read();
    if (isRequest(part)) return withAssumed(part, [assumed]);
  }
  return undefined;
};

/**
 * What a message means as a whole; else what the sentences of it mean that hold something to work with, what "it" stands
 * for in them, or what the things in it are put to. What was taken for granted on the way is told with the answer.
 */
const chosenOf = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  if (reading.last && isOfOthers(reading)) return undefined;
  const inTurn = writtenInTurn(reading, (plain) => writer(plain, topics));
  if (inTurn) return inTurn;
  const whole = goingOn(reading, topics) ?? chooseWhole(reading, topics);
  const told = toldInstead(whole, reading, topics);
  if (told) return told;
  if (isRequest(whole))
    return askedRather(whole, reading, topics) ?? askedOfBook(whole, reading, topics) ?? whole;
  const asked = askedAnyhow(reading, topics);
  const isAsked = asked && (asked.asked.subject.pointed || isPointed(asked.asked, reading));
  return isAsked ? asked : (byLooks(reading, whole, topics) ?? asked ?? whole);
};

/** What a message means, with the names of recipes as they were saved. */
export const choose = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const chosen = chosenOf(reading, topics);
  return chosen && withNames(chosen, reading.recipes.veils);
};

const withNames = (chosen: Chosen, veils: Veils): Chosen => ({
  ...chosen,
  claim: unveiled(chosen.claim, veils),
  ...defined({ also: chosen.also?.map((each) => withNames(each, veils)) }),
});
