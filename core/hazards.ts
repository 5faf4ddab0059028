import { watchedThing } from './check/composition.ts';
import type { Aroma, Herb, Ingredient } from './data/ingredient.ts';
import { limitRows } from './data/rules/limits.ts';
import { limitedIngredients } from './data/rules/links.ts';
import { ingredientById, isAroma, isAromaRow, isHerb } from './ingredients.ts';
import type { TooSmall } from './scale.ts';

/**
 * Facts that a maker has to be warned about, as codes with the ingredients they concern. The bot writes the words.
 * None of this certifies anything: a code that is missing is no clearance.
 */
export type Hazard =
  | {
      readonly code: 'aroma-too-high';
      readonly percent: number;
      readonly usualPercent: number;
    }
  | {
      readonly code: 'aroma-over-usual';
      readonly ingredient: string;
      readonly percent: number;
      readonly usualPercent: number;
    }
  | {
      readonly code: 'not-for-lips';
      readonly ingredient: string;
      readonly note?: string;
    }
  | {
      readonly code: 'lip-caution';
      readonly ingredient: string;
      readonly note: string;
    }
  | {
      readonly code: 'light-sensitising';
      readonly ingredients: readonly string[];
    }
  | { readonly code: 'brings-water'; readonly ingredients: readonly string[] }
  | {
      readonly code: 'wrong-species';
      readonly ingredient: string;
      readonly lookAlikes: string;
      readonly note?: string;
    }
  | {
      readonly code: 'nut-allergen';
      readonly ingredients: readonly string[];
      readonly ask: readonly string[];
    }
  | {
      readonly code: 'food-allergen' | 'bee-allergen' | 'wool-allergen' | 'daisy-family';
      readonly ingredients: readonly string[];
    }
  | {
      readonly code: 'too-little-to-weigh';
      readonly lines: readonly TooSmall[];
    };

/** What is looked at: everything in the tin with its percent, and the herbs strained out. */
export interface HazardInput {
  readonly lines: readonly {
    readonly ingredient: string;
    readonly percent: number;
    readonly infusedWith?: string;
    readonly fresh?: boolean;
  }[];
  readonly strained: readonly {
    readonly ingredient: string;
    readonly fresh?: boolean;
  }[];
  readonly tooSmall: readonly TooSmall[];
}

/** Most scent a lip balm usually carries, all together, in percent (common practice, no source). */
export const usualAromaPercent = 1;

interface Known {
  readonly found: Ingredient;
  readonly percent: number;
  readonly fresh: boolean;
}

const knownLines = (input: HazardInput): Known[] =>
  input.lines.flatMap((line) => {
    const found = ingredientById(line.ingredient);
    return found ? [{ found, percent: line.percent, fresh: line.fresh ?? false }] : [];
  });

const herbsOf = (input: HazardInput): { found: Herb; fresh: boolean }[] => {
  const ids = [
    ...input.strained.map((line) => ({
      id: line.ingredient,
      fresh: line.fresh ?? false,
    })),
    ...input.lines.flatMap((line) => [
      { id: line.ingredient, fresh: line.fresh ?? false },
      ...(line.infusedWith ? [{ id: line.infusedWith, fresh: false }] : []),
    ]),
  ];
  return ids.flatMap(({ id, fresh }) => {
    const found = ingredientById(id);
    return found && isHerb(found) ? [{ found, fresh }] : [];
  });
};

const aromaHazards = (lines: readonly Known[]): Hazard[] => {
  const aromas = lines.filter((line) => isAroma(line.found));
  const percent = Number(aromas.reduce((sum, line) => sum + line.percent, 0).toFixed(4));
  const all: Hazard[] =
    percent > usualAromaPercent ? [{ code: 'aroma-too-high', percent, usualPercent: usualAromaPercent }] : [];
  const each = aromas.flatMap((line): Hazard[] => {
    const usualPercent = line.found.usePercent?.high;
    if (usualPercent === undefined || usualPercent <= 0 || line.percent <= usualPercent) return [];
    return [
      {
        code: 'aroma-over-usual',
        ingredient: line.found.id,
        percent: line.percent,
        usualPercent,
      },
    ];
  });
  return [...all, ...each];
};

const lipHazards = (all: readonly Ingredient[]): Hazard[] =>
  all.flatMap((found): Hazard[] => {
    const note = found.lipNote;
    if (found.lips === 'avoid')
      return [
        {
          code: 'not-for-lips',
          ingredient: found.id,
          ...(note ? { note } : {}),
        },
      ];
    return found.lips === 'caution' && note ? [{ code: 'lip-caution', ingredient: found.id, note }] : [];
  });

