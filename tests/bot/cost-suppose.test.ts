import { describe, expect, it } from 'vitest';
import { answerOf, testHouse } from '../helpers/house.ts';

const batch = 'cost of Fernlea hand balm for 1000 g';

const pricedHouse = async () => {
  const house = await testHouse();
  answerOf(await house.say('beeswax 20 per kg, shea butter 18 per kg, olive oil 8 per kg'));
  return house;
};

// The hand balm is 20 % beeswax, 30 % shea butter, 50 % olive oil: 4 + 5.40 + 4 for a kilogram at these prices.
describe('a price that is only supposed', () => {
  it.each([
    ['and if shea were 24 per kg?', 15.2],
    ['what if beeswax went up to 30 a kilo', 15.4],
    ['suppose olive oil cost 10 per kg and shea 20 per kg. What then?', 15],
  ])('should take its place in the cost before: %s', async (say, cost) => {
    const house = await pricedHouse();
    expect(answerOf(await house.say(batch)).figures.ingredients_cost).toBe(13.4);
    const answer = answerOf(await house.say(say));
    expect(answer.figures.ingredients_cost).toBe(cost);
    expect(JSON.stringify(answer)).toContain('nothing was noted');
  });

  it('should be noted nowhere', async () => {
    const house = await pricedHouse();
    await house.say(batch);
    const { seq } = (await house.keeper.open('local')).state;
    answerOf(await house.say('and if shea were 24 per kg?'));
    expect((await house.keeper.open('local')).state.seq).toBe(seq);
    expect(answerOf(await house.say(batch)).figures.ingredients_cost).toBe(13.4);
  });

  it('should stand beside a batch of its own', async () => {
    const house = await pricedHouse();
    const answer = answerOf(await house.say('cost of Fernlea hand balm for 2000 g, if shea were 24 per kg'));
    expect(answer.figures.ingredients_cost).toBe(30.4);
  });

  it('should be refused where no batch is spoken of', async () => {
    const house = await pricedHouse();
    expect('error' in (await house.say('and if shea were 24 per kg?'))).toBe(true);
  });
});
