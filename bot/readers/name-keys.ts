import { nameWords, wordKey } from '../../core/names.ts';
import type { Token } from './tokens.ts';

/** Signs that may stand inside a name: "Simmondsia Chinensis (Jojoba) Seed Oil", "sea-buckthorn". */
const insideNames = new Set(['-', '(', ')', '/', '&', '.', "'"]);

const plainWord = /^[a-z]+$/;
const noKeys: readonly string[] = [];
const barrier: readonly string[] = [''];

/** A word's keys (two for a compound such as "sheabutter"), a number's digits; a barrier for signs no name crosses. */
const keysOf = (token: Token): readonly string[] => {
  if (token.kind === 'word') {
    const key = plainWord.test(token.word)
      ? wordKey(token.word)
      : nameWords(token.word).map(wordKey).join(' ');
    return key.includes(' ') ? key.split(' ') : [key];
  }
  if (token.kind === 'number') return [token.text.replaceAll(',', '.')];
  return insideNames.has(token.text) ? noKeys : barrier;
};

/** Keys of the tokens that can be part of a name, and at which token each stands. */
export interface NameKeys {
  readonly keys: readonly string[];
  readonly places: readonly number[];
}

export const keysIn = (list: readonly Token[]): NameKeys => {
  const keys: string[] = [];
  const places: number[] = [];
  for (const [index, token] of list.entries()) {
    for (const key of keysOf(token)) {
      keys.push(key);
      places.push(index);
    }
  }
  return { keys, places };
};
