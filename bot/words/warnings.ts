import { watchedThing } from '../../core/check/composition.ts';
import type { Hazard } from '../../core/hazards.ts';
import { ingredientById, isSmallDose } from '../../core/ingredients.ts';
import type { Warning } from '../answer.ts';
import { capital } from './lists.ts';
import { brief, plain } from './numbers.ts';

/** Things that are only watched for are no ingredients, and stand in recipes all the same. */
const nameOf = (id: string): string => ingredientById(id)?.name ?? watchedThing(id)?.name ?? id;

/** Short name without the remark in brackets: "shea butter", not "shea butter (unrefined)". */
export const shortName = (id: string): string => nameOf(id).replace(/ \([^)]*\)$/, '');

const listed = (ids: readonly string[]): string => ids.map(shortName).join(', ');

/** Answers that lead to making or handing out a product end with this. */
export const localRules: Warning = {
  code: 'local-rules',
  text: 'Follow the cosmetic rules where you live; this is advice, not a safety assessment.',
};

/** Melting and pouring: said with every weigh-out. */
export const potCautions: readonly Warning[] = [
  {
    code: 'hot-wax',
    text: 'Hot wax burns: water bath, never unwatched. Burning wax: heat off, lid on, never water.',
  },
  {
    code: 'flame-and-alcohol',
    text: 'If you wiped tools with alcohol: let it dry fully and close the bottle before the hob goes on.',
  },
];

/** Latin name without the part used: "Calendula officinalis". */
const originOf = (id: string): string => ingredientById(id)?.origin ?? nameOf(id);

const isDose = (id: string): boolean => {
  const found = ingredientById(id);
  return found !== undefined && isSmallDose(found);
};

type Of<C extends Hazard['code']> = Hazard extends infer H
  ? H extends { readonly code: infer D }
    ? C extends D
      ? H
      : never
    : never
  : never;

const sentenceFor: { [C in Hazard['code']]: (hazard: Of<C>) => string } = {
  'aroma-too-high': (hazard) =>
    `Scent comes to ${plain(hazard.percent, 2)} %; lip balms usually stay at or under ${hazard.usualPercent} % in all (common practice).`,
  'aroma-over-usual': (hazard) =>
    `${shortName(hazard.ingredient)}: ${plain(hazard.percent, 2)} % is over the usual maximum of ${hazard.usualPercent} % on lips (common practice). Ask the supplier for the lip certificate.`,
  'not-for-lips': (hazard) =>
    `${shortName(hazard.ingredient)} does not belong on lips${hazard.note ? `: ${hazard.note}` : ''}.`,
  'lip-caution': (hazard) => `${shortName(hazard.ingredient)} on lips: ${hazard.note}.`,
  'light-sensitising': (hazard) =>
    `${listed(hazard.ingredients)} can make skin burn in the sun; lips see a lot of it.`,
  'brings-water': (hazard) =>
    `${listed(hazard.ingredients)} brings water: mould and rancidity follow. ${hazard.ingredients.every(watchedThing) ? 'Leave it out.' : 'Dry it first or leave it out.'}`,
  'wrong-species': (hazard) =>
    `Buy ${shortName(hazard.ingredient)} by the Latin name (${originOf(hazard.ingredient)}). Look-alikes: ${hazard.lookAlikes}.`,
  'nut-allergen': (hazard) =>
    `${listed(hazard.ingredients)}: from nuts. Say so to whoever gets a tin.${hazard.ask.length > 0 ? ` Allergic people should ask about ${listed(hazard.ask)} too.` : ''}`,
  'food-allergen': (hazard) =>
    `${listed(hazard.ingredients)}: a food allergen. Say so to whoever gets a tin.`,
  'bee-allergen': (hazard) =>
    `${listed(hazard.ingredients)}: not for people allergic to propolis or bee products.`,
  'wool-allergen': (hazard) =>
    `${listed(hazard.ingredients)} comes from wool: some people's skin reacts to it.`,
  'daisy-family': (hazard) =>
    `${listed(hazard.ingredients)}: daisy family. Ask about ragweed and chrysanthemum allergy.`,
  'too-little-to-weigh': (hazard) => {
    const lines = hazard.lines.map((line) => `${shortName(line.ingredient)} ${brief(line.wantedG)} g`);
    const least = [...new Set(hazard.lines.map((line) => brief(line.leastG)))].join(' or ');
    const raised = hazard.lines.some((line) => line.raised) ? ' Lines under one step got one step.' : '';
    const premix = hazard.lines.every((line) => isDose(line.ingredient))
      ? ', or stir ten times as much into an oil of the recipe and weigh a tenth of that'
      : '';
    return `Under what your scale tells well (${least} g): ${lines.join(', ')}. Make more, use a finer scale${premix}.${raised}`;
  },
};

const codes: Partial<Record<Hazard['code'], string>> = {
  'aroma-over-usual': 'aroma-too-high',
};

/** One line for each hazard. */
export const warningOf = (hazard: Hazard): Warning => ({
  code: codes[hazard.code] ?? hazard.code,
  text: capital((sentenceFor[hazard.code] as (of: Hazard) => string)(hazard)),
});
