import { ingredientById, isWax } from '../../core/ingredients.ts';
import type { Portion } from '../../core/substitute/mix.ts';
import { rank } from '../../core/substitute/rank.ts';
import type { ReplaceProblem } from '../../core/substitute/replaced.ts';
import type { Trouble } from '../answer.ts';
import { orList } from '../readers/ask-back.ts';
import { blendTrouble } from './forecast.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

/** The swap that failed: what was asked, and in what. */
export interface Failed {
  readonly from: string;
  readonly to: string;
  readonly portions: readonly Portion[];
}

/** What would work in its place, by the ranking: at most three names. */
const works = ({ from, to, portions }: Failed): string => {
  const ranking = rank(from, portions);
  const names = ranking.ok
    ? ranking.value.candidates
        .filter(({ ingredient }) => ingredient !== to)
        .slice(0, 3)
        .map(({ ingredient }) => shortName(ingredient))
    : [];
  return names.length > 0 ? ` What would work: ${orList(names)}.` : '';
};

const outOfRange = (text: string): Trouble => ({ code: 'out-of-range', text });

/** Parts that makers start with where nobody has melting figures (common practice). */
const startingParts = (id: string): string => {
  const found = ingredientById(id);
  if (!found || !isWax(found)) return '';
  const { low, high } = found.partsForBeeswax;
  return ` Makers start with about ${plain(low)} to ${plain(high)} parts of it for 1 of beeswax (common practice): try that in a small tin.`;
};

const noFigures = (ids: readonly string[], failed: Failed): Trouble => ({
  code: 'missing',
  text: `Nobody I could read has measured how ${ids.map(shortName).join(', ')} melts in oil, so I cannot re-balance with it.${ids.includes(failed.to) ? startingParts(failed.to) : ''}${works(failed)}`,
});

const cannotCarry = (failed: Failed): Trouble =>
  outOfRange(
    `${shortName(failed.to)} is liquid at 25 °C, so it cannot carry what ${shortName(failed.from)} carries: the balm would not set the same.${works(failed)}`,
  );

/** Why a swap cannot be made, and what would work. */
export const swapTrouble = (problem: ReplaceProblem, failed: Failed): Trouble => {
  const [from, to] = [shortName(failed.from), shortName(failed.to)];
  switch (problem.code) {
    case 'same-ingredient':
      return outOfRange(`That is ${from} for ${from}: nothing would change.${works(failed)}`);
    case 'different-jobs':
      return outOfRange(`${to} cannot do the job of ${from} in a balm.${works(failed)}`);
    case 'not-in-part':
      return outOfRange(
        `A herb is steeped and strained out, so I swap ${from} whole: "swap ${from} for ${to}".`,
      );
    case 'not-in-recipe':
      return {
        code: 'not-found',
        text: `There is no ${shortName(problem.ingredient)} in this recipe. It has ${failed.portions.map(({ ingredient }) => shortName(ingredient)).join(', ')}.`,
      };
    case 'no-liquid-oil':
      return outOfRange(
        `Nothing in this recipe can give way to ${to}: there is neither liquid oil nor another butter. Add a line of oil first, then swap.`,
      );
    case 'does-not-melt-in':
      return outOfRange(
        `${shortName(problem.ingredient)} does not melt into a balm, so there is no set to hold.${works(failed)}`,
      );
    case 'liquid-cannot-carry':
      return cannotCarry(failed);
    case 'wax-cannot-be-oil':
      return outOfRange(
        `${to} in the place of ${from} would set the balm hard as rock: a wax is no oil.${works(failed)}`,
      );
    case 'not-enough-oil':
      return outOfRange(
        `Even with all the oil gone and ${plain(problem.mostPercent, 0)} % ${to}, it stays softer than with ${from}.${works(failed)}`,
      );
    case 'no-melting-data':
      return noFigures(problem.ingredients, failed);
    case 'bad-temperature':
      return outOfRange('I hold firmness at 25 °C. Ask "swap beeswax for candelilla in Fernlea hand balm".');
    default:
      return blendTrouble(problem);
  }
};
