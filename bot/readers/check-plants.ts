import { watchedThing } from '../../core/check/composition.ts';
import { isScent } from '../../core/check/other-findings.ts';
import { readPlant } from '../../core/check/plant-forms.ts';
import type { PlantMeaning } from '../../core/check/plant-meaning.ts';
import { ambiguousNames } from '../../core/data/ambiguous-names.ts';
import { dryAfter, dryBefore, wetHeads } from '../../core/data/rules/wet-words.ts';
import { defined } from '../../core/defined.ts';
import { nameKey } from '../../core/names.ts';
import type { Item } from './item.ts';
import { keysIn } from './name-keys.ts';
import { type Token, tokens } from './tokens.ts';

interface Found {
  readonly meaning: PlantMeaning;
  readonly from: number;
  /** Where the plant's own name begins. */
  readonly nameFrom: number;
  readonly to: number;
  readonly said: string;
}

const asideForm = /^(?:fresh(?:ly)?|undried|raw|grated|brewed|dried|picked|just|hand)$/;
/** "Calendula, fresh" and "calendula - freshly picked" are one name: the sign between is no gap. */
const withoutInnerSigns = (list: readonly Token[]): readonly Token[] =>
  list.filter(
    ({ text }, at) =>
      !(/^[,–—]$/.test(text) && asideForm.test(list[at + 1]?.word ?? '') && endsThere(list, at + 1)),
  );

/** Forms up to the end of a line, or to the next amount: "calendula, fresh mint" are two. */
const endsThere = (list: readonly Token[], from: number): boolean => {
  let at = from;
  while (asideForm.test(list[at]?.word ?? '')) at += 1;
  return list[at]?.kind !== 'word';
};

