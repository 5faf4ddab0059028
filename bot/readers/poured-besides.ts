import type { Claim, Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { asksOrPlans } from './bench-text.ts';

/** Longest message that tells of one more pour of the same, in tokens. */
const mostTokens = 20;

const opening = /^\W*(?:(?:oh|ah|ok|and|also|plus|then)\b\W*)+/i;
const ofIt =
  /\b(?:of|with|from) (?:it|that|them|this|the same(?: (?:one|balm|salve|recipe|pour|batch|mix|jug))?)\b/i;
const pourWords =
  /^(?:oh|ah|ok|and|also|plus|then|another|more|of|it|that|this|them|the|same|with|from|balm|salve|recipe|mix|jug|today|yesterday|in|little|small|big|large|tins?|jars?|pots?|tubes?|sticks?|g|grams?|ml|oz|each|a|an|x|too|as|well)$/i;

/** "And 40 sticks of 5 g of it today", after a pour: another pour of the same recipe. */
const pouredBesides = ({ last, text, tokens, items }: Reading): string | undefined => {
  const name = last?.topic === 'batch' && last.request.action === 'pour' ? last.request.recipe : undefined;
  if (typeof name !== 'string' || tokens.length > mostTokens || asksOrPlans(text)) return undefined;
  const isMore = /^\W*(?:(?:oh|ah|ok)\W+)*(?:and|also|plus|then|another)\b/i.test(text);
  const isOnly = tokens.every(({ kind, word, text: sign }) =>
    kind === 'word' ? pourWords.test(word) : kind === 'number' || /^[,.!]$/.test(sign),
  );
  const held = items.some(({ letter }) => letter === 'c') && items.some(({ letter }) => /[gv]/.test(letter));
  if (!isMore || !isOnly || !held) return undefined;
  const day = /\b(?:today|yesterday)\b/i.exec(text)?.[0] ?? String(last?.request.on ?? '');
  const said = text
    .replace(opening, '')
    .replace(ofIt, '')
    .replace(/\b(?:today|yesterday)\b|\W+$/gi, '');
  return `poured ${said.replace(/\s+/g, ' ').trim()} of ${name}${day ? ` on ${day}`.replace(/ on (?=[ty])/, ' ') : ''}`;
};

/** One more pour of the recipe that was poured just before, as `read` would read it told in full. */
export const claimPouredBesides = (
  reading: Reading,
  read: (reading: Reading) => Claim | undefined,
): Claim | undefined => {
  const told = pouredBesides(reading);
  const pour = told === undefined ? undefined : read(readAgain(told, reading));
  return pour?.kind === 'request' && pour.request.action === 'pour'
    ? { ...pour, weight: 3.3, assumed: [...pour.assumed, `I took it as "${told}".`] }
    : undefined;
};
