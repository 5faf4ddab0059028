import { z } from 'zod';
import { type BenchEvent, benchEvents } from './bench/events.ts';
import { afterBenchEvent } from './bench/fold.ts';
import { type Bench, emptyBench } from './bench/state.ts';
import {
  afterPrice,
  type Labour,
  labourSchema,
  labourSet,
  type Prices,
  priceNoted,
  priceRemoved,
  pricesSchema,
} from './cost/prices.ts';
import { defined } from './defined.ts';
import { afterYield, type Yields, yieldNoted, yieldRemoved, yieldsSchema } from './infuse/yields.ts';
import { bookEvents, type Forgetting, forgettingSchema, type PartPut } from './parts/part.ts';
import { afterBenchPut, withoutContact } from './parts/put-bench.ts';
import { recipeLines, recipeName } from './recipe.ts';
import { recipeId, type SavedRecipe, savedRecipe } from './saved-recipe.ts';
import { defaultSettings, type Settings, settingsSchema } from './settings.ts';

export { recipeId, type SavedRecipe, savedRecipe };

/** Longest group and member ids, in UTF-16 units. */
export const maxIdLength = 200;

/**
 * The book of one group is a list of events; what stands in it now is a pure fold of them. Nothing is edited away:
 * a correction is a new event. Event kinds and their fields are kept readable for good, so only ever add kinds or
 * optional fields.
 */
export const bookEvent = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('recipe-saved'),
    recipe: recipeId,
    name: recipeName,
    lines: recipeLines,
  }),
  z.strictObject({
    kind: z.literal('recipe-renamed'),
    recipe: recipeId,
    name: recipeName,
  }),
  z.strictObject({ kind: z.literal('recipe-deleted'), recipe: recipeId }),
  z.strictObject({
    kind: z.literal('settings-changed'),
    settings: settingsSchema.partial(),
  }),
  priceNoted,
  priceRemoved,
  labourSet,
  yieldNoted,
  yieldRemoved,
  ...benchEvents,
  ...bookEvents,
]);
export type BookEvent = z.output<typeof bookEvent>;

/**
 * One written event: `seq` counts 1, 2, 3 … within the group, `at` is an ISO instant, `who` a member id and `name` what
 * they were called then. Where one request wrote several events, `first` is the number of the first of them, on all the
 * others.
 */
export const bookEntry = z.strictObject({
  v: z.literal(1),
  group: z.string().min(1).max(maxIdLength),
  seq: z.int().min(1),
  at: z.iso.datetime(),
  who: z.string().max(maxIdLength),
  name: z.string().min(1).max(100).optional(),
  first: z.int().min(1).optional(),
  event: bookEvent,
});
export type BookEntry = z.output<typeof bookEntry>;

export const bookState = z.strictObject({
  v: z.literal(1),
  seq: z.int().min(0),
  settings: settingsSchema,
  recipes: z.record(recipeId, savedRecipe),
  /** What the group pays, by ingredient or container. Missing, like the two below, until something is noted. */
  prices: pricesSchema.optional(),
  labour: labourSchema.optional(),
  /** Weighed yields of infusions, by herb. */
  yields: yieldsSchema.optional(),
  /** Lots, batches, reactions and the reminder; their own maps, see core/bench. */
  bench: z.custom<Bench>((value) => typeof value === 'object' && value !== null).optional(),
  /** Everything is to be forgotten, and when. */
  forgetting: forgettingSchema.optional(),
});
export type BookState = z.output<typeof bookState>;

export const emptyBook: BookState = {
  v: 1,
  seq: 0,
  settings: defaultSettings,
  recipes: {},
};

/** What the group records at the bench, from the first event on. */
export const benchOf = (state: BookState): Bench => state.bench ?? emptyBench;

/** The book while entries are being applied: the same data, with what this fold has copied already open to change. */
interface Draft {
  settings: Settings;
  recipes: Readonly<Record<string, SavedRecipe>>;
  /** The same list once this fold has copied it; copied only when a recipe changes. */
  ownRecipes?: Record<string, SavedRecipe>;
  bench: Bench | undefined;
  prices: Prices | undefined;
  labour: Labour | undefined;
  yields: Yields | undefined;
  forgetting: Forgetting | undefined;
  /** Version lists made during this fold; any other list may belong to an older state and is copied first. */
  readonly owned: Set<number[]>;
}

const ownVersions = (draft: Draft, recipe: SavedRecipe | undefined): number[] => {
  const versions = recipe?.versions ?? [];
  if (draft.owned.has(versions)) return versions;
  const copy = [...versions];
  draft.owned.add(copy);
  return copy;
};

const recipeOf = (draft: Draft, id: string): SavedRecipe | undefined =>
  Object.hasOwn(draft.recipes, id) ? draft.recipes[id] : undefined;

type RecipeEvent = Extract<BookEvent, { readonly kind: `recipe-${string}` }>;

