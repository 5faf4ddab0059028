import { slips } from '../../core/edit-distance.ts';
import { isKnownWord } from './lexicon.ts';

/** Words that carry a request, so that a slip in one of them does not lose it. Short ones only with letters swapped. */
const carrying =
  `scale rescale scaling convert conversion density ingredient ingredients recipe recipes settings region currency
  tins jars pots tubes sticks containers bottles double triple halve times without nearest grams gram ounces ounce millilitres teaspoon teaspoons
  tablespoon tablespoons drops percent currency region units point degrees temperature survive parts celsius fahrenheit versions version rename delete update remainder infused strained
  melting iodine allergen allergens vegan total weigh waste what which each please thanks
  show list save help rename delete
  infuse infusing infused macerate margin
  swap replace substitute label labels print strips stickers price stock
  expire expires expired expiring expiry history reactions reaction reminders reminder reminding batches overdue inventory yesterday complaints remaining
  instead replacement replacements alternative alternatives soften softens survives unscented firmness suggest`.split(
    /\s+/,
  );

const known = new Set(carrying);

/** True for the words requests are made of: "scale", "convert", "recipe" … */
export const isCarrying = (word: string): boolean => known.has(word);

const byFirst = new Map<string, string[]>();
for (const word of carrying) {
  for (const letter of new Set([word.charAt(0), word.charAt(1)])) {
    byFirst.set(letter, [...(byFirst.get(letter) ?? []), word]);
  }
}

/** Four-letter words are too close to each other for more than a swap of neighbours. */
const shortest = 4;

const mostSlips = (length: number): number => (length >= 8 ? 2 : 1);

const isSwap = (a: string, b: string): boolean =>
  a.length === b.length && [...a].sort().join('') === [...b].sort().join('');

const near = (word: string, candidate: string): boolean => {
  const most = mostSlips(word.length);
  if (Math.abs(word.length - candidate.length) > most || slips(word, candidate, most) > most) return false;
  if (candidate.length > shortest || isSwap(word, candidate)) return true;
  return word.length > shortest && word.startsWith(candidate.slice(0, 3));
};

/** Words as they are typed in a hurry. */
const hurried: Readonly<Record<string, string>> = {
  els: 'else',
  smth: 'something',
  sth: 'something',
  shd: 'should',
  shld: 'should',
  cud: 'could',
  wud: 'would',
  wld: 'would',
  wat: 'what',
  wot: 'what',
  nutz: 'nuts',
  vegn: 'vegan',
  paln: 'plan',
  metl: 'melt',
  often: 'often',
  rice: 'rice',
  doable: 'doable',
  meeting: 'meeting',
  meetings: 'meetings',
  seating: 'seating',
  mlet: 'melt',
  undu: 'undo',
  undoo: 'undo',
  udno: 'undo',
  unod: 'undo',
  dayly: 'daily',
  dialy: 'daily',
  monht: 'month',
  mounth: 'month',
  hav: 'have',
  exspires: 'expires',
  exspire: 'expire',
};

/** The word itself, or the request-carrying word it is a slip of. Words known as themselves stay as they are. */
export const corrected = (word: string): string => {
  if (Object.hasOwn(hurried, word)) return hurried[word] ?? word;
  if (word.length < shortest || word.length > 14 || known.has(word) || isKnownWord(word)) return word;
  return byFirst.get(word.charAt(0))?.find((candidate) => near(word, candidate)) ?? word;
};
