import type { Comparison, Profile } from '../../core/substitute/compare.ts';
import { degrees } from './forecast.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

/** Changes below these are told as none: the model is no finer, and nobody would notice. */
const sameFirmnessPercent = 3;
const sameMeltC = 0.5;
const sameOxidation = 0.1;

const firmnessLine = ({ firmnessPercent }: Comparison): string[] => {
  if (firmnessPercent === undefined) return [];
  if (Math.abs(firmnessPercent) < sameFirmnessPercent) return ['Firmness at 25 °C stays about the same.'];
  const word = firmnessPercent > 0 ? 'firmer' : 'softer';
  return [`About ${plain(Math.abs(firmnessPercent), 0)} % ${word} at 25 °C.`];
};

const meltLine = ({ fullyMeltedC, before, after }: Comparison): string[] => {
  const [was, is] = [before.heat?.fullyMeltedC, after.heat?.fullyMeltedC];
  if (fullyMeltedC === undefined || was === undefined || is === undefined) return [];
  if (Math.abs(fullyMeltedC) < sameMeltC) return [`Fully melted at about ${degrees(is)} as before.`];
  const moved = Math.max(1, Math.abs(Math.round(fullyMeltedC)));
  return [
    `Fully melted about ${moved} °C ${fullyMeltedC > 0 ? 'higher' : 'lower'}: about ${degrees(is)} instead of ${degrees(was)}.`,
  ];
};

const flagNames: Readonly<Record<string, string>> = {
  bee: 'bee products',
  fragrance: 'scent allergens',
  'tree-nut': 'tree nuts',
  wool: 'wool fat',
  contact: 'something that some skin reacts to',
};

const flagText = (flag: string): string => flagNames[flag] ?? flag.replace('-', ' ');

const allergenLine = ({ before, after }: Comparison): string[] => {
  const gone = before.allergens.filter((flag) => !after.allergens.includes(flag));
  const come = after.allergens.filter((flag) => !before.allergens.includes(flag));
  return [
    ...(gone.length > 0 ? [`No longer in it: ${gone.map(flagText).join(', ')}.`] : []),
    ...(come.length > 0 ? [`New in it: ${come.map(flagText).join(', ')}.`] : []),
  ];
};

const veganText = (vegan: Profile['vegan']): string =>
  vegan === null ? 'depends on where an ingredient comes from' : vegan ? 'yes' : 'no';

const veganLine = ({ before, after }: Comparison): string[] =>
  before.vegan === after.vegan ? [] : [`Vegan: ${veganText(after.vegan)} (was: ${veganText(before.vegan)}).`];

const monthsOf = (days: number): string => plain(days / (365.25 / 12), 0);

const keepingLine = ({ before, after, bestBeforeDays }: Comparison): string[] => {
  const unknown =
    after.keepsUnknown.length > 0 ? ` Not known for ${after.keepsUnknown.map(shortName).join(', ')}.` : '';
  if (bestBeforeDays === undefined || after.keepsDays === undefined || after.shortest === undefined)
    return [`Best before: no shelf life known.${unknown}`];
  const shortest = `${shortName(after.shortest)} keeps shortest, at least ${monthsOf(after.keepsDays)} months unopened`;
  const [was, is] = [before.oxidisability, after.oxidisability];
  const faster = is > was * (1 + sameOxidation) + 0.05;
  const slower = is < was * (1 - sameOxidation) - 0.05;
  const rancid = faster
    ? ' The oils turn rancid sooner (about, from fatty acids).'
    : slower
      ? ' The oils keep better (about, from fatty acids).'
      : '';
  const moved =
    bestBeforeDays === 0
      ? 'Best before stays'
      : `Best before moves by about ${bestBeforeDays > 0 ? '+' : '−'}${monthsOf(Math.abs(bestBeforeDays))} months`;
  return [`${moved}: ${shortest}.${rancid}${unknown}`];
};

const labelLine = ({ before, after }: Comparison): string[] =>
  before.label.join() === after.label.join() ? [] : [`Label order: ${after.label.join(', ')}.`];

/** What else changes with the lines, one short line each. */
export const changeLines = (comparison: Comparison): string[] => [
  ...firmnessLine(comparison),
  ...meltLine(comparison),
  ...allergenLine(comparison),
  ...veganLine(comparison),
  ...keepingLine(comparison),
  ...labelLine(comparison),
];

const finer = (value: number | undefined): number | null =>
  value === undefined ? null : Number(value.toFixed(4));

/** The changes as figures, unrounded but for noise. */
export const changeFigures = ({ before, after, ...change }: Comparison) => ({
  firmness_change_percent: finer(change.firmnessPercent),
  fully_melted_change_c: finer(change.fullyMeltedC),
  fully_melted_c: finer(after.heat?.fullyMeltedC),
  best_before_change_days: change.bestBeforeDays ?? null,
  oxidisability_change: finer(after.oxidisability - before.oxidisability),
  allergens: { before: [...before.allergens], after: [...after.allergens] },
  vegan: { before: before.vegan, after: after.vegan },
  label: { before: [...before.label], after: [...after.label] },
});
