import { describe, expect, it } from 'vitest';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const reply = async (say: string) => (await testHouse()).say(say);

describe('a second look at what nobody understood', () => {
  it.each([
    ["we've a stall at the summer fete, label for Fernlea hand balm, 12 g", 'label'],
    ['my neighbour wonders: cost of Fernlea hand balm for 24 tins of 15 ml', 'cost'],
    ['for the village hall party make 12 sticks of 5 g of Fernlea hand balm', 'scale'],
  ])('should pass over talk, and tell it: %s', async (say, topic) => {
    const answered = await reply(say);
    expect(answered.topic).toBe(topic);
    answerOf(answered);
  });

  it('should say what it passed over', async () => {
    const text = JSON.stringify(
      answerOf(await reply('check Fernlea mint lip balm, my colleagues were wondering')),
    );
    expect(text).toContain('I passed over \\"colleagues');
  });

  it('should not make a request of a message that asks for nothing', async () => {
    for (const say of ['my sister likes Fernlea hand balm', 'design us a poster for the summer fair'])
      expect(troubleIn(await reply(say)).code).toBe('not-understood');
  });

  it('should keep a name it does not know, and what may be one', async () => {
    for (const say of [
      'when will Harbour Lights balm melt?',
      'scale Market balm to 24 tins of 15 ml',
      'swap beeswax for zorblax wax in Fernlea hand balm, my sister asks',
    ])
      troubleIn(await reply(say));
  });

  it('should not say anything of talk where the first look understood', async () => {
    const text = JSON.stringify(answerOf(await reply('please could you check Fernlea mint lip balm')));
    expect(text).not.toContain('passed over');
  });
});

describe('a recipe by part of its name, or with a slip in it', () => {
  it.each([
    ['Check fernlea mint lip blam', 'check'],
    ['label for fernlea mint lipbalm, 10g, region US', 'label'],
    ['what does the hand balm cost for 24 tins of 15 ml', 'cost'],
    ['which allergens are there in the mint lip balm?', 'check'],
    ['workshop for 12 people, 2 tins of 15 ml each, the handbalm', 'workshop'],
  ])('should be known: %s', async (say, topic) => {
    const answered = await reply(say);
    expect(answered.topic).toBe(topic);
    answerOf(answered);
  });

  it('should not be taken for any lip balm', async () => {
    const asked = await reply('is 2% peppermint oil ok in a lip balm');
    expect('request' in asked ? asked.request : {}).not.toHaveProperty('recipe');
  });
});
