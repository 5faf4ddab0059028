import { tinsLeft } from '../../core/bench/state.ts';
import type { PartPut } from '../../core/parts/part.ts';
import { containerText } from './book-names.ts';
import { thingName } from './cost-money.ts';
import { readable } from './numbers.ts';

type Say = {
  readonly [P in PartPut['part']]: (
    id: string,
    value: Extract<PartPut, { readonly part: P }>['value'],
  ) => string;
};

const say: Say = {
  recipe: (_id, recipe) =>
    recipe
      ? `recipe ${recipe.name}: ${recipe.lines.length} lines, version ${recipe.versions.length}`
      : 'the recipe is off the list',
  settings: () => 'the settings are as they were; "settings" shows them',
  price: (thing, price) =>
    price
      ? `price of ${thingName(thing)}: ${price.price} ${price.currency} ${price.pack.unit === 'each' ? 'each' : `for ${readable(price.pack.amount)} ${price.pack.unit}`}`
      : `no price for ${thingName(thing)}`,
  labour: (_id, labour) =>
    labour?.ratePerHour ? `labour: ${labour.ratePerHour} ${labour.currency} an hour` : 'no labour is counted',
  yield: (herb, weighings) => `yields of ${thingName(herb)}: ${weighings?.length ?? 0} noted`,
  lot: (id, lot) =>
    lot
      ? `lot ${lot.lot}, ${thingName(lot.ingredient)}: ${readable(lot.leftG)} g left`
      : `lot ${id} is out of the book`,
  batch: (id, batch) =>
    batch
      ? `batch ${batch.lot}, ${batch.name}: ${containerText(batch.container, tinsLeft({ ...batch, seq: 0 }))} left`
      : `batch ${id} is out of the book`,
  reaction: (id, reaction) =>
    reaction ? `reaction ${id}: ${reaction.closed ? 'closed' : 'open'}` : `reaction ${id} is out of the book`,
  low: (ingredient, grams) =>
    grams === null
      ? `no low mark for ${thingName(ingredient)}`
      : `low mark of ${thingName(ingredient)}: ${readable(grams)} g`,
  answer: (item, answer) =>
    `${item.split(':')[1] ?? item}: ${answer ? answer.answer.replace('-', ' ') : 'open again'}`,
  reminder: (_id, reminder) =>
    reminder
      ? `daily reminder: ${reminder.hour}:${String(reminder.minute).padStart(2, '0')}, ${reminder.zone}`
      : 'no daily reminder',
};

/** Most things told one by one. */
const mostTold = 12;

/** What stands now, a line for each thing that was put. */
export const partLines = (puts: readonly PartPut[]): readonly string[] => {
  const lines = puts
    .slice(0, mostTold)
    .map((put) => (say[put.part] as (id: string, value: unknown) => string)(put.id, put.value));
  const more = puts.length - lines.length;
  return more > 0 ? [...lines, `and ${more} more`] : lines;
};
