import { askAboutNuts, type Hazard, hazardsOf } from '../../core/hazards.ts';
import { hygiene } from '../../core/workshop/hygiene.ts';
import { lengthMin } from '../../core/workshop/timeline.ts';
import type { Warning } from '../answer.ts';
import type { WorkshopWish } from '../topics/workshop.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';
import { nameOf, type Planned } from './workshop-plan.ts';

type Allergy = NonNullable<WorkshopWish['allergies']>[number];

const allergyCodes: Readonly<Record<Allergy, Hazard['code']>> = {
  nuts: 'nut-allergen',
  bee: 'bee-allergen',
  daisy: 'daisy-family',
  wool: 'wool-allergen',
  food: 'food-allergen',
};

const allergyWords: Readonly<Record<Allergy, string>> = {
  nuts: 'nuts',
  bee: 'bee products',
  daisy: 'the daisy family',
  wool: 'wool wax',
  food: 'sesame, soy or wheat',
};

const hazardsIn = ({ plan }: Planned): readonly Hazard[] =>
  plan.recipes.flatMap(({ kit, tooSmallTogether }) =>
    hazardsOf({
      lines: kit.scaled.lines,
      strained: kit.scaled.strained,
      tooSmall: [...kit.tooSmall, ...tooSmallTogether],
    }),
  );

const concerned = (hazards: readonly Hazard[], code: Hazard['code']): string[] =>
  hazards.flatMap((hazard) => (hazard.code === code && 'ingredients' in hazard ? hazard.ingredients : []));

/** Somebody's allergy against what is on the bench: everybody's melt is made on it. */
const allergyWarning = (allergy: Allergy, hazards: readonly Hazard[], { plan }: Planned): Warning => {
  const kin = plan.lines.map(({ ingredient }) => ingredient).filter((id) => askAboutNuts.has(id));
  const ask = allergy === 'nuts' && kin.length > 0 ? ` Ask about ${kin.map(shortName).join(', ')} too.` : '';
  const found = [...new Set(concerned(hazards, allergyCodes[allergy]))].map(shortName);
  const who = `Somebody is allergic to ${allergyWords[allergy]}`;
  return {
    code: 'allergy-in-the-room',
    text:
      found.length > 0
        ? `${who}: ${found.join(', ')} on the bench. Make a recipe without it for everybody, or ask that person to sit out.${ask}`
        : `${who}: no line of this is known to come from them. Still read the suppliers' labels together.${ask}`,
  };
};

const asked: Warning = {
  code: 'ask-about-allergies',
  text: 'Ask everybody beforehand about nuts, bee products and the daisy family, and about asthma and pregnancy.',
};

const children: Warning = {
  code: 'children',
  text: `Children: each with an adult at the pouring table, none at the hot wax; no scented balm under ${hygiene.noScentUnderYears.value} years.`,
};

const glass: Warning = {
  code: 'glass-shock',
  text: `Glass: whole and dry, warmed to ${hygiene.warmJarsC.value.join(' to ')} °C before pouring, never on cold stone.`,
};

const bathDry: Warning = {
  code: 'bath-dry',
  text: `The water bath must not boil dry: look every ${hygiene.lookAtBathMin.value} minutes, top up with hot water; no water or steam into the melt.`,
};

const patchTest: Warning = {
  code: 'patch-test',
  text: `Patch test first: inner forearm, ${hygiene.patchTestHours.value.join(' to ')} hours. No reaction is no proof of safety.`,
};

const glassWords = new Set(['jar', 'pot', 'bottle', 'vial']);

/** True when something is filled into what is mostly glass. */
export const usesGlass = ({ makings }: Planned): boolean =>
  makings.some(({ container }) => glassWords.has(container));

const settingWarnings = ({ plan, makings }: Planned): Warning[] =>
  plan.doesNotSet.map((at) => ({
    code: 'does-not-set',
    text: `${nameOf(makings[at])} does not set firm in that room: cool it, or take a harder recipe.`,
  }));

const roughWarnings = ({ plan, makings }: Planned): Warning[] =>
  plan.recipes.flatMap(({ melting }, at) =>
    melting.rough
      ? [
          {
            code: 'rough-estimate',
            text: `${nameOf(makings[at])} has an ingredient without melting figures: jugs are reckoned from its set weight, without bath and pour temperatures.`,
          },
        ]
      : [],
  );

const timeWarning = ({ wish, plan }: Planned): Warning[] => {
  const needed = lengthMin(plan.timeline);
  if (wish.minutes === undefined || needed <= wish.minutes) return [];
  const more = plan.baths.rounds > 1 ? ' More hot plates save rounds.' : '';
  return [
    { code: 'too-long', text: `This takes about ${needed} minutes, and there are ${wish.minutes}.${more}` },
  ];
};

const unique = (all: readonly Warning[]): Warning[] => [
  ...new Map(all.map((each) => [`${each.code} ${each.text}`, each])).values(),
];

/** A kit is small by nature: people who share a jug can weigh for all of it at once. */
const recipeWarning = (hazard: Hazard): Warning => {
  const warning = warningOf(hazard);
  if (hazard.code !== 'too-little-to-weigh') return warning;
  return { ...warning, text: `${warning.text} Or let those who share a jug weigh for all of it at once.` };
};

/** Warnings about people first, then the recipes', then the pot's. */
export const workshopWarnings = (planned: Planned): readonly Warning[] => {
  const { wish } = planned;
  const hazards = hazardsIn(planned);
  const allergies = wish.allergies ?? [];
  return unique([
    ...allergies.map((each) => allergyWarning(each, hazards, planned)),
    ...(wish.children ? [children] : []),
    asked,
    ...hazards.map(recipeWarning),
    ...settingWarnings(planned),
    ...roughWarnings(planned),
    ...timeWarning(planned),
    ...potCautions,
    bathDry,
    ...(usesGlass(planned) ? [glass] : []),
    patchTest,
    localRules,
  ]);
};
