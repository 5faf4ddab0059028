import type { Herb, Ingredient } from '../../core/data/ingredient.ts';
import { defined } from '../../core/defined.ts';
import { type Chain, type ChainPart, chainOf } from '../../core/infuse/chain.ts';
import { type Infusion, infuse } from '../../core/infuse/infuse.ts';
import { type HerbMix, mixRatio, mixUptake, type Part } from '../../core/infuse/mix.ts';
import type { Uptake, UsualRatio } from '../../core/infuse/uptake.ts';
import type { Yields } from '../../core/infuse/yields.ts';
import { ingredientById, isHerb } from '../../core/ingredients.ts';
import type { Target } from '../../core/target.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish, OilAmount } from '../topics/infuse.ts';
import { findRecipe } from './find-recipe.ts';
import { infuseTrouble } from './infuse-problems.ts';

/** Herbs in oil: what goes in, what it rests on, and the sums where an amount was given. */
export interface Steep {
  /** None where nobody named one. */
  readonly herbs: HerbMix;
  readonly oils: readonly Part<Ingredient>[];
  readonly uptake: Uptake;
  readonly usual: UsualRatio;
  readonly infusion?: Infusion;
}

/** An infusion worked out, and the batch it is for if there is one. */
export interface Plan extends Steep {
  readonly chain?: Chain;
  readonly recipeName?: string;
  /** Volumes that became grams: what was said, and through which density. */
  readonly volumes: readonly { readonly ml: number; readonly grams: number; readonly densityGMl: number }[];
}

/** Density of the oils together; of an oil nobody named that of the library's unnamed herb oil. */
const oilDensity = (oils: Steep['oils']): number | undefined => {
  if (oils.length === 0) return ingredientById('infused-oil')?.densityGMl?.value;
  const parts = oils.reduce((sum, each) => sum + each.parts, 0);
  const volume = oils.reduce((sum, each) => sum + each.parts / (each.of.densityGMl?.value ?? Number.NaN), 0);
  return Number.isFinite(volume) ? Number((parts / volume).toFixed(4)) : undefined;
};

type Grams = { readonly grams?: number; readonly volume?: Plan['volumes'][number] };

const gramsOf = (amount: OilAmount | undefined, oils: Steep['oils']): Grams | Trouble => {
  if (!amount) return {};
  if (amount.unit === 'g') return { grams: amount.amount };
  const densityGMl = oilDensity(oils);
  if (densityGMl === undefined) {
    return {
      code: 'missing',
      text: `I know no density for ${oils.map(({ of }) => of.name).join(', ')}; give its weight in grams, for example "320 g".`,
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

interface Named<T> {
  readonly parts: readonly Part<T>[];
  readonly trouble?: Trouble;
}

const herbsOf = (wish: InfuseWish): Named<Herb> => {
  const said = wish.herbs ?? (wish.herb === undefined ? [] : [{ herb: wish.herb, parts: 1 }]);
  const parts: Part<Herb>[] = [];
  for (const each of said) {
    const found = ingredientById(each.herb);
    if (!found || !isHerb(found)) return { parts: [], trouble: noHerb(each.herb) };
    if (!found.infusion) return { parts: [], trouble: notToBeInfused(found) };
    parts.push({ of: found, parts: each.parts });
  }
  return { parts };
};

const oilsOf = (wish: InfuseWish): Named<Ingredient> => {
  const said = wish.oils ?? (wish.oil === undefined ? [] : [{ oil: wish.oil, parts: 1 }]);
  const parts: Part<Ingredient>[] = [];
  for (const each of said) {
    const found = ingredientById(each.oil);
    if (!found) return { parts: [], trouble: noOil(each.oil) };
    parts.push({ of: found, parts: each.parts });
  }
  return { parts };
};

/** What one part of a chain steeps: one oil of the recipe, or its whole mass. */
export const steepOf = (part: ChainPart, yields: Yields | undefined): Steep => {
  const oil = part.line && ingredientById(part.line.ingredient);
  return {
    herbs: part.herbs,
    oils: oil ? [{ of: oil, parts: 1 }] : [],
    uptake: mixUptake(part.herbs, yields),
    usual: mixRatio(part.herbs),
    infusion: part.infusion,
  };
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

const scaleOf = (batch: NonNullable<InfuseWish['batch']>, { settings }: Tools) => ({
  lossPercent: batch.lossPercent ?? settings.lossPercent,
  stepG: batch.stepG ?? settings.stepG,
  region: settings.region,
});

const batchPlan = (wish: InfuseWish, tools: Tools): Plan | Trouble => {
  const { batch } = wish;
  const target = batch && targetOf(batch);
  if (!batch || !target) {
    return { code: 'missing', text: 'How much shall I make? For example "24 tins of 15 ml" or "to 500 g".' };
  }
  const recipe = batch.recipe === undefined ? undefined : findRecipe(batch.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  const said = herbsOf(wish);
  if (said.trouble) return said.trouble;
  const { yields } = tools.book.state;
  const scale = { ...scaleOf(batch, tools), lines: recipe?.lines ?? batch.lines ?? [], target };
  const chain = chainOf({
    scale,
    herbs: said.parts.map(({ of, parts }) => ({ of: of.id, parts })),
    ...defined({ herbG: wish.herbG, oil: wish.oil, ratio: wish.ratio, yields }),
    ...(wish.way === 'melt' ? { way: wish.way } : {}),
  });
  if (!chain.ok) return infuseTrouble(chain.problem);
  const bad = chain.value.parts.flatMap(({ herbs }) => herbs).find(({ of }) => !of.infusion);
  if (bad) return notToBeInfused(bad.of);
  return {
    ...steepOf(chain.value.parts[0], yields),
    chain: chain.value,
    volumes: [],
    ...defined({ recipeName: recipe?.name }),
  };
};

/** Works out what a request asks for; without any amount, only what is known of the herbs. */
export const planOf = (wish: InfuseWish, tools: Tools): Plan | Trouble => {
  if (wish.batch) return batchPlan(wish, tools);
  const herbs = herbsOf(wish);
  if (herbs.trouble) return herbs.trouble;
  const oils = oilsOf(wish);
  if (oils.trouble) return oils.trouble;
  const oilIn = gramsOf(wish.oilIn, oils.parts);
  if ('code' in oilIn) return oilIn;
  const oilOut = gramsOf(wish.oilOut, oils.parts);
  if ('code' in oilOut) return oilOut;
  const usual = mixRatio(herbs.parts);
  const plan: Plan = {
    herbs: herbs.parts,
    oils: oils.parts,
    uptake: mixUptake(herbs.parts, tools.book.state.yields),
    usual,
    volumes: [oilIn.volume, oilOut.volume].filter((volume) => volume !== undefined),
  };
  if (wish.herbG === undefined && oilIn.grams === undefined && oilOut.grams === undefined) return plan;
  const infusion = infuse({
    ...defined({ herbG: wish.herbG, oilInG: oilIn.grams, oilOutG: oilOut.grams, ratio: wish.ratio }),
    usualRatio: usual.middle,
    uptake: plan.uptake,
    stepG: tools.settings.stepG,
  });
  return infusion.ok ? { ...plan, infusion: infusion.value } : infuseTrouble(infusion.problem);
};
