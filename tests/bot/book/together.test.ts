import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import { openStore } from '../../../bot/book/store.ts';
import { pipkin } from '../../../bot/handle.ts';
import { lotKey } from '../../../core/bench/codes.ts';
import { type Batch, tinsLeft } from '../../../core/bench/state.ts';
import { benchOf } from '../../../core/book.ts';
import { balances } from '../../helpers/balances.ts';
import { freshFolder } from '../../helpers/book.ts';
import { answerOf, anyone, heard, now, troubleIn } from '../../helpers/house.ts';
import { usePostgres } from '../../helpers/use-postgres.ts';

// What fifty members say to one group at the same moment, from the message to the disk. Nothing is looked at in memory: the
// book is opened anew, as after a restart.

const pg = usePostgres();

const stores: Record<string, () => Promise<string>> = {
  'a folder': freshFolder,
  PostgreSQL: () => pg.server.database(),
};

const count = 50;
const members = Array.from({ length: count }, (_, at) => ({ ...anyone, id: `m${at}`, name: `Member ${at}` }));

const houseOver = async (url: string) => {
  const keeper = openKeeper(await openStore(url));
  const faults: unknown[] = [];
  const house = pipkin({ keeper, onFault: (_id, fault) => faults.push(fault) });
  const say = async (text: string, at = 0) => {
    const reply = await house.hear(heard(text, { member: members[at] ?? anyone, at: now + at }));
    expect(faults).toEqual([]);
    return reply;
  };
  return { say, close: () => keeper.close() };
};

/** The book and its whole journal, read from the disk. */
const bookAt = async (url: string) => {
  const keeper = openKeeper(await openStore(url));
  const book = await keeper.open('local');
  const entries = await book.entries(1, book.state.seq);
  await keeper.close();
  return { bench: benchOf(book.state), recipes: book.state.recipes, entries };
};

describe.each(Object.entries(stores))('fifty members at once in %s', (_name, make) => {
  it('should have every purchase, pour, gift and use land once, in one order', {
    timeout: 120_000,
  }, async () => {
    const url = await make();
    const { say, close } = await houseOver(url);
    answerOf(await say('bought 50 kg beeswax lot K12, best before 2028-03'));
    const first = answerOf(await say('poured 60 tins, weighed out 600 g: 100% beeswax')).figures.lot;
    const before = 2;
    const replies = await Promise.all(
      members.flatMap((_, at) => [
        say(`bought ${100 + at} g shea butter lot S${at}, best before 2028-0${1 + (at % 9)}`, at),
        say(`poured ${1 + at} tins, weighed out ${100 + at} g: 100% beeswax`, at),
        say(`gave 1 tin of ${first} to guest ${at}`, at),
        say(`used ${1 + at} g of K12`, at),
      ]),
    );
    const codes = replies
      .map(answerOf)
      .flatMap(({ figures }, at) => (at % 4 === 1 ? [String(figures.lot)] : []));
    await close();
    const { bench, entries } = await bookAt(url);
    expect(entries.map(({ seq }) => seq)).toEqual(
      Array.from({ length: before + 4 * count }, (_, at) => at + 1),
    );
    for (const { id } of members.slice(1)) {
      const kinds = entries.filter(({ who }) => who === id).map(({ event }) => event.kind);
      expect(kinds.sort()).toEqual(['batch-poured', 'lot-bought', 'stock-taken', 'tins-gone']);
    }
    expect(new Set(codes).size).toBe(count);
    for (const [at, code] of codes.entries())
      expect(bench.batches.get(lotKey(code))).toMatchObject({ count: 1 + at, weighedG: 100 + at });
    for (const [at] of members.entries()) expect(bench.lots.get(`S${at}`)?.leftG).toBe(100 + at);
    const gone = (bench.batches.get(lotKey(String(first))) as Batch).gone.map(({ to }) => to);
    expect(gone.sort()).toEqual(members.map((_, at) => `guest ${at}`).sort());
    // 600 g, then 100 + 101 + … + 149 = 6,225 g were poured and 1 + 2 + … + 50 = 1,275 g used.
    expect(bench.lots.get('K12')?.leftG).toBe(50_000 - 600 - 6225 - 1275);
  });

  it('should give out each tin once, and tell the others that none is left', {
    timeout: 60_000,
  }, async () => {
    const url = await make();
    const { say, close } = await houseOver(url);
    answerOf(await say('bought 1 kg beeswax lot K12, best before 2028-03'));
    const lot = answerOf(await say('poured 10 tins, weighed out 100 g: 100% beeswax')).figures.lot;
    const replies = await Promise.all(members.map((_, at) => say(`gave 1 tin of ${lot} to guest ${at}`, at)));
    expect(replies.filter((reply) => 'answer' in reply)).toHaveLength(10);
    expect(new Set(replies.flatMap((reply) => ('error' in reply ? [reply.error.code] : [])))).toEqual(
      new Set(['out-of-range']),
    );
    await close();
    const { bench, entries } = await bookAt(url);
    expect(tinsLeft(bench.batches.get(lotKey(String(lot))) as Batch)).toBe(0);
    expect(entries).toHaveLength(12);
    balances(bench);
  });

  it('should tell all but the first that what they edit is out of date', { timeout: 60_000 }, async () => {
    const url = await make();
    const { say, close } = await houseOver(url);
    answerOf(await say('poured 24 tins, weighed out 100 g: 100% beeswax'));
    answerOf(await say('save recipe Winter balm: 20 g beeswax, 80 g olive oil'));
    for (const [at] of members.entries()) {
      answerOf(await say('batch 26-KUFE', at));
      answerOf(await say('show Winter balm', at));
    }
    const edits = [
      (at: number) => `correct 26-KUFE: it was ${30 + at} tins, counted`,
      (at: number) => `save recipe Winter balm: ${21 + at} g beeswax, 80 g olive oil`,
    ];
    for (const edit of edits) {
      const replies = await Promise.all(members.map((_, at) => say(edit(at), at)));
      const [done, ...late] = replies;
      if (!done) throw new Error('nobody said anything');
      answerOf(done);
      for (const reply of late) {
        const { code, text } = troubleIn(reply);
        expect([code, /since you looked|stands at version 2/.test(text)]).toEqual(['not-allowed', true]);
      }
    }
    await close();
    const { bench, recipes, entries } = await bookAt(url);
    expect(bench.batches.get('26KUFE')?.count).toBe(30);
    expect(Object.values(recipes).map(({ lines }) => lines[0]?.amount)).toEqual([21]);
    expect(entries).toHaveLength(4);
  });
});
