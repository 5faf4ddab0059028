import { describe, expect, it } from 'vitest';
import { tinsLeft } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import { answerOf, anyone, now, troubleIn } from '../helpers/house.ts';

const hazel = { ...anyone, id: 'hazel', name: 'Hazel' };

/** Everything that may be told twice by a slip, or because it happened twice. */
const said = [
  'poured 10 tins of 15 g: 60 g beeswax, 90 g grapeseed oil',
  'gave 2 tins of 26-BAFO to the corner shop',
  '1 tin of 26-MULE came back',
  'used 20 g of K12',
  'threw away 20 g of K12',
  'bought 300 g beeswax lot B9, best before 2028-02',
  'strained 150 g of calendula oil from 200 g grapeseed oil lot G7 and 30 g calendula lot C2',
];

const warned = (reply: Parameters<typeof answerOf>[0]): boolean =>
  answerOf(reply).warnings.some(({ code }) => code === 'said-twice');

describe.each(said)('"%s"', (text) => {
  it('should be written each time, with a warning and a way back within the minute', async () => {
    const house = await benchHouse();
    const book = await house.keeper.open('local');
    expect(warned(await house.say(text))).toBe(false);
    const { seq } = book.state;
    const second = await house.say(text, { at: now });
    expect(warned(second)).toBe(true);
    expect(answerOf(second).next?.[0]?.say).toBe('undo');
    expect(book.state.seq).toBeGreaterThan(seq);
    expect(warned(await house.say(text, { at: now + 61_000 }))).toBe(false);
  });

  it('should leave the first one standing when the second is undone', async () => {
    const house = await benchHouse();
    const book = await house.keeper.open('local');
    answerOf(await house.say(text));
    const shelf = () =>
      benchOf(book.state)
        .lots.map(({ leftG }) => leftG)
        .toJSON();
    const tins = () => benchOf(book.state).batches.map(tinsLeft).toJSON();
    const once = { shelf: shelf(), tins: tins() };
    answerOf(await house.say(text, { at: now + 1000 }));
    answerOf(await house.say('undo', { at: now + 2000 }));
    expect({ shelf: shelf(), tins: tins() }).toEqual(once);
    expect(house.faults).toEqual([]);
  });

  it('should not warn when another member says it, and each of them has a minute of their own', async () => {
    const house = await benchHouse();
    answerOf(await house.say(text));
    expect(warned(await house.say(text, { member: hazel, at: now + 1000 }))).toBe(false);
  });

  it('should not warn after it was undone, and warn again after that was taken back', async () => {
    const house = await benchHouse();
    answerOf(await house.say(text));
    answerOf(await house.say('undo', { at: now + 1000 }));
    answerOf(await house.say('redo', { at: now + 2000 }));
    expect(warned(await house.say(text, { at: now + 3000 }))).toBe(true);
    answerOf(await house.say('undo', { at: now + 4000 }));
    answerOf(await house.say('undo', { at: now + 5000 }));
    expect(warned(await house.say(text, { at: now + 6000 }))).toBe(false);
    expect(house.faults).toEqual([]);
  });

  it('should be written each time when it comes at the same moment, and warn of all but one', async () => {
    const house = await benchHouse();
    const replies = await Promise.all([1, 2].map(() => house.say(text, { at: now })));
    expect(replies.map(warned).toSorted()).toEqual([false, true]);
  });
});

it('should not warn of "another"', async () => {
  const house = await benchHouse();
  answerOf(await house.say('gave 2 tins of 26-BAFO to the corner shop'));
  expect(
    warned(await house.say('gave another 2 tins of 26-BAFO to the corner shop', { at: now + 1000 })),
  ).toBe(false);
});

it('should remember what stands when the second cannot be written', async () => {
  const house = await benchHouse();
  answerOf(await house.say('gave 20 tins of 26-BAFO to the corner shop'));
  const { code } = troubleIn(
    await house.say('gave 20 tins of 26-BAFO to the corner shop', { at: now + 1000 }),
  );
  expect(code).toBe('out-of-range');
});

describe('tins that come back', () => {
  const left = async (house: Awaited<ReturnType<typeof benchHouse>>, key: string): Promise<number> => {
    const batch = benchOf((await house.keeper.open('local')).state).batches.get(key);
    return batch ? tinsLeft(batch) : Number.NaN;
  };

  it('should be asked about when two places hold some and none is named', async () => {
    const house = await benchHouse();
    const { code, text } = troubleIn(await house.say('2 tins of 26-KIVO came back'));
    expect(code).toBe('missing');
    expect(text).toContain('spring fair (6), village shop (2)');
    expect(await left(house, '26KIVO')).toBe(16);
    answerOf(await house.say('2 tins of 26-KIVO came back from spring fair'));
    expect(await left(house, '26KIVO')).toBe(18);
    const trace = answerOf(await house.say('trace 26-KIVO'));
    expect(trace.figures.given_to).toEqual([
      { to: 'spring fair', count: 4, lots: ['26-KIVO'] },
      { to: 'village shop', count: 2, lots: ['26-KIVO'] },
    ]);
  });

  it('should not leave a place below nothing when a stranger brings some back', async () => {
    const house = await benchHouse();
    answerOf(await house.say('1 tin of 26-MULE came back from Oriel'));
    const trace = answerOf(await house.say('trace 26-MULE'));
    expect(trace.figures.given_to).toEqual([{ to: 'place not noted', count: 4, lots: ['26-MULE'] }]);
    expect(troubleIn(await house.say('3 tins of 26-KIVO came back from the village shop')).text).toContain(
      'does not have so many',
    );
  });
});
