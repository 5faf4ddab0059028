import { lotKey } from '../../core/bench/codes.ts';
import { latestBatches } from '../../core/bench/latest.ts';
import type { Batch, Bench } from '../../core/bench/state.ts';
import type { Claim, Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { asksOrPlans } from './bench-text.ts';
import type { Item } from './item.ts';
import { spokenLot } from './of-spoken-lot.ts';
import type { Size } from './target.ts';

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

const mostSameTokens = 40;
const sameMix =
  /(?:\b(?:of|from|with|out of|in) )?\b(?:(?:exactly |just )?(?:the |that |our )?(?:very )?same (?:mix|mixture|blend|recipe|stuff|melt|brew|pot|jug|pan|batch|kind|sort|balm|salve|wax|one|thing)|(?:what|whatever) was (?:still )?left(?: over)?(?: in the (?:pot|jug|pan))?|the (?:rest|remainder) of (?:it|the (?:mix|melt|pot|jug|pan)))(?: again)?\b/i;
const sameSizeSaid =
  /,?\s*\b(?:of|in) the same size\b|,?\s*\b(?:the )?same size(?: tins| jars| pots| tubes| sticks)?\b/i;
const poursSaid = /\b(?:pour(?:ed)?|made|filled|did|cast)\b/i;

/** "Poured the same again, but 20 tins", "made another 10 of those". */
const sameAgain = /\b(?:the )?same(?: again| once more)?\b|(?<=\w )of (?:those|these)\b/i;

interface Before {
  readonly name: string;
  readonly size?: Size | undefined;
  /** The day it was poured. */
  readonly on?: string | undefined;
}

const asBefore = ({ name, size, madeOn }: Batch): Before => ({ name, size, on: madeOn });

/** The last pour in the book. */
const lastOf = (bench: Bench): Before | undefined => {
  const { value } = latestBatches(bench).next();
  return value ? asBefore(value) : undefined;
};

/** The recipe of the pour, or of the batch, that was spoken of just before, and what one of its containers holds. */
const pourBefore = (reading: Reading): Before | undefined => {
  const { last, bench } = reading;
  if (last?.topic !== 'batch') return lastOf(bench);
  const { recipe, size, on } = last.request;
  if (typeof recipe === 'string')
    return { name: recipe, size: size as Size | undefined, on: typeof on === 'string' ? on : undefined };
  const code = spokenLot(reading);
  const batch = code === undefined ? undefined : bench.batches.get(lotKey(code));
  return batch && asBefore(batch);
};

/** A number, no other recipe, and nothing that went. */
const isMorePoured = ({ text, items }: Reading): boolean =>
  items.some(({ letter }) => letter === 'n') &&
  !items.some(({ letter, generic }) => /[Ri%]/.test(letter) && !generic) &&
  !/\b(?:sold|gave|given|kept|binned|threw)\b/i.test(text) &&
  !asksOrPlans(text);

const runNumber = /\b(?:run|pour|batch|round)(?: (?:no\.?|number))? \d{1,2}\b[\s:,-]*/i;
const sameDay = /,?\s*\b(?:on )?the same (?:date|day|evening|morning|afternoon)\b/i;

const onSameDay = (reading: Reading): string => {
  if (!sameDay.test(reading.text)) return reading.text;
  const day = pourBefore(reading)?.on;
  return reading.text.replace(sameDay, day === undefined ? ' today' : ` on ${day}`);
};

const inTins = (text: string, { items }: Reading): string =>
  items.some(({ letter }) => letter === 'c') ? text : text.replace(/\b(\d{1,3})( more)?\b/, '$1 tins');

/** "Then 15 more tins from the same pot": with the recipe in place of it, and of the same size where none is said. */
const ofSameMix = (reading: Reading): string | undefined => {
  const { tokens, items } = reading;
  const text = onSameDay(reading).replace(runNumber, '');
  const same = poursSaid.test(text) && !sameMix.test(text) ? sameAgain : sameMix;
  if (tokens.length > mostSameTokens || !(same.test(text) || sameSizeSaid.test(text))) return undefined;
  const before = isMorePoured(reading) ? pourBefore(reading) : undefined;
  if (!before) return undefined;
  const isSized = items.some(({ letter }) => /[gv]/.test(letter));
  const size = isSized || !before.size ? '' : `, ${before.size.amount} ${before.size.unit} each`;
  const named = text
    .replace(sameSizeSaid, ' ')
    .replace(same, ` of ${before.name} `)
    .replace(opening, '')
    .replace(/^\W*of |[\s.!]+$/g, '');
  const whole = named.includes(before.name) ? named : `${named} of ${before.name}`;
  return `${poursSaid.test(text) ? '' : 'poured '}${inTins(whole, reading)}${size}`.replace(/\s+/g, ' ');
};

/** One more pour of the recipe that was poured just before, as `read` would read it told in full. */
export const claimPouredBesides = (
  reading: Reading,
  read: (reading: Reading) => Claim | undefined,
): Claim | undefined => {
  const told = sameOfOther(reading) ?? pouredBesides(reading) ?? ofSameMix(reading);
  const pour = told === undefined ? undefined : read(readAgain(told, reading));
  return pour?.kind === 'request' && pour.request.action === 'pour'
    ? { ...pour, weight: 3.3, assumed: [...pour.assumed, `I took it as "${told}".`] }
    : undefined;
};
