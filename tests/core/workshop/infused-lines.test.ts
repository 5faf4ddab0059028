import { describe, expect, it } from 'vitest';
import type { RecipeLine } from '../../../core/recipe.ts';
import { withInfusion } from '../../../core/workshop/infused-lines.ts';

const percent = (ingredient: string, amount: number): RecipeLine => ({ ingredient, amount, unit: 'percent' });

const lines = [percent('beeswax', 20), percent('olive-oil', 30), percent('sunflower-oil', 50)];

const infused = (wish: Parameters<typeof withInfusion>[1], of = lines) => withInfusion(of, wish, 'eu');

describe('an oil that is infused ahead', () => {
  it('should be the largest liquid one where none is named', () => {
    expect(infused({ herb: 'calendula' })).toEqual({
      ok: true,
      value: {
        lines: [lines[0], lines[1], { ...lines[2], infusedWith: 'calendula' }],
        oil: 'sunflower-oil',
        chosen: true,
      },
    });
  });

  it('should be the one that is named', () => {
    const found = infused({ herb: 'calendula', oil: 'olive-oil' });
    expect(found).toMatchObject({ ok: true, value: { oil: 'olive-oil', chosen: false } });
  });

  it('should be in the recipe', () => {
    expect(infused({ herb: 'calendula', oil: 'jojoba-oil' })).toEqual({
      ok: false,
      problem: { code: 'oil-not-in-recipe', oils: ['sunflower-oil', 'olive-oil'] },
    });
    expect(infused({ herb: 'calendula' }, [percent('beeswax', 40), percent('shea-butter', 60)])).toEqual({
      ok: false,
      problem: { code: 'no-oil-line' },
    });
  });
});
