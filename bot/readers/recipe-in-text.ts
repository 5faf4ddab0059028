import type { Reading } from '../reading.ts';
import type { Token } from './tokens.ts';

const longestName = 5;
const mostTokens = 120;

/** The words from `from` on, up to a product word, that can stand in the name of a recipe. */
const nameFrom = ({ tokens, recipes }: Reading, from: number): string | undefined => {
  const run = tokens.slice(from, from + longestName);
  const end = run.findIndex(({ word }) => /^(?:balms?|salves?|lipbalms?)$/.test(word));
  const words = run.slice(0, end + 1);
  const isKnown = ({ kind, word }: Token): boolean =>
    kind === 'word' && (recipes.hasWord(word) || recipes.hasWord(word.replace(/s$/, '')));
  return end > 0 && words.every(isKnown) ? words.map(({ word }) => word).join(' ') : undefined;
};

/**
 * "The hand balm was made on 5 November. Label please": a saved recipe in a sentence that was passed over as talk, after
 * "the", "our" or "my" and up to its product word. Undefined where none or two fit.
 */
export const recipeInText = (reading: Reading): string | undefined => {
  if (reading.tokens.length > mostTokens) return undefined;
  for (const [at, { word }] of reading.tokens.entries()) {
    const said = /^(?:the|our|my|this)$/.test(word) ? nameFrom(reading, at + 1) : undefined;
    const [only, second] = said === undefined ? [] : reading.recipes.near(said);
    if (only && !second) return only.name;
  }
  return undefined;
};
