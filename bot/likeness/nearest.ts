import type { Reading } from '../reading.ts';
import { amountOf, datedFeaturesOf, type Features, featuresOf, isTalkWord, type Slot } from './features.ts';
import { isIngredientKind } from './pieces.ts';
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
/** Fewer words mean something as they stand, or after a message they go on from. */
const leastAlikeInFewWords = 0.95;

const isSameThing = (a: string, b: string): boolean =>
  a === b || (a === 'i' && isIngredientKind(b)) || (b === 'i' && isIngredientKind(a));

const container = '(?:tins?|jars?|pots?|tubes?|sticks?|bottles?|tubs?)';
const containers = new RegExp(`^${container}$`);
const withContainer = new RegExp(`\\s*\\b${container}\\b\\s*(?:of\\s+)?`, 'i');
/** "15 g tin" where the plain form has the tin itself. */
const valueFor = (open: Slot, slot: Slot): string =>
  open.kind !== 'size' && slot.kind === 'size' ? slot.text.replace(withContainer, ' ').trim() : slot.text;

const fits = (open: Slot, { kind }: Pick<Slot, 'kind'>): boolean =>
  open.kind === kind ||
  (open.kind === 'i' && isIngredientKind(kind)) ||
  (open.kind === 'size' && (kind === 'g' || kind === 'v')) ||
  (/^[gv]$/.test(open.kind) && kind === 'size' && containers.test(open.after));

/** "24 tins" counts, whatever else a saying has in the place of its number. */
const countsAlike = (open: Slot, slot: Slot): boolean =>
  open.kind !== 'n' || containers.test(open.after) === containers.test(slot.after);

/** How sure the words beside a slot say that it is this one: "2 hours", "at 15". */
const placeIn = (open: Slot, { before, after }: Slot): number =>
  (open.before === before ? 2 : 0) + (open.after === after && after !== '' ? 1 : 0);

/** Which of a message's slots goes into which of a saying's; undefined where they do not pair off. */
const pairs = (saying: Features, message: Features): ReadonlyMap<string, string> | undefined => {
  const left = [...message.slots];
  const filled = new Map<string, string>();
  for (const open of saying.slots.toSorted((a, b) => Number(a.kind === 'i') - Number(b.kind === 'i'))) {
    // Of two ingredients the word beside says which is which: "instead of beeswax", "with candelilla".
    const isTwin = saying.slots.filter((other) => fits(open, other) || fits(other, open)).length > 1;
    const may = left.filter(
      (slot) =>
        fits(open, slot) &&
        countsAlike(open, slot) &&
        isSameThing(amountOf(saying.slots, open), amountOf(message.slots, slot)),
    );
    const best = may.toSorted((a, b) => placeIn(open, b) - placeIn(open, a))[0];
    const at = best && (!isTwin || placeIn(open, best) > 0) ? left.indexOf(best) : -1;
    const found = left[at];
    if (!found) return undefined;
    filled.set(open.text, valueFor(open, found));
    left.splice(at, 1);
  }
  return filled;
};

interface Like {
  readonly plain: string;
  readonly alike: number;
  readonly filled: ReadonlyMap<string, string>;
}

/** How like a saying a message with these features has to be. */
const leastOf = ({ slots, words }: Features, least: number): number => {
  if (slots.length > 0) return least;
  return Math.max(least, words.size < leastWords ? leastAlikeInFewWords : leastAlikeWithoutThings);
};

/** One word without a thing is enough only to go on from the message before. */
const isEnough = ({ slots, words }: Features, after: string | undefined): boolean =>
  words.size > (slots.length > 0 || after ? 0 : 1);

const mayMean = (saying: Features, message: Features): boolean =>
  message.pointed.every((word) => saying.words.has(word));

/** What a message and a saying have to have in common: the things in them, and the words that turn a meaning round. */
const shelfOf = (features: Features): string => `${signatureOf(features)}|${features.turns}`;

interface Weighed extends Saying {
  /** Weight of all its words together. */
  readonly weight: number;
}

