import type { Design, Proposal } from '../../core/design/design.ts';
import type { DesignLine } from '../../core/design/sketch.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { DesignWish } from '../topics/design.ts';
import { relaxFigure } from './design-relax.ts';
import { nameOf, whyOf } from './design-why.ts';
import { forecastFigures } from './forecast.ts';

const linesFigure = (lines: readonly DesignLine[]): FigureValue =>
  lines.map(({ ingredient, percent, infusedWith }) => ({
    ingredient,
    percent,
    ...(infusedWith ? { infused_with: infusedWith } : {}),
  }));

const rounded = (value: number | undefined): FigureValue =>
  value === undefined ? null : Number(value.toFixed(2));

const proposalFigure = (proposal: Proposal): FigureValue => ({
  name: nameOf(proposal),
  lines: linesFigure(proposal.lines),
  softens_c: rounded(proposal.forecast.softensC),
  fully_melted_c: rounded(proposal.forecast.fullyMeltedC),
  firmness: proposal.forecast.firmness.band,
  firmness_index: Number(proposal.forecast.firmness.at25.toFixed(1)),
  survives_c: proposal.survivesC ?? null,
  why: whyOf(proposal),
});

/** The wishes as asked, the first proposal (or the one that is shown) with its forecast, all proposals, and what had to be relaxed. */
export const designFigures = (made: Design, wish: DesignWish): Answer['figures'] => {
  const first = made.proposals[wish.show ?? 0] ?? made.proposals[0];
  const [relaxed, ...others] = made.relaxed;
  return {
    form: made.wishes.form,
    survives_c: made.wishes.survivesC ?? null,
    vegan: wish.vegan ?? false,
    with: (wish.with ?? []).map(({ ingredient }) => ingredient),
    without: [...(wish.without ?? [])],
    shelf_life_months: made.wishes.shelfLifeMonths ?? null,
    lines: first ? linesFigure(first.lines) : [],
    ...(first ? forecastFigures(first.forecast) : {}),
    proposals: made.proposals.map(proposalFigure),
    ...(relaxed ? { relax: relaxFigure(relaxed) } : {}),
    ...(others.length > 0 ? { relax_also: others.map(relaxFigure) } : {}),
  };
};
