import { convertWords } from './convert-claim.ts';
import { batchCostWords, priceWords } from './cost-words.ts';
import { designWords } from './design-words.ts';
import { expiryOwnWords } from './expiry-words.ts';
import { infuseWords } from './infuse-words.ts';
import { ingredientWords } from './ingredient-claim.ts';
import { labelWords } from './label-words.ts';
import { recipeWords } from './recipe-target.ts';
import { scaleWords } from './scale-claim.ts';
import { settingsWords } from './settings-claim.ts';
import { substituteWords } from './substitute-words.ts';
import { workshopWords } from './workshop-words.ts';

/**
 * Words that requests are made of. They are never taken for misspelt ingredients, and looking for one is the dearest
 * thing the reader does.
 */
export const ownWords: ReadonlySet<string> = new Set([
  ...batchCostWords,
  ...convertWords,
  ...designWords,
  ...expiryOwnWords,
  ...infuseWords,
  ...ingredientWords,
  ...labelWords,
  ...priceWords,
  ...recipeWords,
  ...scaleWords,
  ...settingsWords,
  ...substituteWords,
  ...workshopWords,
]);
