import { ingredientById } from '../ingredients.ts';
import {
  type Backbone,
  butterBackbonePercent,
  butterBackbones,
  carnaubaAlone,
  waxBackbones,
} from './palette.ts';
import type { WantedIngredient, Wishes } from './wishes.ts';

/** What carries a balm, ready for a sketch: the main line with its range, and partners at a fixed share. */
export interface Carrier {
  readonly main: { readonly ingredient: string; readonly low: number; readonly high: number };
  readonly partners: readonly { readonly ingredient: string; readonly percent: number }[];
  readonly cost: number;
}

const isWaxId = (id: string): boolean => ingredientById(id)?.kind === 'wax';

const usual = (id: string): { low: number; high: number } => {
  const { low = 1, high = 20 } = ingredientById(id)?.usePercent ?? {};
  return isWaxId(id) ? { low, high } : butterBackbonePercent;
};

const carrierOf = (backbone: Backbone, form: Wishes['form']): Carrier => ({
  main: { ingredient: backbone.main, ...usual(backbone.main) },
  partners: backbone.partner ? [backbone.partner] : [],
  cost: backbone.cost[form],
});

/** Share in percent of a wax that was asked for beside another: a usual partner's share. */
const partnerPercent = (id: string): number => {
  const known = waxBackbones.find(({ partner }) => partner?.ingredient === id)?.partner?.percent;
  return known ?? Math.max(4, usual(id).low);
};

const mainOf = ({ ingredient, percent }: WantedIngredient): Carrier['main'] =>
  percent === undefined ? { ingredient, ...usual(ingredient) } : { ingredient, low: percent, high: percent };

const asPartner = ({ ingredient, percent = partnerPercent(ingredient) }: WantedIngredient) => ({
  ingredient,
  percent,
});

/** The wanted waxes alone, one of them carrying: one without a share of its own if there is one. */
const ofWanted = (wanted: readonly WantedIngredient[], form: Wishes['form']): readonly Carrier[] =>
  wanted
    .filter((main) => main.percent === undefined || wanted.every(({ percent }) => percent !== undefined))
    .map((main, place) => ({
      main: mainOf(main),
      partners: wanted.filter((other) => other !== main).map(asPartner),
      cost: (main.ingredient === carnaubaAlone.main ? carnaubaAlone.cost[form] : 0) + place / 2,
    }));

/** The wanted waxes beside one more that carries, for wishes that the wanted ones do not meet alone. */
const besideOthers = (wanted: readonly WantedIngredient[], form: Wishes['form']): readonly Carrier[] =>
  waxBackbones
    .filter(({ main, partner }) => !partner && wanted.every(({ ingredient }) => ingredient !== main))
    .map((backbone) => ({
      ...carrierOf(backbone, form),
      partners: wanted.map(asPartner),
      cost: backbone.cost[form] + 1,
    }));

/** Partners that go with one wanted wax. */
const withPartners = (wanted: WantedIngredient, form: Wishes['form']): readonly Carrier[] =>
  waxBackbones
    .filter(({ main, partner }) => partner !== undefined && main === wanted.ingredient)
    .map((backbone) => ({ ...carrierOf(backbone, form), main: mainOf(wanted) }));

const forWanted = (wanted: readonly WantedIngredient[], form: Wishes['form']): readonly Carrier[] => {
  const [only, second] = wanted;
  return [
    ...ofWanted(wanted, form),
    ...(only && !second ? withPartners(only, form) : []),
    ...besideOthers(wanted, form),
  ];
};

const ids = ({ main, partners }: Carrier): readonly string[] => [
  main.ingredient,
  ...partners.map(({ ingredient }) => ingredient),
];

/** All that may carry this balm, given what is allowed. Butters carry only where no wax was asked for. */
export const carriersFor = (wishes: Wishes, allowed: (id: string) => boolean): readonly Carrier[] => {
  const wanted = wishes.with.filter(({ ingredient }) => isWaxId(ingredient));
  const share = new Map(wishes.with.map(({ ingredient, percent }) => [ingredient, percent]));
  const all =
    wanted.length > 0
      ? forWanted(wanted, wishes.form)
      : [...waxBackbones, ...(wishes.form === 'stick' ? [] : butterBackbones)]
          .filter(({ main }) => share.get(main) === undefined)
          .map((backbone) => carrierOf(backbone, wishes.form));
  return all.filter((carrier) => ids(carrier).every(allowed));
};
