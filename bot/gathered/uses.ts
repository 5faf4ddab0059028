import { book } from './uses/book.ts';
import { check } from './uses/check.ts';
import { claim } from './uses/claim.ts';
import { convert } from './uses/convert.ts';
import { cost } from './uses/cost.ts';
import { design } from './uses/design.ts';
import { infuse } from './uses/infuse.ts';
import { ingredient } from './uses/ingredient.ts';
import { label } from './uses/label.ts';
import { melt } from './uses/melt.ts';
import { scale } from './uses/scale.ts';
import { substitute } from './uses/substitute.ts';
import { workshop } from './uses/workshop.ts';

/** What things in a message are put to, in the order in which uses are tried. */
export const allUses: readonly string[] = [
  book,
  claim,
  infuse,
  check,
  label,
  workshop,
  cost,
  design,
  substitute,
  melt,
  scale,
  convert,
  ingredient,
];
