import { describe, expect, it } from 'vitest';
import type { Keeper } from '../../bot/book/keeper.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { NotRecorded, StoreTrouble } from '../../bot/book/trouble.ts';
import { pipkin } from '../../bot/handle.ts';
import { maxMessageLength } from '../../bot/readers/tidy.ts';
import { answerOf, anyone, heard, now, testHouse, troubleIn } from '../helpers/house.ts';

const minute = 60_000;
const scaling = 'scale Fernlea hand balm to 24 tins of 15 g';

describe('a follow-up', () => {
  it('should continue the last request of the same member', async () => {
    const house = await testHouse();
    await house.say(scaling);
    const answer = answerOf(await house.say('and for 40 tins?', { at: now + 14 * minute }));
    expect(answer.figures).toMatchObject({ containers: 40, fill_g_each: 15 });
  });

  it('should not reach back more than fifteen minutes', async () => {
    const house = await testHouse();
    await house.say(scaling);
    expect(troubleIn(await house.say('and for 40 tins?', { at: now + 16 * minute })).code).toBe('missing');
  });

  it.each([
    ['another member', { member: { ...anyone, id: 'm2' } }],
    ['another channel', { channel: 'kitchen' }],
    ['another group', { group: 'other' }],
  ])('should not continue what %s asked', async (_who, more) => {
    const house = await testHouse();
    await house.say(scaling);
    expect(troubleIn(await house.say('and for 40 tins?', more)).code).toBe('missing');
  });
});

describe('the writers role', () => {
  const guest = { ...anyone, id: 'm2', manages: false };
  const save = 'save recipe Winter balm: 20 g beeswax, 80 g olive oil';

  it('should let every member write while none is set', async () => {
    const house = await testHouse();
    answerOf(await house.say(save, { member: guest }));
  });

  it('should keep others out of the book once it is set, and nobody out of the sums', async () => {
    const house = await testHouse();
    answerOf(await house.say('only role Bench may write'));
    expect(troubleIn(await house.say(save, { member: guest })).code).toBe('not-allowed');
    expect((await house.keeper.open('local')).state.recipes).not.toHaveProperty('winter-balm');
    answerOf(await house.say(scaling, { member: guest }));
    answerOf(await house.say(save, { member: { ...guest, roles: ['bench'] } }));
  });

  it.each(['region us', 'only role Bench may write', 'scale reads 0.01 g'])(
    'should leave %j to those who manage the group',
    async (text) => {
      const house = await testHouse();
      const before = (await house.keeper.open('local')).state.settings;
      expect(troubleIn(await house.say(text, { member: guest })).code).toBe('not-allowed');
      expect((await house.keeper.open('local')).state.settings).toEqual(before);
      answerOf(await house.say('settings', { member: guest }));
    },
  );
});

describe('a group', () => {
  it("should not see another group's recipes, not even as a near name", async () => {
    const house = await testHouse();
    const other = troubleIn(await house.say('show recipe Fernlea hand blam', { group: 'other' }));
    expect(other.code).toBe('unknown-recipe');
    expect(other.text).not.toContain('Fernlea hand balm');
    expect(await house.pipkin.complete('other', 'recipe', 'fern')).toEqual([]);
    expect(await house.pipkin.complete('local', 'recipe', 'hand')).toEqual(['Fernlea hand balm']);
  });

  it('should have its own region, and a message may ask for another', async () => {
    const house = await testHouse();
    await house.say('region us');
    const us = answerOf(await house.say('2 tbsp in ml'));
    const au = answerOf(await house.say('2 tbsp in ml', { region: 'au' }));
    expect([us.figures.value, au.figures.value]).toEqual([expect.closeTo(29.574, 3), 40]);
  });
});

describe('completion', () => {
  it('should put names that start so before names that contain it', async () => {
    const house = await testHouse();
    const names = await house.pipkin.complete('local', 'ingredient', 'olive');
    expect(names[0]).toBe('olive oil');
    expect(names.length).toBeLessThanOrEqual(25);
  });
});

describe('what goes wrong', () => {
  const failing = (fault: unknown): Keeper => {
    const keeper = memoryKeeper();
    return {
      close: () => keeper.close(),
      open: async (group) => {
        const book = await keeper.open(group);
        return {
          group,
          state: book.state,
          entry: (seq) => book.entry(seq),
          entries: (from, to) => book.entries(from, to),
          stateAt: (seq) => book.stateAt(seq),
          record: (): Promise<never> => Promise.reject(fault),
          change: () => Promise.reject(fault),
          forget: () => Promise.reject(fault),
        };
      },
    };
  };

  it.each(['disk-full', 'read-only', 'failed'] as const)(
    'should say that nothing was recorded when the store says %s',
    async (reason) => {
      const faults: unknown[] = [];
      const bot = pipkin({ keeper: failing(new NotRecorded(reason)), onFault: (id) => faults.push(id) });
      const trouble = troubleIn(
        await bot.hear(heard('save recipe Winter balm: 20 g beeswax, 80 g olive oil')),
      );
      expect(trouble.text).toMatch(/nothing was recorded/i);
      expect(faults).toEqual([]);
    },
  );

  it('should apologise with an id for a fault of the program, and log the same id', async () => {
    const faults: [string, unknown][] = [];
    const fault = new TypeError('a secret: 20 g beeswax');
    const bot = pipkin({ keeper: failing(fault), onFault: (id, error) => faults.push([id, error]) });
    const trouble = troubleIn(await bot.hear(heard('save recipe Winter balm: 20 g beeswax, 80 g olive oil')));
    expect(faults).toEqual([[expect.any(String), fault]]);
    expect(trouble.text).toContain(faults[0]?.[0]);
    expect(trouble.text).not.toContain('secret');
  });

  it('should tell a maker when the book cannot be read, and keep the details for the log', async () => {
    const faults: unknown[] = [];
    const keeper: Keeper = {
      close: async () => {},
      open: () => Promise.reject(new StoreTrouble('damaged', 'The store "x" is damaged.')),
    };
    const bot = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
    expect(troubleIn(await bot.hear(heard('settings'))).text).toMatch(/cannot be read/);
    expect(faults).toHaveLength(1);
  });

  it('should not read a message that is too long', async () => {
    const house = await testHouse();
    const reply = await house.say(`scale ${'20 g beeswax, '.repeat(maxMessageLength / 14 + 1)}`);
    expect(troubleIn(reply).code).toBe('too-long');
  });
});

describe('names that mean something to a computer', () => {
  it.each(['__proto__', 'constructor', 'toString', '#{7*7}', "'; drop table", '@everyone', '<@123>', '=1+1'])(
    'should be only text: %s',
    async (name) => {
      const house = await testHouse();
      await house.say(`save recipe ${name} balm: 20 g beeswax, 80 g olive oil`);
      await house.say(`scale ${name} balm to 500 g`);
      await house.say(`what is ${name}`);
      await house.say(`convert 5 ${name} to g`);
      expect(house.faults).toEqual([]);
      expect(Object.prototype).not.toHaveProperty('name');
    },
  );

  it('should never take a letter for a physicist’s unit', async () => {
    const house = await testHouse();
    expect(answerOf(await house.say('5 C in F')).figures).toMatchObject({ value: 41, unit: 'F' });
  });
});
