import { bench } from './bench.ts';
import { check } from './check.ts';
import { claim } from './claim.ts';
import { convert } from './convert.ts';
import { cost } from './cost.ts';
import { design } from './design.ts';
import { infuse } from './infuse.ts';
import { ingredient } from './ingredient.ts';
import { label } from './label.ts';
import { melt } from './melt.ts';
import { recipe } from './recipe.ts';
import { scale } from './scale.ts';
import { settings } from './settings.ts';
import { substitute } from './substitute.ts';
import { workshop } from './workshop.ts';

/** Every list of sayings. */
export const allSayings: readonly string[] = [
  bench,
  check,
  claim,
  convert,
  cost,
  design,
  infuse,
  ingredient,
  label,
  melt,
  recipe,
  scale,
  settings,
  substitute,
  workshop,
];
