import type { Trouble } from '../answer.ts';
import { echo } from './ask-back.ts';
import type { Wish } from './scale-wish.ts';

export const scaleExample = 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml';

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const noRecipe = missing(
  `Which recipe shall I scale? Name a saved one or write it out: "${scaleExample}".`,
);

export const unknownRecipe = (said: string): Trouble => ({
  code: 'unknown-recipe',
  text: `I know no recipe called "${echo(said)}". Ask "list recipes" to see what is saved, or write the recipe out: ${scaleExample}.`,
});

export const whichRecipe = (names: readonly string[]): Trouble => ({
  code: 'unknown-recipe',
  text: `Which recipe do you mean: ${names.map((name) => `"${name}"`).join(', ')}? Write its full name.`,
});

export const notPlaced = (words: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I see a recipe to scale, but not what to do about "${echo(words.slice(0, 4).join(' '))}". Ask for the scaling alone, for example "${scaleExample}".`,
});

const contradiction = (wish: Wish): Trouble | undefined => {
  const total = wish.totalG !== undefined || wish.totalMl !== undefined;
  const kinds = [wish.count !== undefined, total, wish.factor !== undefined, wish.limit !== undefined];
  if (kinds.filter(Boolean).length < 2) return undefined;
  return {
    code: 'bad-quantity',
    text: 'You gave me two different amounts to make. Choose one: a number of containers, a total, a multiple, or what one ingredient allows.',
  };
};

const isWhole = (wish: Wish): boolean =>
  (wish.count !== undefined && wish.size !== undefined) ||
  ['totalG', 'totalMl', 'factor', 'limit'].some((key) => wish[key] !== undefined);

/** What a scale request still lacks, or says twice. */
export const targetTrouble = (wish: Wish): Trouble | undefined => {
  if (isWhole(wish)) return contradiction(wish);
  if (wish.count !== undefined) {
    return missing(`How much goes into each container? For example "${wish.count} tins of 15 ml".`);
  }
  if (wish.size !== undefined) {
    return missing('How many containers shall I fill? For example "24 tins of 15 ml".');
  }
  return missing(
    'How much do you want to make? For example "to 24 tins of 15 ml", "to 500 g" or "with my 80 g of beeswax".',
  );
};
