import { PassThrough } from 'node:stream';
import { afterEach, describe, expect, it } from 'vitest';
import { localGroup } from '../../bot/console/local.ts';
import { openHouse } from '../../bot/house.ts';
import { logTo } from '../../bot/log.ts';
import { runChat } from '../../bot/terminal/chat.ts';
import { freshFolder } from '../helpers/book.ts';

const nine = Date.UTC(2026, 10, 26, 9);
const quiet = logTo(() => {}, 'silent', Date.now);
let house: Awaited<ReturnType<typeof openHouse>> | undefined;

afterEach(() => house?.close());

/** One chat over a pipe at an instant, with these lines typed; what it wrote. */
const chat = async (store: string, now: number, lines: readonly string[]): Promise<string> => {
  house = await openHouse(store, quiet, 'silent');
  const { pipkin, remind } = house;
  const input = new PassThrough();
  const output = new PassThrough();
  let written = '';
  output.on('data', (piece) => {
    written += piece;
  });
  input.end(lines.map((line) => `${line}\n`).join(''));
  const clock = () => now;
  await runChat({
    input,
    output,
    env: {},
    pipkin,
    clock,
    filesFolder: store,
    remind: (sender) => remind({ sender, clock, owns: (group) => group === localGroup }),
  });
  await house.close();
  house = undefined;
  return written;
};

describe('the daily message in the terminal', () => {
  it('should be shown when the chat opens and it is outstanding, once a day', async () => {
    const store = await freshFolder();
    house = await openHouse(store, quiet, 'silent');
    const book = await house.keeper.open(localGroup);
    const bought = {
      kind: 'lot-bought',
      lot: 'K12',
      ingredient: 'beeswax',
      grams: 480,
      on: '2026-01-10',
      bestBefore: '2026-12-20',
    } as const;
    await book.record(bought, { who: 'me', at: nine });
    await house.close();
    const set = await chat(store, nine - 3_600_000, ['remind us daily at 9 in Lisbon']);
    expect(set).toContain('Reminder set: daily at 9:00 in Lisbon');
    expect(set).not.toContain('Best before: Thursday');
    const first = await chat(store, nine + 3_600_000, ['5 oz in g']);
    expect(first).toContain('Best before: Thursday 26 November');
    expect(first).toContain('beeswax, lot K12: 20 Dec 2026');
    expect(first).toContain('Next, say: done with lot K12');
    expect(first.indexOf('Best before')).toBeLessThan(first.indexOf('141.7'));
    const second = await chat(store, nine + 7_200_000, ['done with K12']);
    expect(second).not.toContain('Best before:');
    expect(second).toContain('K12: done');
    expect(await chat(store, nine + 86_400_000, ['5 oz in g'])).not.toContain('Best before');
  });
});
