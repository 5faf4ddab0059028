import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { choose } from '../../bot/choose.ts';
import { demoRecipes } from '../../bot/demo.ts';
import type { SlashValues } from '../../bot/forms/form.ts';
import { plainlyAsked } from '../../bot/plainly-asked.ts';
import { chatReply } from '../../bot/render/discord.ts';
import { scale } from '../../bot/topics/scale.ts';
import { topics } from '../../bot/topics.ts';
import { understand } from '../../bot/understand.ts';
import { afterEntries, emptyBook } from '../../core/book.ts';
import { answerOf, now, testHouse } from '../helpers/house.ts';

const state = afterEntries(
  emptyBook,
  [
    ...demoRecipes,
    { id: 'fair', name: 'Winter fair salve no 2', lines: [...(demoRecipes[0]?.lines ?? [])] },
  ].map(({ id, name, lines }, at) => ({
    v: 1 as const,
    group: 'local',
    seq: at + 1,
    at: new Date(now).toISOString(),
    who: 'm1',
    event: { kind: 'recipe-saved' as const, recipe: id, name, lines: [...lines] },
  })),
);
const names = Object.values(state.recipes).map(({ name }) => name);

const plainly = (options: SlashValues) => plainlyAsked({ topic: 'scale', options }, topics, state);

const byWords = (options: SlashValues, last?: Parameters<typeof understand>[3]) =>
  choose(understand(scale.slash.say(options), state, state.settings, last, now), topics);

const amount = fc
  .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 0, max: 999 }))
  .map(([whole, part]) => (part === 0 ? `${whole}` : `${whole}.${part}`));
const size = fc
  .tuple(amount, fc.constantFrom(' ', ''), fc.constantFrom('g', 'ml'))
  .map((parts) => parts.join(''));

const options = fc.record({
  recipe: fc.constantFrom(
    ...names,
    ...names.map((name) => name.toUpperCase()),
    ...names.filter((name) => /[a-z]$/.test(name)).map((name) => `${name}s`),
  ),
  tins: fc.integer({ min: 1, max: 100_000 }),
  size,
});

describe('a command whose options are plain', () => {
  property.prop([options])('should ask what its words ask', (filled) => {
    const words = byWords(filled);
    const plain = plainly(filled);
    expect(plain).toBeDefined();
    expect(plain?.topic.name).toBe(words?.topic.name);
    expect(plain?.claim).toMatchObject({
      kind: 'request',
      request: words?.claim.kind === 'request' ? words.claim.request : 'none',
      assumed: words?.claim.kind === 'request' ? words.claim.assumed : 'none',
    });
  });

  property.prop([options, fc.constantFrom(...names), fc.integer({ min: 1, max: 500 })])(
    'should ask the same after another scaling',
    (filled, recipe, count) => {
      const last = {
        topic: 'scale',
        request: { recipe, count, size: { amount: 30, unit: 'ml' }, lossPercent: 7 },
      };
      const words = byWords(filled, last);
      const plain = plainly(filled);
      expect(plain?.claim).toMatchObject({
        request: words?.claim.kind === 'request' ? words.claim.request : 'none',
      });
    },
  );

  it.each<SlashValues>([
    { recipe: 'hand balm', tins: 24, size: '15 ml' },
    { recipe: '20 g beeswax, 80 g olive oil', tins: 24, size: '15 ml' },
    { recipe: 'Fernlea hand balm', tins: 24 },
    { recipe: 'Fernlea hand balm', tins: 24, size: '15,5 ml' },
    { recipe: 'Fernlea hand balm', tins: 24, size: '0 ml' },
    { recipe: 'Fernlea hand balm', tins: 24, size: '1/2 oz' },
    { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml', loss: 5 },
    { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml', step: '0.01' },
    { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml', total: 'double' },
    { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml', with: '80 g beeswax' },
    { recipe: 'constructor', tins: 24, size: '15 ml' },
    { recipe: '__proto__', tins: 24, size: '15 ml' },
  ])('should be read in words when they are not: $recipe, $size', (filled) => {
    expect(plainly(filled)).toBeUndefined();
  });

  it('should be refused in the words of the request when a figure is out of range', async () => {
    const house = await testHouse();
    const filled = { recipe: 'Fernlea hand balm', tins: 24, size: '10001 ml' };
    const words = scale.slash.say(filled);
    const plain = await house.say(words, { command: { topic: 'scale', options: filled } });
    expect(plain).toEqual(await house.say(words));
    expect(plain).toMatchObject({ error: { code: 'out-of-range' } });
  });
});

const command = { topic: 'scale', options: { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml' } };

const asking = async () => {
  const house = await testHouse();
  return { ...house, ask: (group = 'local') => house.say('scale …', { command, group }) };
};

describe('the same request again', () => {
  it('should have the same answer, as it has in words', async () => {
    const { ask, say } = await asking();
    const first = answerOf(await ask());
    const second = answerOf(await ask());
    expect(second).toEqual(first);
    expect(second).toEqual(answerOf(await say('scale Fernlea hand balm to 24 tins of 15 ml')));
    // From the second time on it is kept, and so is what is written of it.
    const third = await ask();
    expect(answerOf(third)).toBe(second);
    expect(chatReply(third)).toBe(chatReply(await ask()));
  });

  it('should be answered anew when the recipe or the settings have changed', async () => {
    const { ask, say } = await asking();
    const before = answerOf(await ask());
    await say('set the loss to 10 %');
    const lossy = answerOf(await ask());
    expect(lossy.figures.loss_percent).toBe(10);
    expect(lossy.figures.total_g).not.toBe(before.figures.total_g);
    await say('save Fernlea hand balm: 30% beeswax, 20% shea butter, 50% olive oil');
    const edited = answerOf(await ask());
    expect(edited.figures.lines).not.toEqual(lossy.figures.lines);
  });

  it('should be answered from the own book only', async () => {
    const { ask, keeper } = await asking();
    answerOf(await ask());
    expect(await ask('elsewhere')).toHaveProperty('error');
    const other = await keeper.open('elsewhere');
    const lines = [{ ingredient: 'lanolin', amount: 100, unit: 'percent' as const }];
    await other.record(
      { kind: 'recipe-saved', recipe: 'own', name: 'Fernlea hand balm', lines },
      { who: 'm1', at: now },
    );
    expect(answerOf(await ask('elsewhere')).figures.lines).toMatchObject([{ ingredient: 'lanolin' }]);
  });

  it('should still be remembered for what is asked next', async () => {
    const { ask, say } = await asking();
    await ask();
    expect(answerOf(await say('and for 48 tins?')).figures.containers).toBe(48);
  });
});
