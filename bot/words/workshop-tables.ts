import type { Settings } from '../../core/settings.ts';
import { stepDecimals } from '../../core/steps.ts';
import { gramsIn } from '../../core/units.ts';
import type { KitLine } from '../../core/workshop/kit.ts';
import type { WorkshopRecipe } from '../../core/workshop/workshop.ts';
import type { Block, Column } from '../answer.ts';
import { atStep, plain } from './numbers.ts';
import { shortName } from './warnings.ts';
import type { Planned } from './workshop-plan.ts';

const left = (title: string): Column => ({ title, align: 'left' });
const right = (title: string): Column => ({ title, align: 'right' });

/** "calendula-infused olive oil". */
export const lineName = ({
  ingredient,
  infusedWith,
}: Pick<KitLine, 'ingredient' | 'infusedWith'>): string => {
  const infused = infusedWith ? `${shortName(infusedWith)}-infused ` : '';
  return `${infused}${ingredient === 'infused-oil' && infused ? 'oil' : shortName(ingredient)}`;
};

const ounces = (grams: number): string => (grams / gramsIn('oz')).toFixed(2);

/** One person's kit; the lines sum to the total. */
export const kitTable = ({ kit }: WorkshopRecipe, units: Settings['units']): Block => {
  const decimals = stepDecimals(kit.scaled.stepG);
  const oz = units === 'oz';
  return {
    kind: 'table',
    columns: [left('one kit'), right('g'), ...(oz ? [right('oz')] : [])],
    rows: kit.lines.map((line) => [
      lineName(line),
      atStep(line.grams, decimals),
      ...(oz ? [ounces(line.grams)] : []),
    ]),
    total: ['kit', atStep(kit.weighedG, decimals), ...(oz ? [ounces(kit.weighedG)] : [])],
  };
};

/** What is set aside: kits, spare and both together. */
export const asideTable = ({ plan, wish }: Planned, decimals: number): Block => {
  const g = (grams: number): string => atStep(grams, decimals);
  return {
    kind: 'table',
    columns: [left('set aside, g'), right(`${wish.people} kits`), right('spare'), right('in all')],
    rows: plan.lines.map((line) => [
      `${lineName(line)}${line.together ? ' *' : ''}`,
      g(line.kitsG),
      g(line.spareG),
      g(line.grams),
    ]),
    total: ['total', g(plan.kitsG), g(plan.spareG), g(plan.totalG)],
  };
};

/** What to buy: whole packs where a pack is known. */
export const shoppingTable = ({ plan }: Planned, decimals: number): Block => {
  const stocked = plan.shopping.some(({ stockG }) => stockG !== undefined);
  return {
    kind: 'table',
    columns: [left('to buy, g'), right('need'), ...(stocked ? [right('stock')] : []), right('buy')],
    rows: plan.shopping.map(({ ingredient, needG, stockG, gramsToBuy, packG, packs }) => [
      shortName(ingredient),
      atStep(needG, decimals),
      ...(stocked ? [plain(stockG ?? 0, 1)] : []),
      packG === undefined ? plain(gramsToBuy, 0) : `${packs} × ${plain(packG, 0)}`,
    ]),
  };
};

/** Scents and the like, weighed once for a whole jug: so much for each jug, by how many kits go into it. */
export const togetherTexts = ({ plan }: Planned, decimals: number): readonly string[] =>
  plan.recipes.flatMap(({ kit, jugs, lines, melting }) =>
    kit.together.map((line) => {
      const all = lines.find((each) => each.ingredient === line.ingredient && each.together);
      const people = [...new Set(jugs.people)].filter((count) => count > 0);
      const jug = people.map(
        (count) => `${plain(line.gramsEach * count, Math.max(2, decimals))} g for a jug of ${count}`,
      );
      const below =
        melting.addAromaBelowC === undefined
          ? ''
          : `, stirred in below ${Math.round(melting.addAromaBelowC)} °C`;
      return `* ${shortName(line.ingredient)} is too little for one kit: whoever leads weighs ${atStep(all?.kitsG ?? 0, decimals)} g for everybody (${jug.join(', ')})${below}.`;
    }),
  );
