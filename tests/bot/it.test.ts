import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const swap = 'swap beeswax for candelilla in Fernlea hand balm';
const wishes = 'design a vegan stick that survives 35 C';

const saidAll = async (...said: readonly string[]) => {
  const house = await testHouse();
  let reply = await house.say(said[0] ?? '');
  for (const say of said.slice(1)) reply = await house.say(say);
  expect(house.faults).toEqual([]);
  return reply;
};

const idsIn = (figures: Readonly<Record<string, unknown>>): readonly string[] =>
  (figures.lines as readonly { ingredient: string }[]).map(({ ingredient }) => ingredient);

describe('what "it" means after a swap', () => {
  it.each([
    ['when does it melt', 'melt'],
    ['heat plan', 'melt'],
    ['check it', 'check'],
    ['cost of 24 tins of 15 ml of it', 'cost'],
  ])('should be the changed recipe: %s', async (say, topic) => {
    const reply = await saidAll(swap, say);
    expect(reply.topic).toBe(topic);
    expect(textOf(reply, { width: 200 })).toContain('It is Fernlea hand balm: candelilla wax for beeswax.');
    const request = 'request' in reply ? JSON.stringify(reply.request) : '';
    expect(request).toContain('candelilla-wax');
    expect(request).not.toContain('"beeswax"');
  });

  it('should melt as the swap said', async () => {
    const { figures } = answerOf(await saidAll(swap, 'when does it melt'));
    expect(Number(figures.fully_melted_c)).toBeCloseTo(52.3, 1);
  });

  it('should be saved under a name, with shares to a hundredth that make 100 %', async () => {
    const { figures } = answerOf(await saidAll(swap, 'save it as Bee free balm', 'show Bee free balm'));
    const { lines } = figures.recipe as { lines: readonly { ingredient: string; amount: number }[] };
    expect(lines.map(({ amount }) => amount)).toEqual([12.74, 30, 57.26]);
  });

  it('should be what the next swap starts from, with the first one still known', async () => {
    const { figures } = answerOf(await saidAll(swap, 'and swap the shea for mango butter'));
    expect(idsIn(figures)).toEqual(['candelilla-wax', 'mango-butter', 'olive-oil']);
    expect(JSON.stringify(figures.lines_before)).toContain('"beeswax"');
  });

  it('should go on being it through a forecast', async () => {
    const { figures } = answerOf(await saidAll(swap, 'when does it melt', 'make 24 tins of 15 ml of it'));
    expect(idsIn(figures)).toContain('candelilla-wax');
  });

  it('should not outlive a quarter of an hour', async () => {
    const house = await testHouse();
    await house.say(swap, { at: 0 });
    troubleIn(await house.say('when does it melt', { at: 16 * 60 * 1000 }));
  });
});

describe('what "it" and "the second" mean after a design', () => {
  it('should be the first proposal where none is picked', async () => {
    const house = await testHouse();
    const { figures } = answerOf(await house.say(wishes));
    const scaled = answerOf(await house.say('make 500 g of it'));
    expect(idsIn(scaled.figures)).toEqual(idsIn(figures));
  });

  it.each([
    ['show me the second', 'design'],
    ['more about number 2', 'design'],
    ['when does the second one melt', 'melt'],
    ['24 tins of 15 ml of the second', 'scale'],
    ['check the second', 'check'],
    ['save the second as Winter stick', 'recipe'],
  ])('should be the one that is picked: %s', async (say, topic) => {
    const house = await testHouse();
    const { figures } = answerOf(await house.say(wishes));
    const [, second] = figures.proposals as readonly { name: string; lines: unknown }[];
    const reply = await house.say(say);
    expect(reply.topic).toBe(topic);
    expect(textOf(reply, { width: 200 })).toContain(second?.name ?? '?');
  });

  it('should let another be picked after one was told in full', async () => {
    const third = await saidAll(wishes, 'show me the second', 'and the third');
    expect(answerOf(third).title).toMatch(/^3 /);
  });

  it('should take a wish after that as a wish again', async () => {
    const { figures } = answerOf(await saidAll(wishes, 'show me the second', 'make it survive 40 C'));
    expect(figures.survives_c).toBe(40);
    expect((figures.proposals as readonly unknown[]).length).toBeGreaterThan(0);
  });

  it('should fit a phone: at most 32 lines of 40 columns before the cautions', async () => {
    const text = textOf(await saidAll('vegan stick that survives 38 C, no nuts, with shea and mango'), {
      width: 40,
    });
    expect(text.split('Mind:')[0]?.split('\n').length).toBeLessThanOrEqual(32);
  });
});

