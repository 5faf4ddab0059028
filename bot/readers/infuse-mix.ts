import { weighVolume } from '../../core/grams.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { comesOut, herbOf, isHerbWord, isOil } from './infuse-amounts.ts';
import type { Fields } from './infuse-fields.ts';
import { idOfHerb, idOfOil } from './infuse-names.ts';
import { herbByVolume } from './infuse-words.ts';
import type { Item } from './item.ts';
import { sizeOf } from './target.ts';

/** Several herbs or several oils in one message, as far as it says how much of each. */
export interface MixRead {
  readonly fields: Fields;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

interface Named {
  readonly kind: 'herb' | 'oil';
  readonly id: string;
  amount?: Item;
}

/** What may stand between an amount and its name. */
const passes = (item: Item): boolean =>
  /^[oy(:=@"-]$/.test(item.letter) ||
  /^(?:dried|dry|organic|whole|crushed|chopped|crumbled|carrier|of|parts?)$/.test(item.word);

/** A weight, a volume, a part, a percentage, or a fraction ("half olive oil"). */
const isShare = (item: Item): boolean =>
  /^[gvp%]$/.test(item.letter) || (item.letter === 'n' && item.value !== undefined && item.value < 1);

const kindOf = (item: Item): Named['kind'] | undefined => {
  if (item.letter !== 'i' || item.generic) return undefined;
  if (herbOf(item) !== undefined) return 'herb';
  return isOil(item) ? 'oil' : undefined;
};

/** The name an amount stands before. */
const nameAfter = (items: readonly Item[], at: number): Item | undefined => {
  for (const item of items.slice(at + 1)) {
    if (item.letter === 'i') return item;
    if (!passes(item)) return undefined;
  }
  return undefined;
};

const nameBefore = (items: readonly Item[], at: number): Item | undefined => {
  for (const item of items.slice(0, at).toReversed()) {
    if (item.letter === 'i') return item;
    if (!passes(item)) return undefined;
  }
  return undefined;
};

interface Found {
  readonly named: readonly Named[];
  readonly loose: readonly Item[];
  readonly trouble?: Trouble;
}

const namedOf = (
  items: readonly Item[],
): { readonly byItem: Map<Item, Named>; readonly trouble?: Trouble } => {
  const byItem = new Map<Item, Named>();
  const byId = new Map<string, Named>();
  for (const item of items) {
    const kind = kindOf(item);
    if (!kind) continue;
    const { id, trouble } = kind === 'herb' ? idOfHerb(item) : idOfOil(item);
    if (trouble || id === undefined) return { byItem, ...(trouble ? { trouble } : {}) };
    const named = byId.get(id) ?? { kind, id };
    byId.set(id, named);
    byItem.set(item, named);
  }
  return { byItem };
};

/** "Calendula and chamomile, 20 g each": of every herb that has no amount of its own. */
const giveEach = (named: readonly Named[], amount: Item): void => {
  for (const each of named) if (each.kind === 'herb') each.amount ??= amount;
};

const foundIn = (items: readonly Item[]): Found => {
  const { byItem, trouble } = namedOf(items);
  const named = [...new Set(byItem.values())];
  const loose: Item[] = [];
  for (const [at, item] of items.entries()) {
    if (!isShare(item)) continue;
    if (items[at + 1]?.letter === 'e') {
      giveEach(named, item);
      continue;
    }
    const name = nameAfter(items, at) ?? nameBefore(items, at);
    const owner = name && byItem.get(name);
    if (owner && !owner.amount) owner.amount = item;
    else loose.push(item);
  }
  return { named, loose, ...(trouble ? { trouble } : {}) };
};

const tidy = (value: number): number => Number(value.toFixed(6));

/** An amount of one thing by weight; a volume of oil through its density. */
const gramsOf = ({ id, kind, amount }: Named, reading: Reading): number | Trouble | undefined => {
  const size = amount && /[gv]/.test(amount.letter) ? sizeOf(amount, reading.settings.region) : undefined;
  if (!size) return undefined;
  if (size.unit === 'g') return size.amount;
  if (kind === 'herb') return herbByVolume;
  const weighed = weighVolume(size.amount, 'ml', id, reading.settings.region);
  return weighed.ok
    ? tidy(weighed.value.grams)
    : {
        code: 'missing',
        text: `I know no density for ${ingredientById(id)?.name ?? id}; give grams, for example "200 g".`,
      };
};

interface Group {
  readonly parts: readonly { readonly id: string; readonly parts: number }[];
  /** All together, where each has its weight. */
  readonly totalG?: number;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const listed = (named: readonly Named[]): string =>
  named.map(({ id }) => (ingredientById(id)?.name ?? id).replace(/ \([^)]*\)$/, '')).join(', ');

const halfSaid: Trouble = {
  code: 'missing',
  text: 'How much of each? Give a weight to every one of them, or to none, for example "infuse 20 g calendula and 10 g chamomile in 240 g sunflower oil".',
};

const groupOf = (named: readonly Named[], reading: Reading): Group => {
  const grams = named.map((each) => gramsOf(each, reading));
  const bad = grams.find((each): each is Trouble => typeof each === 'object');
  if (bad) return { parts: [], assumed: [], trouble: bad };
  const weights = grams.filter((each): each is number => typeof each === 'number');
  if (weights.length === named.length) {
    const totalG = tidy(weights.reduce((sum, each) => sum + each, 0));
    return { parts: named.map(({ id }, at) => ({ id, parts: weights[at] ?? 1 })), totalG, assumed: [] };
  }
  const shares = named.map(({ amount }) => amount?.value);
  if (weights.length === 0 && shares.every((share) => share !== undefined && share > 0)) {
    return { parts: named.map(({ id }, at) => ({ id, parts: shares[at] ?? 1 })), assumed: [] };
  }
  if (named.some(({ amount }) => amount)) return { parts: [], assumed: [], trouble: halfSaid };
  return {
    parts: named.map(({ id }) => ({ id, parts: 1 })),
    assumed: named.length > 1 ? [`I took equal weights of ${listed(named)}.`] : [],
  };
};

/** "100 g of herbs", and "half calendula, half chamomile, 40 g in all": all of the herbs. */
const isOfHerbs = (reading: Reading, items: readonly Item[], item: Item): boolean => {
  const after = items.slice(items.indexOf(item) + 1, items.indexOf(item) + 4);
  const whole = /^\s*(?:in (?:all|total)|altogether|all together|total)\b/i.test(reading.text.slice(item.to));
  return whole || after.some(isHerbWord);
};

/** A weight that is of no single name: all the herbs, the oil that comes out, or the oil that goes in. */
const looseFields = (reading: Reading, items: readonly Item[], loose: readonly Item[]): Fields => {
  let fields: Fields = {};
  for (const item of loose) {
    const size = /[gv]/.test(item.letter) ? sizeOf(item, reading.settings.region) : undefined;
    if (!size) continue;
    const herbs = size.unit === 'g' && isOfHerbs(reading, items, item);
    if (herbs) fields = { ...fields, herbG: size.amount };
    else fields = { ...fields, [comesOut(reading, item) ? 'oilOut' : 'oilIn']: size };
  }
  return fields;
};

const single = (group: Group, kind: 'herb' | 'oil'): Fields => {
  const [only] = group.parts;
  if (!only) return {};
  if (group.parts.length === 1) return { [kind]: only.id };
  return { [`${kind}s`]: group.parts.map(({ id, parts }) => ({ [kind]: id, parts })) };
};

/** Reads several herbs or oils; undefined where a message names at most one of each. */
export const readMix = (reading: Reading, items: readonly Item[]): MixRead | undefined => {
  const { named, loose, trouble } = foundIn(items);
  const herbs = named.filter(({ kind }) => kind === 'herb');
  const oils = named.filter(({ kind }) => kind === 'oil');
  if (herbs.length < 2 && oils.length < 2) return undefined;
  const herb = groupOf(herbs, reading);
  const oil = groupOf(oils, reading);
  const problem = trouble ?? herb.trouble ?? oil.trouble;
  return {
    fields: {
      ...looseFields(reading, items, loose),
      ...single(herb, 'herb'),
      ...single(oil, 'oil'),
      ...(herb.totalG === undefined || herbs.length === 0 ? {} : { herbG: herb.totalG }),
      ...(oil.totalG === undefined || oils.length === 0 ? {} : { oilIn: { amount: oil.totalG, unit: 'g' } }),
    },
    assumed: [...herb.assumed, ...oil.assumed],
    ...(problem ? { trouble: problem } : {}),
  };
};

/** The herbs of a batch's infusion, with their weight where the message gives it. */
export const readHerbs = (reading: Reading, items: readonly Item[]): MixRead => {
  const { named, trouble } = foundIn(items);
  const herb = groupOf(
    named.filter(({ kind }) => kind === 'herb'),
    reading,
  );
  const problem = trouble ?? herb.trouble;
  return {
    fields: { ...single(herb, 'herb'), ...(herb.totalG ? { herbG: herb.totalG } : {}) },
    assumed: herb.assumed,
    ...(problem ? { trouble: problem } : {}),
  };
};
