import { watchedThing } from '../../core/check/composition.ts';
import { readPlant } from '../../core/check/plant-forms.ts';
import type { PlantMeaning } from '../../core/check/plant-meaning.ts';
import { ambiguousNames } from '../../core/data/ambiguous-names.ts';
import { dryAfter, wetHeads } from '../../core/data/rules/plant-forms.ts';
import { defined } from '../../core/defined.ts';
import { nameKey } from '../../core/names.ts';
import type { Item } from './item.ts';
import { keysIn } from './name-keys.ts';
import { tokens } from './tokens.ts';

interface Found {
  readonly meaning: PlantMeaning;
  readonly from: number;
  /** Where the plant's own name begins. */
  readonly nameFrom: number;
  readonly to: number;
  readonly said: string;
}

const plantsIn = (text: string): readonly Found[] => {
  const list = tokens(text);
  const { keys, places } = keysIn(list);
  const found: Found[] = [];
  for (let at = 0; at < keys.length; at += 1) {
    const read = keys[at] === '' ? undefined : readPlant(keys, at);
    if (!read) continue;
    const first = list[places[at] ?? 0];
    const last = list[places[at + read.words - 1] ?? 0];
    const [from, to] = [first?.from ?? 0, last?.to ?? 0];
    const nameFrom = list[places[read.nameAt] ?? 0]?.from ?? from;
    found.push({ meaning: read.meaning, from, nameFrom, to, said: text.slice(from, to).toLowerCase() });
    at += read.words - 1;
  }
  return found;
};

const isSame = (item: Item, { ingredients, infusedWith }: PlantMeaning): boolean =>
  item.ingredients?.join() === ingredients.join() && item.infusedWith === infusedWith;

const isWetThing = ({ ingredients: [id = ''] }: PlantMeaning): boolean => watchedThing(id)?.kind === 'water';

/** What the reader made of this stretch, and whether that is as good or better: a longer name, or the same thing. */
const isBetter = (item: Item, { meaning, nameFrom, from, to, said }: Found): boolean => {
  const before = said.slice(0, nameFrom - from);
  if (item.letter === 'R' || item.to > to || item.from < from) return true;
  if (meaning.fresh) return isSame(item, meaning) && /^fresh(?:ly)?\s+$/.test(before);
  // "Brewed chamomile" is no chamomile.
  if (isWetThing(meaning)) return isSame(item, meaning);
  const whole = item.from <= nameFrom && item.to >= to && item.ingredients?.length === 1;
  return meaning.bare === true || whole || isSame(item, meaning);
};

const isKnown = (items: readonly Item[], found: Found): boolean =>
  items.some(
    (item) =>
      /[iR]/.test(item.letter) && item.to > found.from && item.from < found.to && isBetter(item, found),
  );

/** Why it has to be asked, where a name with these meanings is asked about anyway. */
const becauseOf = (ids: readonly string[]): string | undefined =>
  ids.length > 1 ? ambiguousNames.find((entry) => entry.ids.join() === ids.join())?.because : undefined;

/** Nobody reads off such a name which plant it was. */
const nameless = new Set(['fresh-plant', 'dried-plant', 'plant-extract', 'other-essential-oil']);

const itemsFor = ({ meaning, from, nameFrom, to, said }: Found): readonly Item[] => {
  const { ingredients, infusedWith, fresh, doubtful } = meaning;
  const named: Item = {
    letter: 'i',
    word: said,
    from,
    to,
    ingredients,
    plant: true,
    ...defined({
      infusedWith,
      doubtful,
      because: becauseOf(ingredients),
      misspelt: nameless.has(ingredients[0] ?? '') ? said : undefined,
    }),
  };
  return fresh
    ? [
        { letter: 'w', word: 'fresh', from, to: nameFrom },
        { ...named, word: `fresh ${said}` },
      ]
    : [named];
};

const replaced = (items: readonly Item[], found: Found): readonly Item[] => {
  const open = items.some(
    ({ from, to, ingredients = [] }) => from < found.to && to > found.from && ingredients.length > 1,
  );
  // "Fresh mint leaves" are taken for one of the mints, and said so.
  const own = itemsFor(found).map((item) =>
    open && found.meaning.fresh && item.letter === 'i' ? { ...item, misspelt: found.said } : item,
  );
  return [
    ...items.filter((item) => item.to <= found.from),
    ...own,
    ...items.filter((item) => item.from >= found.to),
  ];
};

/** A bare name counts right beside an amount only: "pine", "rue" and "elder" stand in many a sentence. */
const isLine = (items: readonly Item[], { meaning, from, to }: Found): boolean => {
  if (!meaning.bare) return true;
  const before = items.findLast((item) => item.to <= from && !/[-:o]/.test(item.letter));
  const after = items.find((item) => item.from >= to && !/[-:]/.test(item.letter));
  return [before, after].some((item) => item !== undefined && /[gvdp%]/.test(item.letter));
};

/** Plants in whatever form, read as named lines where the reader knows them not, or not in that form. */
export const withPlants = (items: readonly Item[], text: string): readonly Item[] => {
  let list = items;
  for (const found of plantsIn(text))
    if (isLine(list, found) && !isKnown(list, found)) list = replaced(list, found);
  return list;
};

const separators = /[,;\nA.]/;
const mostBefore = 3;

/** Words right before a head that can be the name of what it is made of. */
const startOf = (items: readonly Item[], head: number): number => {
  let at = head;
  while (at > 0 && head - at < mostBefore && /[wi]/.test(items[at - 1]?.letter ?? '')) at -= 1;
  return at;
};

const segmentHasAmount = (items: readonly Item[], at: number): boolean => {
  const isEnd = (index: number): boolean => !items[index] || separators.test(items[index]?.letter ?? '');
  let [from, to] = [at, at];
  while (!isEnd(from - 1)) from -= 1;
  while (!isEnd(to + 1)) to += 1;
  return items.slice(from, to + 1).some(({ letter }) => /[gvdp%]/.test(letter));
};

/** "Kunzea essential oil": an oil nobody here knows, a scent all the same. */
const isUnknownOil = (items: readonly Item[], at: number): boolean =>
  items[at]?.generic === true && /essential/.test(items[at]?.word ?? '') && items[at - 1]?.letter === 'w';

const wetId = (items: readonly Item[], at: number): string | undefined => {
  const item = items[at];
  if (isUnknownOil(items, at) && segmentHasAmount(items, at)) return 'other-essential-oil';
  const key = item?.letter === 'w' || item?.letter === 'z' ? nameKey(item.word) : '';
  const isWet = Object.hasOwn(wetHeads, key) && !dryAfter.has(nameKey(items[at + 1]?.word ?? ''));
  return isWet && segmentHasAmount(items, at) ? wetHeads[key] : undefined;
};

/**
 * "6 g birch sap juice": whatever it is made of, a line that is called a tea, a juice or a water brings water; and what is
 * called an essential oil is a scent.
 */
export const withWetThings = (items: readonly Item[]): readonly Item[] => {
  let list = items;
  for (let at = 0; at < list.length; at += 1) {
    const id = wetId(list, at);
    if (id === undefined) continue;
    const start = startOf(list, at);
    const [first, last] = [list[start], list[at]];
    const word = list
      .slice(start, at + 1)
      .map((item) => item.word)
      .join(' ');
    const item: Item = {
      letter: 'i',
      word,
      from: first?.from ?? 0,
      to: last?.to ?? 0,
      ingredients: [id],
      plant: true,
      misspelt: word,
    };
    list = [...list.slice(0, start), item, ...list.slice(at + 1)];
    at = start;
  }
  return list;
};
