import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import type { GivenFile } from '../../bot/files/given.ts';
import { jsonLine } from '../../bot/render/json.ts';
import { textOf } from '../../bot/render/text.ts';
import type { BookEvent } from '../../core/book.ts';
import { ok } from '../../core/result.ts';
import { answerOf, anyone, now, type TestHouse, testHouse, troubleIn } from '../helpers/house.ts';
import { groundwork, oneOfEach } from '../helpers/one-of-each.ts';

const hour = 3_600_000;
const guest = { ...anyone, id: 'guest', name: 'Guest', manages: false };

const asFile = (bytes: Uint8Array, name = 'fernlea.json'): GivenFile => ({
  name,
  said: name,
  read: async () => ok(bytes),
});

const attach = (bytes: Uint8Array | string, name?: string) => ({
  files: { attached: [asFile(typeof bytes === 'string' ? Buffer.from(bytes) : bytes, name)] },
});

const fileOf = async (house: TestHouse, say = 'export', more = {}) => {
  const [file] = answerOf(await house.say(say, more)).files ?? [];
  if (!file) throw new Error('no file');
  return file.bytes;
};

const textFile = async (house: TestHouse, say?: string, more?: object) =>
  Buffer.from(await fileOf(house, say, more)).toString('utf8');

/** A house with something of every kind in its book. */
const fullHouse = async () => {
  const house = await testHouse();
  const book = await house.keeper.open('local');
  for (const event of groundwork) await book.record(event, { who: 'm1', at: now, name: 'Hazel' });
  for (const event of [oneOfEach['batch-poured'], oneOfEach['reaction-followed']])
    await book.record(event, { who: 'm2', at: now });
  await house.say('save recipe Winter balm: 25 g beeswax, 75 g olive oil');
  await house.say('save recipe Winter balm: 30 g beeswax, 70 g olive oil');
  return { house, book };
};

const takeIn = async (house: TestHouse, file: Uint8Array, tail = '', more = {}) => {
  const { figures } = answerOf(await house.say('import', { ...attach(file), ...more }));
  return answerOf(await house.say(`confirm import ${figures.confirm}${tail}`, more));
};

