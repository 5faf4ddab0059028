import { Temporal } from 'temporal-polyfill';
import { type BestBefore, bestBeforeOf } from '../bench/best-before.ts';
import { printedMonth } from '../bench/days.ts';
import type { Use } from '../check/allergens.ts';
import type { CheckLine } from '../check/amounts.ts';
import type { Analysis } from '../check/composition.ts';
import { childFindings } from '../check/other-findings.ts';
import { ok, type Result } from '../result.ts';
import type { Region } from '../settings.ts';
import { type IngredientList, ingredientList } from './ingredient-list.ts';
import { durabilityMark, type LabelHas, type Lack, lacksOf } from './missing.ts';
import { type NetContents, type NetProblem, netContents } from './net-contents.ts';

/** Cautions that stand on the tin, as codes; the bot has the words in the languages a region asks for. */
export type LabelCaution = 'breathing' | 'salicylate' | 'honey' | 'stop-if-it-stings';

export interface LabelInput {
  readonly lines: readonly CheckLine[];
  readonly strained: readonly { readonly ingredient: string; readonly fresh?: boolean }[];
  readonly region: Region;
  /** ISO day of first supply, and of sale where that is later. */
  readonly on: string;
  readonly soldOn?: string;
  /** ISO day of making. */
  readonly madeOn: string;
  /** ISO day, from a batch or as the maker says it. */
  readonly bestBefore?: string;
  /** What one tin holds; absent: not known. */
  readonly net?: { readonly grams: number } | { readonly ounces: number };
  readonly use?: Use;
  readonly analyses?: readonly Analysis[];
  readonly scentAsAroma?: boolean;
  readonly has: Pick<LabelHas, 'identity' | 'lot' | 'maker' | 'contact' | 'languages' | 'memberLanguage'>;
}

export interface Durability {
  /** ISO day. */
  readonly bestBefore: string;
  /** `2027-04`: the last month that is over by then. */
  readonly month: string;
  readonly mark: 'date' | 'open-jar';
  /** Set where it was reckoned here. */
  readonly reckoned?: BestBefore;
  /** The month on the tin would be over with the month of making: not for sale. */
  readonly tooShort: boolean;
}

export interface Label {
  readonly list: IngredientList;
  readonly net?: NetContents;
  readonly durability: Durability;
  readonly cautions: readonly LabelCaution[];
  readonly lacks: readonly Lack[];
}

/** Whole months, a day over counting as one more: 30 months exactly is "30 months or less". */
export const monthsUntil = (from: string, to: string): number => {
  const start = Temporal.PlainDate.from(from);
  const { months } = start.until(Temporal.PlainDate.from(to), { largestUnit: 'months' });
  return start.add({ months }).toString() < to ? months + 1 : months;
};

const reckonedBefore = (input: LabelInput): BestBefore | undefined => {
  const herbs = input.strained.map(({ ingredient, fresh }) => ({ ingredient, percent: 0, fresh }));
  const reckoned = bestBeforeOf({ madeOn: input.madeOn, lines: [...input.lines, ...herbs], lots: [] });
  return reckoned.ok ? reckoned.value : undefined;
};

const durabilityOf = (input: LabelInput): Durability => {
  const reckoned = input.bestBefore === undefined ? reckonedBefore(input) : undefined;
  const bestBefore = input.bestBefore ?? reckoned?.bestBefore ?? input.madeOn;
  const month = printedMonth(bestBefore);
  return {
    bestBefore,
    month,
    mark: durabilityMark(monthsUntil(input.madeOn, bestBefore)),
    tooShort: month <= input.madeOn.slice(0, 7),
    ...(reckoned ? { reckoned } : {}),
  };
};

const childCautions: ReadonlySet<string> = new Set(['breathing', 'salicylate', 'honey']);

const cautionsOf = (lines: readonly CheckLine[]): readonly LabelCaution[] => [
  ...childFindings(lines, 'anyone').flatMap((finding): LabelCaution[] =>
    finding.code === 'not-for-children' && childCautions.has(finding.why)
      ? [finding.why as LabelCaution]
      : [],
  ),
  'stop-if-it-stings',
];

/**
 * Everything that stands on the label of one tin, and what is missing for the region on that day. Problems: contents no
 * small tin can have. Names and cautions are for a maker to check: the label makes nothing legal.
 */
export const labelOf = (input: LabelInput): Result<Label, NetProblem> => {
  const { region, on, has } = input;
  const list = ingredientList(input);
  const net = input.net && netContents(input.net, region);
  if (net && !net.ok) return net;
  const durability = durabilityOf(input);
  const lacks = lacksOf(
    {
      ...has,
      net: net !== undefined,
      netRequired: net?.value.required ?? true,
      ingredients: list.unnamedOils.length === 0,
      bestBefore: !durability.tooShort,
    },
    region,
    on,
  );
  return ok({
    list,
    durability,
    cautions: cautionsOf(input.lines),
    lacks,
    ...(net ? { net: net.value } : {}),
  });
};
