import type { Prices } from '../cost/prices.ts';
import { defined } from '../defined.ts';
import type { Yields } from '../infuse/yields.ts';
import { fail, ok, type Result } from '../result.ts';
import type { ScaleProblem, TooSmall } from '../scale.ts';
import { mostBatchG } from '../target.ts';
import { type Steeped, steepedAhead } from './ahead.ts';
import { type Equipment, equipmentFor, scalesFor } from './equipment.ts';
import { type Baths, bathsFor, type JugPlan, jugsFor, type Melting, meltingOf } from './jugs.ts';
import { type Kit, kitOf, type Making, type Weighing } from './kit.ts';
import { allSetAside, type SetAside, setAside, tooSmallTogether, totalOf } from './set-aside.ts';
import { shoppingList, type ToBuy } from './shopping.ts';
import { settingFactor, type TimelineEntry, timelineOf, usualRoomC } from './timeline.ts';

export type { Making } from './kit.ts';

export interface WorkshopRequest extends Weighing {
  readonly people: number;
  readonly makings: readonly Making[];
  readonly sparePercent: number;
  /** Water baths there are, one jug to each; as many as needed where it is not said. */
  readonly hotPlates?: number;
  readonly jugMl?: number;
  /** Jugs there are; as many as needed where it is not said. */
  readonly jugs?: number;
  /** Temperature of the room in °C; 20 where it is not said. */
  readonly roomC?: number;
  readonly yields?: Yields | undefined;
  readonly prices?: Prices | undefined;
  readonly stockG?: Readonly<Record<string, number>> | undefined;
}

export type WorkshopProblem =
  | ScaleProblem
  | { readonly code: 'no-makings' }
  | {
      readonly code: 'bad-count';
      readonly field: 'people' | 'each' | 'hotPlates' | 'jugs' | 'jugMl';
      readonly got: number;
    }
  | { readonly code: 'bad-spare'; readonly got: number };

/** One recipe of the workshop. */
export interface WorkshopRecipe {
  readonly kit: Kit;
  readonly lines: readonly SetAside[];
  readonly totalG: number;
  readonly melting: Melting;
  readonly jugs: JugPlan;
  readonly tooSmallTogether: readonly TooSmall[];
}

export interface Workshop {
  readonly recipes: readonly WorkshopRecipe[];
  /** Over all recipes, one line an ingredient. Columns sum to the totals below, to the step. */
  readonly lines: readonly SetAside[];
  readonly perPersonG: number;
  readonly kitsG: number;
  readonly spareG: number;
  readonly totalG: number;
  /** Containers of everybody together, and the spare ones on top. */
  readonly containers: number;
  readonly spareContainers: number;
  readonly steeped: Steeped;
  /** Recipes, by their place in the list, that do not set in this room. */
  readonly doesNotSet: readonly number[];
  readonly baths: Baths;
  readonly scales: number;
  readonly equipment: readonly Equipment[];
  readonly timeline: readonly TimelineEntry[];
  readonly shopping: readonly ToBuy[];
}

/** Largest share of spare, in percent: as much again. */
export const mostSparePercent = 100;

const isCount = (value: number | undefined): boolean =>
  value === undefined || (Number.isInteger(value) && value >= 1);

const problemOf = (request: WorkshopRequest): WorkshopProblem | undefined => {
  const { people, makings, sparePercent, hotPlates, jugs, jugMl } = request;
  if (makings.length === 0) return { code: 'no-makings' };
  if (!isCount(people)) return { code: 'bad-count', field: 'people', got: people };
  const odd = makings.find(({ each }) => !isCount(each));
  if (odd) return { code: 'bad-count', field: 'each', got: odd.each };
  if (!isCount(hotPlates)) return { code: 'bad-count', field: 'hotPlates', got: hotPlates ?? 0 };
  if (!isCount(jugs)) return { code: 'bad-count', field: 'jugs', got: jugs ?? 0 };
  if (jugMl !== undefined && !(jugMl > 0 && Number.isFinite(jugMl)))
    return { code: 'bad-count', field: 'jugMl', got: jugMl };
  return sparePercent >= 0 && sparePercent <= mostSparePercent
    ? undefined
    : { code: 'bad-spare', got: sparePercent };
};

const recipeOf = (making: Making, request: WorkshopRequest): Result<WorkshopRecipe, WorkshopProblem> => {
  const kit = kitOf(making, request);
  if (!kit.ok) return kit;
  const { people, sparePercent, stepG, jugMl } = request;
  const lines = setAside(kit.value, people, sparePercent, stepG);
  const totalG = totalOf(lines, 'grams', stepG);
  if (totalG > mostBatchG) return fail({ code: 'batch-too-big', totalG, mostG: mostBatchG });
  const melting = meltingOf(kit.value);
  const jugs = jugsFor({
    people,
    meltedGEach: kit.value.meltedG,
    totalG,
    hotMlPerG: melting.hotMlPerG,
    ...defined({ jugMl }),
  });
  return ok({
    kit: kit.value,
    lines,
    totalG,
    melting,
    jugs,
    tooSmallTogether: tooSmallTogether(kit.value, people, stepG),
  });
};

