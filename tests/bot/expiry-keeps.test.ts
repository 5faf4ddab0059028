import { expect, it } from 'vitest';
import type { BookEvent } from '../../core/book.ts';
import { answerOf, now, testHouse, troubleIn } from '../helpers/house.ts';

// Poured on 25 November 2026. The year's ceiling, a fragile oil's half year and the usual shelf lives of the single oils are
// common practice, no source; days are counted by hand in the calendar.

const grapeseed: BookEvent = {
  kind: 'lot-bought',
  lot: 'G7',
  ingredient: 'grapeseed-oil',
  grams: 500,
  on: '2026-10-10',
  bestBefore: '2027-03-31',
};

const keeps = async (say: string, events: readonly BookEvent[] = []) => {
  const house = await testHouse();
  await (await house.keeper.open('local')).record([...events], { who: 'm1', at: now });
  const reply = await house.say(say);
  expect(reply.topic).toBe('expiry');
  return answerOf(reply);
};

it.each([
  'how long does Fernlea hand balm keep',
  'What is the shelf life of the hand balm?',
  'when will Fernlea hand balm go off',
  'how long will a tin of Fernlea hand balm stay good once opened?',
])('should stop at the ceiling of a year where nothing is fragile: %s', async (say) => {
  const { figures, warnings } = await keeps(say);
  expect(figures).toMatchObject({ best_before: '2027-11-25', days: 365, because: 'house' });
  expect(warnings.map(({ code }) => code)).toContain('local-rules');
});

it('should take the date of the lot on the shelf and name it', async () => {
  const answer = await keeps('how long does 20 g beeswax, 80 g grapeseed oil keep', [grapeseed]);
  expect(answer.figures).toMatchObject({ best_before: '2027-03-31', days: 126, because: 'lot' });
  expect(JSON.stringify(answer.blocks)).toContain('lot G7 ends 31 March 2027');
});

it('should go by the usual shelf life of an oil of which no lot is there, and say that it is rough', async () => {
  const { figures } = await keeps('how long does 20 g beeswax, 80 g grapeseed oil keep');
  expect(figures).toMatchObject({ because: 'ingredient', rough: true });
});

it('should go on from the recipe in hand', async () => {
  const house = await testHouse();
  await house.say('scale Fernlea hand balm to 24 tins of 15 ml');
  const { figures } = answerOf(await house.say('and how long does it keep?'));
  expect(figures).toMatchObject({ best_before: '2027-11-25' });
});

it('should leave how long one ingredient keeps to the ingredient, and how long melting takes to nobody here', async () => {
  const house = await testHouse();
  expect((await house.say('how long does beeswax keep')).topic).toBe('ingredient');
  expect((await house.say('how long does it take to melt Fernlea hand balm')).topic).not.toBe('expiry');
  expect(troubleIn(await house.say('how long does the moon balm keep')).text.length).toBeGreaterThan(20);
});