describe('export', () => {
  it('should hold every entry, and be the same text whenever it is made', async () => {
    const { house, book } = await fullHouse();
    const text = await textFile(house);
    const { kind, v, entries } = JSON.parse(text);
    expect([kind, v, entries.length]).toEqual(['pipkin-book', 1, book.state.seq]);
    expect(await textFile(house, 'export', { at: now + 50 * hour })).toBe(text);
    // One entry a line: header, entries, end.
    expect(text.trimEnd().split('\n')).toHaveLength(book.state.seq + 2);
  });

  it('should come back as the same export after a wipe', async () => {
    const { house, book } = await fullHouse();
    const file = await fileOf(house);
    await book.forget();
    expect(book.state.seq).toBe(0);
    const answer = await takeIn(house, file);
    expect(answer.figures).toMatchObject({ imported: true, into: 'empty' });
    expect(Buffer.from(await fileOf(house)).equals(Buffer.from(file))).toBe(true);
    expect(answerOf(await house.say('versions of Winter balm')).figures.recipe).toMatchObject({ version: 2 });
  });

  it('should come back as the same export in a new store that holds the demo recipes only', async () => {
    const { house } = await fullHouse();
    const file = await fileOf(house);
    const other = await testHouse();
    await takeIn(other, file);
    expect(Buffer.from(await fileOf(other)).equals(Buffer.from(file))).toBe(true);
  });

  it('should be for the asking member alone, with contacts for writers only', async () => {
    const { house } = await fullHouse();
    expect(answerOf(await house.say('export')).quiet).toBe(true);
    expect(await textFile(house)).toContain('Oriel, 555');
    await house.say('only role Bench may write');
    for (const say of ['export', 'export reactions'])
      expect(await textFile(house, say, { member: guest })).not.toContain('Oriel');
    const writer = { ...guest, roles: ['bench'] };
    expect(await textFile(house, 'export', { member: writer })).toContain('Oriel');
    // In a channel the others would read it too.
    expect(await textFile(house, 'export', { member: writer, openly: true })).not.toContain('Oriel');
    // Without contacts it is a whole record still.
    const other = await testHouse();
    await takeIn(other, await fileOf(house, 'export', { member: guest }));
    expect((await other.keeper.open('local')).state.bench?.reactions.get('R1')?.signs).toBe('itching');
  });

  it('should give tables that a spreadsheet takes, with formulas made harmless', async () => {
    const { house, book } = await fullHouse();
    const evil: BookEvent = {
      ...oneOfEach['lot-bought'],
      lot: '=2+5',
      supplier: '=HYPERLINK("http://example.org","click")',
      note: '@SUM(A1), "quoted"\nand a second line',
    };
    await book.record(evil, { who: 'm1', at: now });
    const { files = [] } = answerOf(await house.say('export as csv'));
    const table = (name: string) =>
      Buffer.from(files.find((file) => file.name.startsWith(name))?.bytes ?? []).toString('utf8');
    expect(table('lots')).toContain('\r\n"\'=2+5",beeswax,beeswax,,250,250,2026-11-25,');
    expect(table('lots')).toContain('"\'=HYPERLINK(""http://example.org"",""click"")"');
    expect(table('lots')).toContain('"\'@SUM(A1), ""quoted""\nand a second line"');
    expect(table('draws')).toContain('26-KIVO,beeswax,beeswax,K12,71.2\r\n');
    expect(table('tins')).toContain('26-BABA,2026-11-11,3,given,the fair\r\n');
    expect(table('prices')).toContain('beeswax,14.5,EUR,500,g,,2026-11-25\r\n');
    expect(files.map(({ name }) => name)).toContain('reactions-2026-11-25.csv');
  });
});

