import type { Item } from './item.ts';

/** An ingredient or a container: what a price can be of. */
export const isThing = (item: Item): boolean => item.letter === 'i' || item.letter === 'c';
const isBreak = (item: Item): boolean => /^[,;\nA.]$/.test(item.letter);

const hasMoney = (segment: readonly Item[]): boolean =>
  segment.some((item) => item.letter === 'n' || (item.letter === 't' && item.unit === 'C'));

/** One segment for each thing with its price; a comma inside ("beeswax, 500 g, 14.50") ends nothing. */
export const priceSegments = (items: readonly Item[]): Item[][] => {
  const list: Item[][] = [[]];
  for (const [at, item] of items.entries()) {
    const current = list.at(-1) ?? [];
    // "15 per kg plus VAT" is one price.
    if (!isBreak(item) || /^(?:vat|tax|gst)$/.test(items[at + 1]?.word ?? '')) {
      current.push(item);
      continue;
    }
    const laterThing = items.slice(at + 1).some(isThing);
    if (current.some(isThing) && hasMoney(current) && laterThing) list.push([]);
  }
  return list.filter((segment) => segment.length > 0);
};
