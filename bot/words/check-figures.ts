import type { CheckReport } from '../../core/check/check.ts';
import type { Compared } from '../../core/check/limits.ts';
import type { LightShare } from '../../core/check/other-findings.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import { nameOf } from './check-text.ts';

const limitFigure = (row: Compared): FigureValue => ({
  what: row.what,
  percent: row.percent,
  limit_percent: row.limitPercent,
  ok: row.ok,
  source: row.cite,
  status: row.status,
  kind: row.kind,
  from: [...row.from],
});

const handbook = {
  source: 'essential-oil safety handbook, 2014',
  status: 'read-secondary',
  kind: 'guidance',
} as const;

const lightFigure = ({ ingredient, percent, limitPercent }: LightShare): FigureValue => ({
  what: `${nameOf(ingredient)}, light-sensitising`,
  percent,
  limit_percent: limitPercent,
  ok: percent <= limitPercent + 1e-9,
  ...handbook,
  from: [ingredient],
});

/** Several light-sensitising oils together: the shares of their limits may come to 100 %. */
const lightSumFigure = ({ lightSum, light }: CheckReport): FigureValue => ({
  what: 'light-sensitising oils together, percent of their limits',
  percent: Number((lightSum * 100).toFixed(6)),
  limit_percent: 100,
  ok: lightSum <= 1 + 1e-9,
  ...handbook,
  from: light.map(({ ingredient }) => ingredient),
});

const aromaFigure = (percent: number): FigureValue => ({
  what: 'all scent together',
  percent,
  limit_percent: 1,
  ok: percent <= 1,
  source: 'common practice, no source',
  status: 'practice',
  kind: 'practice',
  from: [],
});

/** Everything a recipe was compared with; rows about what is in it at no share are left out unless they forbid it. */
const limitFigures = (report: CheckReport): FigureValue[] => [
  ...report.limits.filter(({ percent, ok }) => percent > 0 || !ok).map(limitFigure),
  ...report.light.map(lightFigure),
  ...(report.light.length > 1 ? [lightSumFigure(report)] : []),
  ...(report.aromaPercent > 0 ? [aromaFigure(report.aromaPercent)] : []),
];

/** A look's figures; shares are percent by weight of the balm. */
export const figuresOf = (report: CheckReport, region: Region, on: string): Answer['figures'] => ({
  verdict: report.verdict,
  aroma_percent: report.aromaPercent,
  allergens: report.allergens.map(({ name, percent, declare }) => ({ name, percent, declare })),
  limits: limitFigures(report),
  coming: report.coming.map((row) => ({
    what: row.what,
    percent: row.percent,
    limit_percent: row.limitPercent,
    from: row.appliesFrom ?? null,
  })),
  light_sum: report.lightSum,
  region,
  on,
});
