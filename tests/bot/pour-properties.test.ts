import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotKey } from '../../core/bench/codes.ts';
import { sumG } from '../../core/bench/exact.ts';
import type { Bench } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { answerOf, anyone, now, testHouse, troubleIn } from '../helpers/house.ts';

const benchIn = async (house: Awaited<ReturnType<typeof testHouse>>): Promise<Bench> =>
  benchOf((await house.keeper.open('local')).state);

const drawnBy = (bench: Bench): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>();
  for (const { lines } of bench.batches.values())
    for (const { lot, grams } of lines.flatMap(({ draws }) => draws))
      sums.set(lotKey(lot), sumG([sums.get(lotKey(lot)) ?? 0, grams]));
  return sums;
};

/** A command as it is said, and the grams it takes out of a lot otherwise than by a pour. */
type Command =
  | { readonly kind: 'buy'; readonly lot: string; readonly grams: number; readonly month: number }
  | { readonly kind: 'pour'; readonly grams: number; readonly count: number }
  | { readonly kind: 'waste' | 'use'; readonly lot: string; readonly grams: number }
  | { readonly kind: 'correct'; readonly grams: number };

const lot = fc.constantFrom('A1', 'B2', 'C3');
const command: fc.Arbitrary<Command> = fc.oneof(
  fc.record({
    kind: fc.constant('buy' as const),
    lot,
    grams: fc.integer({ min: 1, max: 900 }),
    month: fc.integer({ min: 1, max: 9 }),
  }),
  fc.record({
    kind: fc.constant('pour' as const),
    grams: fc.integer({ min: 5, max: 700 }),
    count: fc.integer({ min: 1, max: 60 }),
  }),
  fc.record({
    kind: fc.constantFrom('waste' as const, 'use' as const),
    lot,
    grams: fc.integer({ min: 1, max: 300 }),
  }),
  fc.record({ kind: fc.constant('correct' as const), grams: fc.integer({ min: 5, max: 700 }) }),
);

const said = (each: Command, last: string): string => {
  if (each.kind === 'buy')
    return `bought another ${each.grams} g beeswax lot ${each.lot}, best before 2028-0${each.month}`;
  if (each.kind === 'pour')
    return `poured another ${each.count} tins, weighed out ${each.grams} g: 100% beeswax`;
  if (each.kind === 'correct') return `correct ${last}: weighed out ${each.grams} g, the scale was off`;
  return `${each.kind === 'waste' ? 'threw away' : 'used'} another ${each.grams} g of ${each.lot}`;
};

type House = Awaited<ReturnType<typeof testHouse>>;

/** Says them all; gives back what was taken otherwise than by pours. */
const sayAll = async (house: House, commands: readonly Command[]): Promise<ReadonlyMap<string, number>> => {
  const taken = new Map<string, number>();
  let last = '26-KUFE';
  for (const each of commands) {
    const reply = await house.say(said(each, last));
    if (!('answer' in reply)) continue;
    if (each.kind === 'pour') last = String(reply.answer.figures.lot);
    if (each.kind === 'waste' || each.kind === 'use')
      taken.set(each.lot, sumG([taken.get(each.lot) ?? 0, each.grams]));
  }
  expect(house.faults).toEqual([]);
  return taken;
};

const balances = (bench: Bench, taken: ReadonlyMap<string, number>): void => {
  const drawn = drawnBy(bench);
  for (const [key, { gotG, leftG }] of bench.lots)
    expect(sumG([leftG, drawn.get(key) ?? 0, taken.get(key) ?? 0])).toBe(gotG);
  const lines = [...bench.batches.values()].flatMap((batch) => batch.lines);
  for (const { grams, draws, shortG = 0 } of lines.filter((line) => line.draws.length > 0))
    expect(sumG([...draws.map((draw) => draw.grams), shortG])).toBe(grams);
};

describe('whatever is bought, poured, wasted and corrected', () => {
  it('should balance to the milligram: bought is left and drawn and taken', {
    timeout: 120_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(command, { minLength: 1, maxLength: 25 }), async (commands) => {
        const house = await testHouse();
        const taken = await sayAll(house, commands);
        balances(await benchIn(house), taken);
      }),
      { numRuns: 40, seed: 20_261_125 },
    );
  });
});

