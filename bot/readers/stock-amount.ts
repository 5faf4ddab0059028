import { weighVolume } from '../../core/grams.ts';
import { ingredientById } from '../../core/ingredients.ts';
import type { Region } from '../../core/settings.ts';
import { gramsIn, isMassUnit, isVolumeUnit } from '../../core/units.ts';
import type { Trouble } from '../answer.ts';
import { askWhich } from './ask-back.ts';
import type { Item } from './item.ts';
import { sizeOf } from './target.ts';

export const isAmount = ({ letter, upTo }: Item): boolean => /[gvd]/.test(letter) && upTo === undefined;

/** An amount in grams, with how it was read where it was a volume. */
export interface GramsRead {
  readonly grams?: number;
  /** As it was said, for the price's pack. */
  readonly pack?: { readonly amount: number; readonly unit: 'g' | 'ml' };
  readonly assumed?: string;
  readonly trouble?: Trouble;
}

const tidy = (value: number): number => Number(value.toFixed(3));

const noDensity = (name: string): Trouble => ({
  code: 'missing',
  text: `I know no density of ${name}, so tell me its weight, for example "500 g ${name}".`,
});

/** Grams of so much of an ingredient; a volume by its density at 20 °C, and said so. */
export const gramsRead = (item: Item, ingredient: string, region: Region, times = 1): GramsRead => {
  const { unit, value } = item;
  if (unit === undefined || value === undefined) return {};
  const size = sizeOf(item, region);
  const pack = size && { amount: tidy(size.amount * times), unit: size.unit };
  if (isMassUnit(unit)) return { grams: tidy(value * times * gramsIn(unit)), ...(pack ? { pack } : {}) };
  if (!isVolumeUnit(unit)) return {};
  const weighed = weighVolume(value * times, unit, ingredient, region);
  const name = (ingredientById(ingredient)?.name ?? ingredient).replace(/ \([^)]*\)$/, '');
  if (!weighed.ok) return { trouble: noDensity(name) };
  const { grams, densityGMl, ml } = weighed.value;
  return {
    grams: tidy(grams),
    ...(pack ? { pack } : {}),
    assumed: `${tidy(ml)} ml ${name} is ${Number(grams.toFixed(1))} g at ${densityGMl} g/ml (20 °C).`,
  };
};

/** What an ingredient's name stands for, or what has to be asked back. */
export interface NameRead {
  readonly id?: string;
  readonly herb?: string;
  readonly assumed?: string;
  readonly trouble?: Trouble;
}

/** A kind is settled by the amount's own words where it can be: a herb bought by weight is the dried herb. */
export const nameRead = (item: Item, herbToo = true): NameRead => {
  const ids = item.ingredients ?? [];
  const [id] = ids;
  const misspelt =
    item.misspelt && id ? `I read "${item.misspelt}" as ${ingredientById(id)?.name ?? id}.` : undefined;
  if (id !== undefined && ids.length === 1 && !item.because)
    return {
      id,
      ...(item.infusedWith ? { herb: item.infusedWith } : {}),
      ...(misspelt ? { assumed: misspelt } : {}),
    };
  const herbs = ids.filter((each) => ingredientById(each)?.kind === 'herb');
  const [herb] = herbs;
  if (herbToo && herb !== undefined && herbs.length === 1 && !/oil/i.test(item.word)) return { id: herb };
  return { trouble: askWhich(item) };
};
