import type { BookState } from '../core/book.ts';
import type { Trouble } from './answer.ts';
import { gathered } from './gathered/gather.ts';
import type { Command } from './heard.ts';
import { guessesAt, likely, likelyGoingOn } from './likeness/likely.ts';
import { echo, orList } from './readers/ask-back.ts';
import { isOfOthers } from './readers/beside.ts';
import { isCalledOff } from './readers/called-off.ts';
import { type Gist, gistsOf, sentencesAlone } from './readers/gist.ts';
import { letters } from './readers/lexicon.ts';
import { pointedNames } from './readers/pointed-name.ts';
import { namesOwnBalm, secondLook } from './readers/second-look.ts';
import { spokenOf } from './readers/spoken-of.ts';
import { anyWord, type Claim, claim, type Reading } from './reading.ts';
import type { Topic } from './topic.ts';
import { readAgain } from './understand.ts';

export interface Chosen {
  readonly topic: Topic;
  readonly claim: Claim;
}

const mostGuesses = 2;
const example = 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml';

/** Requests come before troubles, unless a topic is surer of its trouble than another of its request. */
const better = (a: Chosen, b: Chosen): Chosen => {
  if (a.claim.weight !== b.claim.weight) return a.claim.weight > b.claim.weight ? a : b;
  return a.claim.kind === 'request' || b.claim.kind === 'trouble' ? a : b;
};

/** The topic that claims a reading with most certainty; the earlier one in the list where two are as sure. */
const surest = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  let best: Chosen | undefined;
  for (const topic of topics) {
    const claimed = topic.read(reading);
    if (claimed) best = best ? better(best, { topic, claim: claimed }) : { topic, claim: claimed };
  }
  return best;
};

const withAssumed = (chosen: Chosen | undefined, more: readonly string[]): Chosen | undefined =>
  chosen?.claim.kind === 'request' && more.length > 0
    ? { ...chosen, claim: { ...chosen.claim, assumed: [...chosen.claim.assumed, ...more] } }
    : chosen;

const isRequest = (chosen: Chosen | undefined): chosen is Chosen => chosen?.claim.kind === 'request';

/** A topic that takes most of a message for a name it does not know has not understood it either. */
const faintest = 0.3;
/** A recipe nobody saved may be a stretch of talk that stands where a name could. */
const faint = 0.9;

/** A trouble that says what is wrong is better than another look: only what nobody could make sense of gets one. */
const isPuzzle = (chosen: Chosen | undefined): boolean =>
  chosen?.claim.kind !== 'request' &&
  (chosen === undefined ||
    chosen.claim.trouble.code === 'not-understood' ||
    chosen.claim.weight <= (chosen.claim.trouble.code === 'unknown-recipe' ? faint : faintest));

/** What a trouble says may come of words that a topic took for names, or of a name that means several things. */
const isOpen = (chosen: Chosen | undefined): boolean =>
  isPuzzle(chosen) ||
  (chosen?.claim.kind === 'trouble' &&
    /^(?:unknown-recipe|unknown-ingredient|missing|bad-quantity)$/.test(chosen.claim.trouble.code));

/** "My sister likes Fernlea hand balm" names a recipe and asks for nothing. */
const asksFor = ({ topic }: Chosen, reading: Reading): boolean =>
  topic.name !== 'recipe' ||
  anyWord(reading, ['show', 'see', 'list', 'recipe', 'recipes', 'lines', 'what', 'whats', "what's"]);

/**
 * How like a known saying a message has to be: where a topic read a request in it, where one understood something, and
 * where nobody did. What would write to the book is never read into a message that is only somewhat like it.
 */
const alikeBeforeRequest = 0.9;
const alikeBeforeTrouble = 0.75;
const alikeAnyway = 0.5;

/** Two words tell nothing that could be written down: "may I write" asks. */
const leastTold = 3;

/** How sure a topic has to be of one sentence of several. */
const sureAlone = 2.6;

const writes = (chosen: Chosen): boolean =>
  chosen.claim.kind === 'request' && chosen.topic.wouldWrite(chosen.claim.request);

const requestOf = ({ claim: said }: Chosen): string | undefined =>
  said.kind === 'request' ? JSON.stringify(said.request) : undefined;

const isSame = (a: Chosen | undefined, b: Chosen | undefined): boolean =>
  isRequest(a) && isRequest(b) && a.topic === b.topic && requestOf(a) === requestOf(b);

/** The plain form of a saying that is like the message, where some topic reads it as a request, and all as likely as one. */
const byLikeness = (reading: Reading, topics: readonly Topic[], leastAlike: number): Chosen | undefined => {
  if (namesOwnBalm(reading)) return undefined;
  const [like, ...others] = likely(reading, leastAlike);
  const chosen = like && surest(like.reading, topics);
  if (!like || !isRequest(chosen)) return undefined;
  const agree = others.every((other) => isSame(surest(other.reading, topics), chosen));
  const isTold = leastAlike >= alikeBeforeTrouble && reading.items.length >= leastTold;
  return agree && (isTold || !writes(chosen)) ? withAssumed(chosen, [like.assumed]) : undefined;
};

/** As sure as a topic can be: its own words, and all accounted for. */
const mostCertain = 3;