describe('import', () => {
  it('should show first, and take in nothing without the word', async () => {
    const { house } = await fullHouse();
    const file = await fileOf(house);
    const other = await testHouse();
    const { state } = await other.keeper.open('local');
    const answer = answerOf(await other.say('import', attach(file)));
    expect(answer.figures).toMatchObject({ imported: false, counts: { recipes: 3, lots: 3, batches: 2 } });
    const wrong = answerOf(await other.say('confirm import BABABA'));
    expect(wrong.figures.imported).toBe(false);
    expect((await other.keeper.open('local')).state).toBe(state);
    const lines = textOf(await other.say('import', attach(file)), { width: 40 }).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(40);
  });

  it('should show again when the book has changed since', async () => {
    const { house } = await fullHouse();
    const other = await testHouse();
    await other.say('shea costs 18 per kg');
    const { figures } = answerOf(await other.say('import', attach(await fileOf(house))));
    await other.say('shea costs 19 per kg');
    const again = answerOf(await other.say(`confirm import ${figures.confirm}`));
    expect(again.figures.imported).toBe(false);
    expect(JSON.stringify(again.blocks)).toContain('the book has changed since');
    expect(answerOf(await other.say(`confirm import ${again.figures.confirm}`)).figures.imported).toBe(true);
  });

  it('should add what is new to a book with something in it, and list what differs', async () => {
    const { house } = await fullHouse();
    const file = await fileOf(house);
    const other = await testHouse();
    const book = await other.keeper.open('local');
    await other.say('save recipe Winter balm: 10 g beeswax, 90 g olive oil');
    await other.say('beeswax 500 g 13.00');
    await book.record({ ...oneOfEach['lot-bought'], lot: 'k-12', grams: 20 }, { who: 'm1', at: now });
    await book.record(
      { ...oneOfEach['reaction-noted'], id: 'R1', signs: 'sneezing' },
      { who: 'm1', at: now },
    );
    const before = book.state;
    const shown = answerOf(await other.say('import', attach(file)));
    const text = textOf(await other.say('import', attach(file)), { width: 200 });
    expect(text).toContain('recipe Winter balm: other lines');
    expect(text).toContain('lot K12: 20 g beeswax here, 388.8 g beeswax in the file');
    expect(text).toContain('price beeswax: 13 EUR here, 14.5 EUR in the file');
    expect(shown.figures.conflicts).toHaveLength(3);
    answerOf(await other.say(`confirm import ${shown.figures.confirm}`));
    const { bench, recipes, prices } = book.state;
    expect([...(bench?.batches.keys() ?? [])].sort()).toEqual(['26BABA', '26KIVO']);
    expect(bench?.lots.get('K12')?.leftG).toBe(20);
    expect(bench?.reactions.get('R1')?.signs).toBe('sneezing');
    expect(bench?.reactions.get('R2')?.signs).toBe('itching');
    expect(prices?.beeswax?.price).toBe('13');
    expect(bench?.reminder).toBeUndefined();
    expect(Object.values(recipes).find(({ name }) => name === 'Winter balm')?.versions).toHaveLength(1);
    // All of it goes with one word.
    answerOf(await other.say('undo'));
    expect(JSON.stringify(book.state.bench)).toBe(JSON.stringify(before.bench));
    expect(book.state.recipes).toEqual(before.recipes);
  });

  it("should take the file's word where that is asked for", async () => {
    const { house } = await fullHouse();
    const other = await testHouse();
    const book = await other.keeper.open('local');
    await other.say('save recipe Winter balm: 10 g beeswax, 90 g olive oil');
    await other.say('beeswax 500 g 13.00');
    await takeIn(other, await fileOf(house), ", take the file's");
    expect(book.state.prices?.beeswax?.price).toBe('14.5');
    const { figures } = answerOf(await other.say('show Winter balm'));
    expect(figures.recipe).toMatchObject({ version: 2, lines: [{ amount: 30 }, { amount: 70 }] });
    expect(answerOf(await other.say('show version 1 of Winter balm')).figures.recipe).toMatchObject({
      lines: [{ amount: 10 }, {}],
    });
  });

  it('should bring a new recipe with all its versions, and find nothing new the second time', async () => {
    const { house } = await fullHouse();
    const file = await fileOf(house);
    const other = await testHouse();
    await other.say('shea costs 18 per kg');
    await takeIn(other, file);
    expect(answerOf(await other.say('show version 1 of Winter balm')).figures.recipe).toMatchObject({
      version: 1,
      lines: [{ amount: 25 }, { amount: 75 }],
    });
    expect(answerOf(await other.say('import', attach(file))).title).toContain('nothing new');
  });

  it('should take a packed file too', async () => {
    const { house } = await fullHouse();
    const other = await testHouse();
    const answer = answerOf(
      await other.say('import', attach(gzipSync(await fileOf(house)), 'fernlea.json.gz')),
    );
    expect(answer.figures).toMatchObject({ imported: false, into: 'empty' });
  });

  it('should be for those who manage the group', async () => {
    const { house } = await fullHouse();
    const file = await fileOf(house);
    expect(troubleIn(await house.say('import', { ...attach(file), member: guest })).code).toBe('not-allowed');
  });

  it('should keep one member’s file from another, and open no path in a group chat', async () => {
    const { house } = await fullHouse();
    const other = await testHouse();
    const { figures } = answerOf(await other.say('import', attach(await fileOf(house))));
    const said = `confirm import ${figures.confirm}`;
    expect(troubleIn(await other.say(said, { member: { ...anyone, id: 'other' } })).code).toBe('missing');
    expect(troubleIn(await other.say(said, { at: now + hour })).code).toBe('missing');
    expect(troubleIn(await other.say('import /etc/hostname.json')).text).toContain(
      'I open no files by name here',
    );
  });

  it('should not send reminders to a channel of elsewhere, nor forget at once', async () => {
    const { house, book } = await fullHouse();
    await book.record({ kind: 'forgetting-asked', due: '2026-11-26T09:00:00.000Z' }, { who: 'm1', at: now });
    const file = await fileOf(house);
    const other = await testHouse();
    await takeIn(other, file, '', { channel: 'another' });
    const { state } = await other.keeper.open('local');
    expect(state.forgetting).toBeUndefined();
    expect(state.bench?.reminder).toBeUndefined();
  });

  const bad: readonly (readonly [string, string | Uint8Array, string])[] = [
    ['not JSON', '{"kind":"pipkin-book","v":1,"entries":[\n{"seq":1,\n]}', 'line 2'],
    ['cut short', '{"kind":"pipkin-book","v":1,"entries":[\n{"seq":1}', 'broken in line 2'],
    ['another file', '{"name":"x"}', 'not the record of a book'],
    ['a list', '[1,2]', 'not the record of a book'],
    ['a newer version', '{"kind":"pipkin-book","v":2,"entries":[1]}', 'version 2'],
    ['no entries', '{"kind":"pipkin-book","v":1,"entries":[]}', 'nothing in'],
    ['deep nesting', `{"kind":"pipkin-book","v":1,"entries":[${'['.repeat(100_000)}`, 'nested deeper'],
    ['no text', new Uint8Array([0xff, 0xfe, 0x00, 0x80]), 'not a text file'],
    ['a broken pack', new Uint8Array([0x1f, 0x8b, 1, 2, 3]), 'not a text file'],
    ['a field of the wrong kind', entry({ event: { kind: 'recipe-deleted', recipe: 7 } }), 'event.recipe'],
    ['an unknown field', entry({ event: { kind: 'recipe-deleted', recipe: 'a' }, boss: true }), 'boss'],
    [
      'a prototype key',
      entry({ event: { kind: 'recipe-deleted', recipe: 'a' } }).replace('"who"', '"__proto__":{"x":1},"who"'),
      '__proto__',
    ],
    ['an unknown event', entry({ event: { kind: 'robbed' } }), 'event.kind'],
    ['a gap', entry({ seq: 2, event: { kind: 'recipe-deleted', recipe: 'a' } }), 'numbered 2'],
  ];

  it.each(bad)('should say what is wrong with %s, and where', async (_what, content, says) => {
    const house = await testHouse();
    const { state } = await house.keeper.open('local');
    const reply = await house.say('import', attach(content));
    const trouble = troubleIn(reply);
    expect(trouble.text).toContain(says);
    expect(trouble.text).toContain('fernlea.json');
    expect(jsonLine(reply)).not.toContain('undefined');
    expect((await house.keeper.open('local')).state).toBe(state);
    expect(house.faults).toEqual([]);
    expect(({} as Record<string, unknown>).x).toBeUndefined();
  });

  it('should not unpack more than it takes in', async () => {
    const house = await testHouse();
    const bomb = gzipSync(Buffer.alloc(64 * 1024 * 1024, 0x20));
    expect(troubleIn(await house.say('import', attach(bomb, 'a.json.gz'))).code).toBe('too-long');
  });
});

