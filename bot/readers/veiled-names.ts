import { cueWords } from './cues.ts';
import { isChatter, isKnownWord } from './lexicon.ts';
import { ownWords } from './own-words.ts';
import { reactionCues, signWords } from './reaction-words.ts';
import { wordSet } from './word-list.ts';

/** Words of things that are made: readers may know by them what a recipe is for. */
const products = wordSet(
  `balm balms salve salves ointment butter butters stick sticks cream lip lips hand hands body foot feet oil oils baby child children kids`,
);

/** Words that carry a request, a day or a count without being in any list of names or units. */
const carrying = wordSet(`
  label labels stock price prices cost report trace undo import export reminder workshop bench book lot lots batch batches tin tins jar jars pot pots tube tubes
  sold sale gave given gift gifts poured pour made opened open bought used left kept sample test tests weigh weighed best before today yesterday daily weekly night morning
  monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december spring summer autumn winter
  one two three four five six seven eight nine ten dozen half double triple quarter first second third last next new old year month week day days minute minutes hour hours
  dry sun vegan binned thrown lost wasted broken mouldy rancid returned who where what why how when which not no never without firm soft hard bottom check show list help recipe version class course
`);

const signs = new Set([...reactionCues, ...signWords]);
const words = /[\p{L}\d'’]+/gu;
const says = (word: string): boolean => {
  const plain = word.toLowerCase();
  if (products.has(plain)) return false;
  return (
    /\d/.test(word) ||
    carrying.has(plain.replace(/['’]s$/, '')) ||
    ownWords.has(plain) ||
    cueWords.has(plain) ||
    signs.has(plain) ||
    (isKnownWord(plain) && !isChatter(plain))
  );
};

const letters = 'qxzvkj';

/** Letters that no word has, as many as the word has; another word gets others. */
const veilOfWord = (word: string, salt: number): string => {
  let seed = [...word.toLowerCase()].reduce(
    (sum, sign) => (sum * 31 + sign.charCodeAt(0)) % 99_991,
    7 + salt,
  );
  let before = '';
  const veil = [...word].map(() => {
    // The same letter twice in a row might be taken for a word that is drawn out.
    const left = [...letters].filter((letter) => letter !== before);
    before = left[seed % left.length] ?? 'q';
    seed = (seed * 48_271 + 11) % 99_991;
    return before;
  });
  return /^\p{Lu}/u.test(word) ? veil.join('').replace(/^./, (sign) => sign.toUpperCase()) : veil.join('');
};

/**
 * The name as long as it is, with every word that might be taken for part of a request made into letters that say nothing:
 * "Gold label balm" asks for no label. Undefined for a name whose words say nothing.
 */
const veilOf = (name: string, salt: number): string | undefined => {
  if (![...name.matchAll(words)].some(([word]) => says(word))) return undefined;
  return name.replace(words, (word) =>
    word.length > 2 && !products.has(word.toLowerCase())
      ? veilOfWord(word, salt)
      : says(word)
        ? veilOfWord(word, salt)
        : word,
  );
};

/** A group's names that say something, each with its veil. */
export interface Veils {
  readonly list: readonly { readonly name: string; readonly veil: string }[];
  /** The text with such names veiled; as long as it was. */
  veiled(text: string): string;
  /** The text with names in the place of their veils. */
  named(text: string): string;
}

const noVeils: Veils = { list: [], veiled: (text) => text, named: (text) => text };

interface Change {
  readonly from: string;
  readonly to: string;
}

const firstWord = (text: string): string => /^[\p{L}\d'’]*/u.exec(text)?.[0] ?? '';

/** Puts the second of each pair for the first wherever it stands as words of its own, the longest first. */
const changing = (pairs: readonly Change[]): ((text: string) => string) => {
  const byFirst = new Map<string, Change[]>();
  for (const pair of pairs.toSorted((one, other) => other.from.length - one.from.length)) {
    const from = pair.from.toLowerCase();
    const key = firstWord(from);
    byFirst.set(key, [...(byFirst.get(key) ?? []), { ...pair, from }]);
  }
  return (text) => {
    const lower = text.toLowerCase();
    // Some letters are longer in lower case: places would differ.
    if (lower.length !== text.length) return text;
    let done = 0;
    let plain = '';
    for (const { 0: word, index } of lower.matchAll(words)) {
      if (index < done) continue;
      const found = byFirst
        .get(word)
        ?.find(
          ({ from }) =>
            lower.startsWith(from, index) && !/[\p{L}\d]/u.test(lower.charAt(index + from.length)),
        );
      if (!found) continue;
      plain += text.slice(done, index) + found.to;
      done = index + found.from.length;
    }
    return plain + text.slice(done);
  };
};

/** @param names the saved names of one group. */
export const veilsFor = (names: readonly string[]): Veils => {
  const taken = new Set<string>();
  const list = names.flatMap((name, at) => {
    let veil = veilOf(name, 0);
    for (let salt = 1; veil !== undefined && taken.has(veil.toLowerCase()); salt += 1)
      veil = veilOf(name, at * 97 + salt);
    if (veil === undefined) return [];
    taken.add(veil.toLowerCase());
    return [{ name, veil }];
  });
  if (list.length === 0) return noVeils;
  return {
    list,
    veiled: changing(list.map(({ name, veil }) => ({ from: name, to: veil }))),
    named: changing(list.map(({ name, veil }) => ({ from: veil, to: name }))),
  };
};
