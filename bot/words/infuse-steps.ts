import { hazardsOf } from '../../core/hazards.ts';
import { waysFor } from '../../core/infuse/uptake.ts';
import type { Warning } from '../answer.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { both, degrees } from './forecast.ts';
import type { Plan } from './infuse-plan.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const span = ([low, high]: readonly [number, number]): string =>
  low === high ? `${low}` : `${low} to ${high}`;

/** St John's wort is wilted, not dried, by tradition; everything else goes in dry. */
const dryStep = (plan: Plan): string => {
  const special = plan.herb && plan.herb.dryBeforeUse !== 'fully dry';
  return special
    ? `Herb: ${plan.herb?.dryBeforeUse}; ${plan.herb?.freshCaution}.`
    : 'Herb fully dry: stems snap, petals crackle. Jar, spoon and cloth fully dry too: one drop of water starts mould.';
};

const warmStep = (plan: Plan): string => {
  const { hours, bathC } = waysFor(plan.herb);
  return `Warm: jar in a water bath at ${both(bathC[0])} to ${both(bathC[1])} for ${span(hours)} hours, stirred now and then, open to let steam out of the herb but not into the oil.`;
};

const coldStep = (plan: Plan): string =>
  `Cold: filled to the brim and closed, dark, at room temperature for ${span(waysFor(plan.herb).coldWeeks)} weeks, shaken every day.`;

const meltStep = (plan: Plan): string => {
  const { bathC, hours } = waysFor(plan.herb);
  return `Straight into the melt: the mass has to stay liquid (65 to 75 °C with beeswax), hotter than the herb's ${degrees(bathC[0])} to ${degrees(bathC[1])}, so keep to the short end, ${hours[0]} hours or less. Strain through a warm cloth before scent goes in; herb and cloth keep some of the whole mass, wax too.`;
};

const strainStep =
  'Strain through a dry cloth, press, let it stand overnight, and pour off any water or mud at the bottom. Cloudy, bubbling or sour: bin it.';
const weighStep =
  'Weigh what you get and tell me, for example "I got 260 g out": I reckon with your own figure from then on.';

/** What to do, in order. */
export const infuseSteps = (plan: Plan, wish: InfuseWish): readonly string[] => {
  if (wish.way === 'melt') return [dryStep(plan), meltStep(plan), weighStep];
  const ways = [warmStep(plan), coldStep(plan)];
  return [dryStep(plan), ...(wish.way === 'cold' ? ways.toReversed() : ways), strainStep, weighStep];
};

/** Garden plants that are also put in oil as food: fresh ones in a jar at room heat are dangerous to eat. */
const kitchenHerbs = new Set([
  'rosemary',
  'thyme',
  'sage',
  'lemon-balm',
  'peppermint',
  'spearmint',
  'ginger',
  'nettle',
]);

const foodWarning = (plan: Plan, fresh: boolean): Warning[] =>
  plan.herb && fresh && kitchenHerbs.has(plan.herb.id)
    ? [
        {
          code: 'not-food',
          text: 'Not for the kitchen: fresh herbs in oil at room temperature can breed botulism that nobody smells. As food it is kept cold and used within a week (Health Canada).',
        },
      ]
    : [];

/** Oils that take up oxygen fast enough for a soaked cloth to heat itself: iodine value from 140 on. */
const dryingFrom = 140;

const clothWarning = (plan: Plan): Warning[] =>
  (plan.oil?.iodineValue?.value ?? 0) >= dryingFrom
    ? [
        {
          code: 'oily-cloth',
          text: `A cloth soaked with ${shortName(plan.oil?.id ?? '')} can heat up and catch fire by itself (from memory): dry it flat outdoors, or drown it in a closed tin.`,
        },
      ]
    : [];

const ratioWarning = ({ infusion, usual, herb }: Plan): Warning[] => {
  if (!infusion || (infusion.ratio >= usual.low * 0.98 && infusion.ratio <= usual.high * 1.02)) return [];
  const what = infusion.ratio < usual.low ? 'more herb than the oil covers well' : 'a weak oil';
  return [
    {
      code: 'unusual-ratio',
      text: `1:${Number(infusion.ratio.toFixed(1))} is ${what}: ${herb ? `${shortName(herb.id)} is` : 'herbs are'} usually taken at 1:${usual.low} to 1:${usual.high} (common practice).`,
    },
  ];
};

const uptakeWarning = ({ uptake, infusion }: Plan): Warning[] =>
  uptake.weighings > 0 || !infusion
    ? []
    : [
        {
          code: 'rough-estimate',
          text: `What herb and cloth keep is common practice, ${uptake.low} to ${uptake.high} g to the gram: press well and weigh.`,
        },
      ];

/** The herb's and the oil's own hazards first, then the pot's. */
export const infuseWarnings = (plan: Plan, fresh: boolean): readonly Warning[] => {
  const { herb, oil } = plan;
  const hazards = hazardsOf({
    lines: oil ? [{ ingredient: oil.id, percent: 100 }] : [],
    strained: herb ? [{ ingredient: herb.id, fresh }] : [],
    tooSmall: [],
  });
  const water: Warning[] =
    fresh && !herb
      ? [
          {
            code: 'brings-water',
            text: 'A fresh herb brings water: mould and rancidity follow. Dry it first.',
          },
        ]
      : [];
  return [
    ...water,
    ...hazards.map(warningOf),
    ...foodWarning(plan, fresh),
    ...clothWarning(plan),
    ...ratioWarning(plan),
    ...uptakeWarning(plan),
    ...potCautions,
    localRules,
  ];
};