/** Sayings, with the weight of each word: one that stands under few meanings tells more. */
export class Sayings {
  readonly #all: Saying[] = [];
  readonly #meanings = new Map<string, Set<string>>();
  #byShelf: ReadonlyMap<string, readonly Weighed[]> | undefined;
  #weights = new Map<string, number>();
  #compared = new WeakMap<Features, readonly Like[]>();

  add(sayings: readonly Saying[]): void {
    this.#all.push(...sayings);
    this.#byShelf = undefined;
    this.#compared = new WeakMap();
    for (const { features, plain } of sayings) {
      for (const word of features.words) {
        const under = this.#meanings.get(word) ?? new Set();
        this.#meanings.set(word, under.add(plain));
      }
    }
  }

  /** True for a word that stands in some saying. */
  knows(word: string): boolean {
    return this.#meanings.has(word);
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
    if (this.#byShelf) return this.#byShelf;
    const count = new Set(this.#all.map(({ plain }) => plain)).size;
    const weightOf = (under: number): number => Math.log(1 + count / under) / Math.log(1 + count);
    this.#weights = new Map([...this.#meanings].map(([word, under]) => [word, weightOf(under.size)]));
    const byShelf = new Map<string, Weighed[]>();
    for (const saying of this.#all) {
      const weighed = { ...saying, weight: this.#weightOf(saying.features.words) };
      const key = shelfOf(saying.features);
      const others = byShelf.get(key);
      if (others) others.push(weighed);
      else byShelf.set(key, [weighed]);
    }
    this.#byShelf = byShelf;
    return byShelf;
  }

  /** From 0 to 1: how much of what a message and a saying say is said by both. */
  #alike({ features, weight }: Weighed, message: ReadonlySet<string>, messageWeight: number): number {
    let both = 0;
    for (const word of features.words) if (message.has(word)) both += this.#weight(word);
    const all = messageWeight + (weight - both) * unsaidWeight;
    return all === 0 ? 0 : both / all;
  }

  /** A message is compared once, however like a saying it has to be for one purpose or another. */
  #likesOf(message: Features, reading: Reading, goingOn: boolean): readonly Like[] {
    if (goingOn) return this.#likes(message, reading, goingOn);
    const before = this.#compared.get(message);
    if (before) return before;
    const likes = this.#likes(message, reading, goingOn);
    this.#compared.set(message, likes);
    return likes;
  }

  /** The meanings a message may have, likeliest first, each with the saying that is most like it. */
  #likes(message: Features, reading: Reading, goingOn: boolean): Like[] {
    const same = this.#weighed().get(shelfOf(message)) ?? [];
    const possible = same.filter(
      ({ features, after }) =>
        (after ? after === reading.last?.topic : !goingOn) &&
        isEnough(message, after) &&
        mayMean(features, message),
    );
    const messageWeight = this.#weightOf(message.words);
    const best = new Map<string, Like>();
    for (const saying of possible) {
      const { features, plain } = saying;
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
   * @param goingOn true to look only among sayings that go on from the message before.
   */
  plainsOf(reading: Reading, leastAlike: number, goingOn = false): readonly string[] {
    const plains = this.#plainsAmong(featuresOf(reading), reading, leastAlike, goingOn);
    return plains.length > 0
      ? plains
      : this.#plainsAmong(datedFeaturesOf(reading), reading, leastAlike, goingOn);
  }

  #plainsAmong(
    looks: readonly Features[],
    reading: Reading,
    leastAlike: number,
    goingOn: boolean,
  ): readonly string[] {
    for (const message of looks) {
      const likes = this.#likesOf(message, reading, goingOn);
      const [first] = likes;
      if (!first || first.alike < leastOf(message, leastAlike)) continue;
      return likes
        .filter(({ alike }) => first.alike - alike < leastAhead)
        .slice(0, mostPlains)
        .map(({ plain, filled }) =>
          [...filled].reduce((text, [open, value]) => text.replaceAll(open, () => value), plain),
        );
    }
    return [];
  }
}
