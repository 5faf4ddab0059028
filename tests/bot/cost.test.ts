import { describe, expect, it } from 'vitest';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, anyone, testHouse, troubleIn } from '../helpers/house.ts';

const prices = 'shea costs 18 per kg, beeswax 500 g 14.50, olive oil 9.80 per litre, tins are 0.35 each';
const batch = 'cost of Fernlea hand balm for 24 tins of 15 g';

const pricedHouse = async () => {
  const house = await testHouse();
  answerOf(await house.say(prices));
  return house;
};

describe('prices', () => {
  it('should be kept as typed, with currency and day, each as an event', async () => {
    const house = await pricedHouse();
    const book = await house.keeper.open('local');
    expect(book.state.prices?.beeswax).toEqual({
      price: '14.5',
      currency: 'EUR',
      pack: { amount: 500, unit: 'g' },
      at: '2026-11-25',
    });
    expect(Object.keys(book.state.prices ?? {})).toHaveLength(4);
    expect((await book.entry(book.state.seq))?.event.kind).toBe('price-noted');
  });

  it('should be private, and belong to this group alone', async () => {
    const house = await pricedHouse();
    for (const said of ['prices', batch, 'price of shea', 'tins 0.40']) {
      expect(answerOf(await house.say(said)).quiet).toBe(true);
    }
    expect(answerOf(await house.say('prices', { group: 'other' })).figures.prices).toEqual([]);
  });

  it('should be written by writers only, and read by everyone', async () => {
    const house = await pricedHouse();
    await house.say('only role Bench may write');
    const guest = { ...anyone, manages: false };
    for (const said of ['shea costs 1 per kg', 'delete price of shea', 'labour 15 an hour']) {
      expect(troubleIn(await house.say(said, { member: guest })).code).toBe('not-allowed');
    }
    answerOf(await house.say(batch, { member: guest }));
    const { state } = await house.keeper.open('local');
    expect(state.prices?.['shea-butter']?.price).toBe('18');
    expect(state.labour).toBeUndefined();
  });

  it('should not be for a pack too small to divide by', async () => {
    const house = await testHouse();
    const said = await house.say('shea costs 3 per 0.0000001 g');
    expect(troubleIn(said)).toMatchObject({ text: expect.stringContaining('at least 0.001 g') });
    expect(answerOf(await house.say('prices')).figures.prices).toEqual([]);
    answerOf(await house.say(batch));
    expect(house.faults).toEqual([]);
  });

  it('should say what the price was before', async () => {
    const house = await pricedHouse();
    const text = textOf(await house.say('shea costs 21 per kg'), { width: 200 });
    expect(text).toContain('shea butter was 18.00 EUR per kg (2026-11-25)');
  });

  it('should keep a price in another currency as typed, and not take it for one of the group', async () => {
    const house = await pricedHouse();
    const said = textOf(await house.say('beeswax is £14.50 a kilo'), { width: 200 });
    expect(said).toContain('14.50 GBP per kg');
    expect(said).toContain('currency GBP');
    const { figures } = answerOf(await house.say(batch));
    expect(figures).toMatchObject({ missing_prices: ['beeswax'], total_cost: null });
  });

  it('should keep the old price beside the new one, and tell it by month, day and year', async () => {
    const house = await testHouse();
    await house.say('shea 16 per kg on 2026-03-02');
    await house.say('shea 17.50 per kg on 2026-03-20');
    await house.say('shea costs 18 per kg');
    const told = async (say: string) =>
      (answerOf(await house.say(say)).figures.prices as { price: string }[]).map(({ price }) => price);
    expect(await told('what did shea cost in March')).toEqual(['16', '17.5']);
    expect(await told('what did shea cost in April 2026')).toEqual(['17.5']);
    expect(await told('what did shea cost on 2026-03-05')).toEqual(['16']);
    expect(await told('what did shea cost in 2025')).toEqual([]);
    expect(await told('price history of shea')).toEqual(['16', '17.5', '18']);
    expect((await house.keeper.open('local')).state.prices?.['shea-butter']?.price).toBe('18');
  });

  it('should put a price noted late in its place, and take none of a day to come', async () => {
    const house = await pricedHouse();
    const text = textOf(await house.say('shea 15 per kg on 2026-01-10'), { width: 200 });
    expect(text).toContain('Kept as an earlier price');
    expect(answerOf(await house.say(batch)).figures.ingredients_cost).toBe(6.15);
    expect(troubleIn(await house.say('shea 15 per kg on 2027-01-10')).code).toBe('bad-quantity');
  });

  it('should count a lid and a label for each tin where they have a price', async () => {
    const house = await pricedHouse();
    await house.say('labels are 12 for 100, lids 8 cents each');
    const { figures } = answerOf(await house.say(batch));
    // By hand: 24 × (0.35 + 0.08 + 0.12) = 13.20.
    expect(figures).toMatchObject({
      containers_cost: 13.2,
      parts_cost: [
        { thing: 'lid', cost: 1.92 },
        { thing: 'label', cost: 2.88 },
      ],
      total_cost: 19.35,
    });
  });

  it('should name the prices a recipe still lacks', async () => {
    const house = await testHouse();
    await house.say('shea costs 18 per kg');
    const { figures } = answerOf(await house.say('which prices are missing for Fernlea hand balm'));
    expect(figures.missing_prices).toEqual(['beeswax', 'olive-oil']);
  });
});

