import { describe, expect, it } from 'vitest';
import type { BookEvent, BookState } from '../../core/book.ts';
import { changesBetween } from '../../core/parts/changes.ts';
import { answerOf, anyone, now, testHouse, troubleIn } from '../helpers/house.ts';
import { groundwork, oneOfEach } from '../helpers/one-of-each.ts';

const hazel = { ...anyone, id: 'hazel', name: 'Hazel', manages: false };
const wren = { ...anyone, id: 'wren', name: 'Wren', manages: false };

const furnished = async () => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  for (const event of groundwork) await book.record(event, { who: 'm0', at: now });
  const record = (event: BookEvent | readonly BookEvent[], who = 'm1') =>
    book.record([event].flat() as BookEvent[], { who, at: now });
  return { house, book, record };
};

/** What differs, but for the count of entries a batch remembers. */
const differs = (a: BookState, b: BookState): string[] =>
  changesBetween(a, b)
    .filter(({ part, before, after }) => {
      const plain = (value: unknown) => JSON.stringify({ ...(value as object), seq: 0 });
      return (
        part !== 'batch' || before === undefined || after === undefined || plain(before) !== plain(after)
      );
    })
    .map(({ part, id }) => `${part} ${id}`);

describe.each(Object.values(oneOfEach))('undoing $kind', (event) => {
  it('should put everything back as it was, and redo it again', async () => {
    const { house, book, record } = await furnished();
    const before = book.state;
    await record(event);
    const after = book.state;
    expect(differs(before, after)).not.toEqual([]);
    const undone = answerOf(await house.say('undo'));
    expect(undone.title).toMatch(/^Undone: /);
    expect(differs(before, book.state)).toEqual([]);
    const redone = answerOf(await house.say('redo'));
    expect(redone.title).toMatch(/^Done again: /);
    expect(redone.figures.undone).toBe(undone.figures.undone);
    expect(differs(after, book.state)).toEqual([]);
    answerOf(await house.say('undo'));
    expect(differs(before, book.state)).toEqual([]);
    expect(house.faults).toEqual([]);
  });

  it('should work just as well from the journal alone', async () => {
    const { house, book, record } = await furnished();
    const before = book.state;
    await record(event);
    // More changes than states are remembered for.
    for (let count = 0; count < 60; count += 1)
      await record({ kind: 'low-mark-set', ingredient: 'cocoa-butter', grams: count + 1 }, 'm2');
    await record({ kind: 'low-mark-set', ingredient: 'cocoa-butter', grams: null }, 'm2');
    answerOf(await house.say('undo'));
    expect(differs(before, book.state)).toEqual([]);
  });
});