/** Watched things that law or guidance keeps off lips whatever their share; colours apart, which differ by region. */
const banned: ReadonlySet<string> = new Set(
  limitRows
    .filter(({ id, limit }) => limit === 0 && !id.startsWith('colour:'))
    .flatMap(({ id }) => limitedIngredients[id] ?? []),
);

const bannedHazards = (input: HazardInput): Hazard[] => {
  const ids = input.lines.flatMap(({ ingredient, infusedWith = '' }) => [ingredient, infusedWith]);
  return [...new Set(ids)]
    .filter((id) => banned.has(id) && watchedThing(id) !== undefined)
    .map((ingredient) => ({ code: 'not-for-lips', ingredient }));
};

const isPhototoxic = (found: Ingredient): found is Aroma => isAromaRow(found) && found.limits.phototoxic;

const lightHazards = (all: readonly Ingredient[]): Hazard[] => {
  const ingredients = all
    .filter((found) => isPhototoxic(found) || (isHerb(found) && found.lightSensitising === 'yes'))
    .map((found) => found.id);
  return ingredients.length > 0 ? [{ code: 'light-sensitising', ingredients }] : [];
};

/** Sold as an additive, but about a sixth of it is water. */
const watery = new Set(['honey']);

const waterHazards = (
  input: HazardInput,
  lines: readonly Known[],
  herbs: readonly { found: Herb; fresh: boolean }[],
): Hazard[] => {
  const ingredients = [
    ...input.lines.map(({ ingredient }) => ingredient).filter((id) => watchedThing(id)?.kind === 'water'),
    ...lines.filter((line) => line.fresh || watery.has(line.found.id)).map((line) => line.found.id),
    ...herbs.filter((herb) => herb.fresh).map((herb) => herb.found.id),
  ];
  return ingredients.length > 0 ? [{ code: 'brings-water', ingredients: [...new Set(ingredients)] }] : [];
};

const speciesHazards = (herbs: readonly { found: Herb }[]): Hazard[] =>
  herbs.flatMap(({ found }): Hazard[] => {
    const { lookAlikes, whyItMatters } = found;
    if (!lookAlikes || !whyItMatters || /harmless|^none|muddle/.test(whyItMatters)) return [];
    return [
      {
        code: 'wrong-species',
        ingredient: found.id,
        lookAlikes,
        note: whyItMatters,
      },
    ];
  });

/** Rarely reported, yet allergic people ask: botanically a nut or its kin (US nut status from memory). */
export const askAboutNuts: ReadonlySet<string> = new Set([
  'shea-butter',
  'argan-oil',
  'coconut-oil',
  'virgin-coconut-oil',
  'fractionated-coconut-oil',
]);

const flagged = (all: readonly Ingredient[], flags: readonly string[]): string[] =>
  all.filter((found) => flags.includes(found.allergen.flag)).map((found) => found.id);

const allergenHazards = (all: readonly Ingredient[]): Hazard[] => {
  const nuts = flagged(all, ['tree-nut', 'peanut']);
  const ask = all
    .filter((found) => askAboutNuts.has(found.id) && !nuts.includes(found.id))
    .map((found) => found.id);
  const groups = [
    {
      code: 'food-allergen',
      ingredients: flagged(all, ['sesame', 'soy', 'wheat']),
    },
    { code: 'bee-allergen', ingredients: flagged(all, ['bee']) },
    { code: 'wool-allergen', ingredients: flagged(all, ['wool']) },
    { code: 'daisy-family', ingredients: flagged(all, ['daisy-family']) },
  ] as const;
  return [
    ...(nuts.length > 0 ? [{ code: 'nut-allergen', ingredients: nuts, ask } as const] : []),
    ...groups.filter((group) => group.ingredients.length > 0),
  ];
};

const unique = (all: readonly Ingredient[]): Ingredient[] => [...new Set(all)];

/** What the scale cannot tell well; it depends on how much is made. */
export const weighingHazards = (tooSmall: readonly TooSmall[]): readonly Hazard[] =>
  tooSmall.length > 0 ? [{ code: 'too-little-to-weigh', lines: tooSmall }] : [];

/** All hazards of a scaled recipe, the ones about safety first, those about weighing last. */
export const hazardsOf = (input: HazardInput): readonly Hazard[] => {
  const lines = knownLines(input);
  const herbs = herbsOf(input);
  const all = unique([...lines.map((line) => line.found), ...herbs.map((herb) => herb.found)]);
  return [
    ...lipHazards(all),
    ...bannedHazards(input),
    ...aromaHazards(lines),
    ...lightHazards(all),
    ...waterHazards(input, lines, herbs),
    ...speciesHazards(herbs),
    ...allergenHazards(all),
    ...weighingHazards(input.tooSmall),
  ];
};
