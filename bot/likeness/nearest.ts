import { daysIn } from '../readers/days.ts';
import type { Reading } from '../reading.ts';
import { amountOf, type Features, featuresOf, isTalkWord, type Slot } from './features.ts';
import { type Saying, signatureOf } from './sayings.ts';

/** How much less alike the next meaning has to be. */
const leastAhead = 0.05;
/** Meanings that are looked at where several are as likely. */
const mostPlains = 3;
const talkWeight = 0.25;
const strangeWeight = 1;
/** A saying may say a little more than a message does. */
const unsaidWeight = 0.65;
/** Words without a thing among them may mean anything: there have to be some, and nearly all the same. */
const leastWords = 3;
const leastAlikeWithoutThings = 0.75;

const ingredientKinds = new Set<string>(['i', 'herb', 'oil', 'wax', 'butter', 'aroma']);

const isSameThing = (a: string, b: string): boolean =>
  a === b || (a === 'i' && ingredientKinds.has(b)) || (b === 'i' && ingredientKinds.has(a));

const fits = (open: Slot, { kind }: Slot): boolean =>
  open.kind === kind ||
  (open.kind === 'i' && ingredientKinds.has(kind)) ||
  (open.kind === 'size' && (kind === 'g' || kind === 'v'));

/** Which of a message's slots goes into which of a saying's; undefined where they do not pair off. */
const pairs = (saying: Features, message: Features): ReadonlyMap<string, string> | undefined => {
  const left = [...message.slots];
  const filled = new Map<string, string>();
  for (const open of saying.slots.toSorted((a, b) => Number(a.kind === 'i') - Number(b.kind === 'i'))) {
    // Of two ingredients the word before says which is which: "instead of beeswax", "with candelilla".
    const isTwin = saying.slots.filter((other) => fits(open, other) || fits(other, open)).length > 1;
    const at = left.findIndex(
      (slot) =>
        fits(open, slot) &&
        isSameThing(amountOf(saying.slots, open), amountOf(message.slots, slot)) &&
        (!isTwin || slot.before === open.before),
    );
    const found = left[at];
    if (!found) return undefined;
    filled.set(open.text, found.text);
    left.splice(at, 1);
  }
  return filled;
};

interface Like {
  readonly plain: string;
  readonly alike: number;
  readonly filled: ReadonlyMap<string, string>;
}

/** Two words may do where a saying has just these. */
const leastWordsOfSame = 2;

const isEnough = ({ slots, words }: Features): boolean =>
  words.size > 0 && (slots.length > 0 || words.size >= leastWordsOfSame);

const leastFor = ({ slots, words }: Features, leastAlike: number): number => {
  if (slots.length > 0) return leastAlike;
  return words.size < leastWords ? 1 : Math.max(leastAlike, leastAlikeWithoutThings);
};

const mayMean = (saying: Features, message: Features): boolean =>
  saying.turns === message.turns && message.pointed.every((word) => saying.words.has(word));

interface Weighed extends Saying {
  /** Weight of all its words together. */
  readonly weight: number;
}

/** Sayings, with the weight of each word: one that stands under few meanings tells more. */
export class Sayings {
  readonly #all: Saying[] = [];
  readonly #meanings = new Map<string, Set<string>>();
  #bySignature: ReadonlyMap<string, readonly Weighed[]> | undefined;
  #weights = new Map<string, number>();

  add(sayings: readonly Saying[]): void {
    this.#all.push(...sayings);
    this.#bySignature = undefined;
    for (const { features, plain } of sayings) {
      for (const word of features.words) {
        const under = this.#meanings.get(word) ?? new Set();
        this.#meanings.set(word, under.add(plain));
      }
    }
  }

  #weight(word: string): number {
    return this.#weights.get(word) ?? (isTalkWord(word) ? talkWeight : strangeWeight);
  }

  #weightOf(words: Iterable<string>): number {
    let all = 0;
    for (const word of words) all += this.#weight(word);
    return all;
  }

  #weighed(): ReadonlyMap<string, readonly Weighed[]> {
    if (this.#bySignature) return this.#bySignature;
    const count = new Set(this.#all.map(({ plain }) => plain)).size;
    const weightOf = (under: number): number => Math.log(1 + count / under) / Math.log(1 + count);
    this.#weights = new Map([...this.#meanings].map(([word, under]) => [word, weightOf(under.size)]));
    const bySignature = new Map<string, Weighed[]>();
    for (const saying of this.#all) {
      const weighed = { ...saying, weight: this.#weightOf(saying.features.words) };
      const key = signatureOf(saying.features);
      const others = bySignature.get(key);
      if (others) others.push(weighed);
      else bySignature.set(key, [weighed]);
    }
    this.#bySignature = bySignature;
    return bySignature;
  }

  /** From 0 to 1: how much of what a message and a saying say is said by both. */
  #alike({ features, weight }: Weighed, message: ReadonlySet<string>, messageWeight: number): number {
    let both = 0;
    for (const word of features.words) if (message.has(word)) both += this.#weight(word);
    const all = messageWeight + (weight - both) * unsaidWeight;
    return all === 0 ? 0 : both / all;
  }

  /** The meanings a message may have, likeliest first, each with the saying that is most like it. */
  #likes(message: Features, reading: Reading): Like[] {
    const sayings = this.#weighed().get(signatureOf(message)) ?? [];
    const messageWeight = this.#weightOf(message.words);
    const best = new Map<string, Like>();
    for (const saying of sayings) {
      const { features, plain, after } = saying;
      if (!mayMean(features, message) || (after && after !== reading.last?.topic)) continue;
      const alike = this.#alike(saying, message.words, messageWeight);
      if (alike <= (best.get(plain)?.alike ?? 0)) continue;
      const filled = pairs(features, message);
      if (filled) best.set(plain, { plain, alike, filled });
    }
    return [...best.values()].toSorted((a, b) => b.alike - a.alike);
  }

  /**
   * Plain forms of the sayings that are most like a message, their slots filled: the likeliest first, and those that are
   * about as likely. None where no saying is like it enough.
   */
  plainsOf(reading: Reading, leastAlike: number): readonly string[] {
    const plain = this.#plainsFor(featuresOf(reading), reading, leastAlike);
    if (plain.length > 0 || daysIn(reading).days.length === 0) return plain;
    return this.#plainsFor(featuresOf(reading, true), reading, leastAlike);
  }

  #plainsFor(message: Features | undefined, reading: Reading, leastAlike: number): readonly string[] {
    if (!message || !isEnough(message)) return [];
    const likes = this.#likes(message, reading);
    const [first] = likes;
    if (!first || first.alike < leastFor(message, leastAlike)) return [];
    return likes
      .filter(({ alike }) => first.alike - alike < leastAhead)
      .slice(0, mostPlains)
      .map(({ plain, filled }) =>
        [...filled].reduce((text, [open, value]) => text.replaceAll(open, () => value), plain),
      );
  }
}
