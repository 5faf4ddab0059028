import { hazardsOf } from '../../core/hazards.ts';
import { mixWays } from '../../core/infuse/mix.ts';
import type { Warning } from '../answer.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { both, degrees } from './forecast.ts';
import type { Steep } from './infuse-plan.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const span = ([low, high]: readonly [number, number]): string =>
  low === high ? `${low}` : `${low} to ${high}`;

/** St John's wort is wilted, not dried, by tradition; everything else goes in dry. */
const drySteps = ({ herbs }: Steep): string[] => {
  const special = herbs.filter(({ of }) => of.dryBeforeUse !== 'fully dry');
  const others = special.length === 0 || special.length < herbs.length;
  return [
    ...special.map(({ of }) => `${capital(shortName(of.id))}: ${of.dryBeforeUse}; ${of.freshCaution}.`),
    ...(others
      ? ['Herb, jar, spoon and cloth fully dry (stems snap, petals crackle): a drop of water starts mould.']
      : []),
  ];
};

const warmStep = (plan: Steep): string => {
  const { hours, bathC } = mixWays(plan.herbs);
  return `Warm: open jar in a water bath, ${both(bathC[0])} to ${both(bathC[1])}, ${span(hours)} hours. Stir now and then; no steam into the oil.`;
};

const coldStep = (plan: Steep): string =>
  `Or cold: jar full, closed and dark at room temperature, ${span(mixWays(plan.herbs).coldWeeks)} weeks. Shake every day.`;

const meltStep = (plan: Steep): string => {
  const { bathC, hours } = mixWays(plan.herbs);
  return `Straight into the melt: the mass has to stay liquid (65 to 75 °C with beeswax), hotter than the herb's ${degrees(bathC[0])} to ${degrees(bathC[1])}, so keep to the short end, ${hours[0]} hours or less. Strain through a warm cloth before scent goes in; herb and cloth keep some of the whole mass, wax too.`;
};

const strainStep =
  'Strain through a dry cloth, press, rest overnight; leave water and mud at the bottom. Cloudy, bubbling or sour: bin it.';
const weighStep = 'Weigh it and tell me ("I got 260 g out"): from then on I reckon with your own figure.';

/** What to do, in order. */
export const infuseSteps = (plan: Steep, wish: InfuseWish): readonly string[] => {
  if (wish.way === 'melt') return [...drySteps(plan), meltStep(plan)];
  const ways = [warmStep(plan), coldStep(plan)];
  const weigh = plan.herbs.length > 1 ? [] : [weighStep];
  return [
    ...drySteps(plan),
    ...(wish.way === 'cold'
      ? [coldStep(plan).replace(/^Or cold/, 'Cold'), warmStep(plan).replace(/^Warm/, 'Or warm')]
      : ways),
    strainStep,
    ...weigh,
  ];
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

const foodWarning = (plan: Steep, fresh: boolean): Warning[] =>
  fresh && plan.herbs.some(({ of }) => kitchenHerbs.has(of.id))
    ? [
        {
          code: 'not-food',
          text: 'Not for the kitchen: fresh herbs in oil at room temperature can breed botulism that nobody smells. As food it is kept cold and used within a week (Health Canada).',
        },
      ]
    : [];

/** Oils that take up oxygen fast enough for a soaked cloth to heat itself: iodine value from 140 on. */
const dryingFrom = 140;

const dryingOils = ({ oils }: Steep): readonly string[] =>
  oils.filter(({ of }) => (of.iodineValue?.value ?? 0) >= dryingFrom).map(({ of }) => of.id);

const clothWarning = (plan: Steep): Warning[] =>
  dryingOils(plan).length > 0
    ? [
        {
          code: 'oily-cloth',
          text: `A cloth soaked with ${dryingOils(plan).map(shortName).join(' or ')} can heat up and catch fire by itself (from memory): dry it flat outdoors, or drown it in a closed tin.`,
        },
      ]
    : [];

const ratioWarning = ({ infusion, usual, herbs }: Steep): Warning[] => {
  if (!infusion || (infusion.ratio >= usual.low * 0.98 && infusion.ratio <= usual.high * 1.02)) return [];
  const what = infusion.ratio < usual.low ? 'more herb than the oil covers well' : 'a weak oil';
  return [
    {
      code: 'unusual-ratio',
      text: `1:${Number(infusion.ratio.toFixed(1))} is ${what}: ${herbs[0] && herbs.length === 1 ? `${shortName(herbs[0].of.id)} is` : 'herbs are'} usually taken at 1:${usual.low} to 1:${usual.high} (common practice).`,
    },
  ];
};

const uptakeWarning = ({ uptake, infusion }: Steep): Warning[] =>
  uptake.weighings > 0 || !infusion
    ? []
    : [
        {
          code: 'rough-estimate',
          text: `What herb and cloth keep is common practice, ${uptake.low} to ${uptake.high} g to the gram: press well and weigh.`,
        },
      ];

/** The herb's and the oil's own hazards first, then the pot's. */
export const infuseWarnings = (plan: Steep, fresh: boolean): readonly Warning[] => {
  const { herbs, oils } = plan;
  const hazards = hazardsOf({
    lines: oils.map(({ of }) => ({ ingredient: of.id, percent: 100 / oils.length })),
    strained: herbs.map(({ of }) => ({ ingredient: of.id, fresh })),
    tooSmall: [],
  });
  const water: Warning[] =
    fresh && herbs.length === 0
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
