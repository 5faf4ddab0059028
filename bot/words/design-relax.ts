import type { ClashReason } from '../../core/design/clashes.ts';
import type { Relaxed } from '../../core/design/relax.ts';
import type { Form } from '../../core/design/wishes.ts';
import type { FigureValue } from '../figures.ts';
import { both } from './forecast.ts';
import { percentText } from './numbers.ts';
import { shortName } from './warnings.ts';

export const formNames: Readonly<Record<Form, string>> = {
  stick: 'stick',
  tin: 'balm for a tin',
  tube: 'soft balm for a tube',
};

const groupNames: Readonly<Record<string, string>> = {
  bee: 'bee products',
  animal: 'animal products',
  scent: 'scent',
  palm: 'palm oil',
  peanut: 'peanuts',
  mineral: 'mineral wax',
  'liquid-oil': 'liquid oils',
  butter: 'butters',
  'essential-oils': 'essential oils',
  'daisy-family': 'the daisy family',
  antioxidant: 'antioxidants',
  'never-in': 'the rest of that (never in these recipes)',
};

/** A word of `without` as a maker would say it. */
export const withoutName = (word: string): string => groupNames[word] ?? shortName(word);

const clashTexts: Readonly<Record<ClashReason | 'firmness', string>> = {
  'not-vegan': 'is not surely vegan, and vegan comes first',
  excluded: 'is wished for and excluded at once; I kept it out',
  'not-for-lips': 'does not belong on lips',
  'light-sensitising': 'can make skin burn in the sun, so it is never in a lip balm of mine',
  'not-in-stock': 'is not in stock',
  'no-melting-data': 'has no melting figures I could read, so I will not guess with it',
  'not-to-be-infused': 'is not for infusing',
  'one-herb': 'would be a second herb; I steep one herb in the oil',
  'over-usual': 'was wished for above its usual most',
  'under-usual': 'was wished for below its usual least',
  'over-whole': 'leaves no room for wax and oil with that share',
  firmness: 'does not give this form with that share',
};

const withText = ({ ingredient, to, why }: Extract<Relaxed, { wish: 'with' }>): string => {
  const change = to > 0 ? `I took it at ${percentText(to)}` : 'I left it out';
  return `${shortName(ingredient)} ${clashTexts[why]}. ${change}.`;
};

const heatText = ({ to, why }: Extract<Relaxed, { wish: 'survives_c' }>): string =>
  why === 'promise'
    ? `No balm survives a parked car, so I promise nothing from 50 °C on. Relax the hottest day to ${both(to)}: that is what these hold.`
    : `With the other wishes kept, ${both(to)} is the hottest day it can survive. Relax the hottest day to that, as these do.`;

/** Says which wish to relax and by how much. */
export const relaxText = (relaxed: Relaxed): string => {
  switch (relaxed.wish) {
    case 'survives_c':
      return heatText(relaxed);
    case 'shelf_life_months':
      return `Nothing with these wishes keeps that long. Relax the shelf life to ${relaxed.to} months.`;
    case 'price':
      return 'Nothing with these wishes is that cheap at the prices noted. Relax the price to what is shown below.';
    case 'form':
      return `That does not work in the form you wished for. Relax it to a ${formNames[relaxed.to]}: these are that.`;
    case 'with': {
      const text = withText(relaxed);
      return text.charAt(0).toUpperCase() + text.slice(1);
    }
    case 'without':
      return `Nothing is left to make it from. Relax "without ${withoutName(relaxed.drop)}" and it works; I propose nothing with what you excluded.`;
  }
};

/** `to` is what the wish may be: °C, months, a form, a share in percent (0: left out), or what may still be excluded. */
export const relaxFigure = (relaxed: Relaxed): FigureValue => {
  const { wish } = relaxed;
  if (relaxed.wish === 'with') return { wish, ingredient: relaxed.ingredient, to: relaxed.to };
  if (relaxed.wish === 'without') return { wish, to: [...relaxed.to], drop: relaxed.drop };
  if (relaxed.wish === 'price') return { wish, to: Number(relaxed.to.top) / Number(relaxed.to.under) };
  return { wish, to: relaxed.to };
};
