import { defined } from '../../core/defined.ts';
import type { ScaleProblem } from '../../core/target.ts';
import { type InfusedLinesProblem, withInfusion } from '../../core/workshop/infused-lines.ts';
import type { Making } from '../../core/workshop/kit.ts';
import { stockOn } from '../../core/workshop/stock.ts';
import { planWorkshop, type Workshop, type WorkshopProblem } from '../../core/workshop/workshop.ts';
import type { Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { WorkshopMaking, WorkshopWish } from '../topics/workshop.ts';
import { isoDay } from './day.ts';
import { findRecipe } from './find-recipe.ts';
import { readable } from './numbers.ts';
import { troubleOf } from './problems.ts';
import { shortName } from './warnings.ts';

/** A workshop worked out, with the wish it came from. */
export interface Planned {
  readonly wish: WorkshopWish;
  readonly plan: Workshop;
  readonly makings: readonly Making[];
  readonly sparePercent: number;
  readonly lossPercent: number;
}

/** Spare that is set aside where nobody says how much (common practice, no source). */
export const usualSparePercent = 10;

const example = 'workshop for 12 people, 2 tins of 15 ml each, Fernlea hand balm';

const noSuchOil = (problem: InfusedLinesProblem): Trouble =>
  problem.code === 'no-oil-line'
    ? {
        code: 'missing',
        text: 'That recipe has no liquid oil to infuse. Plan it without, or name a recipe with one.',
      }
    : {
        code: 'missing',
        text: `That oil is not in the recipe. To infuse there is ${problem.oils.map(shortName).join(', ')}.`,
      };

const makingOf = (wish: WorkshopMaking, tools: Tools): Making | Trouble => {
  const recipe = wish.recipe === undefined ? undefined : findRecipe(wish.recipe, tools.book);
  if (recipe && 'code' in recipe) return recipe;
  const plain = recipe?.lines ?? wish.lines ?? [];
  const infused = wish.infusion && withInfusion(plain, wish.infusion, tools.settings.region);
  if (infused && !infused.ok) return noSuchOil(infused.problem);
  const lines = infused?.value.lines ?? plain;
  const { amount, unit } = wish.size;
  return {
    lines,
    each: wish.each,
    fill: unit === 'g' ? { grams: amount } : { ml: amount },
    container: wish.container,
    ...defined({ name: recipe?.name, infuseRatio: wish.infusion?.ratio }),
  };
};

const isOwn = (problem: WorkshopProblem): problem is Exclude<WorkshopProblem, ScaleProblem> =>
  problem.code === 'no-makings' || problem.code === 'bad-count' || problem.code === 'bad-spare';

const planTrouble = (problem: WorkshopProblem): Trouble => {
  if (!isOwn(problem)) return troubleOf(problem);
  if (problem.code === 'bad-count')
    return {
      code: 'bad-quantity',
      text: `${readable(problem.got)} is no number to plan with. Try "${example}".`,
    };
  if (problem.code === 'bad-spare')
    return { code: 'out-of-range', text: 'The spare is between 0 and 100 %. For example "spare 10 %".' };
  return { code: 'missing', text: `What does everybody make? For example "${example}".` };
};

/** The workshop a wish asks for, or what stands in its way. */
export const planFor = (wish: WorkshopWish, tools: Tools): Planned | Trouble => {
  const makings: Making[] = [];
  for (const each of wish.makings) {
    const making = makingOf(each, tools);
    if ('code' in making) return making;
    makings.push(making);
  }
  const { settings } = tools;
  const { yields, prices, bench } = tools.book.state;
  const sparePercent = wish.sparePercent ?? usualSparePercent;
  const lossPercent = wish.lossPercent ?? settings.lossPercent;
  const plan = planWorkshop({
    people: wish.people,
    makings,
    sparePercent,
    lossPercent,
    stepG: wish.stepG ?? settings.stepG,
    region: settings.region,
    ...defined({
      hotPlates: wish.hotPlates,
      jugs: wish.jugs,
      jugMl: wish.jugMl,
      roomC: wish.roomC,
      yields,
      prices,
      stockG: stockOn(bench, isoDay(tools.at)),
    }),
  });
  return plan.ok ? { wish, plan: plan.value, makings, sparePercent, lossPercent } : planTrouble(plan.problem);
};

/** "Fernlea hand balm", "your recipe": what a making is called in sentences. */
export const nameOf = (making: Making | undefined): string => making?.name ?? 'your recipe';

/** "2 tins of 15 ml". */
export const eachText = ({ each, container, size }: WorkshopMaking): string =>
  `${each} ${container}${each === 1 ? '' : 's'} of ${readable(size.amount)} ${size.unit}`;
