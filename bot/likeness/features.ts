import { isBackground } from '../readers/background-words.ts';
import { type DaySaid, daysIn } from '../readers/days.ts';
import type { Item } from '../readers/item.ts';
import { isChatter, letters } from '../readers/lexicon.ts';
import { type LotSaid, lotsIn } from '../readers/lots.ts';
import { regionBesides, regionSaid } from '../readers/region-said.ts';
import { unitOf } from '../readers/unit.ts';
import { wordSet } from '../readers/word-list.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { readingWithout } from '../understand.ts';
import { isIngredientKind, type Look, looksAt, piecesOf, type SlotKind, slotKinds } from './pieces.ts';

/** A slot with what stands in it (in a saying: its own name), and the little word before it. */
export interface Slot {
  readonly kind: SlotKind;
  readonly text: string;
  readonly before: string;
  readonly after: string;
  /** Where it stands, and what an ingredient's name may stand for. */
  readonly from: number;
  readonly to: number;
  readonly ingredients?: readonly string[];
}

/** A message or a saying as likeness sees it: what is in it, and which words stand around that. */
export interface Features {
  readonly slots: readonly Slot[];
  readonly words: ReadonlySet<string>;
  /** Words that turn a meaning round, and units: these have to be the same in both. */
  readonly turns: string;
  /** Words that turn one request into another: a saying has to have these too. */
  readonly pointed: readonly string[];
}

export const turning = wordSet(
  `not no without never except instead than less more only half double twice third quarter cheaper cheapest harder softer before after other
  don't dont won't can't cant isn't isnt
  note swapped replaced poured pour gave given sold used wasted finished opened save saved remove undo`,
);

/** Words that say nothing about what is asked. */
const light = wordSet(
  `and n of in for to with the a an my have got recipe batch amount formula lip balm balms salve ointment on into from by as it was is are
  euro euros eur gbp quid dollar dollars`,
);

/** "Melting", "melts" and "melted" are one word here; it need not be a word of the language. */
export const stem = (word: string): string => {
  const plain = word
    .toLowerCase()
    .replace(/'s$|'$/, '')
    .replace(/^weights?$/, 'weigh');
  if (plain.length < 5) return plain.replace(/(?<=[a-z]{2})s$|(?<=[a-z]{3})e$/, '');
  return plain.replace(/(?:ings?|ed|es|s|ly)$/, '').replace(/([a-z])\1$|e$/, '$1');
};

/** "Is it vegan?" asks what it is, "make it vegan" for another: one word around a thing does not tell them apart. */
const isBareQuestion = (text: string, words: readonly string[]): boolean =>
  words.length === 1 && /^\W*(?:is|are)\b/i.test(text);

/** "What if beeswax was 30 per kg" tells no price. */
const isSupposed = /\b(?:what if|suppose|supposing|imagine)\b/i;

const isOfSome = /\b(?:some|part) of\b/i;

/** @param counted the words of the text that may mean something, as far as a bare question goes by them. */
const turnsOf = (
  text: string,
  words: readonly string[],
  units: readonly string[],
  counted: readonly string[] = words,
): string => {
  const said = [...new Set([...words.filter((word) => turning.has(word)), ...units])].toSorted();
  if (isBareQuestion(text, counted)) said.push('is');
  if (isOfSome.test(text)) said.push('some');
  if (isSupposed.test(text)) said.push('suppose');
  return said.join(' ');
};

