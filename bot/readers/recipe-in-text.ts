import type { Reading } from '../reading.ts';

const longestName = 5;
const mostTokens = 120;

/**
 * "The hand balm was made on 5 November. Label please": a saved recipe in a sentence that was passed over as talk, after
 * "the", "our" or "my" and up to its product word. Undefined where none or two fit.
 */
export const recipeInText = ({ tokens, recipes }: Reading): string | undefined => {
  if (tokens.length > mostTokens) return undefined;
  for (const [at, token] of tokens.entries()) {
    if (!/^(?:the|our|my|this)$/.test(token.word)) continue;
    for (let length = longestName; length > 1; length -= 1) {
      const run = tokens.slice(at + 1, at + 1 + length);
      if (run.length < length || run.some(({ kind }) => kind !== 'word')) continue;
      if (!/^(?:balms?|salves?|lipbalms?)$/.test(run.at(-1)?.word ?? '')) continue;
      const words = run.map(({ word }) => word);
      if (!words.every((word) => recipes.hasWord(word.replace(/s$/, '')) || recipes.hasWord(word))) continue;
      const [only, second] = recipes.near(words.join(' '));
      if (only && !second) return only.name;
    }
  }
  return undefined;
};
