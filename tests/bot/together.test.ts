import { describe, expect, it } from 'vitest';
import { DraftBook } from '../../bot/book/draft.ts';
import { memoryKeeper } from '../../bot/book/keeper-memory.ts';
import { fail, ok } from '../../core/result.ts';
import { answerOf, testHouse, troubleIn } from '../helpers/house.ts';

const by = { who: 'm1', at: Date.UTC(2026, 10, 25) };
const marked = (grams: number) => ({ kind: 'low-mark-set', ingredient: 'beeswax', grams }) as const;

describe('a draft of a book', () => {
  it('should show what was tried, and leave the book alone until all of it is written', async () => {
    const book = await memoryKeeper().open('local');
    const draft = new DraftBook(book);
    await draft.record(marked(200), by);
    await draft.change((state) => ok({ events: [marked(100)], value: state.seq }), by);
    expect([draft.state.seq, book.state.seq]).toEqual([2, 0]);
    expect(await draft.commit()).toBe(true);
    expect(book.state.seq).toBe(2);
    // One request: both are undone together.
    expect((await book.entry(2))?.first).toBe(1);
  });

  it('should write nothing where somebody else wrote meanwhile', async () => {
    const book = await memoryKeeper().open('local');
    const draft = new DraftBook(book);
    await draft.record(marked(200), by);
    await book.record(marked(300), { ...by, who: 'm2' });
    expect(await draft.commit()).toBe(false);
    expect(book.state.seq).toBe(1);
  });

  it('should hand back a problem, and then have nothing to write', async () => {
    const book = await memoryKeeper().open('local');
    const draft = new DraftBook(book);
    expect(await draft.change(() => fail('no'), by)).toEqual({ ok: false, problem: 'no' });
    expect(await draft.commit()).toBe(true);
    expect(book.state.seq).toBe(0);
  });
});

describe('several things told in one message', () => {
  const onBench = async () => {
    const house = await testHouse();
    answerOf(await house.say('bought 500 g beeswax lot K12, best before 2028-01'));
    answerOf(await house.say('poured 24 tins of 15 ml of Fernlea hand balm'));
    return house;
  };

  it('should be answered as one, and warned of what each is warned of', async () => {
    const house = await onBench();
    const answer = answerOf(
      await house.say('poured 12 tins of 20 g of Fernlea hand balm and kept 2 as samples'),
    );
    expect(answer.figures).toMatchObject({ containers: 12, left: 10, kept: 2 });
    expect(answer.next?.[0]?.say).toBe('undo');
    const codes = answer.warnings.map(({ code, text }) => `${code} ${text}`);
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('should be written as a whole or not at all', async () => {
    const house = await onBench();
    const book = await house.keeper.open('local');
    const before = book.state.seq;
    troubleIn(await house.say('poured 5 tins of 20 g of Fernlea hand balm and kept 9 as samples'));
    expect(book.state.seq).toBe(before);
  });

  it.each([
    'poured 12 tins of 20 g of Fernlea hand balm and will keep 2 as samples',
    'sold 2 tins of 26-KUFE and maybe 3 went in the bin',
    'poured 12 tins of 20 g of Fernlea hand balm, and what does K12 weigh',
  ])('should not be read where one of them is not plainly told: %s', async (say) => {
    const house = await onBench();
    const book = await house.keeper.open('local');
    const before = book.state.seq;
    await house.say(say);
    expect(book.state.seq).toBe(before);
  });

  it('should all land when members tell at the same moment', async () => {
    const house = await onBench();
    const say = (id: string) =>
      house.say('poured 12 tins of 20 g of Fernlea hand balm and kept 2 as samples', {
        member: { id, name: id, roles: [], manages: true },
        channel: id,
      });
    const replies = await Promise.all(['ann', 'bo', 'cy'].map(say));
    const written = replies.filter((reply) => 'answer' in reply);
    const { bench } = (await house.keeper.open('local')).state;
    const kept = [...(bench?.batches.values() ?? [])].filter(({ name, count }) => name && count === 12);
    expect(kept.length).toBe(written.length);
    expect(kept.every((batch) => JSON.stringify(batch).includes('kept'))).toBe(true);
  });
});
