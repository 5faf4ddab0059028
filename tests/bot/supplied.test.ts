import { describe, expect, it } from 'vitest';
import { anyone, now, type TestHouse, testHouse } from '../helpers/house.ts';

// What is asked back may be answered by no more than the answer. The requests are those of the whole sentence, said at once.

const requestOf = async (house: TestHouse, ...texts: readonly string[]): Promise<unknown> => {
  let request: unknown;
  for (const text of texts) {
    const reply = await house.say(text);
    request = 'answer' in reply ? reply.request : undefined;
  }
  return request;
};

const poured = 'poured 24 tins of 15 ml of Fernlea hand balm today';

const answered: readonly (readonly [asked: string, answer: string, atOnce: string])[] = [
  [
    'bought castor oil lot DX2 best before 2028-01',
    '200g',
    'bought 200 g castor oil lot DX2 best before 2028-01',
  ],
  ['bought beeswax, lot K77', 'it was 300 grams', 'bought 300 g beeswax, lot K77'],
  [
    'poured Fernlea hand balm on 3 November',
    '18 tins of 15 ml',
    'poured 18 tins of 15 ml of Fernlea hand balm on 3 November',
  ],
  ['sold some of 26-KUFE to the fair', '6', 'sold 6 of 26-KUFE to the fair'],
  [
    'scale 20 g beeswax, 80 g mint to 100 g',
    'the spearmint leaf please',
    'scale 20 g beeswax, 80 g spearmint leaf to 100 g',
  ],
  [
    'scale 20 g beeswax, 80 g mint to 100 g',
    'the first',
    'scale 20 g beeswax, 80 g peppermint leaf to 100 g',
  ],
  [
    'save recipe Tester: 20 g wax, 80 g olive oil',
    'candelilla',
    'save recipe Tester: 20 g candelilla wax, 80 g olive oil',
  ],
  ['bought 20 g mint lot K9', 'peppermint leaf', 'bought 20 g peppermint leaf lot K9'],
  ['remind us daily at 9', 'Lisbon', 'remind us daily at 9 in Lisbon'],
];

describe.each(answered)('"%s", asked back about, then "%s"', (asked, answer, atOnce) => {
  it(`should be the same as "${atOnce}"`, async () => {
    const [first, second] = [await testHouse(), await testHouse()];
    for (const house of [first, second]) await house.say(poured);
    const wanted = await requestOf(second, atOnce);
    expect(wanted).toBeDefined();
    expect(await requestOf(first, asked)).toBeUndefined();
    expect(await requestOf(first, answer)).toEqual(wanted);
  });
});

describe('what was asked back', () => {
  const asks = 'bought castor oil lot DX2';

  it('should be told how it was read', async () => {
    const house = await testHouse();
    await house.say(asks);
    expect(JSON.stringify(await house.say('200 g'))).toContain(
      'I read that as \\"bought 200 g castor oil lot DX2\\".',
    );
  });

  it('should wait for one message only, a quarter of an hour, in its place and for whoever was asked', async () => {
    const other = { ...anyone, id: 'm2', name: 'another' };
    const later = now + 16 * 60 * 1000;
    for (const more of [{ member: other }, { channel: 'garden' }, { at: later }]) {
      const house = await testHouse();
      await house.say(asks);
      expect(await house.say('200 g', more)).toHaveProperty('error');
    }
    const house = await testHouse();
    await house.say(asks);
    await house.say('melting point of beeswax');
    expect(await house.say('200 g')).toHaveProperty('error');
    expect(house.faults).toEqual([]);
  });

  it.each(['5 oz in g', 'melting point of shea butter', '24 tins of 15 ml of Fernlea hand balm'])(
    'should not stand in the way of "%s"',
    async (text) => {
      const [asked, fresh] = [await testHouse(), await testHouse()];
      await asked.say(asks);
      const wanted = await fresh.say(text);
      expect(wanted).toHaveProperty('answer');
      expect(await asked.say(text)).toEqual(wanted);
    },
  );

  it('should be no longer than can be read in every place at once', async () => {
    const house = await testHouse();
    expect(await house.say(`${asks}, note: ${'very old '.repeat(60)}`)).toMatchObject({
      error: { code: 'missing' },
    });
    expect(await house.say('200 g')).toHaveProperty('error');
  });

  it('should be agreed to by a yes, where one thing was offered for the whole', async () => {
    const house = await testHouse();
    await house.say('bought 500 g beeswax lot GH1');
    const guess = await house.say('GH1 wobble left');
    const plain = /Did you mean "([^"]+)"\?/.exec(JSON.stringify(guess).replaceAll('\\"', '"'))?.[1] ?? '';
    expect(plain).toBeTruthy();
    const yes = await house.say('yes please');
    expect('request' in yes && yes.request).toEqual(await requestOf(house, plain));
  });
});