const wordBefore = (text: string, from: number): string =>
  /([a-z']{1,20})\W{0,3}$/i.exec(text.slice(Math.max(0, from - 24), from))?.[1]?.toLowerCase() ?? '';

const wordAfter = (text: string, to: number): string =>
  /^\W{0,3}([a-z']{1,20})/i.exec(text.slice(to, to + 24))?.[1]?.toLowerCase() ?? '';

/** What stands after an amount is what it is an amount of: "40 g calendula in oil", "calendula in 40 g oil". */
export const amountOf = (slots: readonly Slot[], slot: Slot): string => {
  if (!/^(?:g|v|%|d|n|size)$/.test(slot.kind)) return '';
  const next = slots[slots.indexOf(slot) + 1]?.kind ?? '';
  return next === 'R' || isIngredientKind(next) ? next : '';
};

const regionNames = { eu: 'the EU', uk: 'the UK', us: 'the US', ca: 'Canada', au: 'Australia' } as const;

/** A stretch of the text that fills a slot by itself: what stands in quotes, the region. */
interface Stretch {
  readonly slot: Slot;
  readonly from: number;
  readonly to: number;
}

const quoted = /"([^"]{2,200})"/;

/** Codes of the group's book, and ones written like its own. */
const lotStretches = (lots: readonly LotSaid[]): readonly Stretch[] =>
  lots.map(({ code, from, to }) => ({
    slot: { kind: 'lot', text: code, before: '', after: '', from, to },
    from,
    to,
  }));

const dayStretches = (days: readonly DaySaid[]): readonly Stretch[] =>
  days.map(({ said, to }) => {
    const from = to - said.length;
    return { slot: { kind: 'date', text: said, before: '', after: '', from, to }, from, to };
  });

const stretchesOf = (text: string): readonly Stretch[] => {
  const quote = quoted.exec(text);
  const region = regionSaid(text) ?? regionBesides(text);
  const all: Stretch[] = [];
  if (region) {
    const { from, to } = region;
    const name = regionNames[region.region];
    all.push({ slot: { kind: 'region', text: name, before: '', after: '', from, to }, from, to });
  }
  if (quote?.[1]) {
    const [from, to] = [quote.index, quote.index + quote[0].length];
    all.push({ slot: { kind: 'q', text: quote[1], before: '', after: '', from, to }, from, to });
  }
  return all;
};

const isWithin = ({ from, to }: Item, stretches: readonly Stretch[]): boolean =>
  stretches.some((stretch) => from >= stretch.from && to <= stretch.to);

/** "One of my pupils", "3 weeks ago", "a four year old": no number of anything that is asked about. */
const noAmount =
  /^(?: of (?:my|our|the|us)\b|[ -](?:days?|weeks?|months?|years?)[ -](?:ago|already|now|long|old|olds)\b)/i;

/** "14 of us", but "one of us". */
const isOfUs = (after: string, value = 0): boolean => value > 2 && /^ of us\b/i.test(after);
/** "Jar 1: …". */
const inRow = /(?:^|[\s(])(?:jar|pot|batch|test|trial|no\.?|nr\.?|#)\s?$/i;

/** "Aged seven", "my granddaughter is four". */
const anAge =
  /(?:\baged?(?: of)?|(?:son|daughter|child|niece|nephew|boy|girl|little one|toddler|\bshe|\bhe|\bwho)(?:'s| is| turned| just turned)(?: only| just| about)?)\s$/i;

/** "A4" is a kind of paper. */
const isInWord = (text: string, { letter, from, to, value }: Item): boolean =>
  letter === 'n' &&
  (/[a-z]/i.test(text.charAt(from - 1)) ||
    (noAmount.test(text.slice(to, to + 16)) && !isOfUs(text.slice(to, to + 8), value)) ||
    (inRow.test(text.slice(Math.max(0, from - 8), from)) && /^\s?[:.)]/.test(text.slice(to, to + 2))) ||
    anAge.test(text.slice(Math.max(0, from - 40), from)));

/** "-20 g": less than nothing is nobody's saying. In a list the first of a line is a bullet. */
const isNegative = (text: string, { from }: Item, isList: boolean): boolean => {
  const before = text.slice(Math.max(0, from - 3), from);
  if (/\n[-−] $/.test(before)) return false;
  return isList ? /[\w,:] [-−]$/.test(before) : /(?:^|[\s(,])[-−]\s?$/.test(before);
};

const coinAfter = /^\s?(?:€|£|\$|euros?\b|eur\b|quid\b|gbp\b|dollars?\b|usd\b|pence\b|cents?\b|p\b)/i;

/** What stands in a slot: a recipe by its name, a sum of money with its sign. */
const said = (text: string, first: Item, last: Item): string => {
  if (first.recipe) return first.recipe;
  if (first.letter !== letters.number) return text.slice(first.from, last.to);
  const sign = /[€£$]\s?$/.exec(text.slice(0, first.from))?.[0] ?? '';
  const coin = coinAfter.exec(text.slice(last.to, last.to + 10))?.[0] ?? '';
  return text.slice(first.from - sign.length, last.to + coin.length);
};

/** Units that are spoken of without an amount: "how many drops". */
const unitsOutside = (
  text: string,
  things: readonly { readonly item: Item; readonly last: Item }[],
): readonly string[] => {
  const bare = things.reduce(
    (rest, { item, last }) =>
      rest.slice(0, item.from) + ' '.repeat(last.to - item.from) + rest.slice(last.to),
    text.toLowerCase(),
  );
  return (bare.match(/(?<![a-z'])[a-z]{1,24}(?![a-z'])/g) ?? []).flatMap((word) => unitOf(word) ?? []);
};

/** A message without what fills a slot by itself: codes of lots, quotes, regions, and dates where they are wanted. */
interface Cleared {
  readonly text: string;
  readonly items: readonly Item[];
  readonly stretches: readonly Stretch[];
}

const cleared = (reading: Reading, days: readonly DaySaid[]): Cleared => {
  const places = [...lotStretches(lotsIn(reading)), ...dayStretches(days)];
  const { text, items } = readingWithout(reading, places);
  const stretches = [...stretchesOf(text), ...places];
  return {
    text,
    items: items.filter((item) => !isWithin(item, stretches) && !isInWord(text, item)),
    stretches,
  };
};

/** What stands in a message as one look sees it; undefined where an amount of it is less than nothing. */
const featuresIn = ({ text, items, stretches }: Cleared, look: Look): Features | undefined => {
  const pieces = piecesOf(items, look);
  const things = pieces.flatMap(({ kind, item, last }) => (kind ? [{ kind, item, last }] : []));
  if (things.some(({ kind, item }) => isNegative(text, item, kind === 'R'))) return undefined;
  const slots = things.map(({ kind, item, last }) => ({
    kind,
    text: said(text, item, last),
    before: wordBefore(text, item.from),
    after: wordAfter(text, last.to),
    from: item.from,
    to: last.to,
    ...(kind !== 'R' && item.ingredients ? { ingredients: item.ingredients } : {}),
  }));
  const around = pieces.filter(({ kind, item }) => !kind && /[a-z]/i.test(item.word));
  const words = around.flatMap(({ item }) => item.word.toLowerCase().split(' '));
  const units = unitsOutside(text, things);
  return {
    slots: [...slots, ...stretches.map(({ slot }) => slot)],
    words: new Set(words.filter((word) => !isChatter(word) && !light.has(word) && !unitOf(word)).map(stem)),
    turns: turnsOf(text, words, units),
    pointed: around.filter(({ item }) => item.letter === letters.danger).map(({ item }) => stem(item.word)),
  };
};

const inEveryLook = (reading: Reading, days: readonly DaySaid[]): readonly Features[] => {
  const message = cleared(reading, days);
  const all: Features[] = [];
  for (const look of looksAt(message.items)) {
    const features = featuresIn(message, look);
    if (!features) break;
    all.push(features);
  }
  return all;
};

/** What stands in a message, look by look, up to one in which an amount is less than nothing. */
export const featuresOf = oncePerReading((reading) => inEveryLook(reading, []));

/** The same where its dates are things that fill a slot, and not words among others; none where it has none. */
export const datedFeaturesOf = oncePerReading((reading) => {
  const { days } = daysIn(reading);
  return days.length > 0 ? inEveryLook(reading, days) : [];
});

const slotIn = /\{([a-zA-Z%]{1,8})\d?\}/g;

const isSlotKind = (kind: string): kind is SlotKind => (slotKinds as readonly string[]).includes(kind);

/** The same of a saying, where a slot is written `{oil}` or `{g2}`. */
export const featuresOfSaying = (saying: string): Features => {
  const slots = [...saying.matchAll(slotIn)].flatMap((match): Slot[] => {
    const kind = match[1] ?? '';
    return isSlotKind(kind)
      ? [
          {
            kind,
            text: match[0],
            before: wordBefore(saying, match.index),
            after: wordAfter(saying, match.index + match[0].length),
            from: match.index,
            to: match.index + match[0].length,
          },
        ]
      : [];
  });
  const all =
    saying
      .replace(slotIn, ' ')
      .toLowerCase()
      .match(/[a-z][a-z'-]*/g) ?? [];
  const words = all.filter((word) => !isChatter(word) && !light.has(word) && !unitOf(word)).map(stem);
  const units = all.flatMap((word) => unitOf(word) ?? []);
  return {
    slots,
    words: new Set(words),
    turns: turnsOf(
      saying,
      all.filter((word) => !isChatter(word)),
      units,
      words,
    ),
    pointed: [],
  };
};

/** True for a word of talk: two messages may differ in it. */
export const isTalkWord = (word: string): boolean => isBackground(word);
