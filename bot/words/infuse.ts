import { weighedUptake } from '../../core/infuse/yields.ts';
import { stepDecimals } from '../../core/steps.ts';
import type { Answer, Block, NextStep, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { infuseChain } from './infuse-chain.ts';
import { infuseFigures } from './infuse-figures.ts';
import { type Plan, planOf } from './infuse-plan.ts';
import { infuseTrouble } from './infuse-problems.ts';
import { infuseSteps, infuseWarnings } from './infuse-steps.ts';
import { herbName, infusionTable, oilName } from './infuse-table.ts';
import { forgetYield, listYields } from './infuse-yields.ts';
import { atStep, plain, readable } from './numbers.ts';
import { by } from './recipe-table.ts';
import { localRules, shortName } from './warnings.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const assumedOf = (plan: Plan, wish: InfuseWish): Block[] => {
  const { infusion, usual, uptake, volumes } = plan;
  const named = plan.oils.length > 0 ? '' : ' (no oil named: as most liquid oils)';
  const lines = [
    ...volumes.map(
      ({ ml, grams, densityGMl }) =>
        `${readable(ml)} ml ${oilName(plan)} is ${readable(grams)} g at ${densityGMl} g/ml (20 °C)${named}.`,
    ),
    ...(infusion?.ratioAssumed
      ? [
          `I took 1:${usual.middle} by weight, the middle of the usual 1:${usual.low} to 1:${usual.high} (common practice).`,
        ]
      : []),
    ...(uptake.weighings > 0
      ? [
          `Kept by the herb: your own ${plain(uptake.value)} g to the gram, from ${uptake.weighings} weighed ${uptake.weighings === 1 ? 'yield' : 'yields'}.`,
        ]
      : []),
    ...(plan.herbs.length > 1
      ? [
          'Herbs together: what they keep and how much oil they want is their mean by weight; the gentlest heat and the longest time count.',
        ]
      : []),
    ...(wish.fresh ? ['Dry the herb and weigh it again: these figures are for the dry weight.'] : []),
  ];
  return lines.map((text) => ({ kind: 'assumed', text }));
};

const sureLine = (plan: Plan, wish: InfuseWish, tools: Tools): Block[] => {
  const { infusion } = plan;
  if (!infusion || (wish.oilOut === undefined && !plan.chain)) return [];
  const g = (grams: number): string => atStep(grams, stepDecimals(tools.settings.stepG));
  return [
    {
      kind: 'text',
      text: `To be sure of ${g(infusion.oilOutG)} g start with ${g(infusion.oilInSureG)} g of oil, or top up with plain oil after straining.`,
    },
  ];
};

const titleOf = (plan: Plan, way: InfuseWish['way']): string => {
  const { infusion, usual } = plan;
  const ratio = infusion ? `1:${plain(infusion.ratio)}` : `usually 1:${usual.low} to 1:${usual.high}`;
  const into = way === 'melt' ? 'the melted mass' : oilName(plan);
  return `${capital(herbName(plan))} in ${into}, ${ratio} by weight`;
};

const next = (plan: Plan): NextStep[] =>
  plan.infusion && plan.herbs[0]
    ? [
        { label: 'At 1:5', say: 'at 1:5' },
        { label: 'At 1:10', say: 'at 1:10' },
        { label: `About ${shortName(plan.herbs[0].of.id)}`, say: `what is ${plan.herbs[0].of.name}` },
      ]
    : [];

const answerPlan = (plan: Plan, wish: InfuseWish, tools: Tools): Answer => ({
  title: titleOf(plan, wish.way),
  blocks: [
    ...infusionTable(plan, tools, wish.way),
    ...sureLine(plan, wish, tools),
    { kind: 'list', items: infuseSteps(plan, wish) },
    ...assumedOf(plan, wish),
    { kind: 'source', text: 'Ratio, uptake, times and heat: common practice, no source.' },
  ],
  figures: infuseFigures(plan, tools.settings.stepG),
  warnings: infuseWarnings(plan, wish.fresh === true),
  next: next(plan),
});

const noBase: Trouble = {
  code: 'missing',
  text: 'What went in? Say it with the yield, for example "I got 260 g out of 40 g calendula in 320 g sunflower oil".',
};

/** Writes a weighed yield into the book; the herb's figure is the group's own from then on. */
const noteYield = async (wish: InfuseWish, tools: Tools): Promise<Answer | Trouble> => {
  const { got, ...asked } = wish;
  const plan = planOf(asked, tools);
  if ('code' in plan) return plan;
  const { herbs, oils, infusion } = plan;
  if (herbs.length > 1) return noBase;
  const herb = herbs[0]?.of;
  const out = got?.unit === 'ml' ? got.amount * (oils[0]?.of.densityGMl?.value ?? 0.915) : got?.amount;
  if (!herb || !infusion || out === undefined) return noBase;
  const noted = { herbG: infusion.herbG, oilInG: infusion.oilInG, oilOutG: Number(out.toFixed(4)) };
  const uptake = weighedUptake(noted);
  if (!uptake.ok) return infuseTrouble(uptake.problem);
  const usual = herb.infusion?.uptakeGPerG;
  await tools.book.record({ kind: 'yield-noted', herb: herb.id, ...noted }, by(tools));
  const after = planOf(asked, tools);
  if ('code' in after) return after;
  const kept = noted.oilInG - noted.oilOutG;
  return {
    title: `Noted: ${readable(noted.oilOutG)} g out of ${readable(noted.herbG)} g ${shortName(herb.id)}`,
    blocks: [
      {
        kind: 'text',
        text: `Herb and cloth kept ${readable(kept)} g, ${plain(uptake.value)} g to the gram${usual ? ` (usual: ${usual.low} to ${usual.high})` : ''}. From now on I reckon ${shortName(herb.id)} with ${plain(after.uptake.value)} g to the gram, from your ${after.uptake.weighings === 1 ? 'weighing' : `last ${after.uptake.weighings} weighings`}.`,
      },
    ],
    figures: {
      ...infuseFigures(after, tools.settings.stepG),
      herb_g: noted.herbG,
      oil_in_g: noted.oilInG,
      oil_out_g: noted.oilOutG,
      uptake_g: Number(kept.toFixed(4)),
      oil_out_low_g: noted.oilOutG,
      oil_out_high_g: noted.oilOutG,
    },
    warnings: [localRules],
  };
};

/** Answers how to steep a herb in oil, with a batch to follow if one is asked for, or notes a weighed yield. */
export const answerInfuse = (
  wish: InfuseWish,
  given: Tools,
): Answer | Trouble | Promise<Answer | Trouble> => {
  const tools = wish.units ? { ...given, settings: { ...given.settings, units: wish.units } } : given;
  if (wish.yields === 'forget') return forgetYield(wish, tools);
  if (wish.yields === 'list') return listYields(tools);
  if (wish.got) return noteYield(wish, tools);
  const plan = planOf(wish, tools);
  if ('code' in plan) return plan;
  return plan.chain ? infuseChain(plan, plan.chain, wish, tools) : answerPlan(plan, wish, tools);
};
