// The bot as a process of its own, against a stand-in written from the platform's published pages alone: every command, option,
// choice, suggestion, button, menu and form that can be found from outside, while connections break and calls are refused.
// A short run each time; `npm run nightly -- outside` breaks a hundred connections.

import { beforeAll, describe, expect, test } from 'vitest';
import { kinds, report } from './report.ts';
import { type Run, run } from './run.ts';
import { leaves, nameOf } from './slash.ts';

const wanted = Number(process.env.OUTSIDE_BREAKS ?? 10);
const steps = Number(process.env.OUTSIDE_STEPS ?? 450);
const seed = Number(process.env.OUTSIDE_SEED ?? 7);
const isLong = wanted > 10;
const bounds = { steps, each: isLong ? 12 : 2, more: isLong ? 12 : 1 };
const plan = { breaks: wanted, bursts: isLong ? wanted : 9, betweenMs: isLong ? 1200 : 200 };

/** How many entries of an exported book say that a lot was bought under this code. */
const purchases = (book: string, code: string): number =>
  book.split('\n').filter((line) => line.includes('"kind":"lot-bought"') && line.includes(`"${code}"`))
    .length;

describe('a stranger to the code', () => {
  let done: Run;
  beforeAll(
    async () => {
      done = await run(seed, bounds, plan);
      process.stdout.write(`\n${report(done)}\n`);
    },
    isLong ? 3_600_000 : 150_000,
  );

  test('finds no limit passed, nothing answered twice, late or not at all', () => {
    expect(done.standIn.ledger.faults).toEqual([]);
    expect(done.bot.errors()).toEqual([]);
  });

  test('used all that is registered, and what the answers led on to', () => {
    const { counts } = done.standIn.ledger;
    const used = kinds(counts, 'slash commands');
    expect(
      leaves(done.standIn.registered)
        .map(nameOf)
        .filter((name) => !used.includes(name)),
    ).toEqual([]);
    const completed = leaves(done.standIn.registered).flatMap((leaf) =>
      leaf.options
        .filter(({ autocomplete }) => autocomplete === true)
        .map(({ name }) => `${nameOf(leaf)} ${String(name)}`),
    );
    expect(completed.filter((name) => !kinds(counts, 'autocompletes').includes(name))).toEqual([]);
    expect(kinds(counts, 'texts').sort()).toEqual(['direct', 'mention']);
    const few = [
      'buttons',
      'menus',
      'modals',
      'autocompletes',
      'context menus',
      'forged',
      'replayed',
      'expired',
    ];
    expect(few.filter((what) => done.standIn.ledger.of(what) === 0)).toEqual([]);
  });

  test(`went through ${wanted} broken connections and calls refused`, () => {
    const { ledger } = done.standIn;
    expect(ledger.of('disconnects')).toBeGreaterThanOrEqual(wanted);
    expect(
      ['429 route', '429 global', '5xx', 'answers lost on the way'].filter((what) => ledger.of(what) === 0),
    ).toEqual([]);
    expect(ledger.of('invalid requests')).toBeLessThan(10_000);
  });

  test('finds in the book what was told as written down, once', () => {
    expect(done.drive.steps.confirmed.size).toBeGreaterThan(10);
    const wrong = [...done.drive.steps.confirmed].filter((written) => {
      const [place = '', code = ''] = written.split(' ');
      return purchases(done.exported[place] ?? '', code) !== 1;
    });
    expect(wrong).toEqual([]);
  });

  test('is greeted once where the bot is new, and the bot ends when it is asked to', () => {
    expect(done.welcomes).toBe(1);
    expect(done.exits.map(({ code }) => code)).toEqual([0, 0]);
    expect(done.exits.filter(({ ms }) => ms > 10_000)).toEqual([]);
  });
});
