import type { Herb, Ingredient } from '../../core/data/ingredient.ts';
import { defined } from '../../core/defined.ts';
import { type Chain, chainOf } from '../../core/infuse/chain.ts';
import { type Infusion, infuse } from '../../core/infuse/infuse.ts';
import { type Uptake, uptakeFor, usualRatio } from '../../core/infuse/uptake.ts';
import { ingredientById, isHerb } from '../../core/ingredients.ts';
import type { Target } from '../../core/target.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish, OilAmount } from '../topics/infuse.ts';
import { findRecipe } from './find-recipe.ts';
import { infuseTrouble } from './infuse-problems.ts';

/** An infusion worked out: rows, what it rests on, and the batch it is for if there is one. */
export interface Plan {
  readonly herb?: Herb;
  readonly oil?: Ingredient;
  readonly uptake: Uptake;
  readonly usual: { readonly low: number; readonly high: number; readonly middle: number };
  readonly infusion?: Infusion;
  readonly chain?: Chain;
  readonly recipeName?: string;
  /** Volumes that became grams: what was said, and through which density. */
  readonly volumes: readonly { readonly ml: number; readonly grams: number; readonly densityGMl: number }[];
}

/** Density of an oil nobody named: that of the library's unnamed herb oil. */
const oilDensity = (oil: Ingredient | undefined): number | undefined =>
  (oil ?? ingredientById('infused-oil'))?.densityGMl?.value;

type Grams = { readonly grams?: number; readonly volume?: Plan['volumes'][number] };

const gramsOf = (amount: OilAmount | undefined, oil: Ingredient | undefined): Grams | Trouble => {
  if (!amount) return {};
  if (amount.unit === 'g') return { grams: amount.amount };
  const densityGMl = oilDensity(oil);
  if (densityGMl === undefined) {
    return {
      code: 'missing',
      text: `I know no density for ${oil?.name ?? 'that oil'}; give its weight in grams, for example "320 g".`,
    };
  }
  const grams = amount.amount * densityGMl;
  return { grams, volume: { ml: amount.amount, grams, densityGMl } };
};

const notToBeInfused = (herb: Herb): Trouble => ({
  code: 'not-allowed',
  text: `${herb.name} does not go into a balm: ${herb.lipNote ?? herb.whyItMatters ?? herb.purpose}. Try "infuse 40 g dried calendula in sunflower oil".`,
});

const noHerb = (id: string): Trouble => ({
  code: 'unknown-ingredient',
  text: `I do not know the herb "${id}". Try "infuse 40 g dried calendula in sunflower oil".`,
});

const noOil = (id: string): Trouble => ({
  code: 'unknown-ingredient',
  text: `I do not know the oil "${id}". Try "infuse 40 g dried calendula in sunflower oil".`,
});

const herbOf = (id: string | undefined): { herb?: Herb; trouble?: Trouble } => {
  if (id === undefined) return {};
  const found = ingredientById(id);
  if (!found || !isHerb(found)) return { trouble: noHerb(id) };
  return found.infusion ? { herb: found } : { trouble: notToBeInfused(found) };
};

const targetOf = (batch: NonNullable<InfuseWish['batch']>): Target | undefined => {
  const fill =
    batch.size && (batch.size.unit === 'g' ? { grams: batch.size.amount } : { ml: batch.size.amount });
  const filled = defined({ fill });
  if (batch.limit) return { kind: 'limit', ...batch.limit, ...filled };
  if (batch.count !== undefined && fill) return { kind: 'containers', count: batch.count, fill };
  if (batch.totalG !== undefined) return { kind: 'mass', grams: batch.totalG, ...filled };
  if (batch.totalMl !== undefined) return { kind: 'volume', ml: batch.totalMl, ...filled };
  return batch.factor === undefined ? undefined : { kind: 'multiple', factor: batch.factor, ...filled };
};

const batchPlan = (wish: InfuseWish, tools: Tools): Plan | Trouble => {
  const { batch } = wish;
  const target = batch && targetOf(batch);
  if (!batch || !target) {
    return { code: 'missing', text: 'How much shall I make? For example "24 tins of 15 ml" or "to 500 g".' };
  }
  const recipe = batch.recipe === undefined ? undefined : findRecipe(batch.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  const { settings } = tools;
  const { yields } = tools.book.state;
  const chain = chainOf({
    scale: {
      lines: recipe?.lines ?? batch.lines ?? [],
      target,
      lossPercent: batch.lossPercent ?? settings.lossPercent,
      stepG: batch.stepG ?? settings.stepG,
      region: settings.region,
    },
    ...defined({ herb: wish.herb, oil: wish.oil, ratio: wish.ratio, yields }),
  });
  if (!chain.ok) return infuseTrouble(chain.problem);
  const { herb, infusion, line } = chain.value;
  if (!herb.infusion) return notToBeInfused(herb);
  return {
    herb,
    uptake: uptakeFor(herb, yields),
    usual: usualRatio(herb),
    infusion,
    chain: chain.value,
    volumes: [],
    ...defined({ oil: ingredientById(line.ingredient), recipeName: recipe?.name }),
  };
};

/** Works out what a request asks for; without any amount, only what is known of the herb. */
export const planOf = (wish: InfuseWish, tools: Tools): Plan | Trouble => {
  if (wish.batch) return batchPlan(wish, tools);
  const { herb, trouble } = herbOf(wish.herb);
  if (trouble) return trouble;
  const oil = wish.oil === undefined ? undefined : ingredientById(wish.oil);
  if (wish.oil !== undefined && !oil) return noOil(wish.oil);
  const oilIn = gramsOf(wish.oilIn, oil);
  if ('code' in oilIn) return oilIn;
  const oilOut = gramsOf(wish.oilOut, oil);
  if ('code' in oilOut) return oilOut;
  const uptake = uptakeFor(herb, tools.book.state.yields);
  const usual = usualRatio(herb);
  const plan: Plan = {
    uptake,
    usual,
    volumes: [oilIn.volume, oilOut.volume].filter((volume) => volume !== undefined),
    ...defined({ herb, oil }),
  };
  if (wish.herbG === undefined && oilIn.grams === undefined && oilOut.grams === undefined) return plan;
  const infusion = infuse({
    ...defined({ herbG: wish.herbG, oilInG: oilIn.grams, oilOutG: oilOut.grams, ratio: wish.ratio }),
    usualRatio: usual.middle,
    uptake,
    stepG: tools.settings.stepG,
  });
  return infusion.ok ? { ...plan, infusion: infusion.value } : infuseTrouble(infusion.problem);
};
