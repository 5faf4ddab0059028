import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import type { Batch } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { balances } from '../helpers/balances.ts';
import { freshFolder } from '../helpers/book.ts';
import { linesBeforeKill } from '../helpers/kill-when.ts';
import { runProcess, startProcess, until } from '../helpers/run-process.ts';

// The compiled command, killed while it writes purchases with a price (two events in one change), pours, gifts and
// reminders. Each is acknowledged when its line has been printed. More rounds on demand, by KILL_ROUNDS.
const rounds = Number(process.env.KILL_ROUNDS ?? 6);
const ask = '.build/bot/ask.js';
const messages = 1200;

const kinds = ['purchase', 'pour', 'gift', 'reminder'] as const;
type Kind = (typeof kinds)[number];
const kindAt = (at: number): Kind => kinds[at % kinds.length] ?? 'purchase';
/** Entries in the journal that a message of this kind makes. */
const entriesOf: Readonly<Record<Kind, number>> = { purchase: 2, pour: 1, gift: 1, reminder: 1 };

const textAt = (round: number, at: number, first: string): string => {
  const mark = round * messages + at;
  switch (kindAt(at)) {
    case 'purchase':
      return `bought ${500 + mark} g beeswax lot K${mark}, best before 2030-01, 14.50`;
    case 'pour':
      return `poured another ${1 + (mark % 9)} tins of 10 g of 20 g beeswax, 80 g olive oil`;
    case 'gift':
      return `gave another 1 tin of ${first} to hall ${mark}`;
    case 'reminder':
      return `remind us daily at ${mark % 24} in Lisbon, ${1 + (mark % 89)} days ahead`;
  }
};

interface Told {
  readonly kind: Kind;
  readonly mark: number;
  readonly figures: Record<string, unknown>;
}

/** What was acknowledged: a line cut short by the kill is no acknowledgement. */
const toldIn = (out: string, round: number): Told[] =>
  out
    .split('\n')
    .slice(0, -1)
    .map((line, at) => {
      const { figures, error } = JSON.parse(line);
      expect(error).toBeUndefined();
      return { kind: kindAt(at), mark: round * messages + at, figures };
    });

const writeAndKill = async (store: string, round: number, first: string): Promise<Told[]> => {
  const { child, done, out } = startProcess(ask, ['--jsonl', '--store', store]);
  child.stdin.write(Array.from({ length: messages }, (_, at) => `${textAt(round, at, first)}\n`).join(''));
  const lines = linesBeforeKill(round, rounds);
  await until(() => out().split('\n').length > lines, 'its answers', 60_000);
  await sleep(Math.random() * 400);
  child.kill('SIGKILL');
  const ended = await done;
  expect([ended.signal, ended.err]).toEqual(['SIGKILL', '']);
  return toldIn(ended.out, round);
};

const seen = async (store: string) => {
  const keeper = openKeeper(await openStore(store));
  const book = await keeper.open('local');
  const entries = await book.entries(1, book.state.seq);
  await keeper.close();
  return { state: book.state, bench: benchOf(book.state), entries };
};
type Seen = Awaited<ReturnType<typeof seen>>;

/** Everything told is there, as it was told. */
const isThere = ({ bench }: Seen, { kind, mark, figures }: Told, first: Batch): void => {
  if (kind === 'purchase') expect(bench.lots.get(`K${mark}`)?.gotG).toBe(500 + mark);
  if (kind === 'gift') expect(first.gone.filter(({ to }) => to === `hall ${mark}`)).toHaveLength(1);
  if (kind !== 'pour') return;
  const batch = [...bench.batches.values()].find(({ lot }) => lot === figures.lot);
  expect(batch?.count).toBe(figures.containers);
  expect(batch?.weighedG).toBe(figures.weighed_g);
};

/** A purchase and its price came in one change: each stands right behind the other. */
const arePaired = ({ entries }: Seen): void => {
  const bought = entries.filter(({ event }) => event.kind === 'lot-bought' && event.lot !== 'O1');
  const prices = entries.filter(({ event }) => event.kind === 'price-noted');
  expect(prices).toHaveLength(bought.length);
  const first = bought.map(({ seq }) => seq);
  expect(prices.every((entry) => first.includes(entry.seq - 1) || first.includes(entry.seq + 1))).toBe(true);
};

describe('the one-shot command, killed while the bench is written', () => {
  const title = `should lose nothing it has told and apply nothing by half over ${rounds} rounds`;
  it(title, { timeout: 60_000 + rounds * 20_000 }, async () => {
    const store = await freshFolder();
    // With something on the shelf, what a pour lacks is written down with it.
    const shelf = 'bought 1 kg olive oil lot O1, best before 2030-01';
    expect((await runProcess(ask, ['--json', '--store', store, shelf])).code).toBe(0);
    // The first reminder would write the zone down too, and later ones not: a count could not tell which was cut off.
    const zone = await runProcess(ask, ['--json', '--store', store, 'time zone Europe/Lisbon']);
    expect([zone.code, JSON.parse(zone.out).topic]).toEqual([0, 'settings']);
    const start = 'poured 5000 tins of 1 g of 20 g beeswax, 80 g olive oil';
    const begun = await runProcess(ask, ['--json', '--store', store, start]);
    expect(begun.code).toBe(0);
    const first: string = JSON.parse(begun.out).figures.lot;
    let before = (await seen(store)).state.seq;
    let acknowledged = 0;
    for (let round = 0; round < rounds; round++) {
      const told = await writeAndKill(store, round, first);
      const now = await seen(store);
      const batch = [...now.bench.batches.values()].find(({ lot }) => lot === first) as Batch;
      for (const each of told) isThere(now, each, batch);
      const reminder = told.findLast(({ kind }) => kind === 'reminder');
      const more = now.state.seq - before - told.reduce((sum, { kind }) => sum + entriesOf[kind], 0);
      // At most one message more than was told: written whole, and killed before it could say so.
      const last = now.entries
        .slice(-12)
        .map(({ seq, first, event }) => `${seq} ${first ?? ''} ${event.kind}`);
      expect(
        [0, entriesOf[kindAt(told.length)]],
        `round ${round}, before ${before}, told ${told.length}: ${last.join('; ')}`,
      ).toContain(more);
      if (reminder && (more === 0 || kindAt(told.length) !== 'reminder'))
        expect(now.bench.reminder?.hour).toBe(reminder.mark % 24);
      arePaired(now);
      balances(now.bench);
      acknowledged += told.length;
      before = now.state.seq;
    }
    expect(acknowledged).toBeGreaterThan(rounds);
    console.log(`${rounds} kills, ${acknowledged} acknowledged messages, ${before} entries on disk`);
  });
});
