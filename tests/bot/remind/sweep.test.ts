import { describe, expect, it } from 'vitest';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../../bot/book/keeper-open.ts';
import type { Store } from '../../../bot/book/store.ts';
import { NotRecorded } from '../../../bot/book/trouble.ts';
import { Agenda } from '../../../bot/remind/agenda.ts';
import { waitingAlongside, waitingGroups } from '../../../bot/remind/index-key.ts';
import { ReminderLoop } from '../../../bot/remind/loop.ts';
import type { BookEvent } from '../../../core/book.ts';
import { benchOf } from '../../../core/book.ts';
import { Channel } from './recording-sender.ts';

const nine = Date.UTC(2026, 10, 26, 9);
const hourMs = 3_600_000;
const dayMs = 24 * hourMs;
const by = { who: 'wren', at: nine - dayMs };

const lot = (code: string, bestBefore: string): BookEvent => ({
  kind: 'lot-bought',
  lot: code,
  ingredient: 'beeswax',
  grams: 100,
  on: '2026-01-01',
  bestBefore,
});

const set = (channel = 'hall'): BookEvent => ({
  kind: 'reminder-set',
  hour: 9,
  minute: 0,
  zone: 'Europe/Lisbon',
  leadDays: [30, 7, 0],
  channel,
  from: '2026-11-26',
});

/** One run of the program over a store: a keeper, the agenda read from the index keys, a loop. */
const run = async (store: Store, sender: Channel, time: { now: number }, owns = (_group: string) => true) => {
  const agenda = new Agenda();
  const alongside = waitingAlongside((group, at) => agenda.set(group, at));
  for await (const { group, at } of waitingGroups(store)) agenda.set(group, at);
  const keeper = openKeeper(store, { alongside });
  const faults: unknown[] = [];
  const clock = (): number => time.now;
  const loop = new ReminderLoop({
    keeper,
    agenda,
    clock,
    sender,
    owns,
    onFault: (fault) => faults.push(fault),
  });
  return { agenda, keeper, loop, faults };
};

const start = async (events: readonly BookEvent[] = [lot('K12', '2026-12-10'), set()]) => {
  const store = memoryStore(new Map());
  const sender = new Channel();
  const time = { now: nine - hourMs };
  const first = await run(store, sender, time);
  const book = await first.keeper.open('hall');
  for (const event of events) await book.record(event, by);
  return { store, sender, time, book, ...first };
};

describe('the sweep', () => {
  it('should tell a group once at its hour, and again on the next day', async () => {
    const { loop, sender, time, agenda, book } = await start();
    expect(await loop.sweep()).toBe(0);
    time.now = nine;
    expect(await loop.sweep()).toBe(1);
    expect(await loop.sweep()).toBe(0);
    expect(sender.posted.map(({ message }) => message.answer.title)).toEqual([
      'Best before: Thursday 26 November',
    ]);
    expect(agenda.at('hall')).toBe(nine + dayMs);
    expect(benchOf(book.state).told).toEqual({ day: '2026-11-26', items: ['lot:K12'] });
    time.now = nine + dayMs;
    expect(await loop.sweep()).toBe(1);
    expect(sender.posted[1]?.message.answer.blocks[0]).toEqual({ kind: 'text', text: 'Still open:' });
  });

  it('should look only at groups whose hour has come, and only at its own', async () => {
    const { store, sender, time, keeper } = await start();
    const other = await keeper.open('far');
    for (const event of [lot('G7', '2027-12-10'), set()]) await other.record(event, by);
    const opened: string[] = [];
    time.now = nine;
    const second = await run(store, sender, time, (group) => group !== 'hall');
    const { open } = second.keeper;
    Object.assign(second.keeper, {
      open: (group: string) => {
        opened.push(group);
        return open(group);
      },
    });
    expect(await second.loop.sweep()).toBe(0);
    expect(opened).toEqual([]);
    expect(sender.posted).toEqual([]);
    expect(second.agenda.at('far')).toBe(Date.UTC(2027, 10, 10, 9));
  });

  it('should keep no index key for a group with nothing to tell', async () => {
    const { store, book } = await start();
    const groups = async () => {
      const list: string[] = [];
      for await (const { group } of waitingGroups(store)) list.push(group);
      return list;
    };
    expect(await groups()).toEqual(['hall']);
    await book.record({ kind: 'lot-counted', lot: 'K12', leftG: 0, on: '2026-11-25' }, by);
    expect(await groups()).toEqual([]);
    await book.record(lot('K12', '2026-12-20'), by);
    expect(await groups()).toEqual(['hall']);
    await book.record({ kind: 'reminder-stopped' }, by);
    expect(await groups()).toEqual([]);
  });

  it('should send once when two sweeps run at the same time', async () => {
    const { store, loop, sender, time } = await start();
    time.now = nine;
    await Promise.all([loop.sweep(), loop.sweep()]);
    expect(sender.posted).toHaveLength(1);
    // Two loops over one keeper, which nobody starts on purpose.
    time.now = nine + dayMs;
    const { keeper, agenda, loop: again } = await run(store, sender, time);
    const parts = { keeper, clock: () => time.now, sender, owns: () => true, onFault: () => {} };
    const twin = new Agenda();
    twin.set('hall', agenda.at('hall'));
    await Promise.all([again.sweep(), new ReminderLoop({ ...parts, agenda: twin }).sweep()]);
    expect(sender.posted).toHaveLength(2);
  });

  it('should not send what was answered between the agenda and the look', async () => {
    const { loop, sender, time, book, agenda } = await start();
    time.now = nine;
    const answered = book.record({ kind: 'due-answered', item: 'lot:K12', answer: 'done' }, by);
    agenda.set('hall', nine);
    await Promise.all([loop.sweep(), answered]);
    expect(sender.posted).toEqual([]);
    expect(agenda.at('hall')).toBeUndefined();
  });
});

