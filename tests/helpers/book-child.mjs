// A process of its own for tests that kill it, let it crash or limit it. Plain JavaScript, because Node 20 does not run
// TypeScript; it uses the compiled program.

import { openKeeper } from '../../.build/bot/book/keeper-open.js';
import { openStore } from '../../.build/bot/book/store.js';
import { pipkin } from '../../.build/bot/handle.js';

const [, , command, url, group = 'local', shard = '0/1'] = process.argv;

const [index, count] = shard.split('/').map(Number);
const open = () => openStore(url, { shard: { index, count }, waitMs: 15_000, patienceMs: 60_000 });

const say = (what) => process.stdout.write(`${JSON.stringify(what)}\n`);

const recipe = (at, lines) => ({
  kind: 'recipe-saved',
  recipe: `r${at % 7}`,
  name: `Fernlea balm ${at}`,
  lines: Array.from({ length: lines }, (_, line) => ({
    ingredient: `herb-${line}`,
    amount: at + line,
    unit: 'g',
  })),
});

const commands = {
  /** Opens the store and says so; keeps it until killed or told to stop. */
  async hold() {
    const store = await open();
    say({ open: true });
    process.stdin.resume();
    process.stdin.once('end', () => store.close());
  },

  /** Saves recipes until killed, one line for each that is on disk. */
  async save() {
    const keeper = openKeeper(await open());
    const book = await keeper.open(group);
    say({ start: book.state.seq });
    for (let at = book.state.seq + 1; ; at++) {
      const entry = await book.record(recipe(at, 1 + (at % 20)), {
        who: 'me',
        at: Date.now(),
      });
      say({
        saved: entry.seq,
        name: entry.event.name,
        lines: entry.event.lines.length,
      });
    }
  },

  /**
   * Pours until killed: each is many events of one request, now few, now more than fit into one write. One line for
   * each that is on disk.
   */
  async pour() {
    const keeper = openKeeper(await open());
    const book = await keeper.open(group);
    say({ start: book.state.seq });
    for (let pour = 1; ; pour++) {
      const size = pour % 4 === 0 ? 230 : 1 + (pour % 3);
      const events = Array.from({ length: size }, (_, at) => ({
        ...recipe(at, 1),
        recipe: `p${at}`,
        name: `${at + 1} of ${size}`,
      }));
      const entries = await book.record(events, { who: 'me', at: Date.now() });
      say({ saved: entries.at(-1).seq, lines: size });
    }
  },

  /** Pours batches from one big lot until killed, one line for each that is on disk; every fourth buys more wax. */
  async brew() {
    const keeper = openKeeper(await open());
    const book = await keeper.open(group);
    const house = pipkin({ keeper: { open: async () => book, close: async () => {} }, onFault: () => {} });
    const member = { id: 'me', name: 'Ada', roles: [], manages: true };
    say({ start: book.state.seq });
    for (let round = 0; ; round++) {
      const buys = round % 4 === 0;
      const text = buys
        ? `bought another ${500 + round} g beeswax lot K12, best before 2027-03`
        : `poured another ${1 + (round % 30)} tins, weighed out ${20 + (round % 50)} g: 100% beeswax`;
      const reply = await house.hear({ text, group, channel: 'c', member, at: Date.UTC(2026, 10, 25, 9) });
      if (reply.error) throw Object.assign(new Error(reply.error.text), { code: reply.error.code });
      say({ saved: book.state.seq, name: buys ? 'K12' : reply.answer.figures.lot, lines: buys ? 0 : 1 });
    }
  },

  /** Saves large recipes until one is not recorded; then says what still stands. */
  async fill() {
    const keeper = openKeeper(await open());
    const book = await keeper.open(group);
    for (let at = 1; at <= 20_000; at++) {
      const before = book.state;
      try {
        await book.record(recipe(at, 60), { who: 'me', at: Date.now() });
      } catch (problem) {
        const last = await book.entry(book.state.seq);
        say({
          code: problem.code,
          reason: problem.reason,
          same: before === book.state,
          seq: book.state.seq,
          last: last?.seq,
        });
        break;
      }
    }
    await keeper.close();
  },

  /** Opens the store and one book, and reads all its entries back. */
  async read() {
    const keeper = openKeeper(await open());
    const book = await keeper.open(group);
    for (let seq = 1; seq <= book.state.seq; seq++) await book.entry(seq);
    say({
      seq: book.state.seq,
      names: Object.values(book.state.recipes).map(({ name }) => name),
    });
    await keeper.close();
  },
};

try {
  await commands[command]();
} catch (problem) {
  say({ problem: problem.code ?? 'fault', message: problem.message });
  // Connections to a database would keep it going.
  process.stdout.write('', () => process.exit(3));
}
