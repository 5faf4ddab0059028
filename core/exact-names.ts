import { type AmbiguousName, ambiguousNames } from './data/ambiguous-names.ts';
import { otherThings } from './data/other-things.ts';
import { processWords, purityWords } from './data/spellings.ts';
import { nameIndex } from './name-index.ts';
import { nameKey } from './name-key.ts';

/** The look-up tables are built at the first question, not on import. */
const lazily = <T>(build: () => T): (() => T) => {
  let built: T | undefined;
  return () => {
    built ??= build();
    return built;
  };
};

/** Every name's key with the ids it stands for. */
export const allNames = lazily(nameIndex);

const others = lazily((): ReadonlySet<string> => new Set(otherThings.map(nameKey)));

const questions = lazily(
  (): ReadonlyMap<string, AmbiguousName> =>
    new Map(ambiguousNames.flatMap((entry) => entry.names.map((name) => [nameKey(name), entry]))),
);

/** Most words in a typed name. Longer runs of words need not be looked up. A test keeps it in step with the names. */
export const longestName = 8;

const without = (key: string, drop: (word: string) => boolean): string =>
  key
    .split(' ')
    .filter((word) => !drop(word))
    .join(' ');

const isPurity = (word: string): boolean => purityWords.has(word);
const isQualifier = (word: string): boolean => purityWords.has(word) || processWords.has(word);

/**
 * The name without words for purity, shape and process ("organic beeswax pellets", "unrefined shea"); undefined when
 * nothing is dropped or nothing is left. Process words go only when the rest is no name with them.
 */
const plainName = (key: string): string | undefined => {
  const words = key.split(' ');
  if (!words.some(isQualifier) || words.every(isQualifier)) return undefined;
  const purer = without(key, isPurity);
  return allNames().has(purer) || others().has(purer) ? purer : without(key, isQualifier);
};

/** The key as it stands in the tables, with words for purity and process dropped if need be. */
const settled = (key: string): string => {
  if (allNames().has(key) || others().has(key)) return key;
  const plain = plainName(key);
  return plain !== undefined && !questions().get(plain)?.alone ? plain : key;
};

/**
 * Ids of the ingredients that carry this name, given its {@link nameKey}. More than one id: the name means two
 * things, see {@link ambiguousName}. Undefined: no such name, or a name known to be something else.
 */
export const exactName = (key: string): readonly string[] | undefined => {
  const name = settled(key);
  return others().has(name) ? undefined : allNames().get(name);
};

/** What to ask back about this name, given its {@link nameKey}; with one id it is a note, not a question. */
export const ambiguousName = (key: string): AmbiguousName | undefined => questions().get(settled(key));

/**
 * True for names of things that are not in the library although a part of the name is ("peanut butter", "bitter
 * almond oil", "lavender water"): nothing inside such a name may be read as an ingredient.
 */
export const isOtherThing = (key: string): boolean => others().has(settled(key));
