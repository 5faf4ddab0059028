import type { Chain } from '../../core/infuse/chain.ts';
import { stepDecimals } from '../../core/steps.ts';
import type { Answer, Block, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { InfuseWish } from '../topics/infuse.ts';
import { infuseFigures } from './infuse-figures.ts';
import type { Plan } from './infuse-plan.ts';
import { infuseSteps, infuseWarnings } from './infuse-steps.ts';
import { infusionTable } from './infuse-table.ts';
import { atStep, plain } from './numbers.ts';
import { answerScale } from './scale.ts';
import { shortName } from './warnings.ts';

/** The two places where grams stay behind, so that what is bought can be followed to the tins. */
const lossesOf = (chain: Chain): Answer['figures'] => ({
  losses: [
    { where: 'herb and cloth', grams: chain.infusion.uptakeG },
    { where: 'jug and spoon', grams: chain.scaled.allowanceG },
  ],
});

const chainText = (plan: Plan, chain: Chain, stepDecimal: number): string => {
  const { infusion, scaled } = chain;
  const g = (grams: number): string => atStep(grams, stepDecimal);
  const name = shortName(chain.line.ingredient);
  return `Set aside ${g(infusion.herbG)} g ${shortName(chain.herb.id)} and ${g(infusion.oilInG)} g ${name} at 1:${plain(infusion.ratio)}. Herb and cloth keep about ${g(infusion.uptakeG)} g, jug and spoon ${plain(scaled.allowanceG, 1)} g${plan.uptake.weighings > 0 ? ' (the first by your own weighings)' : ''}. To be sure start with ${g(infusion.oilInSureG)} g of oil, or top up with plain ${name} after straining.`;
};

const merged = (own: readonly Warning[], scale: readonly Warning[]): Warning[] => {
  const known = new Set(own.map((warning) => `${warning.code} ${warning.text}`));
  const more = scale.filter((warning) => !known.has(`${warning.code} ${warning.text}`));
  const rules = own.filter((warning) => warning.code === 'local-rules');
  return [...own.filter((warning) => warning.code !== 'local-rules'), ...more, ...rules];
};

/** The whole chain: herb and oil to set aside, then the weigh-out, with the losses of both steps. */
export const infuseChain = (plan: Plan, chain: Chain, wish: InfuseWish, tools: Tools): Answer | Trouble => {
  const { batch } = wish;
  if (!batch)
    return { code: 'missing', text: 'Which recipe, and how many tins? For example "24 tins of 15 ml".' };
  const { recipe: _recipe, ...target } = batch;
  const weighOut = answerScale({ ...target, lines: [...chain.lines] }, tools);
  if ('code' in weighOut) return weighOut;
  const decimals = stepDecimals(chain.scaled.stepG);
  const chosen: Block[] = chain.oilChosen
    ? [
        {
          kind: 'assumed',
          text: `I took ${shortName(chain.line.ingredient)}, the largest oil of the recipe, as the one to infuse.`,
        },
      ]
    : [];
  return {
    title: weighOut.title.replace('Your recipe', plan.recipeName ?? 'Your recipe'),
    blocks: [
      { kind: 'text', text: chainText(plan, chain, decimals) },
      ...infusionTable(plan, tools),
      { kind: 'list', items: infuseSteps(plan, wish) },
      ...weighOut.blocks,
      ...chosen,
      ...(chain.infusion.ratioAssumed
        ? [
            {
              kind: 'assumed',
              text: `I took 1:${plan.usual.middle}, the middle of what is usual (common practice).`,
            } as const,
          ]
        : []),
    ],
    figures: { ...weighOut.figures, ...infuseFigures(plan), ...lossesOf(chain) },
    warnings: merged(infuseWarnings(plan, wish.fresh === true), weighOut.warnings),
  };
};
