import { isExpired } from '../../core/bench/draw.ts';
import type { Lot } from '../../core/bench/state.ts';
import type { FigureValue } from '../figures.ts';
import { shortName } from './warnings.ts';

/** A lot's figures, as the contract names them. Prices are told only where the answer is private. */
export const lotFigures = (lot: Lot, today: string, withPrice = false): FigureValue => ({
  lot: lot.lot,
  ingredient: lot.ingredient,
  ...(lot.herbs ? { infused_with: [...lot.herbs] } : {}),
  grams_left: lot.leftG,
  grams_got: lot.gotG,
  best_before: lot.bestBefore ?? null,
  expired: isExpired(lot, today),
  got_on: lot.on,
  opened: lot.opened ?? null,
  supplier: lot.supplier ?? null,
  ...(withPrice && lot.price ? { price: { amount: lot.price.amount, currency: lot.price.currency } } : {}),
});

/** "olive oil", "calendula-infused olive oil". */
export const lotName = ({ ingredient, herbs }: Pick<Lot, 'ingredient' | 'herbs'>): string => {
  if (!herbs || herbs.length === 0) return shortName(ingredient);
  const oil = ingredient === 'infused-oil' ? 'oil' : shortName(ingredient);
  return `${herbs.map(shortName).join(' and ')}-infused ${oil}`;
};