/**
 * What a topic is not quite sure of may be a known saying of another request: "are people allergic to shea butter" asks
 * about the butter, not about a recipe. Answers to what was said before are left to the topics.
 */
const overruled = (first: Chosen, reading: Reading, topics: readonly Topic[]): Chosen => {
  if (first.claim.weight >= mostCertain || reading.last) return first;
  const like = byLikeness(reading, topics, alikeBeforeRequest);
  return !like || writes(like) || isSame(like, first) ? first : like;
};

/** "When do we pour" after a workshop is about that, whatever it would mean by itself. */
const goingOn = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const plain = likelyGoingOn(pointedNames(reading).reading);
  const chosen = plain && surest(plain, topics);
  return isRequest(chosen) && chosen.topic.name === reading.last?.topic ? chosen : undefined;
};

/** What is left of a message without talk, where that asks for something. */
const withoutTalk = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const look = secondLook(reading);
  if (!look) return undefined;
  const plain = pointedNames(look.reading);
  const chosen = surest(plain.reading, topics);
  if (chosen && isRequest(chosen) && !asksFor(chosen, reading)) return undefined;
  return withAssumed(chosen, [...plain.assumed, `I passed over "${look.passedOver}".`]);
};

/**
 * What a text means: as it stands, unless it is as good as a known saying of something else; else with recipes it points
 * at by part of their names; else as a saying it is very like; and where nobody understood it, without the words of talk
 * in it, or as a saying it is somewhat like.
 */
const chooseWhole = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const first = surest(reading, topics);
  if (isRequest(first)) return overruled(first, reading, topics);
  const named = pointedNames(reading);
  const second = named.reading === reading ? undefined : surest(named.reading, topics);
  if (isRequest(second)) return withAssumed(overruled(second, named.reading, topics), named.assumed);
  const like = byLikeness(named.reading, topics, alikeBeforeTrouble);
  if (like) return withAssumed(like, named.assumed);
  if (!isPuzzle(first) || !isPuzzle(second)) return first ?? second;
  const third = withoutTalk(named.reading, topics);
  if (isRequest(third)) return withAssumed(third, named.assumed);
  const last = byLikeness(named.reading, topics, alikeAnyway);
  return last ? withAssumed(last, named.assumed) : (first ?? second ?? third);
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

/** Ways to look at a message that nobody understood as a whole, one after the other. */
function* looksAt(named: Reading, whole: Chosen | undefined, topics: readonly Topic[]): Generator<Look> {
  if (isCalledOff(named.text)) return;
  for (const gist of gistsOf(named)) {
    yield { assumed: passedOver(gist), read: () => meantBy(gist, topics) };
  }
  if (isPuzzle(whole)) {
    for (const { reading, assumed } of spokenOf(named)) {
      yield { assumed, read: () => sure(chooseWhole(reading, topics), sureAlone) };
    }
  }
  if (isOpen(whole)) {
    for (const { reading, plain, after } of gathered(named)) {
      const read = (): Chosen | undefined => {
        const chosen = sure(surest(reading, topics), 0);
        return after === undefined || chosen?.topic.name === after ? chosen : undefined;
      };
      yield { assumed: `I read that as "${echo(plain)}".`, read };
    }
  }
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

const passedOver = (gist: { readonly passedOver: string }): string => `I passed over "${gist.passedOver}".`;

/**
 * What a message means as a whole; else what the sentences of it mean that hold something to work with, what "it" stands
 * for in them, or what the things in it are put to. What was taken for granted on the way is told with the answer.
 */
export const choose = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  if (reading.last && isOfOthers(reading)) return undefined;
  const whole = goingOn(reading, topics) ?? chooseWhole(reading, topics);
  if (isRequest(whole)) return whole;
  for (const { read, assumed } of looksAt(pointedNames(reading).reading, whole, topics)) {
    const part = read();
    if (isRequest(part)) return withAssumed(part, [assumed]);
  }
  return whole;
};

/** What a command's options say by themselves; undefined when there is none, or its words have to be read. */
export const plainlyAsked = (
  command: Command | undefined,
  topics: readonly Topic[],
  state: BookState,
): Chosen | undefined => {
  if (!command) return undefined;
  const topic = topics.find(({ name }) => name === command.topic);
  const request = topic?.slash.plain?.(command.options, state);
  return topic && request ? { topic, claim: claim(request, mostCertain) } : undefined;
};

/** What a message that nobody understood may have meant; else one thing that works. */
const whatWorks = (reading: Reading): string => {
  const guesses = guessesAt(reading).slice(0, mostGuesses);
  if (guesses.length === 0) return `Try for example "${example}", or "help".`;
  return `Did you mean ${orList(guesses.map((guess) => `"${echo(guess)}"`))}? If not, ask "help".`;
};

/** What to say when no topic knows the message: what stood out in it, and what works. */
export const notUnderstood = (reading: Reading): Trouble => {
  const said = reading.items
    .filter((item) => item.letter === letters.unknown || item.letter === letters.danger)
    .map((item) => item.word);
  const about = said.length > 0 ? ` I stumbled over "${echo(said.slice(0, 4).join(' '))}".` : '';
  const greeting = reading.items.length === 0 ? 'Hello! Ask me something' : 'I did not understand that';
  return {
    code: 'not-understood',
    text: `${greeting}.${about} ${whatWorks(reading)}`,
  };
};
