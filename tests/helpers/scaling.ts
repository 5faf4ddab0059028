import type { RecipeLine } from '../../core/recipe.ts';
import {
  type Scaled,
  type ScaleProblem,
  type ScaleRequest,
  scaleRecipe,
  type Target,
} from '../../core/scale.ts';
import { percent, problemOf, worked } from './lines.ts';

export type House = Partial<Pick<ScaleRequest, 'lossPercent' | 'stepG' | 'region'>>;

/** The house defaults: 3 % loss, a 0.1 g scale, the EU. */
const request = (lines: readonly RecipeLine[], target: Target, house: House): ScaleRequest => ({
  lines,
  target,
  lossPercent: 3,
  stepG: 0.1,
  region: 'eu',
  ...house,
});

export const scaled = (lines: readonly RecipeLine[], target: Target, house: House = {}): Scaled =>
  worked(scaleRecipe(request(lines, target, house)));

export const scaleProblem = (lines: readonly RecipeLine[], target: Target, house: House = {}): ScaleProblem =>
  problemOf(scaleRecipe(request(lines, target, house)));

export const gramsOf = (table: Pick<Scaled, 'lines'>): readonly number[] =>
  table.lines.map((each) => each.grams);

/** 20/30/50 of beeswax, shea butter and olive oil. */
export const handBalm = [percent('beeswax', 20), percent('shea-butter', 30), percent('olive-oil', 50)];
