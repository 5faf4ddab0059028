import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, now, testHouse, troubleIn } from '../helpers/house.ts';

const shelf: readonly (readonly [string, string, number, string?])[] = [
  ['S1', 'sunflower-oil', 500],
  ['C1', 'candelilla-wax', 300],
  ['B1', 'beeswax', 400],
  ['M1', 'cocoa-butter', 400],
  ['J1', 'jojoba-oil', 250, '2026-01-31'],
];

/** The house with some lots on its shelf; the jojoba oil is past its date. */
const stocked = async () => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  for (const [lot, ingredient, grams, bestBefore] of shelf) {
    const bought = { kind: 'lot-bought', lot, ingredient, grams, on: '2026-01-10' } as const;
    await book.record({ ...bought, ...(bestBefore ? { bestBefore } : {}) }, { who: 'm1', at: now });
  }
  return house;
};

const ids = (list: unknown): readonly string[] =>
  (list as readonly { ingredient: string }[]).map(({ ingredient }) => ingredient);

describe('only what is in stock', () => {
  it('should offer what is on the shelf and in date', async () => {
    const house = await stocked();
    const { figures } = answerOf(
      await house.say('what in stock could replace olive oil in Fernlea hand balm'),
    );
    expect(ids(figures.candidates)).toEqual(['sunflower-oil']);
  });

  it.each(['Fernlea hand balm with only what is in stock', 'make Fernlea hand balm with what we have'])(
    'should make a recipe from the shelf: %s',
    async (say) => {
      const { figures } = answerOf(await (await stocked()).say(say));
      expect(ids(figures.lines)).toEqual(['beeswax', 'cocoa-butter', 'sunflower-oil']);
    },
  );

  it('should swap in what is there, and refuse what is not with what would do', async () => {
    const house = await stocked();
    const made = answerOf(
      await house.say('swap beeswax for candelilla in Fernlea hand balm, only what we have in stock'),
    );
    // A named swap asks the shelf only for what comes in.
    expect(ids(made.figures.lines)).toEqual(['candelilla-wax', 'shea-butter', 'olive-oil']);
    const trouble = troubleIn(
      await house.say('swap beeswax for carnauba in Fernlea hand balm, only what is in stock'),
    );
    expect(trouble.text).toMatch(/no carnauba wax in stock.*candelilla wax/);
  });

  it('should say what no lot can stand in for', async () => {
    const trouble = troubleIn(
      await (await stocked()).say('vegan Fernlea mint lip balm with only what is in stock, no cocoa butter'),
    );
    expect(trouble.text).toMatch(/nothing in stock that could stand in for/);
  });

  it('should design from the shelf', async () => {
    const reply = await (await stocked()).say('design a tin balm with only what we have in stock');
    const { figures } = answerOf(reply);
    const used = (figures.proposals as readonly { lines: unknown }[]).flatMap(({ lines }) => ids(lines));
    expect(used.length).toBeGreaterThan(0);
    const there = shelf.map(([, ingredient]) => ingredient);
    expect(used.filter((id) => !there.includes(id) || id === 'jojoba-oil')).toEqual([]);
    expect(textOf(reply, { width: 200 })).not.toContain('undefined');
  });
});
