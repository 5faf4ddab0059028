import { anyWord, type Reading } from '../reading.ts';
import { herbOf, isAmountItem, isHerbWord, isOil, type RatioRead } from './infuse-amounts.ts';
import type { Names } from './infuse-names.ts';
import { infuseNouns, infuseVerbs } from './infuse-words.ts';
import type { Item } from './item.ts';

/** Recipes that merely have an infused oil in them belong to other topics. */
export const elsewhere =
  /\b(?:save|saved|store|record|rename|show|delete|remove|update|edit|swap|replace|substitute|label|cost|costs|price|prices|batch LOT|melts?|melting point|check|expires?|shelf|vegan)\b/i;

const isInfusedOilItem = (item: Item): boolean => item.ingredients?.[0] === 'infused-oil';

/** "… in grams" asks for a conversion. */
const asksUnit = (items: readonly Item[]): boolean =>
  items.some((item, at) => item.letter === 'u' && /[IT]/.test(items[at - 1]?.letter ?? ''));

/** What makes it no infusion: another question's word, a recipe, a container, a unit to convert into. */
const isOther = (reading: Reading, ratio: RatioRead): boolean => {
  const { items } = reading;
  // "350 g strained calendula oil at 1:8, what do I weigh" asks for an infusion all the same.
  const strained = ratio.ratio !== undefined && items.some(isInfusedOilItem);
  const cue = (!strained && anyWord(reading, otherCues)) || anyWord(reading, ['drop', 'drops']);
  const tins = items.some(
    ({ letter }, at) =>
      letter === 'c' && items.slice(Math.max(0, at - 3), at).some((each) => each.letter === 'n'),
  );
  // "My jar takes 400 g of oil": one jar is what an infusion stands in.
  return (
    cue ||
    tins ||
    items.some(({ letter, word }) => letter === 'R' || (letter === 'c' && !/^jar/.test(word))) ||
    asksUnit(items)
  );
};

/** "100 g lemon balm into 500 g olive oil", "25 g of dried lavender and 200 g oil, what comes out": nothing but the two. */
const goesIn = ({ items, text }: Reading, names: Names): boolean => {
  const two = names.herb !== undefined && names.oil !== undefined && names.others.length === 0;
  const weighed = items.filter(isAmountItem).length;
  return two && (weighed === 1 || weighed === 2) && /\b(?:in|into|what (?:comes|do i get))\b/i.test(text);
};

/** "250 g calendula oil", "use 1:5 for 40 g calendula": an infusion by what is named, without its words. */
const byNames = (reading: Reading, ratio: RatioRead, names: Names): number => {
  const { items } = reading;
  if (isOther(reading, ratio)) return 0;
  const amount = items.some(isAmountItem);
  const oil = items.some((item) => item.letter === 'i' && isOil(item));
  const result = items.some(isInfusedOilItem);
  const asks = anyWord(reading, ['how', 'ratio', 'yield']) || ratio.ratio !== undefined;
  const herb =
    names.herb !== undefined ||
    items.some((item) => isHerbWord(item) || (item.letter === 'i' && herbOf(item) !== undefined));
  if (herb && (oil || result) && asks) return 2.7;
  if (goesIn(reading, names)) return 2.5;
  if (herb && result && (amount || anyWord(reading, ['make', 'making', 'prepare']))) return 2.4;
  return herb && amount && ratio.ratio !== undefined && !names.others.length ? 2.3 : 0;
};

/** Words that make it a question of another kind, however it is named. */
const otherCues =
  'scale scaling rescale recipe weigh weighs convert conversion density inci vegan allergen'.split(' ');

/** How sure it is that a message is about an infusion: 2.8 by a verb, 2.7 by a noun, less by names, 0 not at all. */
export const concerns = (reading: Reading, ratio: RatioRead, names: Names): number => {
  if (anyWord(reading, infuseVerbs)) return 2.8;
  // Oil that is strained off a herb was infused.
  if (names.herb !== undefined && ratio.ratio !== undefined && anyWord(reading, ['straining', 'strained']))
    return 2.8;
  const asks = anyWord(reading, ['how', 'ratio', 'yield']) || ratio.ratio !== undefined;
  const telling =
    asks ||
    /\b(?:cold|warm|hot|slow|solar|sun|fresh)\b/i.test(reading.text) ||
    /^\W*(?:an? )?infusion\b/i.test(reading.text);
  if (anyWord(reading, infuseNouns) && telling) return 2.7;
  return byNames(reading, ratio, names);
};
