import { type Asked, askedOfBench } from './asked/asked.ts';
import { isOfNothing } from './choose-told.ts';
import type { Chosen } from './chosen.ts';
import { pointedNames } from './readers/pointed-name.ts';
import { claim, type Reading } from './reading.ts';
import { sureAlone, writes } from './surest.ts';
import type { Topic } from './topic.ts';

const benchTopics: ReadonlySet<string> = new Set(['batch', 'stock', 'trace', 'expiry', 'reaction', 'book']);

/** "How much beeswax have I still got": what stands on the shelf is meant, whatever else the words could be. */
const ofShelf =
  /\b(?:under|below) (?:its|the|our|a) (?:mark|minimum|limit)\b|\b(?:our|my|the) (?:total|balance|reserves?|supply|holdings?) of\b|\bin (?:the |our |my )?(?:house|stock|store|cupboard|shed|larder)\b|\bon (?:the|our|my) shel(?:f|ves)\b|\bhow much\b.{0,40}\b(?:still|left|have (?:we|i)(?: still)? got|do (?:we|i) (?:still )?have|remain\w*)\b/i;
export const isPointed = ({ subject, sure }: Asked, { items, text, last }: Reading): boolean =>
  (subject.pointed === true &&
    (last === undefined || subject.assumed.length === 0 || benchTopics.has(last.topic))) ||
  (sure && subject.kind === 'recipe' && /\blots\b|\bbatch\b/i.test(text)) ||
  (sure && (subject.kind === 'none' || /\bwho(?:m|se)?\b/i.test(text))) ||
  (subject.kind === 'ingredient' && ofShelf.test(text) && !items.some(({ letter }) => /[ncR]/.test(letter)));

/** A question of the bench book in words that no topic knows. */
export const askedAnyhow = (
  message: Reading,
  topics: readonly Topic[],
): (Chosen & { readonly asked: Asked }) | undefined => {
  const named = pointedNames(message).reading;
  const asked = askedOfBench(message) ?? (named === message ? undefined : askedOfBench(named));
  const topic = topics.find(({ name }) => name === asked?.topic);
  return asked && topic
    ? { topic, asked, claim: claim(asked.request, sureAlone, asked.subject.assumed) }
    : undefined;
};

/** The same where another topic took it for its own. */
export const askedRather = (
  whole: Chosen,
  reading: Reading,
  topics: readonly Topic[],
): Chosen | undefined => {
  const found = writes(whole) && !isOfNothing(whole, reading) ? undefined : askedAnyhow(reading, topics);
  if (!found || (found.topic === whole.topic && !found.asked.other)) return undefined;
  const isOwn =
    benchTopics.has(whole.topic.name) && !(whole.alike && !found.asked.faint) && !isOfNothing(whole, reading);
  const isSure = isOwn ? (found.asked.other ?? found.asked.sure) : isPointed(found.asked, reading);
  return isSure ? found : undefined;
};
