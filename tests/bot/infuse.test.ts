import { describe, expect, it } from 'vitest';
import { chatReply } from '../../bot/render/discord.ts';
import { textOf } from '../../bot/render/text.ts';
import { answerOf, anyone, testHouse, troubleIn } from '../helpers/house.ts';

const codesOf = async (...said: readonly string[]) => {
  const house = await testHouse();
  let last: readonly string[] = [];
  for (const text of said) last = answerOf(await house.say(text)).warnings.map(({ code }) => code);
  return last;
};

const figuresOf = async (...said: readonly string[]) => {
  const house = await testHouse();
  let last: Readonly<Record<string, unknown>> = {};
  for (const text of said) last = answerOf(await house.say(text)).figures;
  expect(house.faults).toEqual([]);
  return last;
};

describe('an infusion', () => {
  it('should tell both ways, the heat and the time, and the next step', async () => {
    const house = await testHouse();
    const text = textOf(await house.say('infuse 40 g dried calendula in sunflower oil'), { width: 200 });
    expect(text).toContain('40 °C (104 °F) to 60 °C (140 °F), 2 to 6 hours');
    expect(text).toContain('4 to 6 weeks');
    expect(text).toContain('Weigh it and tell me');
    expect(text).toContain('common practice');
  });

  it('should fit the chat', async () => {
    const house = await testHouse();
    const said = 'Fernlea hand balm to 24 tins of 15 ml, oil infused 1:8 with calendula';
    for (const { text } of chatReply(await house.say(said)).messages)
      expect(text.length).toBeLessThanOrEqual(2000);
  });

  it('should say through which density a volume became grams', async () => {
    const house = await testHouse();
    const { blocks } = answerOf(await house.say('how much calendula for 500 ml olive oil 1:10'));
    const assumed = blocks.flatMap((block) => (block.kind === 'assumed' ? [block.text] : []));
    expect(assumed).toContain('500 ml olive oil is 456 g at 0.912 g/ml (20 °C).');
  });

  // Comfrey: Norwegian Food Safety Authority's risk profile of Symphytum (read). Fresh leaves and their water: house
  // cautions (from memory).
  it.each([
    ['infuse 40 g comfrey in olive oil', 'not-for-lips'],
    ['infuse fresh peppermint leaves in olive oil', 'brings-water'],
    ['infuse 40 g arnica in olive oil', 'not-for-lips'],
    ["infuse 40 g st john's wort in olive oil", 'light-sensitising'],
    ['infuse 40 g calendula in olive oil', 'daisy-family'],
    ['infuse 40 g calendula in olive oil', 'wrong-species'],
    ['infuse 40 g fresh calendula in olive oil', 'brings-water'],
    ['infuse 40 g calendula in sweet almond oil', 'nut-allergen'],
    ['infuse 40 g fresh thyme in olive oil', 'not-food'],
    ['infuse 40 g calendula in flaxseed oil', 'oily-cloth'],
  ])('should warn: %s, %s', async (said, code) => {
    const codes = await codesOf(said);
    expect(codes).toContain(code);
    expect(codes).toEqual(expect.arrayContaining(['hot-wax', 'flame-and-alcohol']));
    expect(codes.at(-1)).toBe('local-rules');
  });

  it('should ask which mint is meant', async () => {
    const house = await testHouse();
    const trouble = troubleIn(await house.say('infuse 40 g mint leaves in olive oil'));
    expect(trouble.code).toBe('unknown-ingredient');
    expect(trouble.text).toMatch(/peppermint.* or spearmint/);
  });

  it('should not warn of what is not there', async () => {
    const codes = await codesOf('infuse 40 g lemon balm in olive oil at 1:6');
    for (const code of [
      'not-for-lips',
      'brings-water',
      'light-sensitising',
      'daisy-family',
      'not-food',
      'oily-cloth',
    ]) {
      expect(codes).not.toContain(code);
    }
  });
});

