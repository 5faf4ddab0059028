import { lotKey } from '../../core/bench/codes.ts';
import type { Bench, Lot } from '../../core/bench/state.ts';
import { ingredientById } from '../../core/ingredients.ts';
import { exactName, nameKey } from '../../core/names.ts';
import type { Item } from './item.ts';
import type { LotSaid } from './lots.ts';

const oilName = /^(.{3,60}?)(?: infused)? oil$/;

/** The herb in "chamomile oil", "chamomile infused oil". */
export const herbNamed = ({ word }: Item): string | undefined => {
  const name = oilName.exec(word)?.[1];
  return exactName(nameKey(name ?? ''))?.find((id) => ingredientById(id)?.kind === 'herb');
};

const isWith = (herb: string, lot: Lot | undefined): boolean => lot?.herbs?.includes(herb) ?? false;

interface Shelf {
  readonly bench: Bench;
  /** Lots the message names. */
  readonly named: readonly Lot[];
}

const asHouseOil = (item: Item, { bench, named }: Shelf): Item => {
  const { because, ...rest } = item;
  const unclear = because !== undefined || (item.ingredients?.length ?? 0) > 1;
  const herb = unclear || named.length > 0 ? herbNamed(item) : undefined;
  if (herb === undefined) return item;
  const here =
    named.some((lot) => isWith(herb, lot)) || (unclear && bench.lots.some((lot) => isWith(herb, lot)));
  return here ? { ...rest, ingredients: ['infused-oil'], infusedWith: herb } : item;
};

/**
 * "Chamomile oil" may be two essential oils, "lavender oil" is one: but where the message names a lot that was infused with
 * that herb here, or a name would be asked back about and the shelf has such an oil, that oil is meant.
 */
export const withHouseOils = (
  items: readonly Item[],
  bench: Bench,
  lots: readonly LotSaid[],
): readonly Item[] => {
  const named = lots.flatMap(({ code }) => bench.lots.get(lotKey(code)) ?? []);
  return items.map((item) =>
    item.letter === 'i' && item.infusedWith === undefined ? asHouseOil(item, { bench, named }) : item,
  );
};
