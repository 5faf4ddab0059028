import type { Reading } from '../reading.ts';
import { amountOf, type Features, featuresOf, isTalkWord, type Slot } from './features.ts';
import { type Saying, signatureOf } from './sayings.ts';

/** How much less alike the next meaning has to be. */
const leastAhead = 0.05;
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

const isEnough = ({ slots, words }: Features): boolean =>
  words.size > 0 && (slots.length > 0 || words.size >= leastWords);

const mayMean = (saying: Features, message: Features): boolean =>
  saying.turns === message.turns && message.pointed.every((word) => saying.words.has(word));

/** A list of sayings, with the weight of each word: one that stands under few meanings tells more. */
export class Sayings {
  readonly #bySignature = new Map<string, Saying[]>();
  readonly #meanings = new Map<string, Set<string>>();
  readonly #count: number;

  constructor(all: readonly Saying[]) {
    this.#count = new Set(all.map(({ plain }) => plain)).size;
    for (const saying of all) {
      const key = signatureOf(saying.features);
      const others = this.#bySignature.get(key);
      if (others) others.push(saying);
      else this.#bySignature.set(key, [saying]);
      for (const word of saying.features.words) {
        const under = this.#meanings.get(word) ?? new Set();
        this.#meanings.set(word, under.add(saying.plain));
      }
    }
  }

  #weight(word: string): number {
    const under = this.#meanings.get(word)?.size;
    if (under === undefined) return isTalkWord(word) ? talkWeight : strangeWeight;
    return Math.log(1 + this.#count / under) / Math.log(1 + this.#count);
  }

  #weightOf(words: Iterable<string>): number {
    let all = 0;
    for (const word of words) all += this.#weight(word);
    return all;
  }

  /** From 0 to 1: how much of what a message and a saying say is said by both. */
  #alike(saying: ReadonlySet<string>, message: ReadonlySet<string>): number {
    const both = this.#weightOf([...message].filter((word) => saying.has(word)));
    const unsaid = this.#weightOf([...saying].filter((word) => !message.has(word)));
    const all = this.#weightOf(message) + unsaid * unsaidWeight;
    return all === 0 ? 0 : both / all;
  }

  #likes(message: Features, reading: Reading): Like[] {
    const best = new Map<string, Like>();
    for (const { features, plain, after } of this.#bySignature.get(signatureOf(message)) ?? []) {
      if (!mayMean(features, message) || (after && after !== reading.last?.topic)) continue;
      const alike = this.#alike(features.words, message.words);
      if (alike <= (best.get(plain)?.alike ?? 0)) continue;
      const filled = pairs(features, message);
      if (filled) best.set(plain, { plain, alike, filled });
    }
    return [...best.values()].toSorted((a, b) => b.alike - a.alike);
  }

  /** The plain form of the saying that is most like a message, its slots filled; undefined where none is like it enough. */
  plainOf(reading: Reading, leastAlike: number): string | undefined {
    const message = featuresOf(reading);
    if (!message || !isEnough(message)) return undefined;
    const [first, second] = this.#likes(message, reading);
    const least = message.slots.length > 0 ? leastAlike : Math.max(leastAlike, leastAlikeWithoutThings);
    if (!first || first.alike < least) return undefined;
    if (second && first.alike - second.alike < leastAhead) return undefined;
    return [...first.filled].reduce((text, [open, value]) => text.replaceAll(open, value), first.plain);
  }
}
