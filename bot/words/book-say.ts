import type { BookEntry, BookEvent } from '../../core/book.ts';
import { containerText, type EntryNames } from './book-names.ts';
import { thingName as thing } from './cost-money.ts';
import { readable } from './numbers.ts';

type Say = {
  readonly [K in BookEvent['kind']]: (
    event: Extract<BookEvent, { readonly kind: K }>,
    names: EntryNames,
  ) => string;
};

const g = (grams: number): string => `${readable(grams)} g`;
const because = (why: string | undefined): string => (why ? `: ${why}` : '');

const settingNames: Readonly<Record<string, string>> = {
  stepG: 'what the scale reads',
  lossPercent: 'loss',
  writerRole: 'who writes',
  capMonths: 'longest shelf life',
  decimal: 'decimal sign',
};

const settingText = ([name, value]: readonly [string, unknown]): string => {
  const shown = value === null ? 'everyone' : String(value);
  return `${settingNames[name] ?? name} ${name === 'region' ? shown.toUpperCase() : shown}`;
};

const gone = {
  given: (to: string) => `gave ${to}`,
  sold: (to: string) => `sold ${to}`,
  used: (to: string) => `used ${to}`,
  wasted: (to: string) => `threw away ${to}`,
  kept: (to: string) => `kept ${to} as a sample`,
};

const recipes: Pick<Say, 'recipe-saved' | 'recipe-renamed' | 'recipe-deleted'> = {
  'recipe-saved': ({ name, lines }) => `saved the recipe ${name} (${lines.length} lines)`,
  'recipe-renamed': ({ recipe, name }, names) => {
    const before = names.recipe(recipe);
    return before === name ? `renamed a recipe to ${name}` : `renamed ${before} to ${name}`;
  },
  'recipe-deleted': ({ recipe }, names) => `deleted the recipe ${names.recipe(recipe)}`,
};

const lots = {
  'lot-bought': ({ lot, ingredient, grams }) => `bought ${g(grams)} ${thing(ingredient)}, lot ${lot}`,
  'oil-infused': ({ lot, ingredient, herbs, grams }) =>
    `infused ${g(grams)} ${thing(ingredient)} with ${herbs.map(thing).join(', ')}, lot ${lot}`,
  'lot-opened': ({ lot }) => `opened lot ${lot}`,
  'lot-dated': ({ lot, bestBefore }) =>
    bestBefore === null
      ? `took the best before off lot ${lot}`
      : `dated lot ${lot} best before ${bestBefore}`,
  'lot-priced': ({ lot, price }) => `noted that lot ${lot} cost ${price.amount} ${price.currency}`,
  'lot-counted': ({ lot, leftG }) => `weighed lot ${lot}: ${g(leftG)} left`,
  'lot-noted': ({ lot, text }) => `noted on lot ${lot}${because(text)}`,
  'stock-taken': ({ draws, how }) =>
    `${how === 'used' ? 'used' : 'threw away'} ${draws.map(({ lot, grams }) => `${g(grams)} of lot ${lot}`).join(', ')}`,
  'low-mark-set': ({ ingredient, grams }) =>
    grams === null
      ? `took the low mark off ${thing(ingredient)}`
      : `set the low mark of ${thing(ingredient)} at ${g(grams)}`,
} as const satisfies Partial<Say>;

const batches = {
  'batch-poured': ({ lot, name, count, container }) =>
    `poured ${containerText(container, count)} of ${name} (${lot})`,
  'batch-corrected': ({ lot, why }) => `corrected ${lot}${because(why)}`,
  'batch-noted': ({ lot, text, picture }) =>
    `noted on ${lot}${because(text ?? (picture ? 'a picture' : undefined))}`,
  'tins-gone': ({ lot, count, how, to }, names) =>
    `${gone[how](`${names.containers(lot, count)} of ${lot}`)}${to ? ` to ${to}` : ''}`,
  'tins-back': ({ lot, count, from }, names) =>
    `took back ${names.containers(lot, count)} of ${lot}${from ? ` from ${from}` : ''}`,
  'batch-looked': ({ lot, fine }) => `looked at ${lot}: ${fine ? 'fine' : 'not fine'}`,
} as const satisfies Partial<Say>;

const others = {
  'settings-changed': ({ settings }) => `set ${Object.entries(settings).map(settingText).join(', ')}`,
  'price-noted': ({ thing: priced, price, currency, pack }) =>
    `noted a price: ${thing(priced)} ${price} ${currency} ${pack.unit === 'each' ? 'each' : `for ${readable(pack.amount)} ${pack.unit}`}`,
  'price-removed': ({ thing: priced }) => `took off the price of ${thing(priced)}`,
  'labour-set': ({ ratePerHour, currency }) =>
    ratePerHour === null ? 'took labour off' : `set labour at ${ratePerHour} ${currency} an hour`,
  'yield-noted': ({ herb, oilInG, oilOutG }) =>
    `noted a yield: ${g(oilOutG)} of ${g(oilInG)} oil off ${thing(herb)}`,
  'yield-removed': ({ herb }) => `took off the yields of ${thing(herb)}`,
  'reaction-noted': ({ id, lot }) => `noted reaction ${id}${lot ? ` to ${lot}` : ''}`,
  'reaction-followed': ({ id, closed }) => `${closed ? 'closed' : 'followed up'} reaction ${id}`,
  'reminder-set': ({ hour, minute, zone }) =>
    `set the daily reminder at ${hour}:${String(minute).padStart(2, '0')}, ${zone}`,
  'reminder-stopped': () => 'stopped the daily reminder',
  'reminder-begun': ({ day }) => `began the reminder of ${day}`,
  'reminder-sent': ({ day, items }) => `sent the reminder of ${day} (${items.length})`,
  'reminder-failed': ({ day }) => `could not send the reminder of ${day}`,
  'due-answered': ({ item, answer }) =>
    `answered what is due (${item.split(':')[1] ?? item}): ${answer.replace('-', ' ')}`,
} as const satisfies Partial<Say>;

const own: Pick<Say, 'parts-put' | 'contact-forgotten' | 'forgetting-asked' | 'forgetting-stopped'> = {
  'parts-put': ({ because: { why, ...more }, puts }) =>
    why === 'undo' ? `undid entry ${'of' in more ? more.of : ''}` : `took in ${puts.length} from a file`,
  'contact-forgotten': ({ id }) => `forgot the contact of ${id}`,
  'forgetting-asked': ({ due }) => `asked that everything be forgotten after ${due.slice(0, 10)}`,
  'forgetting-stopped': () => 'kept everything after all',
};

const say: Say = { ...recipes, ...lots, ...batches, ...others, ...own };

/** What an entry did, as "poured 24 tins of Fernlea hand balm (26-KIVO)". Call `names.read` with it afterwards. */
export const sayEntry = ({ event }: BookEntry, names: EntryNames): string =>
  (say[event.kind] as (event: BookEvent, names: EntryNames) => string)(event, names);

/** Most entries of one request that are told one by one. */
const mostTold = 3;

/** What all the entries of one request did. */
export const sayRequest = (entries: readonly BookEntry[], names: EntryNames): string => {
  const said = entries.map((entry) => {
    const text = sayEntry(entry, names);
    names.read(entry);
    return text;
  });
  const more = said.length - mostTold;
  return `${said.slice(0, mostTold).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
};
