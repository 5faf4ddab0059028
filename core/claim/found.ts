import type { ClaimWord } from '../data/rules/claim-words.ts';
import type { ClaimMatch } from './match.ts';
import { isDenied } from './negation.ts';
import { patternOf } from './words.ts';

/** Words found in a wording, and where. */
export interface Found {
  readonly words: string;
  readonly at: number;
}

/** The first place where one of the stems stands. */
export const find = (text: string, stems: readonly string[]): Found | undefined => {
  const found = stems.flatMap((stem) =>
    [...text.matchAll(patternOf(stem))].map((match) => ({ words: match[0], at: match.index })),
  );
  return found.toSorted((a, b) => a.at - b.at || b.words.length - a.words.length)[0];
};

/** Every place counts: a word denied once and promised once is promised. */
export const firstPromise = (
  text: string,
  stems: readonly string[],
): { found: Found; denied: boolean } | undefined => {
  const all = stems.flatMap((stem) =>
    [...text.matchAll(patternOf(stem))].map((match) => ({ words: match[0], at: match.index })),
  );
  const promised = all.find(({ at }) => !isDenied(text, at));
  const [first] = all;
  if (promised) return { found: promised, denied: false };
  return first ? { found: first, denied: true } : undefined;
};

/** Different words of one row that are told, at most. */
const mostTold = 6;

/** Each of the words that stands in the text, once: promised where it is promised anywhere. */
export const everyPromise = (
  text: string,
  stems: readonly string[],
): readonly { readonly found: Found; readonly denied: boolean }[] => {
  const places = stems.flatMap((stem) =>
    [...text.matchAll(patternOf(stem))].map((match) => ({ words: match[0], at: match.index })),
  );
  const longest = places.filter(
    (place) =>
      !places.some(
        (other) =>
          other.words.length > place.words.length &&
          other.at <= place.at &&
          other.at + other.words.length >= place.at + place.words.length,
      ),
  );
  const told = new Map<string, { found: Found; denied: boolean }>();
  for (const found of longest.toSorted((a, b) => a.at - b.at)) {
    const denied = isDenied(text, found.at);
    const before = told.get(found.words);
    if (!before || (before.denied && !denied)) told.set(found.words, { found, denied });
  }
  return [...told.values()].slice(0, mostTold);
};

export const matchOf = (
  word: ClaimWord,
  found: Found,
  verdict: 'reword' | 'medicinal',
  more: Partial<ClaimMatch> = {},
): ClaimMatch => ({
  words: found.words,
  verdict,
  why: word.why,
  ...(word.instead ? { instead: word.instead } : {}),
  ...(word.leaveOut ? { leaveOut: true } : {}),
  source: word.source,
  status: word.status,
  ...more,
});

export const deniedWhy = 'a denial still carries the word: leave it out';
