import {
  type AllergenRule,
  allergenRule,
  type Declarable,
  declarable,
  type Use,
} from '../check/allergens.ts';
import { amountsOf, type CheckLine, tidy } from '../check/amounts.ts';
import { type Analysis, watchedThing } from '../check/composition.ts';
import { ownLabelNames } from '../data/rules/constituents.ts';
import type { Region } from '../settings.ts';
import {
  aromaWord,
  extractName,
  isAromaId,
  isHerbId,
  labelName,
  type Named,
  powderName,
} from './label-name.ts';

/** Where a name stands: falling by weight, after those under 1 %, after them allergens, last colours. */
export type ListGroup = 'main' | 'small' | 'allergen' | 'colour';

export interface Listed {
  readonly name: string;
  readonly group: ListGroup;
  /** Percent by weight when added; missing where it is not known (what an herb leaves in oil). */
  readonly percent?: number;
  readonly ingredients: readonly string[];
}

export interface ListInput {
  /** What stays in the tin, percent by weight of the whole. */
  readonly lines: readonly CheckLine[];
  /** Herbs that are strained out again. */
  readonly strained: readonly { readonly ingredient: string }[];
  readonly region: Region;
  /** ISO day of first supply: the law of that day counts. */
  readonly on: string;
  /** ISO day the goods are sold, where that is later. */
  readonly soldOn?: string;
  readonly use?: Use;
  readonly analyses?: readonly Analysis[];
  /** One word for all scent that need not be named by itself. */
  readonly scentAsAroma?: boolean;
}

export interface IngredientList {
  readonly entries: readonly Listed[];
  /** Allergens found, declared or not, most first. */
  readonly allergens: readonly Declarable[];
  readonly rule: AllergenRule;
  /** Ingredients whose label name the supplier has to confirm. */
  readonly ask: readonly string[];
  /** Infused oils of which nobody said what oil they are. */
  readonly unnamedOils: readonly string[];
}

/** Stands where the oil of an infusion has to be filled in. */
export const unnamedOil = '[OIL OF THE INFUSION]';

interface Part {
  readonly name: string;
  readonly colour: boolean;
  readonly percent: number | undefined;
  readonly ingredient: string;
}

/** The entry of the allergen list that a scent is, when it has to be named that way there and then. */
const ownName = (id: string, declared: ReadonlySet<string>): string | undefined => {
  const own = ownLabelNames[id] ?? watchedThing(id)?.labelName;
  return own !== undefined && declared.has(own) ? own : undefined;
};

const asParts = (named: Named, ingredient: string, percent: number | undefined): readonly Part[] =>
  named.names.map((name) => ({ name, colour: named.colour, percent, ingredient }));

const partsOfLine = (line: CheckLine, input: ListInput, declared: ReadonlySet<string>): readonly Part[] => {
  const { region } = input;
  const { ingredient, percent, infusedWith } = line;
  const extract = infusedWith ? asParts(extractName(infusedWith, region), infusedWith, undefined) : [];
  if (ingredient === 'infused-oil')
    return [{ name: unnamedOil, colour: false, percent, ingredient }, ...extract];
  if (isHerbId(ingredient)) return asParts(powderName(ingredient, region), ingredient, percent);
  const own = ownName(ingredient, declared);
  if (own) return [{ name: own, colour: false, percent, ingredient }];
  if (input.scentAsAroma && isAromaId(ingredient) && labelName(ingredient, region).names[0] !== 'Parfum')
    return [{ name: aromaWord(region), colour: false, percent, ingredient }];
  return [...asParts(labelName(ingredient, region), ingredient, percent), ...extract];
};

/** Equal names are one entry with their shares together. */
const merged = (parts: readonly Part[]): readonly (Part & { readonly ingredients: readonly string[] })[] => {
  const byName = new Map<string, Part & { readonly ingredients: readonly string[] }>();
  for (const part of parts) {
    const before = byName.get(part.name);
    const percent =
      before?.percent === undefined && part.percent === undefined
        ? undefined
        : tidy((before?.percent ?? 0) + (part.percent ?? 0));
    byName.set(part.name, {
      ...part,
      percent,
      ingredients: [...new Set([...(before?.ingredients ?? []), part.ingredient])],
    });
  }
  return [...byName.values()];
};

const groupOf = ({ colour, percent }: Part): ListGroup => {
  if (colour) return 'colour';
  // Exactly 1 % may stand anywhere in the US and Canada; sorted is right everywhere.
  return percent !== undefined && percent >= 1 ? 'main' : 'small';
};

const groups: readonly ListGroup[] = ['main', 'small', 'allergen', 'colour'];

const falling = (a: Listed, b: Listed): number => {
  const byGroup = groups.indexOf(a.group) - groups.indexOf(b.group);
  if (byGroup !== 0) return byGroup;
  const byPercent = (b.percent ?? 0) - (a.percent ?? 0);
  return byPercent !== 0 ? byPercent : a.name < b.name ? -1 : 1;
};

const askAbout = (input: ListInput): readonly string[] => {
  const ids = input.lines.flatMap(({ ingredient, infusedWith }) => [
    ingredient,
    ...(infusedWith ? [infusedWith] : []),
  ]);
  return [...new Set([...ids, ...input.strained.map(({ ingredient }) => ingredient)])].filter(
    (id) => labelName(id, input.region).ask,
  );
};

/**
 * The ingredient list in its legal order (Regulation (EC) 1223/2009 Article 19(1)(g); 21 CFR 701.3; Canadian Cosmetic
 * Regulations; Australian Information Standard 2020): falling by weight when added, then those under 1 % (falling too,
 * which any order allows), then fragrance allergens that have to be named and do not stand there yet, colours last.
 * A steeped herb adds its extract, of unknown share, among those under 1 %.
 */
export const ingredientList = (input: ListInput): IngredientList => {
  const { lines, strained, region, on, soldOn = on, use = 'leave-on', analyses = [] } = input;
  const rule = allergenRule(region, on, soldOn);
  const allergens = declarable(lines, amountsOf(lines, analyses), rule.list, use);
  const declared = new Set(allergens.filter(({ declare }) => declare).map(({ name }) => name));
  const herbs = strained.flatMap(({ ingredient }) =>
    asParts(extractName(ingredient, region), ingredient, undefined),
  );
  const parts = merged([...lines.flatMap((line) => partsOfLine(line, input, declared)), ...herbs]);
  const named = new Set(parts.map(({ name }) => name));
  const entries: Listed[] = [
    ...parts.map((part) => ({
      name: part.name,
      group: groupOf(part),
      ...(part.percent === undefined ? {} : { percent: part.percent }),
      ingredients: part.ingredients,
    })),
    ...allergens
      .filter(({ name, declare }) => declare && !named.has(name))
      .map(({ name, percent }): Listed => ({ name, group: 'allergen', percent, ingredients: [] })),
  ].toSorted(falling);
  const unnamedOils = lines.filter(({ ingredient }) => ingredient === 'infused-oil');
  return {
    entries,
    allergens,
    rule,
    ask: askAbout(input).filter((id) => id !== 'infused-oil'),
    unnamedOils: unnamedOils.map(({ infusedWith }) => infusedWith ?? 'infused-oil'),
  };
};
