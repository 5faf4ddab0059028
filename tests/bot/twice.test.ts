import { describe, expect, it } from 'vitest';
import { tinsLeft } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import { answerOf, anyone, now, troubleIn } from '../helpers/house.ts';

const hazel = { ...anyone, id: 'hazel', name: 'Hazel' };

/** Everything that is written once and asked back about when it is said again. */
const said = [
  'poured 10 tins of 15 g: 60 g beeswax, 90 g grapeseed oil',
  'gave 2 tins of 26-BAFO to the corner shop',
  '1 tin of 26-MULE came back',
  'used 20 g of K12',
  'threw away 20 g of K12',
  'bought 300 g beeswax lot B9, best before 2028-02',
  'strained 150 g of calendula oil from 200 g grapeseed oil lot G7 and 30 g calendula lot C2',
];

describe.each(said)('"%s"', (text) => {
  const twice = /moment ago/;

  it('should be written once when one member says it twice, and again when it is another one', async () => {
    const house = await benchHouse();
    const book = await house.keeper.open('local');
    answerOf(await house.say(text));
    const { seq } = book.state;
    expect(troubleIn(await house.say(text, { at: now + 30_000 })).text).toMatch(twice);
    expect(book.state.seq).toBe(seq);
    answerOf(await house.say(text, { at: now + 61_000 }));
    expect(book.state.seq).toBeGreaterThan(seq);
  });

  it('should be written for each of two members', async () => {
    const house = await benchHouse();
    const book = await house.keeper.open('local');
    answerOf(await house.say(text));
    const { seq } = book.state;
    answerOf(await house.say(text, { member: hazel, at: now + 1000 }));
    expect(book.state.seq).toBeGreaterThan(seq);
  });

  it('should be written again after it was undone, and not after that was taken back', async () => {
    const house = await benchHouse();
    answerOf(await house.say(text));
    answerOf(await house.say('undo', { at: now + 1000 }));
    answerOf(await house.say('redo', { at: now + 2000 }));
    expect(troubleIn(await house.say(text, { at: now + 3000 })).text).toMatch(twice);
    answerOf(await house.say('undo', { at: now + 4000 }));
    answerOf(await house.say(text, { at: now + 5000 }));
    expect(troubleIn(await house.say(text, { at: now + 6000 })).text).toMatch(twice);
    expect(house.faults).toEqual([]);
  });

  it('should be written once when it comes twice at the same moment, undone before or not', async () => {
    const house = await benchHouse();
    for (const at of [now, now + 5000]) {
      const replies = await Promise.all([1, 2, 3].map(() => house.say(text, { at })));
      expect(replies.filter((reply) => 'answer' in reply)).toHaveLength(1);
      answerOf(await house.say('undo', { at: at + 1000 }));
    }
  });
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
