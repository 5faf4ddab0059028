import { type Chosen, withAssumed } from './chosen.ts';
import { likely } from './likeness/likely.ts';
import { ofThem } from './readers/cost-claim.ts';
import { lookInTalk, surelyToLookAt } from './readers/list-in-talk.ts';
import { pointedNames } from './readers/pointed-name.ts';
import { namesOwnBalm, secondLook } from './readers/second-look.ts';
import { anyWord, type Reading } from './reading.ts';
import { isPuzzle, isRequest, mostCertain, surest, writes } from './surest.ts';
import type { Topic } from './topic.ts';
import { readAgain } from './understand.ts';

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
  if (ofThem.test(reading.text) && writes(chosen)) return undefined;
  const agree = others.every((other) => isSame(surest(other.reading, topics), chosen));
  const isTold = leastAlike >= alikeBeforeTrouble && reading.items.length >= leastTold;
  return agree && (isTold || !writes(chosen)) ? withAssumed(chosen, [like.assumed]) : undefined;
};

const alike = (chosen: Chosen | undefined): Chosen | undefined => chosen && { ...chosen, alike: true };

/** A recipe in the midst of talk that is to be looked at. */
const handedOver = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const plain = lookInTalk(reading);
  const chosen = plain === undefined ? undefined : surest(readAgain(plain, reading), topics);
  if (!isRequest(chosen) || chosen.topic.name !== 'check') return undefined;
  return withAssumed(chosen, ['I took it as a recipe to look at, and passed over the talk around it.']);
};

/**
 * What a topic is not quite sure of may be a known saying of another request: "are people allergic to shea butter" asks
 * about the butter, not about a recipe. Answers to what was said before are left to the topics.
 */
const overruled = (first: Chosen, reading: Reading, topics: readonly Topic[]): Chosen => {
  const look =
    first.topic.name !== 'check' && surelyToLookAt(reading) ? handedOver(reading, topics) : undefined;
  if (look) return look;
  if (first.claim.weight >= mostCertain || reading.last) return first;
  const like = byLikeness(reading, topics, alikeBeforeRequest);
  return !like || writes(like) || isSame(like, first) ? first : like;
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
export const chooseWhole = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const first = surest(reading, topics);
  if (isRequest(first)) return overruled(first, reading, topics);
  const named = pointedNames(reading);
  const second = named.reading === reading ? undefined : surest(named.reading, topics);
  if (isRequest(second)) return withAssumed(overruled(second, named.reading, topics), named.assumed);
  const look = handedOver(named.reading, topics);
  if (look) return look;
  const like = byLikeness(named.reading, topics, alikeBeforeTrouble);
  if (like) return alike(withAssumed(like, named.assumed));
  if (!isPuzzle(first) || !isPuzzle(second)) return first ?? second;
  const third = withoutTalk(named.reading, topics);
  if (isRequest(third)) return withAssumed(third, named.assumed);
  const last = withAssumed(byLikeness(named.reading, topics, alikeAnyway), named.assumed);
  return alike(last) ?? first ?? second ?? third;
};
