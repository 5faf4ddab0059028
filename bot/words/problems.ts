import type { RecipeProblem } from '../../core/resolve.ts';
import type { ScaleProblem } from '../../core/target.ts';
import type { Trouble } from '../answer.ts';
import { plain, readable } from './numbers.ts';
import { shortName } from './warnings.ts';

type Words<P extends { readonly code: string }> = {
  [C in P['code']]: (problem: Extract<P, { code: C }>) => Trouble;
};

const badQuantity = (text: string): Trouble => ({ code: 'bad-quantity', text });
const missing = (text: string): Trouble => ({ code: 'missing', text });

const recipeWords: Words<RecipeProblem> = {
  'unknown-ingredient': ({ ingredient }) => ({
    code: 'unknown-ingredient',
    text: `I do not know the ingredient "${ingredient}". Ask for one I know, for example "what is shea butter".`,
  }),
  'no-density': ({ ingredient, unit }) =>
    missing(
      `${shortName(ingredient)} has no density I could turn a ${unit} into grams with. Weigh it and give grams, for example "5 g ${shortName(ingredient)}".`,
    ),
  'no-lines': () =>
    missing(
      'There is nothing in that recipe that stays in the tin. Add the oil, butter or wax, for example "80 g olive oil".',
    ),
  'zero-line': ({ ingredient }) =>
    badQuantity(`${shortName(ingredient)} comes to nothing. Give it an amount above zero or leave it out.`),
  'percent-sum': ({ sum }) =>
    badQuantity(
      `The percentages come to ${plain(sum, 2)} %, not 100 %. Correct a line, or let one fill up: "olive oil to 100".`,
    ),
  'two-rests': () => badQuantity('Only one line can be "the rest". Give the other one a figure.'),
  'rest-without-total': () =>
    missing(
      '"The rest" needs a total to fill up to, for example "olive oil to 100 g", or write all lines in percent.',
    ),
  'nothing-left-for-rest': ({ ingredient }) =>
    badQuantity(`The other lines already reach the total, so nothing is left for ${shortName(ingredient)}.`),
  'parts-beside-amounts': () =>
    badQuantity(
      'Parts and grams or drops do not mix: I cannot tell how big a part is. Write all lines in parts, or all in grams.',
    ),
};

const scaleWords: Words<Exclude<ScaleProblem, RecipeProblem>> = {
  'no-batch-size': () =>
    missing(
      'This recipe is written in shares, so there is no batch to multiply. Say how much to make, for example "to 500 g" or "to 24 tins of 15 ml".',
    ),
  'not-a-number': () =>
    badQuantity('That comes to no amount I can weigh. Try for example "to 24 tins of 15 ml" or "to 500 g".'),
  'not-in-recipe': ({ ingredient }) => ({
    code: 'not-found',
    text: `${shortName(ingredient)} is not in this recipe. Name something that is, for example "with my 80 g of beeswax".`,
  }),
  'batch-too-small': ({ totalG, lines, stepG }) => ({
    code: 'out-of-range',
    text: `${readable(totalG)} g is too little to share out over ${lines} lines on a scale that reads ${stepG} g. Make more, or weigh finer: "to the nearest 0.01 g".`,
  }),
  'batch-too-big': ({ totalG, mostG }) => ({
    code: 'out-of-range',
    text: `${readable(totalG / 1000)} kg is more than I am made for (${mostG / 1000} kg). Try a smaller batch, for example "to 5 kg".`,
  }),
};

const words = { ...recipeWords, ...scaleWords };

/** A problem of the sums, in words that say what would work. */
export const troubleOf = (problem: ScaleProblem): Trouble =>
  (words[problem.code] as (of: ScaleProblem) => Trouble)(problem);