describe('fifty members at once', () => {
  it('should have every pour land once, with a code of its own and its own draw-down', async () => {
    const house = await testHouse();
    answerOf(await house.say('bought 10 kg beeswax lot K12, best before 2028-03'));
    const members = Array.from({ length: 50 }, (_, at) => ({
      ...anyone,
      id: `m${at}`,
      name: `Member ${at}`,
    }));
    const replies = await Promise.all(
      members.map((member, at) =>
        house.say(`poured ${1 + at} tins, weighed out ${100 + at} g: 100% beeswax`, { member, at: now + at }),
      ),
    );
    const lots = replies.map((reply) => answerOf(reply).figures.lot);
    expect(new Set(lots).size).toBe(50);
    const bench = await benchIn(house);
    expect(bench.batches.size).toBe(50);
    // 100 + 101 + … + 149 = 6,225.
    expect(bench.lots.get('K12')?.leftG).toBe(3775);
    expect([...bench.batches.values()].map(({ count }) => count).sort((a, b) => a - b)).toEqual(
      members.map((_, at) => at + 1),
    );
  });

  it('should keep every recipe that is saved, each as its own', async () => {
    const house = await testHouse();
    const had = Object.keys((await house.keeper.open('local')).state.recipes).length;
    const replies = await Promise.all(
      Array.from({ length: 50 }, (_, at) =>
        house.say(`save recipe Winter balm ${at}: ${20 + at} g beeswax, 100 g olive oil`, {
          member: { ...anyone, id: `m${at}` },
        }),
      ),
    );
    for (const reply of replies) answerOf(reply);
    const { recipes } = (await house.keeper.open('local')).state;
    expect(Object.keys(recipes)).toHaveLength(had + 50);
    const waxG = Object.values(recipes)
      .filter(({ name }) => name.startsWith('Winter balm'))
      .map(({ name, lines: [wax] }) => [Number(name.split(' ').at(-1)), wax?.amount]);
    expect(waxG.every(([at, amount]) => amount === 20 + (at ?? 0))).toBe(true);
  });

  it('should tell who saves a recipe from an outdated version of it', async () => {
    const house = await testHouse();
    const ada = { member: { ...anyone, id: 'ada' } };
    const bo = { member: { ...anyone, id: 'bo' } };
    answerOf(await house.say('save recipe Winter balm: 20 g beeswax, 80 g olive oil', ada));
    answerOf(await house.say('show Winter balm', bo));
    answerOf(await house.say('save recipe Winter balm: 25 g beeswax, 75 g olive oil', ada));
    const late = 'save recipe Winter balm: 30 g beeswax, 70 g olive oil';
    expect(troubleIn(await house.say(late, bo)).text).toContain('it stands at version 2');
    answerOf(await house.say('show Winter balm', bo));
    expect(answerOf(await house.say(late, bo)).figures).toMatchObject({ recipe: { version: 3 } });
    // One's own versions follow each other without a look in between.
    answerOf(await house.say('save recipe Winter balm: 31 g beeswax, 69 g olive oil', bo));
  });

  it('should give out the last tin once', async () => {
    const house = await testHouse();
    answerOf(await house.say('poured 10 tins, weighed out 100 g: 100% beeswax'));
    const replies = await Promise.all(
      Array.from({ length: 50 }, (_, at) =>
        house.say(`gave 1 tin of 26-KUFE to guest ${at}`, { member: { ...anyone, id: `m${at}` } }),
      ),
    );
    expect(replies.filter((reply) => 'answer' in reply)).toHaveLength(10);
    const refused = replies.flatMap((reply) => ('error' in reply ? [reply.error.code] : []));
    expect(refused).toEqual(Array.from({ length: 40 }, () => 'out-of-range'));
  });

  it('should tell all but the first of several corrections at once that it was changed', async () => {
    const house = await testHouse();
    answerOf(await house.say('poured 24 tins, weighed out 100 g: 100% beeswax'));
    const replies = await Promise.all(
      [20, 21, 22].map((count, at) =>
        house.say(`correct 26-KUFE: it was ${count} tins, counted`, { member: { ...anyone, id: `m${at}` } }),
      ),
    );
    expect(replies.map((reply) => ('error' in reply ? reply.error.code : 'answered'))).toEqual([
      'answered',
      'not-allowed',
      'not-allowed',
    ]);
  });
});

describe('who may write', () => {
  it('should be asked for pours and purchases, and not for looking', async () => {
    const house = await testHouse();
    answerOf(await house.say('poured 24 tins, weighed out 100 g: 100% beeswax'));
    await house.say('only role Bench may write');
    const guest = { ...anyone, id: 'guest', manages: false };
    for (const text of [
      'poured 10 tins, weighed out 90 g: 100% beeswax',
      'bought 10 g beeswax',
      'gave 1 tin of 26-KUFE to the fair',
      'keep one of 26-KUFE',
      'note on 26-KUFE: x y z',
      'warn me below 10 g beeswax',
      'correct 26-KUFE: it was 20 tins',
    ]) {
      const reply = await house.say(text, { member: guest });
      expect('error' in reply && reply.error.code, text).toBe('not-allowed');
    }
    for (const text of ['list batches', 'batch 26-KUFE', 'stock', 'running low'])
      answerOf(await house.say(text, { member: guest }));
  });

  it('should see prices of the stock alone', async () => {
    const house = await testHouse();
    for (const text of [
      'bought 500 g beeswax lot K12, best before 2027-03, 14.50',
      'lot K12',
      'stock prices',
    ])
      expect(answerOf(await house.say(text)).quiet, text).toBe(true);
    expect(JSON.stringify(answerOf(await house.say('stock')))).not.toContain('14.5');
  });
});
