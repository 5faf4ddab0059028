import { readdir, readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { journalOf } from '../../../bot/book/journal.ts';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { keysOf } from '../../../bot/book/names.ts';
import { benchEvents } from '../../../core/bench/events.ts';
import { tinsLeft, tinsOut } from '../../../core/bench/state.ts';
import { benchOf, bookEntry } from '../../../core/book.ts';

// Entries of the bench as they were first written, kept for good. What they come to was written down by hand.
const folder = new URL('../../fixtures/book-v2/', import.meta.url);
const read = async (name: string) => JSON.parse(await readFile(new URL(name, folder), 'utf8'));

const entries = async () => {
  const names = (await readdir(folder)).filter((name) => name.startsWith('entry-')).sort();
  return Promise.all(names.map(read));
};

describe('entries of the bench, kept for good', () => {
  it('should hold every kind of event', async () => {
    const kinds = new Set((await entries()).map(({ event }) => event.kind));
    expect([...kinds].sort()).toEqual(benchEvents.map(({ shape }) => shape.kind.value).sort());
  });

  it('should still be read and come to what is written beside them', async () => {
    const store = memoryStore();
    for (const raw of await entries()) {
      expect(bookEntry.parse(raw)).toEqual(raw);
      await store.keyv.set(keysOf(raw.group).entry(raw.seq), raw);
    }
    const bench = benchOf((await journalOf(store, 'fernlea').load()).state);
    const expected = await read('bench.json');
    expect([...bench.lots.keys()].sort()).toEqual(Object.keys(expected.lots).sort());
    for (const [key, lot] of Object.entries(expected.lots))
      expect(bench.lots.get(key)).toMatchObject(lot as object);
    const batch = bench.batches.get('26VOKI');
    const { left, out, notes, ...about } = expected.batches['26VOKI'];
    expect(batch).toMatchObject(about);
    expect(batch && [tinsLeft(batch), tinsOut(batch)]).toEqual([left, out]);
    expect(batch?.notes.map(({ text }) => text ?? null)).toEqual(notes);
    expect(Object.fromEntries(bench.low)).toEqual(expected.low);
    expect(bench.reactions.get('R1')).toMatchObject(expected.reactions.R1);
    expect(Object.fromEntries(bench.answers)).toEqual(expected.answers);
    expect(bench.reminder ?? null).toBe(expected.reminder);
  });
});
