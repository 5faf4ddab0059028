import { ok, type Result } from '../result.ts';
import { type ChartLayout, layoutOf } from './chart-layout.ts';
import { type ChartProblem, checkedFigures, type MeltChartSpec } from './chart-spec.ts';
import { svgOf } from './chart-svg.ts';

export interface MeltChart {
  readonly svg: string;
  /** Where everything stands, in the SVG's own units: 720 wide, about 480 high. */
  readonly layout: ChartLayout;
}

/**
 * Solids (percent by weight) against temperature (°C, with °F below), one balm or before and after a swap, with marked
 * temperatures. Texts are a person's: shortened, and escaped for XML. Problems: a curve of fewer than two points or with
 * temperatures that do not rise, a figure that is no number, more than twelve marks.
 */
export const meltChart = (spec: MeltChartSpec): Result<MeltChart, ChartProblem> => {
  const checked = checkedFigures(spec);
  if (!checked.ok) return checked;
  const layout = layoutOf(spec);
  return ok({ svg: svgOf(spec, layout), layout });
};
