import type { Topic } from './topic.ts';
import { batch } from './topics/batch.ts';
import { bench } from './topics/bench.ts';
import { book } from './topics/book.ts';
import { check } from './topics/check.ts';
import { claim } from './topics/claim.ts';
import { convert } from './topics/convert.ts';
import { cost } from './topics/cost.ts';
import { design } from './topics/design.ts';
import { expiry } from './topics/expiry.ts';
import { help } from './topics/help.ts';
import { infuse } from './topics/infuse.ts';
import { ingredient } from './topics/ingredient.ts';
import { label } from './topics/label.ts';
import { melt } from './topics/melt.ts';
import { reaction } from './topics/reaction.ts';
import { recipe } from './topics/recipe.ts';
import { scale } from './topics/scale.ts';
import { settings } from './topics/settings.ts';
import { stock } from './topics/stock.ts';
import { substitute } from './topics/substitute.ts';
import { trace } from './topics/trace.ts';
import { workshop } from './topics/workshop.ts';
import { helpAbout } from './words/help.ts';

/** Everything that can be asked. Slash commands, help, the reader and the documentation follow this list. */
export const topics: readonly Topic[] = [
  scale,
  melt,
  substitute,
  design,
  infuse,
  cost,
  workshop,
  check,
  claim,
  label,
  bench,
  stock,
  batch,
  book,
  convert,
  ingredient,
  recipe,
  trace,
  reaction,
  expiry,
  settings,
  help,
];

helpAbout(topics);