describe('a weighed yield', () => {
  const told = 'I got 260 g out of 40 g calendula in 320 g sunflower oil';

  it("should become the group's figure, stay in the book and be said so", async () => {
    const house = await testHouse();
    await house.say(told);
    const book = await house.keeper.open('local');
    expect(book.state.yields).toEqual({ calendula: [{ herbG: 40, keptG: 60 }] });
    const text = textOf(await house.say('infuse 40 g calendula in olive oil at 1:8'), { width: 200 });
    expect(text).toContain('your own 1.5 g to the gram, from 1 weighed yield');
  });

  it('should belong to this group alone', async () => {
    const house = await testHouse();
    await house.say(told);
    const other = answerOf(await house.say('infuse 40 g calendula in olive oil', { group: 'other' }));
    expect(other.figures.uptake_g_per_g).toBe(1.35);
  });

  it('should change the chain as well: less kept, less to set aside', async () => {
    const chain = 'Fernlea hand balm to 24 tins of 15 g, oil infused 1:8 with calendula';
    const before = await figuresOf(chain);
    const after = await figuresOf('I got 300 g out of 40 g calendula in 320 g sunflower oil', chain);
    expect(Number(after.oil_in_g)).toBeLessThan(Number(before.oil_in_g));
    expect(after.oil_out_g).toBe(before.oil_out_g);
  });

  it('should be kept from those who may not write', async () => {
    const house = await testHouse();
    await house.say('only role Bench may write');
    const guest = { ...anyone, manages: false };
    expect(troubleIn(await house.say(told, { member: guest })).code).toBe('not-allowed');
    expect((await house.keeper.open('local')).state.yields).toBeUndefined();
    answerOf(await house.say('infuse 40 g calendula in olive oil', { member: guest }));
  });

  it('should not be recorded when it cannot be right', async () => {
    const house = await testHouse();
    troubleIn(await house.say('I got 400 g out of 40 g calendula in 320 g sunflower oil'));
    troubleIn(await house.say('I got 5 g out of 40 g calendula in 320 g sunflower oil'));
    expect((await house.keeper.open('local')).state.yields).toBeUndefined();
  });
});

describe('several herbs and oils', () => {
  it('should take the gentlest heat and the longest time, and warn of each herb', async () => {
    const house = await testHouse();
    const answer = answerOf(await house.say('infuse 20 g calendula and 10 g arnica in olive oil'));
    const codes = answer.warnings.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(['daisy-family', 'not-for-lips', 'hot-wax']));
    expect(answer.figures).toMatchObject({
      herb: null,
      herbs: [{ herb: 'calendula', grams: 20 }, { herb: 'arnica' }],
    });
  });

  it('should note no yield of a mixture, and forget one when asked', async () => {
    const house = await testHouse();
    troubleIn(await house.say('I got 200 g out of 20 g calendula and 10 g chamomile in 240 g olive oil'));
    expect((await house.keeper.open('local')).state.yields).toBeUndefined();
    await house.say('I got 260 g out of 40 g calendula in 320 g sunflower oil');
    answerOf(await house.say('forget our yield of calendula'));
    expect((await house.keeper.open('local')).state.yields).toEqual({});
    expect(answerOf(await house.say('our yields')).figures.yields).toEqual([]);
  });
});

describe('the chain in an answer', () => {
  it('should name every herb of an oil, and warn of each family once', async () => {
    const house = await testHouse();
    const reply = await house.say(
      '24 tins of 15 ml of Fernlea hand balm, oil infused 1:8 with calendula and chamomile',
    );
    const text = textOf(reply, { width: 200 });
    expect(text).toContain('herb-infused olive oil');
    expect(text).not.toContain('calendula-infused');
    const families = answerOf(reply).warnings.filter(({ code }) => code === 'daisy-family');
    expect(families.map((each) => each.text)).toEqual([
      expect.stringContaining('Calendula, German chamomile flowers'),
    ]);
  });

  it('should name both losses, and balance', async () => {
    const figures = await figuresOf('Fernlea hand balm to 24 tins of 15 g, oil infused 1:8 with calendula');
    const losses = figures.losses as { where: string; grams: number }[];
    expect(losses.map(({ where }) => where)).toEqual(['herb and cloth', 'jug and spoon']);
    const lines = figures.lines as { ingredient: string; grams: number }[];
    const others = lines
      .filter(({ ingredient }) => ingredient !== 'olive-oil')
      .reduce((sum, { grams }) => sum + grams, 0);
    const lost = losses.reduce((sum, { grams }) => sum + grams, 0);
    expect(Number(figures.oil_in_g) + others).toBeCloseTo(Number(figures.net_g) + lost, 3);
  });

  it('should not be mistaken for a recipe that merely has an infused oil in it', async () => {
    const house = await testHouse();
    const reply = await house.say('scale 20 g beeswax, 80 g calendula infused olive oil to 24 tins of 15 g');
    expect(reply.topic).toBe('scale');
  });
});