describe('the scores of candidates', () => {
  const asked = 'what can replace olive oil in Fernlea hand balm';

  it.each(['show the scores', 'why avocado first?', 'why?', 'how did you rank them'])(
    'should be taken apart: %s',
    async (say) => {
      const text = textOf(await saidAll(asked, say), { width: 60 });
      expect(text).toMatch(/fatty acids alike +35/);
      expect(text).toContain('avocado oil');
    },
  );

  it('should tell of one that was not among the first', async () => {
    const { figures } = answerOf(await saidAll(asked, 'why not grapeseed?'));
    expect(figures.about).toBe('grapeseed-oil');
  });

  it('should say so of one that is no candidate', async () => {
    expect(troubleIn(await saidAll(asked, 'why not beeswax?')).text).toContain('another job');
  });
});

describe('choosing by price in the chat', () => {
  const notes = 'olive oil 9 per kg, canola oil 3 per kg, avocado oil 22 per kg';

  it('should put the cheapest first and name missing prices', async () => {
    const { figures, blocks } = answerOf(
      await saidAll(notes, 'cheapest thing instead of olive oil in Fernlea hand balm'),
    );
    expect(figures.by_price).toMatchObject([{ ingredient: 'canola-oil' }, { ingredient: 'avocado-oil' }]);
    expect(JSON.stringify(blocks)).toContain('No price that fits is noted for');
    expect(figures.missing_prices).toContain('camellia-seed-oil');
  });

  it('should say what a swap does to the cost', async () => {
    const reply = await saidAll(notes, 'swap olive oil for canola in Fernlea hand balm');
    // Half a kilogram at 3 instead of 9.
    expect(answerOf(reply).figures.cost_change_per_kg).toBe(-3);
    expect(textOf(reply, { width: 200 })).toContain('Ingredients for 1 kg cost 3.00 EUR less');
  });

  it('should name the price it lacks for a swap, and say nothing in a book without prices', async () => {
    const lacking = textOf(await saidAll(notes, swap), { width: 200 });
    expect(lacking).toContain('no price that fits is noted for beeswax, candelilla wax');
    expect(textOf(await saidAll(swap), { width: 200 })).not.toMatch(/price|cost/i);
  });

  it('should make a recipe cheaper by the one swap that saves most', async () => {
    const { figures } = answerOf(await saidAll(notes, 'a cheaper version of Fernlea hand balm'));
    expect(figures).toMatchObject({ from: 'olive-oil', to: 'canola-oil', cost_change_per_kg: -3 });
  });

  it('should keep a design below a ceiling, or say how far to raise it', async () => {
    const prices =
      'beeswax 29 per kg, shea 18 per kg, olive oil 9 per kg, sunflower oil 4 per kg, tins are 0.35 each';
    const within = answerOf(await saidAll(prices, 'tin balm at most 12 per kg'));
    expect(Number(within.figures.cost)).toBeLessThanOrEqual(12);
    const { figures } = answerOf(await saidAll(prices, 'stick under 0.20 a tin of 15 ml'));
    expect(figures.relax).toMatchObject({ wish: 'price' });
    expect(Number(figures.cost)).toBeGreaterThan(0.35);
  });
});
