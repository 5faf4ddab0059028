import type { Ingredient } from '../data/ingredient.ts';
import { ingredientById, isAdditive, isAroma, isAromaRow } from '../ingredients.ts';
import type { Blend } from './blend.ts';
import { bathAboveC, hottestBathC, pourAboveC } from './pour.ts';
import { fullyMeltedC } from './temperatures.ts';

/** What goes into the jug together, in the order of the stages. `cool-down` is for what heat or time would spoil. */
export type HeatStage = 'waxes' | 'butters' | 'oils' | 'stir-in' | 'cool-down';

/** All temperatures in °C. */
export interface HeatPlan {
  readonly bathC: readonly [number, number];
  readonly pourC: number;
  readonly pourRangeC: readonly [number, number];
  /** Aroma and heat-sensitive additives go in below this: what they ask for, or the pour temperature if that is higher. */
  readonly addAromaBelowC: number;
  /** What the most sensitive ingredient asks for; 50 °C when nothing asks. Often the balm would set before that. */
  readonly wishedBelowC: number;
  readonly sensitive: readonly string[];
  /** Ingredients whose own limit lies below the pour temperature: they suffer, or need a softer recipe. */
  readonly tooHotFor: readonly { readonly ingredient: string; readonly maxC: number }[];
  /** Lowest flash point among the scents, in °C: no flame near the melt. */
  readonly lowestFlashPointC?: number;
  readonly stages: readonly { readonly stage: HeatStage; readonly ingredients: readonly string[] }[];
}

/** Essential oils have no figure of their own: the one of flavour oils is taken (common practice, no source). */
const aromaBelowC = 50;

/** A bath cannot be held more closely than this, in °C. */
const leastBathSpanC = 5;
/** Width of the bath's range when no wax asks for more. */
const plainBathSpanC = 10;

const isStructural = (ingredient: Ingredient): boolean =>
  ingredient.kind === 'wax' || (isAdditive(ingredient) && ingredient.additive.group === 'structurant');

const isSolidFat = ({ kind }: Ingredient): boolean => kind === 'butter' || kind === 'animal-fat';

const bathOf = (ingredients: readonly Ingredient[], clearC: number): readonly [number, number] => {
  const low = Math.min(hottestBathC, clearC + bathAboveC);
  const waxes = ingredients.filter(isStructural).flatMap(({ meltC }) => (meltC ? [meltC.value] : []));
  const wished = waxes.length > 0 ? Math.max(...waxes) + bathAboveC : low + plainBathSpanC;
  return [low, Math.min(hottestBathC, Math.max(wished, low + leastBathSpanC))];
};

const temperatureOf = (
  ingredient: Ingredient,
): { readonly maxC: number; readonly addBelowC?: number | undefined } | undefined =>
  'additive' in ingredient ? ingredient.additive?.temperature : undefined;

/** Temperature in °C below which an ingredient should go in; nothing when a water bath does it no harm. */
const wishOf = (ingredient: Ingredient): number | undefined => {
  const temperature = temperatureOf(ingredient);
  if (temperature && temperature.maxC <= hottestBathC && temperature.addBelowC !== undefined)
    return temperature.addBelowC;
  return isAroma(ingredient) ? aromaBelowC : undefined;
};

const isPowder = (ingredient: Ingredient): boolean =>
  isAdditive(ingredient) &&
  ingredient.additive.group !== 'humectant' &&
  (ingredient.additive.oilSoluble === 'no' || ingredient.additive.oilSoluble === 'disperses');

const stageOf = (ingredient: Ingredient): HeatStage => {
  if (isAroma(ingredient)) return 'cool-down';
  if (isStructural(ingredient)) return 'waxes';
  if (isSolidFat(ingredient)) return 'butters';
  if (ingredient.kind === 'herb' || isPowder(ingredient)) return 'stir-in';
  return wishOf(ingredient) === undefined ? 'oils' : 'cool-down';
};

const stageOrder: readonly HeatStage[] = ['waxes', 'butters', 'oils', 'stir-in', 'cool-down'];

const stagesOf = (ingredients: readonly Ingredient[]): HeatPlan['stages'] =>
  stageOrder.flatMap((stage) => {
    const own = ingredients
      .filter((ingredient) => stageOf(ingredient) === stage)
      .sort((a, b) => (b.meltC?.value ?? 0) - (a.meltC?.value ?? 0));
    return own.length > 0 ? [{ stage, ingredients: own.map(({ id }) => id) }] : [];
  });

const everything = (blend: Blend): readonly Ingredient[] => {
  const all = [
    ...blend.parts.map(({ ingredient }) => ingredient),
    ...blend.leftOut.flatMap(({ ingredient }) => ingredientById(ingredient) ?? []),
  ];
  return [...new Map(all.map((ingredient) => [ingredient.id, ingredient])).values()];
};

const flashPoint = (ingredients: readonly Ingredient[]): number | undefined => {
  const points = ingredients
    .filter(isAromaRow)
    .flatMap(({ flashPointC }) => (flashPointC ? [flashPointC.value] : []));
  return points.length > 0 ? Math.min(...points) : undefined;
};

/**
 * Water bath, pour temperature and the order in which things go in. The bath reaches from 5 °C above fully melted to
 * 5 °C above the published melting point of the hardest wax, at most 90 °C; pieces of a hard wax dissolve below their
 * own melting point, only slowly. Nothing for a blend in which nothing ever freezes: it needs no heat.
 */
export const heatPlan = (blend: Blend): HeatPlan | undefined => {
  const clearC = fullyMeltedC(blend);
  if (clearC === undefined) return undefined;
  const ingredients = everything(blend);
  const wishes = ingredients.flatMap((ingredient) => {
    const belowC = wishOf(ingredient);
    return belowC === undefined ? [] : [{ ingredient, belowC }];
  });
  const wishedBelowC = wishes.length > 0 ? Math.min(...wishes.map(({ belowC }) => belowC)) : aromaBelowC;
  const pourC = clearC + pourAboveC.typical;
  const flash = flashPoint(ingredients);
  return {
    bathC: bathOf(ingredients, clearC),
    pourC,
    pourRangeC: [clearC + pourAboveC.low, clearC + pourAboveC.high],
    addAromaBelowC: Math.max(wishedBelowC, pourC),
    wishedBelowC,
    sensitive: wishes.map(({ ingredient }) => ingredient.id),
    tooHotFor: ingredients.flatMap((ingredient) => {
      const maxC = temperatureOf(ingredient)?.maxC;
      return maxC !== undefined && maxC < clearC + pourAboveC.low
        ? [{ ingredient: ingredient.id, maxC }]
        : [];
    }),
    ...(flash === undefined ? {} : { lowestFlashPointC: flash }),
    stages: stagesOf(ingredients),
  };
};
