import { lightRows } from '../data/rules/links.ts';
import { hazardsOf } from '../hazards.ts';
import { ingredientById, isHerb } from '../ingredients.ts';
import type { Region } from '../settings.ts';
import { type AllergenRule, allergenRule, type Declarable, declarable, type Use } from './allergens.ts';
import { type Amount, amountsOf, type CheckLine } from './amounts.ts';
import { type Analysis, sharesOf, watchedThing } from './composition.ts';
import type { Finding, Level } from './finding.ts';
import { comingFindings, limitFindings } from './limit-findings.ts';
import { type Compared, comingLimits, compareLimits, type Wearer, withoutFigure } from './limits.ts';
import {
  aromaFindings,
  aromaPercent,
  childFindings,
  doseFindings,
  hazardFindings,
  isScent,
  type LightShare,
  lightFindings,
  lightShares,
  lightSum,
  lipFindings,
  peanutFindings,
  pregnancyFindings,
  type Told,
  waterFindings,
} from './other-findings.ts';

export interface CheckInput {
  /** What stays in the tin, percent by weight of the whole. */
  readonly lines: readonly CheckLine[];
  /** Herbs that are strained out again. */
  readonly strained: readonly { readonly ingredient: string; readonly fresh?: boolean }[];
  readonly region: Region;
  /** ISO day of first supply; the laws in force then count. */
  readonly on: string;
  readonly wearer?: Wearer;
  readonly use?: Use;
  readonly analyses?: readonly Analysis[];
  /** Names that may mean a restricted plant ("marigold"), as typed. */
  readonly doubtful?: readonly string[];
}

/** `within` means within the figures known here; it certifies nothing. */
export type Verdict = 'within' | 'warn' | 'not-ok';

export interface CheckReport {
  readonly verdict: Verdict;
  readonly aromaPercent: number;
  readonly amounts: readonly Amount[];
  readonly allergens: readonly Declarable[];
  readonly allergenRule: AllergenRule;
  readonly limits: readonly Compared[];
  readonly coming: readonly Compared[];
  /** The light-sensitising oils, each with its own most. */
  readonly light: readonly LightShare[];
  /** Sum of share / limit of the light-sensitising oils. */
  readonly lightSum: number;
  /** Worst first. */
  readonly findings: readonly Finding[];
}

const isPlant = (id: string): boolean => {
  const found = ingredientById(id);
  return found ? isHerb(found) : watchedThing(id)?.kind === 'plant';
};

/** Herbs, plants that are watched for, and whatever watched thing a tea or an oil is made with. */
const herbsOf = ({ lines, strained }: CheckInput): string[] => {
  const own = [...strained, ...lines].map(({ ingredient }) => ingredient).filter(isPlant);
  const steeped = lines.flatMap(({ infusedWith }) => (infusedWith ? [infusedWith] : []));
  return [
    ...new Set([
      ...own,
      ...steeped.filter((id) => isPlant(id) || watchedThing(id) !== undefined || isScent(id)),
    ]),
  ];
};

/** Almond milk is made of almonds: what a watched thing holds is looked at as if it were in it. */
const heldIn = ({ lines }: CheckInput): readonly CheckLine[] =>
  lines.flatMap(({ ingredient, infusedWith }) => {
    const steeped =
      infusedWith && (watchedThing(ingredient) || isScent(infusedWith)) ? infusedWith : undefined;
    const holds = watchedThing(ingredient)?.holds ?? steeped;
    return holds ? [{ ingredient: holds, percent: 0 }] : [];
  });

/** Steeped herbs count as present, at no share that could be told. */
const withHerbs = (input: CheckInput): readonly CheckLine[] => [
  ...input.lines,
  ...herbsOf(input)
    .filter((id) => !input.lines.some(({ ingredient }) => ingredient === id))
    .map((ingredient) => ({ ingredient, percent: 0 })),
];

const levels: readonly Level[] = ['stop', 'warn', 'note'];

const verdictOf = (findings: readonly Finding[]): Verdict => {
  if (findings.some(({ level }) => level === 'stop')) return 'not-ok';
  return findings.some(({ level }) => level === 'warn') ? 'warn' : 'within';
};

const isUnseen = (id: string): boolean => isScent(id) || watchedThing(id)?.kind === 'extract';