describe('crashes between begun, sent and recorded', () => {
  class Crash extends Error {}

  /** A store that dies at its n-th write: before it, or after it is on disk and before that is known. */
  const dying = (store: Store, at: number, after: boolean): Store => {
    let writes = 0;
    return {
      ...store,
      writeAll: async (changes) => {
        writes += 1;
        if (writes > at) throw new Crash();
        if (writes === at && !after) throw new Crash();
        await store.writeAll(changes);
        if (writes === at) throw new Crash();
      },
    };
  };

  const points = [
    ...[1, 2].flatMap((write) => [false, true].map((after) => ({ write, after, step: undefined }))),
    ...(['before-send', 'after-send'] as const).map((step) => ({ write: undefined, after: false, step })),
  ];

  it.each(
    points.flatMap((point) =>
      [0, 45].flatMap((minutes) => [true, false].map((nonces) => ({ ...point, minutes, nonces }))),
    ),
  )('should have sent once after a crash at %o', async ({ write, after, step, minutes, nonces }) => {
    const { store, sender, time } = await start();
    time.now = nine;
    let dead = false;
    sender.step = (what) => {
      if (step === what || dead) {
        dead = true;
        throw new Crash();
      }
    };
    const first = await run(write === undefined ? store : dying(store, write, after), sender, time);
    await first.loop.sweep();
    expect(first.faults.length).toBeGreaterThan(0);
    // A new process, at once or later than the platform remembers nonces.
    sender.step = () => {};
    sender.remembersNonces = nonces;
    time.now = nine + minutes * 60_000;
    const second = await run(store, sender, time);
    await second.loop.sweep();
    expect(second.faults).toEqual([]);
    expect(sender.posted).toHaveLength(1);
    const { state } = await second.keeper.open('hall');
    expect(benchOf(state).told?.day).toBe('2026-11-26');
    time.now = nine + dayMs;
    await second.loop.sweep();
    expect(sender.posted).toHaveLength(2);
  });

  it('should send with the same nonce where older messages may not be read', async () => {
    const { store, sender, time } = await start();
    time.now = nine;
    sender.step = (what) => {
      if (what === 'after-send') throw new Crash();
    };
    await (await run(store, sender, time)).loop.sweep();
    sender.step = () => {};
    sender.canLookBack = false;
    await (await run(store, sender, time)).loop.sweep();
    expect(sender.posted).toHaveLength(1);
  });

  it('should not send again when the disk fills up right after sending', async () => {
    const { store, sender, time } = await start();
    time.now = nine;
    let full = false;
    sender.step = (what) => {
      if (what === 'after-send') full = true;
    };
    const writeAll: Store['writeAll'] = (changes) =>
      full ? Promise.reject(new NotRecorded('disk-full')) : store.writeAll(changes);
    const { loop, faults, keeper } = await run({ ...store, writeAll }, sender, time);
    sender.remembersNonces = false;
    sender.canLookBack = false;
    await loop.sweep();
    expect(faults).toHaveLength(1);
    time.now = nine + 61_000;
    sender.step = () => {};
    full = false;
    await loop.sweep();
    expect(sender.posted).toHaveLength(1);
    expect(benchOf((await keeper.open('hall')).state).told?.day).toBe('2026-11-26');
  });
});

