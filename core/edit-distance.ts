import { distance } from 'fastest-levenshtein';

const swapped = (word: string, at: number): string =>
  word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2);

/**
 * Letters to add, drop or change to get from one word to the other; two neighbouring letters in the wrong order count
 * as one slip (one such pair is looked for). Above `limit` the figure may be one too high.
 */
export const slips = (a: string, b: string, limit: number): number => {
  const edits = distance(a, b);
  if (edits < 2 || edits > limit + 1) return edits;
  for (let at = 0; at + 1 < a.length; at += 1) {
    if (a.charAt(at) !== a.charAt(at + 1) && distance(swapped(a, at), b) === edits - 2) return edits - 1;
  }
  return edits;
};

const soundRules: readonly (readonly [RegExp, string])[] = [
  [/[ck]+s/g, 'x'],
  [/ck|ch(?=[lr])|qu/g, 'k'],
  [/ph/g, 'f'],
  [/c(?=[eiy])/g, 's'],
  [/c(?!h)/g, 'k'],
  [/z/g, 's'],
  [/w/g, 'v'],
  [/(?:ie|ee|ey|y|i)$/g, 'i'],
  [/y/g, 'i'],
  [/(.)\1+/g, '$1'],
];

/** A rough spelling by sound: "wacks" and "wax", "karnauba" and "carnauba", "sheea" and "shea" come out the same. */
export const soundOf = (word: string): string =>
  soundRules.reduce((sound, [pattern, letters]) => sound.replace(pattern, letters), word);
