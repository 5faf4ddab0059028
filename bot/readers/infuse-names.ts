import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { askWhich } from './ask-back.ts';
import { herbNamed } from './house-oil.ts';
import { herbOf, herbsOf, isOil } from './infuse-amounts.ts';
import { oneHerb } from './infuse-words.ts';
import type { Item } from './item.ts';
import { namesReplaced } from './replaced-names.ts';

export interface Names {
  readonly herb?: Item;
  readonly oil?: Item;
  readonly trouble?: Trouble;
  /** Names that are neither herb nor oil. */
  readonly others: readonly Item[];
}

const one = (items: readonly Item[]): Item | undefined => {
  const ids = new Set(items.map((item) => herbOf(item) ?? item.ingredients?.join(' ')));
  return ids.size === 1 ? items[0] : undefined;
};

/** "calendula oil" names its herb too. */
const herbItems = (items: readonly Item[]): Item[] =>
  items.flatMap((item) => {
    if (item.letter !== 'i') return [];
    if (item.infusedWith) return [{ ...item, ingredients: [item.infusedWith] }];
    return herbOf(item) !== undefined ? [item] : [];
  });

export const namesOf = (items: readonly Item[]): Names => {
  const herbs = herbItems(items);
  const oils = items.filter((item) => item.letter === 'i' && isOil(item) && !item.generic);
  const herb = one(herbs);
  const oil = one(oils);
  const others = items.filter(
    (item) =>
      item.letter === 'i' &&
      herbOf(item) === undefined &&
      !isOil(item) &&
      item.ingredients?.[0] !== 'infused-oil',
  );
  const unsure = items.find((item) => item.letter === 'i' && herbsOf(item).length > 1);
  const many = (herbs.length > 0 && !herb) || (oils.length > 0 && !oil);
  return {
    others,
    ...defined({
      herb,
      oil,
      trouble: unsure ? askWhich({ ...unsure, ingredients: herbsOf(unsure) }) : many ? oneHerb : undefined,
    }),
  };
};

const isHerbItem = (item: Item, herb: string): boolean => item.letter === 'i' && herbOf(item) === herb;

/** "Oil of lavender flower". */
const isFlower = (item: Item | undefined): boolean =>
  /^(?:flowers?|petals?|leaf|leaves|buds?|blossoms?|herb)$/.test(item?.word ?? '');

/** "Oil of lavender" is lavender oil. */
const oilOf = /^oil of (.+)$/;

/**
 * "Make lavender oil with 25 g of dried lavender", "lavender oil after straining": beside the herb, or where oil is
 * strained off, it is the oil that was steeped with it and not the distilled one.
 */
export const withSteepedOils = (items: readonly Item[], strained: boolean): readonly Item[] =>
  items.map((item, at) => {
    if (item.letter !== 'i' || item.infusedWith !== undefined || isOil(item)) return item;
    const word = item.word.replace(oilOf, '$1 oil');
    const herb = / oil$/.test(word) ? herbNamed({ ...item, word }) : undefined;
    if (
      herb === undefined ||
      !(strained || isFlower(items[at + 1]) || items.some((other) => isHerbItem(other, herb)))
    )
      return item;
    const { because: _because, ...rest } = item;
    return { ...rest, ingredients: ['infused-oil'], infusedWith: herb };
  });

/** "Jojoba instead of olive", "no, not sunflower": names that are to give way, of what the last request was about. */
export const withoutReplaced = (
  items: readonly Item[],
  text: string,
  before: Readonly<Record<string, unknown>> | undefined,
): readonly Item[] => {
  if (!before) return items;
  const gone = namesReplaced(items, text);
  return items.filter((item) => !gone.includes(item));
};

export const idOfOil = (oil: Item | undefined): { readonly id?: string; readonly trouble?: Trouble } => {
  if (!oil) return {};
  const [id, ...more] = oil.ingredients ?? [];
  return id === undefined || more.length > 0 || oil.because ? { trouble: askWhich(oil) } : { id };
};

/** "Marigold" may be another plant, so it is asked back about; "lavender" in oil is the flower. */
export const idOfHerb = (herb: Item | undefined): { readonly id?: string; readonly trouble?: Trouble } => {
  if (!herb) return {};
  const id = herbOf(herb);
  return herb.because && herb.ingredients?.length === 1 ? { trouble: askWhich(herb) } : defined({ id });
};
