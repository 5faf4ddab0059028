import { describe, expect, it } from 'vitest';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const reply = async (say: string) => (await testHouse()).say(say);

describe('a letter with a request in it', () => {
  it('should be read by the sentences that hold something, and say what was passed over', async () => {
    const answered = await reply(
      'Dear Pipkin, my sister has her birthday and loves the colour blue! Would you be a dear and work out Fernlea hand balm for two dozen tins of 15 ml? The whole choir was asked to tea afterwards.',
    );
    expect(answered.topic).toBe('scale');
    expect(answerOf(answered).figures.containers).toBe(24);
  });

  it('should take an amount from one sentence and the question from the next', async () => {
    const answered = await reply(
      'Behind the jam I found 150 g of shea butter, still perfectly good! How much Fernlea hand balm would that make me, do you think?',
    );
    expect(answered.topic).toBe('scale');
  });

  it('should not pass over a no', async () => {
    troubleIn(await reply('Fernlea hand balm 24 tins 15g?? no dont, cancel'));
  });
});

describe('what has to be left out', () => {
  it.each([
    'rule out shea butter, balm idea',
    'think of a salve, shea butter excluded',
    "can't stand shea butter, invent a tube balm",
    'design a balm, keep the shea butter out',
  ])('should stay out however it is said: %s', async (say) => {
    const answered = await reply(say);
    expect(answered.topic).toBe('design');
    const { without, proposals } = answerOf(answered).figures as {
      without: string[];
      proposals: { lines: { ingredient: string }[] }[];
    };
    expect(without).toEqual(['shea-butter']);
    const used = proposals.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient));
    expect(used.length).toBeGreaterThan(0);
    expect(used).not.toContain('shea-butter');
  });

  it('should not be mistaken for a swap', async () => {
    const answered = await reply('Please take the almond oil out of Fernlea mint lip balm and put jojoba in');
    expect(answerOf(answered).figures).toMatchObject({ from: 'sweet-almond-oil', to: 'jojoba-oil' });
  });
});
