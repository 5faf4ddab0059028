import { defined } from '../core/defined.ts';
import { ingredientById } from '../core/ingredients.ts';
import type { Reply } from './answer.ts';
import { choose } from './choose.ts';
import type { Chosen } from './chosen.ts';
import { echo } from './readers/ask-back.ts';
import type { Asked, Reading } from './reading.ts';
import { surest } from './surest.ts';
import type { Topic } from './topic.ts';
import { readAgain } from './understand.ts';

/** A message read together with the one that was asked about. */
export interface Supplied {
  readonly chosen: Chosen;
  readonly reading: Reading;
  readonly assumed: string;
}

/** More than this says something of its own. */
const mostCharacters = 60;
const mostItems = 6;
/** Where an answer is tried in a message; a longer one is no question's. */
const mostPlaces = 12;
/** What was asked about is read anew for each place: in a longer message that would hold everybody up. */
const longestAsked = 200;

const isShort = ({ text, items }: Reading): boolean =>
  text.length <= mostCharacters && items.length <= mostItems;

/** Amounts, counts, sizes, names, and what stands between them. */
const isBare = (reading: Reading): boolean =>
  isShort(reading) &&
  reading.items.some(({ letter }) => /[ngvd%ptriRc]/.test(letter)) &&
  reading.items.every(({ letter }) => /[ngvd%ptriRcxoeTy.,@]/.test(letter));

/** Nobody knows "Lisbon" by itself; what means something by itself is no answer. */
const mostWords = 3;
const isName = (reading: Reading, topics: readonly Topic[]): boolean =>
  isShort(reading) &&
  reading.items.length > 0 &&
  reading.items.length <= mostWords &&
  surest(reading, topics)?.claim.kind !== 'request';