describe('a restart, missed days and a channel that is gone', () => {
  it('should send nothing more on the same day after a restart', async () => {
    const { store, loop, sender, time } = await start();
    time.now = nine;
    await loop.sweep();
    time.now = nine + hourMs;
    const { loop: again, agenda } = await run(store, sender, time);
    expect(await again.sweep()).toBe(0);
    expect(agenda.at('hall')).toBe(nine + dayMs);
  });

  it('should make up days missed as a whole with one message', async () => {
    const { store, loop, sender, time } = await start();
    time.now = nine;
    await loop.sweep();
    time.now = nine + 5 * dayMs + 3 * hourMs;
    const { loop: again } = await run(store, sender, time);
    await again.sweep();
    await again.sweep();
    expect(sender.posted.map(({ message }) => message.answer.figures.day)).toEqual([
      '2026-11-26',
      '2026-12-01',
    ]);
  });

  it('should try again soon when the chat cannot be reached, and give up with the day', async () => {
    const { loop, sender, time, agenda } = await start();
    sender.outcome = 'later';
    time.now = nine;
    await loop.sweep();
    expect(agenda.at('hall')).toBe(nine + 60_000);
    time.now = nine + 60_000;
    await loop.sweep();
    expect(agenda.at('hall')).toBe(nine + 180_000);
    sender.outcome = 'sent';
    time.now = nine + 180_000;
    await loop.sweep();
    expect(sender.posted).toHaveLength(1);
    expect(sender.toldOwner).toEqual([]);
  });

  it('should tell the owner once, keep the reminder, and forget about it when it works again', async () => {
    const { loop, sender, time, book } = await start();
    sender.outcome = 'no-channel';
    for (const days of [0, 1, 2]) {
      time.now = nine + days * dayMs;
      await loop.sweep();
    }
    expect(sender.toldOwner).toHaveLength(1);
    expect(sender.toldOwner[0]?.text).toContain('the channel it goes to is gone');
    expect(benchOf(book.state).reminder).toMatchObject({ hour: 9, channel: 'hall', toldOwner: true });
    await book.record(set('kitchen'), { who: 'wren', at: time.now });
    sender.outcome = 'sent';
    time.now += 2000;
    await loop.sweep();
    expect(sender.posted.map(({ place }) => place.channel)).toEqual(['kitchen']);
    expect(benchOf(book.state).reminder?.toldOwner).toBeUndefined();
  });

  it('should tell the owner the next day when that did not work', async () => {
    const { loop, sender, time } = await start();
    sender.outcome = 'no-permission';
    sender.ownerCanBeTold = false;
    time.now = nine;
    await loop.sweep();
    sender.ownerCanBeTold = true;
    for (const days of [1, 2]) {
      time.now = nine + days * dayMs;
      await loop.sweep();
    }
    expect(sender.toldOwner).toHaveLength(2);
  });
});

describe('the agenda', () => {
  it('should hand out groups in the order of their instants, each once', () => {
    const agenda = new Agenda();
    const instants = Array.from({ length: 500 }, (_, at) => (at * 7919) % 1009);
    for (const [index, at] of instants.entries()) agenda.set(`g${index}`, at + 5000);
    for (const [index, at] of instants.entries()) agenda.set(`g${index}`, at);
    agenda.set('g7', undefined);
    const taken: number[] = [];
    for (let group = agenda.take(2000); group !== undefined; group = agenda.take(2000))
      taken.push(instants[Number(group.slice(1))] ?? -1);
    expect(taken).toEqual(instants.filter((_, index) => index !== 7).toSorted((a, b) => a - b));
    expect([agenda.size, agenda.next()]).toEqual([0, undefined]);
  });
});