describe('undo', () => {
  it('should name a pour, its code, and what went back', async () => {
    const { house, record } = await furnished();
    await record(oneOfEach['batch-poured']);
    expect(answerOf(await house.say('undo')).title).toBe(
      'Undone: poured 24 tins of Fernlea hand balm (26-KIVO); its 371.2 g went back to 3 lots',
    );
    expect(answerOf(await house.say('redo')).title).toBe(
      'Done again: poured 24 tins of Fernlea hand balm (26-KIVO); 371.2 g came out of 3 lots again',
    );
  });

  it("should undo the member's own last change, whatever others did meanwhile", async () => {
    const { house, book, record } = await furnished();
    await record(oneOfEach['tins-gone'], 'hazel');
    await record({ ...oneOfEach['tins-gone'], count: 2, to: 'the school' }, 'wren');
    expect(answerOf(await house.say('undo', { member: hazel })).title).toContain('6 tins of 26-BABA');
    const gone = book.state.bench?.batches.get('26BABA')?.gone.map(({ count }) => count);
    expect(gone).toEqual([3, 2]);
    expect(answerOf(await house.say('undo', { member: wren })).title).toContain('to the school');
  });

  it('should take a pour back though a later pour drew from the same lots', async () => {
    const { house, book, record } = await furnished();
    await record(oneOfEach['batch-poured'], 'hazel');
    await record({ ...oneOfEach['batch-poured'], lot: '26-LULA' }, 'wren');
    answerOf(await house.say('undo', { member: hazel }));
    expect(book.state.bench?.batches.has('26KIVO')).toBe(false);
    expect(book.state.bench?.batches.has('26LULA')).toBe(true);
    // 500 bought, 40 in the first batch, 71.2 in the one that stands.
    expect(book.state.bench?.lots.get('K12')?.leftG).toBe(388.8);
  });

  it('should leave a lot alone that was weighed since, and say so', async () => {
    const { house, book, record } = await furnished();
    await record(oneOfEach['batch-poured'], 'hazel');
    await record(oneOfEach['lot-counted'], 'wren');
    const answer = answerOf(await house.say('undo', { member: hazel }));
    expect(JSON.stringify(answer.blocks)).toContain('Lot K12 was weighed since');
    expect(answer.title).toContain('its 300 g went back to 2 lots');
    expect(book.state.bench?.lots.get('K12')?.leftG).toBe(420.5);
  });

  it.each([
    ['tins given since', oneOfEach['batch-poured'], { ...oneOfEach['tins-gone'], lot: '26-KIVO' }],
    [
      'a purchase drawn from since',
      { ...oneOfEach['lot-bought'], lot: 'N1' },
      { ...oneOfEach['stock-taken'], draws: [{ lot: 'N1', grams: 5 }] },
    ],
    ['a price noted anew', oneOfEach['price-noted'], { ...oneOfEach['price-noted'], price: '17' }],
    [
      'a recipe saved anew',
      oneOfEach['recipe-saved'],
      {
        ...oneOfEach['recipe-saved'],
        name: 'Fernlea hand balm',
        lines: [{ ingredient: 'olive-oil', amount: 2, unit: 'part' as const }],
      },
    ],
    [
      'a setting set anew',
      oneOfEach['settings-changed'],
      { kind: 'settings-changed' as const, settings: { region: 'us' as const } },
    ],
    ['the reminder set anew', oneOfEach['reminder-set'], { ...oneOfEach['reminder-set'], hour: 8 }],
    [
      'a batch corrected in the same field',
      oneOfEach['batch-corrected'],
      { ...oneOfEach['batch-corrected'], changes: { count: 10 } },
    ],
  ] as const)('should refuse kindly: %s', async (_why, first, later) => {
    const { house, book, record } = await furnished();
    await record(first as BookEvent, 'm1');
    await record(later as BookEvent, 'hazel');
    const before = book.state;
    const trouble = troubleIn(await house.say('undo'));
    expect(trouble.code).toBe('not-allowed');
    expect(trouble.text).toContain(`"undo ${before.seq}"`);
    expect(trouble.text).toContain('hazel');
    expect(book.state).toBe(before);
    // What was offered works.
    answerOf(await house.say(`undo ${before.seq}`));
    answerOf(await house.say(`undo ${before.seq - 1}`));
  });

  it('should not take a recipe away that a batch was poured from since', async () => {
    const { house, record } = await furnished();
    await record(oneOfEach['recipe-saved']);
    await record({ ...oneOfEach['batch-poured'], recipe: { id: 'fernlea-hand-balm', version: 11 } }, 'hazel');
    expect(troubleIn(await house.say('undo')).text).toContain('26-KIVO was poured from it');
  });

  it('should not bring back a recipe whose name went to another', async () => {
    const { house, record } = await furnished();
    await record(oneOfEach['recipe-deleted']);
    await record({ ...oneOfEach['recipe-saved'], recipe: 'other' }, 'hazel');
    expect(troubleIn(await house.say('undo')).text).toContain('Another recipe is called Fernlea hand balm');
  });

  it('should undo all the entries of one request together', async () => {
    const { house, book } = await furnished();
    answerOf(await house.say('shea costs 18 per kg, cocoa butter 500 g 9.50, tins are 0.35 each'));
    expect(Object.keys(book.state.prices ?? {})).toHaveLength(4);
    answerOf(await house.say('undo'));
    expect(Object.keys(book.state.prices ?? {})).toEqual(['beeswax']);
  });

  it("should leave others' changes to them, or to whoever manages the group", async () => {
    const { house, book, record } = await furnished();
    await record(oneOfEach['low-mark-set'], 'hazel');
    const { seq } = book.state;
    expect(troubleIn(await house.say('undo', { member: wren })).code).toBe('not-found');
    expect(troubleIn(await house.say(`undo ${seq}`, { member: wren })).code).toBe('not-allowed');
    answerOf(await house.say(`undo ${seq}`));
  });

  it('should keep the rules of who writes and who manages', async () => {
    const { house, record } = await furnished();
    await record(oneOfEach['settings-changed'], 'hazel');
    expect(troubleIn(await house.say('undo', { member: hazel })).text).toContain('only those who manage');
    await house.say('only role Bench may write');
    expect(troubleIn(await house.say('undo', { member: hazel })).code).toBe('not-allowed');
    answerOf(await house.say('undo', { member: { ...hazel, roles: ['Bench'], manages: true } }));
  });

  it('should never give the code of an undone batch again', async () => {
    const { house, book, record } = await furnished();
    const { nextCode } = await import('../../core/bench/fold.ts');
    const bench = () => book.state.bench ?? (undefined as never);
    const { code } = nextCode(bench(), '2026-11-25');
    await record({ ...oneOfEach['batch-poured'], lot: code });
    answerOf(await house.say('undo'));
    expect(nextCode(bench(), '2026-11-25').code).not.toBe(code);
  });

  it('should keep the name a member had, and tell it in the history', async () => {
    const { house } = await furnished();
    await house.say('save recipe Winter balm: 25 g beeswax, 75 g olive oil', { member: wren });
    const { figures } = answerOf(await house.say('who changed Winter balm'));
    expect(figures.entries).toMatchObject([{ who: 'wren', name: 'Wren' }]);
  });
});