const plantsIn = (text: string): readonly Found[] => {
  const list = withoutInnerSigns(tokens(text));
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

/** The whole of what was said, under one name; "infused oil of calendula" is more than the name at its end. */
const isWhole = (item: Item, { meaning, nameFrom, from, to, said }: Found): boolean => {
  const start = /\bof\b/.test(said.slice(0, nameFrom - from)) ? from : nameFrom;
  const single = item.from <= start && item.to >= to && item.ingredients?.length === 1;
  // A name of the tables that is asked back about, in full: each of its meanings is judged.
  const asked = item.because !== undefined && meaning.doubtful === undefined;
  return single || (asked && item.from <= from && item.to >= to);
};

/** The dried plant is no essential oil, whatever the table calls by the plant's bare name. */
const isDriedScent = (item: Item, { ingredients }: PlantMeaning): boolean =>
  ingredients[0] === 'dried-plant' && isScent(item.ingredients?.[0] ?? '');

/** What the reader made of this stretch, and whether that is as good or better: a longer name, or the same thing. */
const isBetter = (item: Item, found: Found): boolean => {
  const { meaning, nameFrom, from, to, said } = found;
  if (item.letter === 'R' || item.to > to || item.from < from) return true;
  if (meaning.fresh)
    return isSame(item, meaning) && item.to >= to && /^fresh(?:ly)?\s+$/.test(said.slice(0, nameFrom - from));
  // "Brewed chamomile" is no chamomile.
  if (isWetThing(meaning)) return isSame(item, meaning);
  if (isDriedScent(item, meaning)) return false;
  const same = isSame(item, meaning) && item.from <= from && item.to >= to;
  return meaning.bare === true || same || isWhole(item, found);
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
    // "Some rose water": what is said of the amount stays.
    ...items.filter(
      (item) => item.to <= found.from || (/[gvdpn%]/.test(item.letter) && item.to <= found.nameFrom),
    ),
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

/** Bare numbers are amounts where the whole list has no units. */
const amountIn = (items: readonly Item[]): RegExp =>
  items.some(({ letter }) => /[gvdp%]/.test(letter)) ? /[gvdp%]/ : /[n]/;

const segmentHasAmount = (items: readonly Item[], at: number): boolean => {
  const isEnd = (index: number): boolean => !items[index] || separators.test(items[index]?.letter ?? '');
  let [from, to] = [at, at];
  while (!isEnd(from - 1)) from -= 1;
  while (!isEnd(to + 1)) to += 1;
  const amount = amountIn(items);
  return items.slice(from, to + 1).some(({ letter }) => amount.test(letter));
};

/** "Kunzea essential oil": an oil nobody here knows, a scent all the same. */
const isUnknownOil = (items: readonly Item[], at: number): boolean =>
  items[at]?.generic === true && /essential/.test(items[at]?.word ?? '') && items[at - 1]?.letter === 'w';

/** "Fresh parsley": whatever plant it is, and however little is known of it, it is wet. */
const freshThing = (items: readonly Item[], at: number): number | undefined => {
  if (!/^fresh(?:ly)?$/.test(items[at]?.word ?? '')) return undefined;
  let to = at;
  while (items[to + 1]?.letter === 'w') to += 1;
  const next = items[to + 1];
  return to > at && (next === undefined || !/[iR]/.test(next.letter)) && segmentHasAmount(items, at)
    ? to
    : undefined;
};

/** Said right before something that is read already: "cherry" of "cherry flavour oil", "sap" from an aloe leaf. */
const isBeforeName = (items: readonly Item[], at: number): boolean =>
  (/[Wo]/.test(items[at + 1]?.letter ?? '') ? items[at + 2] : items[at + 1])?.letter === 'i';

/** The last word's key of what is no name yet; and of "water" with an unknown word before it. */
const lastKey = (items: readonly Item[], at: number): string => {
  const item = items[at];
  const open =
    item?.letter === 'w' ||
    item?.letter === 'z' ||
    (item?.letter === 'i' &&
      item.plant !== true &&
      items[at - 1]?.letter === 'w' &&
      watchedThing(item.ingredients?.[0] ?? '')?.kind === 'water');
  return open ? nameKey(item?.word.split(' ').at(-1) ?? '') : '';
};

/** "One egg yolk" is a line too. */
const isCounted = (items: readonly Item[], at: number): boolean =>
  segmentHasAmount(items, at) || items[startOf(items, at) - 1]?.letter === 'n';

const isDriedBefore = (items: readonly Item[], at: number): boolean =>
  items.slice(startOf(items, at), at).some(({ word }) => word.split(' ').some((each) => dryBefore.has(each)));

const wetId = (items: readonly Item[], at: number): string | undefined => {
  if (isUnknownOil(items, at) && segmentHasAmount(items, at)) return 'other-essential-oil';
  const key = lastKey(items, at);
  const isWet = Object.hasOwn(wetHeads, key) && !dryAfter.has(nameKey(items[at + 1]?.word ?? ''));
  const counts = isWet && !isBeforeName(items, at) && !isDriedBefore(items, at) && isCounted(items, at);
  return counts ? wetHeads[key] : undefined;
};

const joinedAs = (items: readonly Item[], from: number, to: number, id: string): readonly Item[] => {
  const word = items
    .slice(from, to + 1)
    .map((item) => item.word)
    .join(' ');
  const item: Item = {
    letter: 'i',
    word,
    from: items[from]?.from ?? 0,
    to: items[to]?.to ?? 0,
    ingredients: [id],
    plant: true,
    misspelt: word,
  };
  return [...items.slice(0, from), item, ...items.slice(to + 1)];
};

/**
 * "6 g birch sap juice": whatever it is made of, a line that is called a tea, a juice or a water brings water; and what is
 * called an essential oil is a scent.
 */
export const withWetThings = (items: readonly Item[]): readonly Item[] => {
  let list = items;
  for (let at = 0; at < list.length; at += 1) {
    const id = wetId(list, at);
    const fresh = id === undefined ? freshThing(list, at) : undefined;
    if (id === undefined && fresh === undefined) continue;
    const start = id === undefined ? at : startOf(list, at);
    list = joinedAs(list, start, fresh ?? at, id ?? 'fresh-plant');
    at = start;
  }
  return list;
};
