import type { MeltForecast } from '../../core/melt/forecast.ts';
import type { AnswerFile } from '../answer.ts';

export interface Charts {
  readonly text: readonly string[];
  readonly files: readonly AnswerFile[];
}

/** The chart of solids against temperature, in characters and as a picture. */
export const meltCharts = async (_forecast: MeltForecast, _title: string): Promise<Charts> => ({
  text: [],
  files: [],
});
