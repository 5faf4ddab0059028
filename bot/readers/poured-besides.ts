import type { Claim, Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { asksOrPlans } from './bench-text.ts';
import type { Item } from './item.ts';

/** Longest message that tells of one more pour of the same, in tokens. */
const mostTokens = 20;

const opening = /^\W*(?:(?:oh|ah|ok|and|also|plus|then)\b\W*)+/i;
const ofIt =
  /\b(?:of|with|from) (?:it|that|them|this|the same(?: (?:one|balm|salve|recipe|pour|batch|mix|jug))?)\b/i;
const pourWords =
  /^(?:oh|ah|ok|and|also|plus|then|another|more|of|it|that|this|them|the|same|with|from|balm|salve|recipe|mix|jug|today|yesterday|in|little|small|big|large|tins?|jars?|pots?|tubes?|sticks?|g|grams?|ml|oz|each|a|an|x|too|as|well)$/i;

/** "And another 10", "another 12 tins": as large as those before. */
const sameSize = (
  items: readonly Item[],
  { size, container }: Readonly<Record<string, unknown>>,
): string | undefined => {
  const held = size as { readonly amount: number; readonly unit: string } | undefined;
  const [number, second] = items.filter(({ letter }) => letter === 'n');
  if (!held || !number?.value || second || items.some(({ letter }) => /[gv]/.test(letter))) return undefined;
  const kind =
    items.find(({ letter }) => letter === 'c')?.word ??
    `${typeof container === 'string' ? container : 'tin'}s`;
  return `${number.value} ${kind} of ${held.amount} ${held.unit}`;
};

/** The recipe that was poured just before, where the message has nothing in it but one more pour. */
const nameBefore = ({ last, text, tokens }: Reading): string | undefined => {
  const name = last?.topic === 'batch' && last.request.action === 'pour' ? last.request.recipe : undefined;
  if (typeof name !== 'string' || tokens.length > mostTokens || asksOrPlans(text)) return undefined;
  const isMore = /^\W*(?:(?:oh|ah|ok)\W+)*(?:and|also|plus|then|another)\b/i.test(text);
  const isOnly = tokens.every(({ kind, word, text: sign }) =>
    kind === 'word' ? pourWords.test(word) : kind === 'number' || /^[,.!]$/.test(sign),
  );
  return isMore && isOnly ? name : undefined;
};

/** "And 40 sticks of 5 g of it today", after a pour: another pour of the same recipe. */
const pouredBesides = (reading: Reading): string | undefined => {
  const { last, text, items } = reading;
  const name = nameBefore(reading);
  if (name === undefined) return undefined;
  const said = /\b(?:today|yesterday)\b/i.exec(text)?.[0];
  const again = sameSize(items, last?.request ?? {});
  if (again) return `poured another ${again} of ${name}${said ? ` ${said}` : ''}`;
  const held = items.some(({ letter }) => letter === 'c') && items.some(({ letter }) => /[gv]/.test(letter));
  if (!held) return undefined;
  const day = said ?? String(last?.request.on ?? '');
  const bare = text
    .replace(opening, '')
    .replace(ofIt, '')
    .replace(/\b(?:today|yesterday)\b|\W+$/gi, '');
  return `poured ${bare.replace(/\s+/g, ' ').trim()} of ${name}${day ? ` on ${day}`.replace(/ on (?=[ty])/, ' ') : ''}`;
};

const sameOf =
  /^\W*(?:(?:and|also|then|ok|plus)\W+)*(?:exactly )?(?:the )?same(?: (?:again|thing|amount|number))? (?:with|of|for|in|from) (?:the |our |my )?/i;

/** "The same with Meadow salve": as many, as large, of another recipe. */
const sameOfOther = ({ last, text, items }: Reading): string | undefined => {
  if (last?.topic !== 'batch' || last.request.action !== 'pour' || text.includes('?')) return undefined;
  const [name, ...others] = items.filter(({ letter }) => /^[RcgvniB%]$/.test(letter));
  const { count, size, container } = last.request;
  const held = size as { readonly amount: number; readonly unit: string } | undefined;
  if (!sameOf.test(text) || name?.recipe === undefined || others.length > 0 || typeof count !== 'number')
    return undefined;
  const after = text.slice(name.to).replace(/\b(?:too|as well|today|please)\b|\W+/gi, '');
  if (after !== '') return undefined;
  const kind = `${typeof container === 'string' ? container : 'tin'}s`;
  return `poured ${count} ${kind}${held ? ` of ${held.amount} ${held.unit}` : ''} of ${name.recipe}`;
};

/** One more pour of the recipe that was poured just before, as `read` would read it told in full. */
export const claimPouredBesides = (
  reading: Reading,
  read: (reading: Reading) => Claim | undefined,
): Claim | undefined => {
  const told = sameOfOther(reading) ?? pouredBesides(reading);
  const pour = told === undefined ? undefined : read(readAgain(told, reading));
  return pour?.kind === 'request' && pour.request.action === 'pour'
    ? { ...pour, weight: 3.3, assumed: [...pour.assumed, `I took it as "${told}".`] }
    : undefined;
};
