import { batch } from './batch.ts';
import { bench } from './bench.ts';
import { book } from './book.ts';
import { check } from './check.ts';
import { claim } from './claim.ts';
import { convert } from './convert.ts';
import { cost } from './cost.ts';
import { design } from './design.ts';
import { expiry } from './expiry.ts';
import { infuse } from './infuse.ts';
import { ingredient } from './ingredient.ts';
import { label } from './label.ts';
import { melt } from './melt.ts';
import { reaction } from './reaction.ts';
import { recipe } from './recipe.ts';
import { scale } from './scale.ts';
import { settings } from './settings.ts';
import { stock } from './stock.ts';
import { substitute } from './substitute.ts';
import { trace } from './trace.ts';
import { workshop } from './workshop.ts';

/** Every list of sayings. */
export const allSayings: readonly string[] = [
  batch,
  bench,
  book,
  check,
  claim,
  convert,
  cost,
  design,
  expiry,
  infuse,
  ingredient,
  label,
  melt,
  reaction,
  recipe,
  scale,
  settings,
  stock,
  substitute,
  trace,
  workshop,
];