function entry(fields: object): string {
  const one = { seq: 1, at: '2026-11-25T09:00:00.000Z', who: 'm1', ...fields };
  return JSON.stringify({ kind: 'pipkin-book', v: 1, entries: [one] });
}

describe('forget everything', () => {
  it('should want the word typed, wait a day, tell everybody, and then be gone for good', async () => {
    const { house, book } = await fullHouse();
    const { figures } = answerOf(await house.say('forget everything'));
    expect(troubleIn(await house.say('confirm forget everything')).code).toBe('missing');
    expect(answerOf(await house.say('confirm forget everything BABABA')).figures.confirm).toBe(
      figures.confirm,
    );
    const set = answerOf(await house.say(`confirm forget everything ${figures.confirm}`));
    expect(set.figures.due).toBe('2026-11-26T09:00:00.000Z');
    const warned = answerOf(await house.say('5 oz in g', { member: guest }));
    expect(warned.warnings.map(({ code }) => code)).toContain('forgetting-soon');
    await house.say('recipes', { at: now + 24 * hour - 1 });
    expect(book.state.seq).toBeGreaterThan(0);
    expect(answerOf(await house.say('list recipes', { at: now + 24 * hour })).figures.count).toBe(0);
    expect(book.state.seq).toBe(0);
    expect(await book.entry(1)).toBeUndefined();
  });

  it('should be stopped by whoever may write, in any of several words', async () => {
    for (const said of ['keep everything', "don't forget everything", 'undo']) {
      const { house, book } = await fullHouse();
      const { figures } = answerOf(await house.say('forget everything'));
      await house.say(`confirm forget everything ${figures.confirm}`);
      expect(book.state.forgetting).toBeDefined();
      answerOf(await house.say(said, said === 'undo' ? {} : { member: guest }));
      expect(book.state.forgetting).toBeUndefined();
      await house.say('help', { at: now + 48 * hour });
      expect(book.state.bench?.batches.size).toBe(2);
    }
  });

  it('should be for those who manage the group, and need its word anew after a change', async () => {
    const { house } = await fullHouse();
    expect(troubleIn(await house.say('forget everything', { member: guest })).code).toBe('not-allowed');
    const { figures } = answerOf(await house.say('forget everything'));
    await house.say('shea costs 18 per kg');
    const again = answerOf(await house.say(`confirm forget everything ${figures.confirm}`));
    expect(again.figures.confirm).not.toBe(figures.confirm);
  });
});