const isRecipeEvent = (event: RecipeEvent | BenchEvent): event is RecipeEvent =>
  event.kind.startsWith('recipe-');

const ownRecipes = (draft: Draft): Record<string, SavedRecipe> => {
  draft.ownRecipes ??= { ...draft.recipes };
  draft.recipes = draft.ownRecipes;
  return draft.ownRecipes;
};

const applyRecipe = (draft: Draft, seq: number, event: RecipeEvent): void => {
  const id = event.recipe;
  const recipe = recipeOf(draft, id);
  const recipes = ownRecipes(draft);
  if (event.kind === 'recipe-saved') {
    const versions = ownVersions(draft, recipe);
    versions.push(seq);
    recipes[id] = { id, name: event.name, lines: event.lines, versions };
  } else if (event.kind === 'recipe-renamed') {
    if (recipe) recipes[id] = { ...recipe, name: event.name };
  } else delete recipes[id];
};

/** A record with one value as given, or without it. */
const withKey = <T>(
  record: Readonly<Record<string, T>> | undefined,
  id: string,
  value: T | null,
): Record<string, T> => {
  const entries = Object.entries(record ?? {}).filter(([key]) => key !== id);
  return Object.fromEntries(value === null ? entries : [...entries, [id, value]]);
};

const applyPut = (draft: Draft, put: PartPut, seq: number): void => {
  switch (put.part) {
    case 'recipe': {
      const recipes = ownRecipes(draft);
      if (put.value === null) delete recipes[put.id];
      else recipes[put.id] = put.value;
      return;
    }
    case 'settings':
      draft.settings = put.value ?? defaultSettings;
      return;
    case 'price':
      draft.prices = withKey(draft.prices, put.id, put.value);
      return;
    case 'labour':
      draft.labour = put.value ?? undefined;
      return;
    case 'yield':
      draft.yields = withKey(draft.yields, put.id, put.value);
      return;
    default:
      draft.bench = afterBenchPut(draft.bench ?? emptyBench, put, seq);
  }
};

type MoneyEvent = Extract<
  BookEvent,
  { readonly kind: 'price-noted' | 'price-removed' | 'labour-set' | 'yield-noted' | 'yield-removed' }
>;

const applyMoney = (draft: Draft, at: string, event: MoneyEvent): void => {
  if (event.kind === 'labour-set') {
    const { kind: _kind, ...labour } = event;
    draft.labour = labour;
  } else if (event.kind === 'yield-noted' || event.kind === 'yield-removed')
    draft.yields = afterYield(draft.yields ?? {}, event);
  else draft.prices = afterPrice(draft.prices ?? {}, event, at);
};

const apply = (draft: Draft, { seq, at, who, name, event }: BookEntry): void => {
  switch (event.kind) {
    case 'settings-changed':
      draft.settings = settingsSchema.parse({
        ...draft.settings,
        ...event.settings,
        ...(event.settings.region === undefined ? {} : { regionChosen: true }),
      });
      return;
    case 'price-noted':
    case 'price-removed':
    case 'labour-set':
    case 'yield-noted':
    case 'yield-removed':
      applyMoney(draft, at, event);
      return;
    case 'parts-put':
      for (const put of event.puts) applyPut(draft, put, seq);
      return;
    case 'contact-forgotten':
      draft.bench = withoutContact(draft.bench ?? emptyBench, event.id);
      return;
    case 'forgetting-asked':
      draft.forgetting = { due: event.due, who, ...defined({ name }) };
      return;
    case 'forgetting-stopped':
      draft.forgetting = undefined;
      return;
    default:
      if (isRecipeEvent(event)) applyRecipe(draft, seq, event);
      else draft.bench = afterBenchEvent(draft.bench ?? emptyBench, event, seq);
  }
};

/**
 * The book after some more entries, in order of `seq`. Pure: `state` stays as it was. The list of recipes is copied once
 * for all the entries together, and only when a recipe changes, so a long journal is best folded in one call.
 */
export const afterEntries = (state: BookState, entries: readonly BookEntry[]): BookState => {
  const last = entries.at(-1);
  if (last === undefined) return state;
  const draft: Draft = {
    settings: state.settings,
    recipes: state.recipes,
    bench: state.bench,
    prices: state.prices,
    labour: state.labour,
    yields: state.yields,
    forgetting: state.forgetting,
    owned: new Set(),
  };
  for (const entry of entries) apply(draft, entry);
  const { settings, recipes, ...more } = draft;
  const { prices, labour, yields, bench, forgetting } = more;
  return {
    v: 1,
    seq: last.seq,
    settings,
    recipes,
    ...defined({ prices, labour, yields, bench, forgetting }),
  };
};

/** The book after one more entry. Pure; entries must come in order of `seq`. */
export const afterEntry = (state: BookState, entry: BookEntry): BookState => afterEntries(state, [entry]);
