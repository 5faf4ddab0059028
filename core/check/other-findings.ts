import { limitRows } from '../data/rules/limits.ts';
import { lightRows } from '../data/rules/links.ts';
import { type Hazard, type HazardInput, hazardsOf, usualAromaPercent } from '../hazards.ts';
import { ingredientById, isAdditive, isAroma, isHerb } from '../ingredients.ts';
import type { Region } from '../settings.ts';
import { type CheckLine, tidy } from './amounts.ts';
import { sharesOf, watchedThing } from './composition.ts';
import { cutBy } from './cut.ts';
import type { Finding } from './finding.ts';
import type { Wearer } from './limits.ts';

/** Scents, flavours and pure aroma substances, the library's and the watched ones. */
export const isScent = (id: string): boolean => {
  const found = ingredientById(id);
  if (found) return isAroma(found);
  const kind = watchedThing(id)?.kind;
  return kind === 'aroma' || (kind === 'substance' && id !== 'retinol');
};

export const aromaPercent = (lines: readonly CheckLine[]): number =>
  tidy(lines.filter(({ ingredient }) => isScent(ingredient)).reduce((sum, line) => sum + line.percent, 0));

/** All scent together against the usual most of 1 % (common practice, no source). */
export const aromaFindings = (lines: readonly CheckLine[]): Finding[] => {
  const percent = aromaPercent(lines);
  if (percent <= usualAromaPercent) return [];
  const scents = lines.map(({ ingredient }) => ingredient).filter(isScent);
  return [
    {
      code: 'aroma-too-high',
      level: 'warn',
      percent,
      usualPercent: usualAromaPercent,
      cuts: cutBy(lines, scents, usualAromaPercent / percent),
    },
  ];
};

const lightLimit = (ingredient: string): number | undefined =>
  limitRows.find(({ id }) => id === lightRows[ingredient])?.limit;

export interface LightShare {
  readonly ingredient: string;
  readonly percent: number;
  readonly limitPercent: number;
}

/** The light-sensitising oils of a recipe, each with its own most. */
export const lightShares = (lines: readonly CheckLine[]): readonly LightShare[] =>
  lines.flatMap(({ ingredient, percent }) => {
    const limitPercent = lightLimit(ingredient);
    return limitPercent === undefined ? [] : [{ ingredient, percent: tidy(percent), limitPercent }];
  });

/** Sum of share / limit over the light-sensitising oils; up to 1 is within. */
export const lightSum = (lines: readonly CheckLine[]): number =>
  tidy(lightShares(lines).reduce((sum, { percent, limitPercent }) => sum + percent / limitPercent, 0));

export const lightFindings = (lines: readonly CheckLine[], herbs: readonly string[]): Finding[] => {
  const sum = lightSum(lines);
  const oils = lightShares(lines).map(({ ingredient }) => ingredient);
  const bright = herbs.filter((id) => {
    const found = ingredientById(id);
    return found && isHerb(found) && found.lightSensitising === 'yes';
  });
  return [
    ...(sum > 1 + 1e-9
      ? [{ code: 'light-sensitising', level: 'warn', sum, oils, cuts: cutBy(lines, oils, 1 / sum) } as const]
      : []),
    ...bright.map((ingredient) => ({ code: 'light-herb', level: 'warn', ingredient }) as const),
  ];
};

/** The opinion looked at face cream, not lips (SCCS/1681/25, read). */
const keptOffLips: Readonly<Record<string, string>> = {
  'tea-tree-essential-oil':
    'the European opinion of 2025 looked at four other products, face cream at no more than 0.1 %, and never at lips',
  'poison-plant': 'poisonous if swallowed, and lips are licked',
  'fragrance-oil': 'only a flavouring with a lip (Category 1) certificate belongs there',
};

export const lipFindings = (lines: readonly CheckLine[]): Finding[] =>
  lines.flatMap(({ ingredient }) => {
    const note = keptOffLips[ingredient];
    return note ? [{ code: 'keep-off-lips', level: 'warn', ingredient, note } as const] : [];
  });

/** Menthol, camphor and eucalyptus near a small child's face can stop breathing (from memory, widely taught). */
const breathing = new Set([
  'peppermint-essential-oil',
  'corn-mint-essential-oil',
  'menthol-crystals',
  'menthol',
  'camphor',
  'rosemary-essential-oil',
  'eucalyptus-essential-oil',
]);

const hasSalicylate = (ingredient: string): boolean =>
  sharesOf(ingredient, []).some(({ name, high }) => name === 'Methyl Salicylate' && high > 1);

/** Whether what the facts note of an ingredient speaks of somebody. */
const isNotedFor = (ingredient: string, whom: RegExp): boolean => {
  const found = ingredientById(ingredient);
  const notes = [
    found && 'avoidFor' in found ? found.avoidFor : '',
    found && 'lipNote' in found ? found.lipNote : '',
  ];
  return notes.some((note) => typeof note === 'string' && whom.test(note));
};

const isUnsuitedToChildren = (ingredient: string): boolean => isNotedFor(ingredient, /year|child/);

