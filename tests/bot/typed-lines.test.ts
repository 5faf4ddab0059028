import { describe, expect, it } from 'vitest';
import { recipeForm } from '../../bot/forms/recipe-form.ts';
import { typedLines } from '../../bot/words/recipe-table.ts';
import { ingredients } from '../../core/ingredients.ts';
import { type RecipeLine, recipeUnits } from '../../core/recipe.ts';
import { type TestHouse, testHouse } from '../helpers/house.ts';

// A recipe put into a form to be changed, and sent back as it is, must be the same recipe.

const back = async (house: TestHouse, lines: readonly RecipeLine[]): Promise<unknown> => {
  const reply = await house.say(recipeForm.say({ name: 'Same again', lines: typedLines(lines) }));
  return 'request' in reply ? (reply.request as { lines?: unknown }).lines : reply.error;
};

const line = (ingredient: string, amount: number, more: Partial<RecipeLine> = {}): RecipeLine => ({
  ingredient,
  amount,
  unit: 'g',
  ...more,
});

describe('the lines of a recipe, typed', () => {
  it('should be read as the same lines, for every ingredient', async () => {
    const house = await testHouse();
    const odd: string[] = [];
    for (const { id, kind } of ingredients) {
      // A herb that is typed without a word about it is strained out.
      const lines = [
        line(id, 12.345, kind === 'herb' ? { strained: true } : {}),
        line(id === 'beeswax' ? 'olive-oil' : 'beeswax', 80),
      ];
      const read = await back(house, lines);
      if (JSON.stringify(read) !== JSON.stringify(lines))
        odd.push(`${id}: ${JSON.stringify(read).slice(0, 200)}`);
    }
    expect(odd).toEqual([]);
  });

  it.each(recipeUnits.filter((unit) => unit !== 'rest' && unit !== 'percent'))(
    'should keep the unit %s',
    async (unit) => {
      const lines = [line('beeswax', 1, { unit }), line('olive-oil', 2.25, { unit })];
      expect(await back(await testHouse(), lines)).toEqual(lines);
    },
  );

  it('should keep percent, what fills up, what is strained out, fresh or infused', async () => {
    const house = await testHouse();
    const percent = [line('beeswax', 20, { unit: 'percent' }), line('olive-oil', 0, { unit: 'rest' })];
    expect(await back(house, percent)).toEqual(percent);
    const strained = [line('beeswax', 20), line('olive-oil', 80), line('calendula', 10, { strained: true })];
    expect(await back(house, strained)).toEqual(strained);
    const infused = [line('beeswax', 20), line('olive-oil', 80, { infusedWith: 'calendula' })];
    expect(await back(house, infused)).toEqual(infused);
    const fresh = [
      line('beeswax', 20),
      line('olive-oil', 80),
      line('calendula', 10, { fresh: true, strained: true }),
    ];
    expect(await back(house, fresh)).toEqual(fresh);
  });
});