describe('forget the contact of a reaction', () => {
  it('should take it out of the journal, the memory and every later export', async () => {
    const { house, book } = await fullHouse();
    // It stands in an undoing too.
    await book.record({ ...oneOfEach['reaction-followed'], text: 'again' }, { who: 'm1', at: now });
    await house.say('undo the reaction');
    expect((await textFile(house)).match(/Oriel/g)?.length).toBe(2);
    answerOf(await house.say('forget the contact of R1'));
    expect(await textFile(house)).not.toContain('Oriel');
    expect(JSON.stringify(await book.entries(1, book.state.seq))).not.toContain('Oriel');
    expect(JSON.stringify(await book.stateAt(book.state.seq - 1))).not.toContain('Oriel');
    expect(book.state.bench?.reactions.get('R1')?.signs).toBe('itching');
    expect(troubleIn(await house.say('forget the contact of R1')).code).toBe('not-found');
    expect(troubleIn(await house.say('undo', { member: { ...anyone, id: 'm9' } })).code).toBe('not-found');
  });
});

describe('history', () => {
  it('should tell who did what on which day, a page at a time', async () => {
    const { house, book } = await fullHouse();
    for (let count = 0; count < 40; count += 1)
      await book.record(
        { kind: 'low-mark-set', ingredient: 'beeswax', grams: count + 1 },
        { who: 'm3', name: 'Wren', at: now + 24 * hour },
      );
    const later = { at: now + 48 * hour };
    const first = answerOf(await house.say('what did we do yesterday', later));
    expect(first.figures).toMatchObject({ count: 40, pages: 3, page: 1 });
    const older = answerOf(await house.say('older', later));
    expect(older.figures).toMatchObject({ count: 40, page: 2 });
    expect(answerOf(await house.say('what did Wren do this week', later)).figures.count).toBe(40);
    expect(answerOf(await house.say('history of 26-KIVO', later)).figures.entries).toMatchObject([
      { what: 'poured 24 tins of Fernlea hand balm (26-KIVO)', who: 'm2' },
    ]);
    // A lot is also in the pours that drew from it.
    expect(answerOf(await house.say('history of lot S7', later)).figures.count).toBe(2);
    expect(answerOf(await house.say('who changed R1', later)).figures.count).toBe(2);
    expect(troubleIn(await house.say('what did we do on 2026-03-01', later)).code).toBe('not-found');
  });
});
