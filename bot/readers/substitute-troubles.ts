import type { Trouble } from '../answer.ts';
import { shortName } from '../words/warnings.ts';
import { echo, orList } from './ask-back.ts';

export const substituteExample = 'swap beeswax for candelilla in Fernlea hand balm';

const missing = (text: string): Trouble => ({ code: 'missing', text });

export const inWhat = missing(
  `In which recipe? Name a saved one or write it out: "${substituteExample}", "nut-free 20% beeswax, 80% almond oil".`,
);

export const noRecipeCalled = (said: string): Trouble => ({
  code: 'unknown-recipe',
  text: `I know no recipe called "${echo(said)}". Ask "list recipes" to see what is saved, or write the recipe out: "swap beeswax for candelilla in 20% beeswax, 80% olive oil".`,
});

export const onlyAll: Trouble = {
  code: 'not-understood',
  text: `I did not get how much of it to swap. Try "${substituteExample}", or "swap half the beeswax for candelilla".`,
};

export const howMuchOf = (what: string): Trouble =>
  missing(`How much of the ${what}? For example "swap half the ${what} for …", or "swap 5 % ${what} for …".`);

export const notPlaced = (words: readonly string[]): Trouble => ({
  code: 'not-understood',
  text: `I see a recipe to change, but not what to do about "${echo(words.slice(0, 4).join(' '))}". Ask for the change alone, for example "${substituteExample}".`,
});

export const replacesWhich = (to: string, own: readonly string[]): Trouble =>
  own.length > 1
    ? missing(
        `What shall ${shortName(to)} replace: ${orList(own.map(shortName))}? For example "swap ${shortName(own[0] ?? '')} for ${shortName(to)}".`,
      )
    : missing(
        `What shall ${shortName(to)} replace? Nothing in this recipe does the same job. For example "${substituteExample}".`,
      );
