import { lotKey } from '../../core/bench/codes.ts';
import type { Lot } from '../../core/bench/state.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { lotMeant } from './bench-reading.ts';
import { asksOrPlans, type BenchText } from './bench-text.ts';
import { isAmount } from './stock-amount.ts';
import { priceTold } from './stock-price.ts';

const priceCue =
  /\b(?:costs?|costed|paid|pay|prices?|priced|invoice|bill|receipt|charged?s?|came to|comes to|spent|worth|(?:was|were) (?=\d+[.,]\d\d\b(?! ?(?:k?g|ml|l|oz|lb)\b))|was bought for|bought for|for it)\b|[€£$]|\b(?:euros?|eur|gbp|quid|usd|dollars?)\b/i;
/** "It was 12.40 and not 14.20": the one that is denied is none. */
const denied =
  /,?\s*(?:and |but )?(?:not|instead of|rather than)\s+(?:[€£$]\s?)?\d+(?:[.,]\d\d?)?(?:\s?(?:€|£|\$|euros?|eur))?/i;

const otherThing = /^[RMt%]$/;

/** "The jojoba oil cost 24.50": of the only lot of it, where that has no price yet. */
const unpricedLot = (reading: Reading, { rest, lots }: BenchText['bench']): Lot | undefined => {
  const [name, second] = rest.items.filter(({ letter, generic }) => letter === 'i' && !generic);
  const [id, other] = name?.ingredients ?? [];
  if (lots.length > 0 || second || other !== undefined || rest.items.some(isAmount)) return undefined;
  const [only, more] = [...reading.bench.lots.values()].filter(({ ingredient }) => ingredient === id);
  const isPast = /\b(?:cost|paid|was|came to|charged|bill|invoice|receipt)\b/i.test(rest.text);
  return only && !more && !only.price && isPast && !perUnit.test(rest.text) ? only : undefined;
};
const perUnit =
  /\b(?:per|a|the|for (?:a|one|each)) (?:k?g|kilo|gram|litre|ml|ounce|oz|pound|lb|bottle|bag|tub|pack)\b|\/|\bcosts\b/i;

/** "I paid 21.50 for CH-41", "price of AP4: 12.40": what a lot on the shelf cost, told later. */
export const claimPriced = (reading: Reading, { bench }: BenchText): Claim | undefined => {
  const { rest } = bench;
  const said = lotMeant(bench);
  const lot = said ? reading.bench.lots.get(lotKey(said.code)) : unpricedLot(reading, bench);
  if (!lot || !priceCue.test(rest.text) || asksOrPlans(rest.text)) return undefined;
  if (rest.items.some((item) => otherThing.test(item.letter))) return undefined;
  const not = denied.exec(rest.text);
  const items = rest.items.filter(
    ({ from, to }) => !not || to <= not.index || from >= not.index + not[0].length,
  );
  // "120 g of K12 went, it cost 3 euros" tells of more than a price; "18 per 500 g" does not.
  if (items.some(isAmount) && !/\b(?:per|for|a)\b/i.test(rest.text)) return undefined;
  if (
    /\b(?:these days|nowadays|usually|at the moment|now)\b|\b(?:at|in) the (?:shop|store|market|supermarket)\b/i.test(
      rest.text,
    )
  )
    return undefined;
  if (/\b(?:used|threw|opened|sold|gave|spilt|spilled|left)\b/i.test(rest.text)) return undefined;
  const told = priceTold({ from: 0, to: rest.text.length, items }, items.filter(isAmount), rest, {
    amount: lot.gotG,
    unit: 'g',
  });
  if (told.trouble) return refuse(told.trouble, 3);
  const price = told.paid ?? told.price;
  return price === undefined
    ? undefined
    : claim({ action: 'priced', lot: lot.lot, price, ...defined({ currency: told.currency }) }, 3.4);
};