/** Scents nobody could tell the make-up of: flavour oils and perfumes of a supplier. */
const unknownScents = (lines: readonly CheckLine[], told: ReadonlySet<string>): Finding[] => {
  const ingredients = lines
    .map(({ ingredient }) => ingredient)
    .filter((id) => isUnseen(id) && sharesOf(id, []).length === 0)
    .filter((id) => lightRows[id] === undefined && !told.has(id));
  const level = ingredients.includes('other-essential-oil') ? 'warn' : 'note';
  return ingredients.length > 0 ? [{ code: 'unknown-scent', level, ingredients }] : [];
};

const certificateFindings = (what: readonly string[]): Finding[] =>
  what.length > 0 ? [{ code: 'ask-certificate', level: 'note', what: [...new Set(what)] }] : [];

/** What is prohibited for children may have to be told of everybody's lips as well. */
const isOffLips = (finding: Finding): boolean =>
  finding.code === 'not-for-lips' ||
  finding.code === 'keep-off-lips' ||
  (finding.code === 'prohibited' && !finding.rows.some(({ forAge }) => forAge));

const ingredientsOf = (finding: Finding): readonly string[] => {
  if ('cuts' in finding) return finding.cuts.map(({ ingredient }) => ingredient);
  return finding.code === 'keep-off-lips' ? [finding.ingredient] : [];
};

/** What is said already, so that the library's own caution does not say it twice. */
const toldOf = (findings: readonly Finding[]): Told => ({
  cut: new Set(findings.flatMap(ingredientsOf)),
  offLips: new Set(findings.filter(isOffLips).flatMap(ingredientsOf)),
});

const findingsOf = (
  input: CheckInput,
  lines: readonly CheckLine[],
  limits: readonly Compared[],
  coming: readonly Compared[],
): Finding[] => {
  const { region, wearer = 'anyone', strained, doubtful = [] } = input;
  const hazardInput = { lines: [...input.lines, ...heldIn(input)], strained, tooSmall: [] };
  const hazards = hazardsOf(hazardInput);
  const first = [...limitFindings(limits, lines), ...lipFindings(lines)];
  const aroma = aromaFindings(lines);
  const light = lightFindings(lines, herbsOf(input));
  return [
    ...first,
    ...comingFindings(coming, first, lines),
    ...aroma,
    ...light,
    ...waterFindings(lines, hazards),
    ...doubtful.map((said) => ({ code: 'wrong-species', level: 'warn', said }) as const),
    ...peanutFindings(lines, region),
    ...doseFindings(lines),
    ...childFindings(lines, wearer),
    ...pregnancyFindings(lines, wearer),
    ...hazardFindings(hazardInput, toldOf([...first, ...aroma, ...light])),
    ...unknownScents(lines, toldOf(first).cut),
  ];
};

/**
 * A full look at a leave-on lip product in one region on one day: limits, sums of substances, light, allergens to
 * name, water, plants, dose, children. Figures known here, never a safety assessment. Ingredients are ids of the
 * library or of the watched things; an unknown id counts for nothing.
 */
export const checkRecipe = (input: CheckInput): CheckReport => {
  const { region, on, wearer = 'anyone', analyses = [], use = 'leave-on' } = input;
  const lines = withHerbs(input);
  const amounts = amountsOf(lines, analyses);
  const asked = { lines, amounts, region, on, wearer };
  const limits = compareLimits(asked);
  const coming = comingLimits(asked);
  const rule = allergenRule(region, on);
  const findings = [
    ...findingsOf(input, lines, limits, coming),
    ...certificateFindings(withoutFigure(asked).map(({ what }) => what)),
    ...(aromaPercent(lines) > 0 ? [{ code: 'pets', level: 'note' } as const] : []),
  ].toSorted((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level));
  return {
    verdict: verdictOf(findings),
    aromaPercent: aromaPercent(lines),
    amounts,
    allergens: declarable(lines, amounts, rule.list, use),
    allergenRule: rule,
    limits,
    coming,
    light: lightShares(lines).filter(({ percent }) => percent > 0),
    lightSum: lightSum(lines),
    findings,
  };
};

/** True for an id this check knows something about. */
export const isCheckable = (id: string): boolean =>
  ingredientById(id) !== undefined || watchedThing(id) !== undefined;
