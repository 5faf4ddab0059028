import * as fc from 'fast-check';
import { exclusionGroups } from '../../../core/design/exclusions.ts';
import { forms, type Wishes } from '../../../core/design/wishes.ts';
import { ingredients } from '../../../core/ingredients.ts';

export const plainWishes: Wishes = { form: 'stick', vegan: false, without: [], with: [] };

const id = fc.constantFrom(...ingredients.map((ingredient) => ingredient.id));
const share = fc.integer({ min: 1, max: 120 }).map((halves) => halves / 2);

const wanted = fc.oneof(
  id.map((ingredient) => ({ ingredient })),
  fc.record({ ingredient: id, percent: share }),
);

/** Anything a maker may wish for, sensible or not. */
export const anyWishes: fc.Arbitrary<Wishes> = fc
  .record(
    {
      form: fc.constantFrom(...forms),
      vegan: fc.boolean(),
      without: fc.uniqueArray(fc.oneof(fc.constantFrom(...exclusionGroups), id), { maxLength: 5 }),
      with: fc.uniqueArray(wanted, { maxLength: 4, selector: (each) => each.ingredient }),
      survivesC: fc.integer({ min: 15, max: 70 }),
      shelfLifeMonths: fc.integer({ min: 1, max: 48 }),
    },
    { requiredKeys: ['form', 'vegan', 'without', 'with'] },
  )
  .map((wishes) => wishes as Wishes);
