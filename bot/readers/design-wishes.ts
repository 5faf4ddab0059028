import { defined } from '../../core/defined.ts';
import type { Form, WantedIngredient } from '../../core/design/wishes.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Reading } from '../reading.ts';
import { formOfWord, takeForm, takeHottest, takeShelfLife } from './design-figures.ts';
import { type PriceLimit, takePrice } from './design-price.ts';
import { takeWith } from './design-with.ts';
import { takeWithout } from './design-without.ts';
import { veganWords } from './design-words.ts';
import { takeStocked } from './substitute-choice.ts';
import type { Board } from './target.ts';

/** The wishes as a request carries them; what was not said is missing. */
export interface DesignRequest {
  readonly form?: Form;
  readonly survivesC?: number;
  readonly vegan?: boolean;
  readonly without?: readonly string[];
  readonly with?: readonly WantedIngredient[];
  readonly shelfLifeMonths?: number;
  readonly price?: boolean;
  readonly priceLimit?: PriceLimit;
  readonly stocked?: boolean;
  /** Place, from 0, of the proposal that is to be told in full. */
  readonly show?: number;
}

export interface WishesRead {
  readonly wishes: DesignRequest;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

export const unlessEmpty = <T>(list: readonly T[]): readonly T[] | undefined =>
  list.length > 0 ? list : undefined;

/** "It needn't be vegan": a wish taken back. */
export const notVegan =
  /(?:\b(?:needn't|not|no need (?:for it )?to|non)|n't)[ -](?:(?:have|need|necessarily|be|to|it|strictly) ){0,4}vegan\b/i;

export const readWishes = (board: Board, reading: Reading, veganBefore: boolean): WishesRead => {
  const { price, limit, assumed: tinAssumed } = takePrice(board, reading);
  const { stocked } = takeStocked(board, reading);
  const hottest = takeHottest(board, reading);
  const shelfLifeMonths = takeShelfLife(board);
  const form = takeForm(board, reading) ?? (limit?.container ? formOfWord(limit.container) : undefined);
  const out = takeWithout(board);
  const animal = out.without.includes('animal');
  const vegan = (anyWord(reading, veganWords) && !notVegan.test(reading.corrected)) || animal;
  const wanted = takeWith(board, vegan || veganBefore);
  const trouble = out.trouble ?? wanted.trouble;
  return {
    wishes: defined({
      form,
      survivesC: hottest.value,
      vegan: vegan || undefined,
      without: unlessEmpty(out.without.filter((word) => word !== 'animal')),
      with: unlessEmpty(wanted.with),
      shelfLifeMonths,
      price,
      priceLimit: limit,
      stocked,
    }),
    assumed: [hottest.assumed, tinAssumed, ...wanted.assumed].filter((text) => text !== undefined),
    ...(trouble ? { trouble } : {}),
  };
};
