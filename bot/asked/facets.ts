import type { Facet } from './facet.ts';
import { facetsOfAll } from './facets-of-all.ts';
import { facetsOfThings } from './facets-of-things.ts';

/** Everything that can be asked of the bench book. */
export const facets: readonly Facet[] = [...facetsOfThings, ...facetsOfAll];
