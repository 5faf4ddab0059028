import { isFragileOil } from '../../core/bench/best-before.ts';
import { daysBetween } from '../../core/bench/days.ts';
import { pourFrom } from '../../core/bench/pour.ts';
import { benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import { scaleRecipe } from '../../core/scale.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ExpiryWish } from '../topics/expiry.ts';
import { weighedLines } from './batch-weigh.ts';
import { dayText, printedText, reasonText } from './bench-dates.ts';
import { findRecipe } from './find-recipe.ts';
import { groupDay } from './group-day.ts';
import { troubleOf } from './problems.ts';
import { localRules, shortName } from './warnings.ts';

/** A small batch, so that the lots a pour would begin with are the ones that count. */
const batchG = 100;

const ofWhat: Trouble = {
  code: 'missing',
  text: 'How long does what keep? Name a recipe or one ingredient: "how long does Fernlea hand balm keep", "shelf life of grapeseed oil".',
};

const advice = (lines: readonly RecipeLine[]): readonly string[] => {
  const fragile = lines.map(({ ingredient }) => ingredient).filter(isFragileOil);
  return [
    ...(fragile.length > 0
      ? [`${fragile.map(shortName).join(', ')}: goes off early. Buy little, keep it cold and dark.`]
      : []),
    'Cool, dark, dry, lid on, clean fingers. Bin what smells rancid, whatever the date says.',
    'Vitamin E slows the oil going off; it does not stretch this date.',
  ];
};

/** How long a tin poured today would keep, and why: lots on the shelf count, else usual shelf lives and the ceiling. */
export const keepsAnswer = (wish: ExpiryWish, tools: Tools): Answer | Trouble => {
  const found = wish.recipe === undefined ? undefined : findRecipe(wish.recipe, tools.book);
  if (found && 'code' in found) return found;
  const lines = found?.lines ?? wish.lines;
  if (!lines) return ofWhat;
  const { lossPercent, stepG, region, capMonths } = tools.settings;
  const target = { kind: 'mass', grams: batchG } as const;
  const scaled = scaleRecipe({ lines, target, lossPercent, stepG, region });
  if (!scaled.ok) return troubleOf(scaled.problem);
  const today = groupDay(tools);
  const weighed = weighedLines(scaled.value);
  const bench = benchOf(tools.book.state);
  const poured = pourFrom(bench, { madeOn: today, lines: weighed, from: [], ...defined({ capMonths }) });
  // No lot was named, so none that is over is drawn.
  if (!poured.ok) return ofWhat;
  const { bestBefore, because, rough } = poured.value;
  const days = daysBetween(today, bestBefore);
  return {
    title: `${found?.name ?? 'Your recipe'}: keeps till ${dayText(bestBefore)}`,
    blocks: [
      {
        kind: 'text',
        text: `Poured today it keeps ${days} days: ${reasonText(because, bestBefore)}. On the tin: best before ${printedText(bestBefore)}.`,
      },
      { kind: 'list', items: advice(lines) },
      { kind: 'source', text: 'Usual shelf lives and the ceiling: common practice, no standard gives them.' },
    ],
    figures: { best_before: bestBefore, days, because: because.kind, rough },
    warnings: [localRules],
  };
};