const recipesOf = (request: WorkshopRequest): Result<readonly WorkshopRecipe[], WorkshopProblem> => {
  const all: WorkshopRecipe[] = [];
  for (const making of request.makings) {
    const recipe = recipeOf(making, request);
    if (!recipe.ok) return recipe;
    all.push(recipe.value);
  }
  return ok(all);
};

const steepedOf = (recipes: readonly WorkshopRecipe[], request: WorkshopRequest): Steeped => {
  const each = recipes.map(({ kit, lines, totalG }) =>
    steepedAhead(kit, lines, totalG, request.stepG, request.yields),
  );
  return { ahead: each.flatMap(({ ahead }) => ahead), inMelt: each.flatMap(({ inMelt }) => inMelt) };
};

interface Counts {
  readonly containers: number;
  readonly spareContainers: number;
}

const countsOf = ({ people, makings, sparePercent }: WorkshopRequest): Counts => {
  const of = (each: number): number => people * each;
  return {
    containers: makings.reduce((sum, { each }) => sum + of(each), 0),
    spareContainers: makings.reduce((sum, { each }) => sum + spareOf(of(each), sparePercent), 0),
  };
};

/** Spare containers of one kind, rounded up. */
export const spareOf = (count: number, sparePercent: number): number =>
  Math.ceil((count * sparePercent) / 100 - 1e-9);

/** How much longer the slowest recipe takes to set in this room, and which do not set there at all. */
const settingOf = (recipes: readonly WorkshopRecipe[], roomC: number) => {
  const factors = recipes.map(({ melting: { pourC, softensC } }) =>
    pourC === undefined || softensC === undefined ? undefined : settingFactor(pourC, softensC, roomC),
  );
  return {
    factor: Math.max(1, ...factors.map((factor) => factor ?? 1)),
    doesNotSet: factors.flatMap((factor, at) =>
      factor === undefined && !recipes[at]?.melting.rough ? [at] : [],
    ),
  };
};

const dayOf = (
  recipes: readonly WorkshopRecipe[],
  request: WorkshopRequest,
  baths: Baths,
  infusesAhead: boolean,
  factor: number,
): readonly TimelineEntry[] =>
  timelineOf({
    people: request.people,
    scales: scalesFor(request.people),
    lines: recipes.reduce((sum, { kit }) => sum + kit.lines.length, 0),
    rounds: baths.rounds,
    jugs: baths.jugs,
    gramsFullest: Math.max(...recipes.map(({ jugs }) => jugs.gramsFullest)),
    containers: countsOf(request).containers,
    largestFillG: Math.max(...recipes.map(({ kit }) => kit.fillGEach)),
    infusesAhead,
    settingFactor: factor,
  });

/**
 * Plans a workshop: each person's kits, what is set aside with the spare, jugs and water baths, what is steeped before
 * the day, the kit list, the day itself and what to buy. Grams are in whole steps of the scale throughout: a person's
 * lines sum to the person's total, and people × kit, doses weighed together and spare sum to what is set aside.
 */
export const planWorkshop = (request: WorkshopRequest): Result<Workshop, WorkshopProblem> => {
  const problem = problemOf(request);
  if (problem) return fail(problem);
  const made = recipesOf(request);
  if (!made.ok) return made;
  const recipes = made.value;
  const { stepG } = request;
  const lines = allSetAside(
    recipes.map((recipe) => recipe.lines),
    stepG,
  );
  const steeped = steepedOf(recipes, request);
  const counts = countsOf(request);
  const jugs = recipes.reduce((sum, recipe) => sum + recipe.jugs.jugs, 0);
  const baths = bathsFor(jugs, request.hotPlates, request.jugs);
  const setting = settingOf(recipes, request.roomC ?? usualRoomC);
  return ok({
    recipes,
    lines,
    perPersonG: totalOf(lines, 'perPersonG', stepG),
    kitsG: totalOf(lines, 'kitsG', stepG),
    spareG: totalOf(lines, 'spareG', stepG),
    totalG: totalOf(lines, 'grams', stepG),
    ...counts,
    steeped,
    doesNotSet: setting.doesNotSet,
    baths,
    scales: scalesFor(request.people),
    equipment: equipmentFor({
      people: request.people,
      containers: counts.containers + counts.spareContainers,
      jugPlans: recipes.map((recipe) => recipe.jugs),
      baths,
      infusions: steeped.ahead.length,
    }),
    timeline: dayOf(recipes, request, baths, steeped.ahead.length > 0, setting.factor),
    shopping: shoppingList({ lines, ...steeped, stepG, prices: request.prices, stockG: request.stockG }),
  });
};
