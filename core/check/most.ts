import { usualAromaPercent } from '../hazards.ts';
import { ingredientById } from '../ingredients.ts';
import { amountsOf } from './amounts.ts';
import type { CheckInput } from './check.ts';
import { roundedDown } from './cut.ts';
import { compareLimits } from './limits.ts';
import { isScent, lightShares } from './other-findings.ts';

/** How much of one ingredient a figure leaves room for, percent of the balm. */
export interface Room {
  readonly what: string;
  readonly mostPercent: number;
  readonly cite: string;
  readonly status: string;
}

/**
 * The figures that bound a scent in a lip balm when it is the only one, strictest first. Empty for what is no scent.
 */
export const roomFor = (
  ingredient: string,
  input: Pick<CheckInput, 'region' | 'on' | 'wearer' | 'analyses'>,
): readonly Room[] => {
  if (!isScent(ingredient)) return [];
  const lines = [{ ingredient, percent: 1 }];
  const amounts = amountsOf(lines, input.analyses ?? []);
  const compared = compareLimits({
    lines,
    amounts,
    region: input.region,
    on: input.on,
    wearer: input.wearer ?? 'anyone',
  });
  const usual = ingredientById(ingredient)?.usePercent?.high;
  const rooms: Room[] = [
    ...compared
      .filter(({ percent }) => percent > 0)
      .map(({ what, percent, limitPercent, cite, status }) => ({
        what,
        mostPercent: roundedDown(limitPercent / percent),
        cite,
        status,
      })),
    ...lightShares(lines).map(({ limitPercent }) => ({
      what: 'light-sensitising',
      mostPercent: limitPercent,
      cite: 'essential-oil safety handbook, 2014',
      status: 'read-secondary',
    })),
    ...(usual
      ? [{ what: 'usual on lips', mostPercent: usual, cite: 'common practice', status: 'practice' }]
      : []),
    {
      what: 'all scent together',
      mostPercent: usualAromaPercent,
      cite: 'common practice',
      status: 'practice',
    },
  ];
  return rooms.toSorted((a, b) => a.mostPercent - b.mostPercent);
};