describe('the cost of a batch', () => {
  it('should name what is missing and guess nothing', async () => {
    const house = await testHouse();
    await house.say('shea costs 18 per kg');
    const answer = answerOf(await house.say(batch));
    expect(answer.figures).toMatchObject({
      missing_prices: ['beeswax', 'olive-oil', 'tin'],
      ingredients_cost: 2.01,
      containers_cost: null,
      total_cost: null,
      per_container: null,
    });
    expect(answer.warnings.map(({ code }) => code)).toContain('missing-price');
  });

  it('should have lines that sum to the ingredients, and parts that sum to the total', async () => {
    const house = await pricedHouse();
    await house.say('labour 15 an hour, 2 hours');
    const { figures } = answerOf(await house.say(batch));
    const lines = figures.lines as { cost: number }[];
    const cents = (value: unknown) => Math.round(Number(value) * 100);
    expect(lines.reduce((sum, { cost }) => sum + cents(cost), 0)).toBe(cents(figures.ingredients_cost));
    expect(cents(figures.total_cost)).toBe(
      cents(figures.ingredients_cost) + cents(figures.containers_cost) + cents(figures.labour_cost),
    );
  });

  it('should prefer the price of the tin that was asked for', async () => {
    const house = await pricedHouse();
    await house.say('15 g tins 0.50 each');
    expect(answerOf(await house.say(batch)).figures.containers_cost).toBe(12);
  });

  it('should count labour only when a rate is set, and say when hours are missing', async () => {
    const house = await pricedHouse();
    expect(answerOf(await house.say(batch)).figures.labour_cost).toBeNull();
    await house.say('labour 15 an hour');
    const text = textOf(await house.say(batch), { width: 200 });
    expect(text).toContain('say how long it takes');
  });

  it('should tell what a swap would change', async () => {
    const house = await pricedHouse();
    await house.say('sunflower oil 4 per litre');
    const { figures } = answerOf(await house.say(`${batch} with sunflower oil instead of olive oil`));
    expect(figures.swap).toMatchObject({ difference: -1.18 });
  });

  it('should leave purchases with a lot to the stock', async () => {
    const house = await testHouse();
    // The stock notes the lot, and the price beside it.
    const said = await house.say('bought 500 g beeswax lot K12, best before 2027-03, 14.50');
    expect(said.topic).toBe('stock');
    expect((await house.keeper.open('local')).state.prices?.beeswax).toMatchObject({
      price: '14.5',
      pack: { amount: 500, unit: 'g' },
    });
  });

  it('should use a currency without coins as it is', async () => {
    const house = await testHouse();
    await house.say('currency JPY');
    await house.say('beeswax 500 g 2900, shea 3000 per kg, olive oil 1 l 1500, tins 50 each');
    const { figures } = answerOf(await house.say(batch));
    // By hand: 74.2 × 5.8 = 430.4, 111.4 × 3 = 334.2, 185.6 / 0.912 × 1.5 = 305.3: 1,069.9, so 1,070; tins 1,200.
    expect(figures).toMatchObject({ ingredients_cost: 1070, containers_cost: 1200, total_cost: 2270 });
  });
});