const before =
  /^(?:(?:yes|yeah|yep|oh|ok|okay|sorry|no|the|i mean|i meant|i think|it's|its|it is|it was|make it|take|use)\b[\s,.:!-]*)+/i;
const after = /[\s,.!]*(?:\b(?:please|thanks|thank you|pls|one|then|of course|i mean|i meant)\b[\s,.!]*)*$/i;
const agreeing =
  /^\W*(?:yes|yeah|yep|yup|y|sure|right|correct|exactly|indeed|that one|that's (?:it|right|the one)|of course|please do)\b(?:[\s,.!]*(?:please|thanks|thank you|that one|that's (?:it|right)|it is))*\W*$/i;

const ordinals: readonly RegExp[] = [
  /^(?:first|1st|1)$/i,
  /^(?:second|2nd|2)$/i,
  /^(?:third|3rd|3)$/i,
  /^(?:fourth|4th|4)$/i,
];

const namesWith = (words: readonly string[], names: readonly string[]): readonly string[] =>
  names.filter((name) =>
    words.every((word) =>
      name
        .toLowerCase()
        .split(/[\s-]+/)
        .includes(word),
    ),
  );

const only = <T>(list: readonly T[]): T | undefined => (list.length === 1 ? list[0] : undefined);

const plain = ({ text }: Reading): string => text.replace(before, '').replace(after, '').toLowerCase();

/** "Yes" where one thing was offered, "the second" where several were. */
const pickedByPlace = (reading: Reading, names: readonly string[]): string | undefined => {
  if (agreeing.test(reading.text)) return only(names);
  const said = plain(reading);
  const place = ordinals.findIndex((ordinal) => ordinal.test(said));
  return said === 'last' ? names.at(-1) : names[place];
};

/** By words that only one of the names has, or by the name of another ingredient. */
const pickedByName = (reading: Reading, names: readonly string[]): string | undefined => {
  const words = plain(reading)
    .split(/[\s-]+/)
    .filter(Boolean);
  const named = words.length > 0 ? only(namesWith(words, names)) : undefined;
  if (named !== undefined) return named;
  const item = only(reading.items);
  const id = item?.letter === 'i' ? only(item.ingredients ?? []) : undefined;
  return id === undefined ? undefined : ingredientById(id)?.name;
};

/** Which of the names that were offered a message picks; what was offered in place of a whole message has no words of its own. */
const pickedName = (reading: Reading, { text, open }: Asked): string | undefined => {
  if (!open || !isShort(reading)) return undefined;
  const isWhole = open.said === text;
  return pickedByPlace(reading, open.names) ?? (isWhole ? undefined : pickedByName(reading, open.names));
};

const escaped = (said: string): string => said.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');

const withName = ({ text, open }: Asked, name: string): string | undefined => {
  const place = new RegExp(`(?<![\\p{L}\\d])${escaped(open?.said ?? '')}(?![\\p{L}\\d])`, 'iu');
  return open?.said && place.test(text) ? text.replace(place, () => name) : undefined;
};

/** "Gave some of K12": the amount stands in their place. */
const vague = /\b(?:some|a few|several|a bit of|a little|a couple of|any)\s+/gi;

/** A message with an answer in each place where it may belong. */
const filledIn = (text: string, answer: string): readonly string[] => {
  const whole = text.replace(vague, '');
  const [start = 0, ...places] = [...whole.matchAll(/\S+/g)].map(({ index }) => index).slice(0, mostPlaces);
  return [...places, whole.length, start].map((at) =>
    `${whole.slice(0, at)} ${answer} ${whole.slice(at)}`.replace(/\s+/g, ' ').trim(),
  );
};

interface Found {
  readonly supplied: Supplied;
  readonly times: number;
}

/** The request that comes of most of some texts; none where two come of as many. */
const mostRead = (
  texts: readonly string[],
  reading: Reading,
  topics: readonly Topic[],
): Supplied | undefined => {
  const found = new Map<string, Found>();
  for (const text of texts) {
    const again = readAgain(text, reading);
    const chosen = surest(again, topics);
    if (chosen?.claim.kind !== 'request') continue;
    const key = JSON.stringify(chosen.claim.request);
    const times = (found.get(key)?.times ?? 0) + 1;
    const supplied = found.get(key)?.supplied ?? { chosen, reading: again, assumed: readAs(text) };
    found.set(key, { supplied, times });
  }
  const [first, second] = [...found.values()].toSorted((a, b) => b.times - a.times);
  return first && first.times > (second?.times ?? 0) ? first.supplied : undefined;
};

/** What an answer makes of the message it belongs to. */
const completed = (reading: Reading, asked: Asked, topics: readonly Topic[]): Supplied | undefined => {
  const own = topics.filter(({ name }) => name === asked.topic);
  const answer = reading.text.slice(reading.items[0]?.from, reading.items.at(-1)?.to);
  const waysToSay = [answer, `at ${answer}`, `in ${answer}`];
  return waysToSay
    .map((said) => mostRead(filledIn(asked.text, said), reading, own))
    .find((found) => found !== undefined);
};

const readAs = (text: string): string => `I read that as "${echo(text)}".`;

/**
 * A message that is no more than the answer to what was asked back ("200 g", "the second", "shea butter"), read together
 * with the message that was asked about; undefined where it says something of its own.
 */
export const supplied = (reading: Reading, asked: Asked, topics: readonly Topic[]): Supplied | undefined => {
  const name = pickedName(reading, asked);
  const text = name === undefined ? undefined : withName(asked, name);
  if (text !== undefined) {
    const again = readAgain(text, reading);
    const chosen = choose(again, topics);
    return chosen && { chosen, reading: again, assumed: readAs(text) };
  }
  const isAnswer =
    asked.open === undefined &&
    asked.text.length <= longestAsked &&
    (isBare(reading) || isName(reading, topics));
  return isAnswer ? completed(reading, asked, topics) : undefined;
};

/** What a reply asks back, for the message that may answer it. */
export const askedBack = (reply: Reply, reading: Reading | undefined): Asked | undefined => {
  if (!('error' in reply)) return undefined;
  const { topic, error } = reply;
  const text = reading?.text ?? error.open?.said;
  if (text === undefined || (error.code !== 'missing' && !error.open)) return undefined;
  return { topic, text, ...defined({ open: error.open }) };
};
