import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { isAmount } from './stock-amount.ts';
import { isThing } from './stock-pieces.ts';

/** "Two lots of olive oil: …": each of them follows with its own amount. */
export const countsLots = ({ letter, to, value }: Item, text: string): boolean =>
  letter === 'n' &&
  (/^\s*(?:lots|kinds|sorts|deliveries|parcels)\b/i.test(text.slice(to, to + 14)) ||
    (/^\s*(?:bottles?|bags?|tubs?|packs?|jars?|blocks?|tins?|cans?)\b/i.test(text.slice(to, to + 10)) &&
      [...text.slice(to).matchAll(/\d ?(?:kg|g|ml|l|oz|lb)\b/gi)].length === value));

/** "There is some old wax about, 120 g beeswax …": what leads to a purchase has a kind at most, and no amount. */
const afterLead = (items: readonly Item[]): readonly Item[] => {
  const end = items.findIndex(({ letter }) => letter === ':' || letter === ',');
  const [lead, after] = [items.slice(0, end), items.slice(end + 1)];
  const isLead =
    end > 0 &&
    lead.some(({ generic }) => generic) &&
    lead.every((item) => !isAmount(item) && (!isThing(item) || item.generic));
  return isLead && after.some((item) => isThing(item) && !item.generic) ? after : items;
};

const forWhat =
  /\bfor (?:(?:the|our|my|an?|another|some|more)(?: (?:new|first|next|second|third|big|little|own|usual|spring|summer|autumn|winter|christmas|easter))*|making) $/i;

/** "400 g sunflower oil for my new lavender oil": what it is going to be used for has no amount of its own. */
const isMadeFrom = (item: Item, at: number, items: readonly Item[], text: string): boolean => {
  const next = items[at + 1];
  return (
    isThing(item) &&
    forWhat.test(text.slice(Math.max(0, item.from - 40), item.from)) &&
    !(next && isAmount(next)) &&
    items.some((other) => other !== item && isThing(other))
  );
};

/** "For the oil I bought 700 g of sunflower": of a kind nothing is bought beside what is named, if it has no amount. */
export const withoutHeading = (rest: Reading): Reading => {
  const led = afterLead(rest.items).filter(
    (item, at, all) => !isMadeFrom(item, at, all, rest.text) && !countsLots(item, rest.text),
  );
  const isNamed = led.some((item) => isThing(item) && !item.generic);
  const items = led.filter((item, at) => {
    const before = led[at - 1]?.letter === 'o' ? led[at - 2] : led[at - 1];
    return !isNamed || !item.generic || (before !== undefined && isAmount(before));
  });
  return items.some(isThing) ? { ...rest, items } : rest;
};
