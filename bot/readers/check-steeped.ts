import { watchedThing } from '../../core/check/composition.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Item } from './item.ts';

/** Items without what an oil was steeped with, and the plants that were. */
export interface Steeped {
  readonly items: readonly Item[];
  readonly infused: readonly string[];
}

const idOf = ({ ingredients = [] }: Item): string =>
  ingredients.find((id) => ingredientById(id)?.kind === 'herb') ?? ingredients[0] ?? '';

const isPlant = (item: Item | undefined): item is Item => {
  if (item?.letter !== 'i') return false;
  const id = idOf(item);
  return ingredientById(id)?.kind === 'herb' || watchedThing(id)?.kind === 'plant';
};

const joins = /^[A,+&]$/;
const isAmount = (item: Item | undefined): boolean => item !== undefined && /[gvdp%n]/.test(item.letter);

/** Plants one after the other from a place on: "calendula, plantain and arnica". */
const plantsFrom = (items: readonly Item[], from: number): readonly Item[] => {
  const found: Item[] = [];
  let at = from;
  while (isPlant(items[at]) && !isAmount(items[at - 1]) && !isAmount(items[at + 1])) {
    found.push(items[at] as Item);
    at += 1;
    if (joins.test(items[at]?.letter ?? '') && isPlant(items[at + 1])) at += 1;
  }
  return found;
};

/** "Olive oil (infused with comfrey)", "oil infused with calendula and arnica": where the phrase begins and its plants. */
const phraseAt = (
  items: readonly Item[],
  at: number,
): { from: number; plants: readonly Item[] } | undefined => {
  if (items[at]?.letter !== 'H' || items[at]?.letter === undefined) return undefined;
  const first = /[WIo]/.test(items[at + 1]?.letter ?? '') ? at + 2 : at + 1;
  const plants = plantsFrom(items, first);
  const opened = items[at - 1]?.letter === '(';
  return plants.length > 1 || (opened && plants.length > 0)
    ? { from: opened ? at - 1 : at, plants }
    : undefined;
};

/** "Oil infused with …": which oil it is matters less than what was in it. */
const named = (item: Item, isLast: boolean): Item => {
  if (!isLast || item.generic !== true || item.word !== 'oil') return item;
  const { because: _because, generic: _generic, ...plain } = item;
  return { ...plain, ingredients: ['infused-oil'] };
};

const withoutPhrases = (items: readonly Item[]): Steeped => {
  const infused: string[] = [];
  let list = items;
  for (let at = 1; at < list.length; at += 1) {
    const found = phraseAt(list, at);
    const last = found?.plants.at(-1);
    if (!found || !last) continue;
    infused.push(...found.plants.map(idOf));
    const end = list.indexOf(last) + 1;
    list = [
      ...list.slice(0, found.from).map((item, place) => named(item, place === found.from - 1)),
      ...list.slice(list[end]?.letter === ')' ? end + 1 : end),
    ];
  }
  return { items: list, infused };
};

/** "40 % calendula and comfrey infused oil": one oil of two plants. */
const withoutFirstOfTwo = ({ items, infused }: Steeped): Steeped => {
  const more: string[] = [];
  const list = items.filter((item, at) => {
    const [next, oil] = [items[at + 1], items[at + 2]];
    const firstOfTwo =
      isPlant(item) &&
      isAmount(items[at - 1]) &&
      joins.test(next?.letter ?? '') &&
      oil?.infusedWith !== undefined;
    if (firstOfTwo) more.push(idOf(item));
    const before = items[at - 1];
    const joinsTwo =
      joins.test(item.letter) &&
      isPlant(before) &&
      isAmount(items[at - 2]) &&
      next?.infusedWith !== undefined;
    return !firstOfTwo && !joinsTwo;
  });
  return { items: list, infused: [...infused, ...more] };
};

/** What oils are steeped with where that is more than a name beside one oil; each plant is looked at. */
export const withoutSteeped = (items: readonly Item[]): Steeped => {
  const { items: list, infused } = withoutFirstOfTwo(withoutPhrases(items));
  return { items: list, infused: [...new Set(infused)].slice(0, 5) };
};

/** "1 % each lavender oil and sweet orange oil": the amount stands for both. */
export const withEach = (items: readonly Item[]): readonly Item[] =>
  items.flatMap((item, at) => {
    if (item.letter === 'e' && isAmount(items[at - 1])) return [];
    const each = items.slice(0, at).findLastIndex(({ letter }) => letter === 'e');
    const amount = items[each - 1];
    const between = items.slice(each + 1, at);
    const goesOn =
      each > 0 &&
      amount !== undefined &&
      isAmount(amount) &&
      item.letter === 'i' &&
      between.some(({ letter }) => letter === 'i') &&
      between.every(({ letter }) => /[iAow]/.test(letter)) &&
      items[at - 1]?.letter === 'A';
    return goesOn && amount ? [{ ...amount, from: item.from, to: item.from }, item] : [item];
  });
