import type { Mix, Portion } from '../../core/substitute/mix.ts';
import type { Block } from '../answer.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

const nameOf = ({ ingredient, infusedWith }: Portion): string => {
  if (!infusedWith) return shortName(ingredient);
  return `${shortName(infusedWith)}-infused ${ingredient === 'infused-oil' ? 'oil' : shortName(ingredient)}`;
};

const percent = (value: number | undefined): string =>
  value === undefined ? '–' : plain(value, value < 1 ? 2 : 1);

const sameThing = (a: Portion, b: Portion): boolean => nameOf(a) === nameOf(b) && a.fresh === b.fresh;

/** The lines before and after, what came in where the recipe now has it. */
export const changeTable = (before: Mix, after: Mix): Block => {
  const gone = before.portions.filter((old) => !after.portions.some((now) => sameThing(now, old)));
  const row = (was: Portion | undefined, is: Portion | undefined): readonly string[] => {
    const one = is ?? was;
    return [one ? nameOf(one) : '', percent(was?.percent), percent(is?.percent)];
  };
  return {
    kind: 'table',
    columns: [
      { title: 'ingredient', align: 'left' },
      { title: 'before %', align: 'right' },
      { title: 'after %', align: 'right' },
    ],
    rows: [
      ...gone.map((was) => row(was, undefined)),
      ...after.portions.map((is) =>
        row(
          before.portions.find((was) => sameThing(was, is)),
          is,
        ),
      ),
    ],
    total: ['total', '100', '100'],
  };
};