/** What has to be kept from children: told always, a warning when it is made for them. */
export const childFindings = (lines: readonly CheckLine[], wearer: Wearer): Finding[] => {
  const all = lines.flatMap(({ ingredient, infusedWith }) => [ingredient, infusedWith ?? []].flat());
  const ids = [...new Set(all)];
  const isForChildren = wearer === 'children' || wearer === 'babies';
  const level = isForChildren ? 'warn' : 'note';
  const salicylate = ids.filter(hasSalicylate);
  const cold = ids.filter((id) => breathing.has(id));
  const others = ids.filter(
    (id) => isUnsuitedToChildren(id) && !breathing.has(id) && !salicylate.includes(id),
  );
  const groups = [
    { why: 'breathing', ingredients: cold },
    { why: 'salicylate', ingredients: salicylate },
    { why: 'honey', ingredients: ids.filter((id) => id === 'honey') },
    { why: 'other', ingredients: isForChildren ? others : [] },
  ] as const;
  return groups
    .filter(({ ingredients }) => ingredients.length > 0)
    .map((group) => ({ code: 'not-for-children', level, ...group }));
};

/** The essential oils and herbs that the facts tell to be left out in pregnancy (from memory). */
const isUnsuitedInPregnancy = (ingredient: string): boolean => isNotedFor(ingredient, /pregnan/);

/** Nothing here can clear a balm for pregnancy: what speaks against it, and who is to be asked. */
export const pregnancyFindings = (lines: readonly CheckLine[], wearer: Wearer): Finding[] => {
  if (wearer !== 'pregnant') return [];
  const ids = [...new Set(lines.map(({ ingredient }) => ingredient))];
  return [{ code: 'pregnancy', level: 'warn', ingredients: ids.filter(isUnsuitedInPregnancy) }];
};

/** An additive by its use that stands among the fats: percent, common practice. */
const usualOfFats: Readonly<Record<string, number>> = { lanolin: 30 };

const usualMost = (ingredient: string): number | undefined => {
  const found = ingredientById(ingredient);
  return found && isAdditive(found) ? found.usePercent?.high : usualOfFats[ingredient];
};

/** Additives over what makers usually put in: vitamin E, sweetener, pigments, menthol, lanolin (common practice). */
export const doseFindings = (lines: readonly CheckLine[]): Finding[] =>
  lines.flatMap(({ ingredient, percent }): Finding[] => {
    const usual = usualMost(ingredient);
    if (!usual || percent <= usual + 1e-9) return [];
    return [
      { code: 'dose-over-usual', level: 'warn', ingredient, percent: tidy(percent), usualPercent: usual },
    ];
  });

export const waterFindings = (lines: readonly CheckLine[], hazards: readonly Hazard[]): Finding[] => {
  const watched = lines
    .filter(({ ingredient, fresh }) => {
      const kind = watchedThing(ingredient)?.kind;
      return kind === 'water' || ingredient === 'vanilla-extract' || (fresh && kind !== undefined);
    })
    .map(({ ingredient }) => ingredient);
  const known = hazards.flatMap((hazard) => (hazard.code === 'brings-water' ? hazard.ingredients : []));
  const ingredients = [...new Set([...watched, ...known])];
  return ingredients.length > 0 ? [{ code: 'brings-water', level: 'warn', ingredients }] : [];
};

export const peanutFindings = (lines: readonly CheckLine[], region: Region): Finding[] =>
  (region === 'eu' || region === 'uk') &&
  lines.some(
    ({ ingredient }) => ingredient === 'peanut-oil' || watchedThing(ingredient)?.holds === 'peanut-oil',
  )
    ? [{ code: 'peanut-protein', level: 'warn', region }]
    : [];

/** Ingredients that other findings already speak of. */
export interface Told {
  /** To be cut down or left out. */
  readonly cut: ReadonlySet<string>;
  /** Said not to belong on lips. */
  readonly offLips: ReadonlySet<string>;
}

/** Told elsewhere, better: with sums, limits and the change that clears them. */
const ownHere = new Set<Hazard['code']>([
  'aroma-too-high',
  'light-sensitising',
  'brings-water',
  'wrong-species',
]);

const levelOfHazard = (hazard: Hazard): 'warn' | 'note' =>
  hazard.code === 'not-for-lips' || hazard.code === 'aroma-over-usual' ? 'warn' : 'note';

/** Light-sensitising oils are kept off lips for that reason alone, and that is summed above. */
const isToldHere = (hazard: Hazard, told: Told): boolean => {
  if (ownHere.has(hazard.code)) return true;
  if (hazard.code === 'aroma-over-usual')
    return told.cut.has(hazard.ingredient) || usualMost(hazard.ingredient) !== undefined;
  if (hazard.code !== 'not-for-lips' && hazard.code !== 'lip-caution') return false;
  // What is only watched for is judged by the rows of the region.
  if (watchedThing(hazard.ingredient)) return true;
  const lesser = hazard.code === 'lip-caution' && told.cut.has(hazard.ingredient);
  return lightRows[hazard.ingredient] !== undefined || told.offLips.has(hazard.ingredient) || lesser;
};

/** "Depends on the herb": where the herb is named, its own caution says more. */
const isNamedHerb = (hazard: Hazard, { lines }: HazardInput): boolean =>
  hazard.code === 'lip-caution' &&
  hazard.ingredient === 'infused-oil' &&
  lines.every(({ ingredient, infusedWith }) => ingredient !== 'infused-oil' || infusedWith !== undefined);

/** The library's own cautions, those left out that another finding already tells. */
export const hazardFindings = (input: HazardInput, told: Told): Finding[] =>
  hazardsOf(input)
    .filter((hazard) => !isToldHere(hazard, told) && !isNamedHerb(hazard, input))
    .map((hazard) => ({ code: 'hazard', level: levelOfHazard(hazard), hazard }));
