import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readyLine } from '../../bot/terminal/words.ts';
import { runProcess, startProcess, until } from '../helpers/run-process.ts';

// The compiled program as it is shipped, over a store of its own in a temporary folder.
const ask = '.build/bot/ask.js';
const main = '.build/bot/main.js';
const newStore = async () => join(await mkdtemp(join(tmpdir(), 'pipkin-whole-')), 's');

describe('the whole program', () => {
  it('should answer a line from standard input with a table that adds up', async () => {
    const message = 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 g\n';
    const { code, out, err } = await runProcess(ask, ['--jsonl', '--store', await newStore()], message);
    expect({ code, err, lines: out.split('\n').length }).toEqual({
      code: 0,
      err: '',
      lines: 2,
    });
    const { topic, figures } = JSON.parse(out);
    expect(topic).toBe('scale');
    // 24 x 15 g is 360 g; with 3 % left in jug and spoon 360 / 0.97 = 371.134 g, so 371.2 g at a scale of 0.1 g.
    expect(figures.total_g).toBe(371.2);
    const tenths = figures.lines.map(({ grams }: { grams: number }) => Math.round(grams * 10));
    expect(tenths.reduce((all: number, one: number) => all + one, 0)).toBe(3712);
  });

  it('should keep a saved recipe from one run to the next', async () => {
    const store = await newStore();
    const saved = await runProcess(ask, [
      '--json',
      '--store',
      store,
      'save recipe Hall balm: 20 g beeswax, 80 g olive oil',
    ]);
    expect(JSON.parse(saved.out).topic).toBe('recipe');
    const shown = await runProcess(ask, ['--json', '--store', store, 'show recipe Hall balm']);
    expect(JSON.parse(shown.out).figures.recipe.name).toBe('Hall balm');
    const elsewhere = await runProcess(ask, [
      '--json',
      '--store',
      store,
      '--group',
      'shed',
      'show recipe Hall balm',
    ]);
    expect(JSON.parse(elsewhere.out).error.code).toBe('unknown-recipe');
  });

  it('should refuse a store that another process has, in plain words', async () => {
    const store = await newStore();
    const first = startProcess(ask, ['--jsonl', '--store', store]);
    first.child.stdin.write('5 oz in g\n');
    await until(() => first.out() !== '', 'the first answer');
    const second = await runProcess(ask, ['--store', store, 'help']);
    expect(second).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringContaining('in use'),
    });
    first.child.stdin.end();
    expect(await first.done).toMatchObject({ code: 0 });
  });

  it('should chat over a pipe when there is no token', async () => {
    const { code, out, err } = await runProcess(main, [], '5 oz in g\nquit\n', {
      STORE_URL: await newStore(),
    });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(new RegExp(`^${readyLine}\\n\\n.*141\\.7 g`, 's'));
  });

  it('should leave cleanly when told to stop', async () => {
    const { child, done, out } = startProcess(main, [], {
      STORE_URL: await newStore(),
    });
    await until(() => out().includes(readyLine), 'the ready line');
    child.kill('SIGTERM');
    expect(await done).toMatchObject({ code: 0, signal: null, err: '' });
  });

  it('should list what is wrong with the environment, without its values', async () => {
    const env = { DISCORD_TOKEN: 'two words', LOG_LEVEL: 'loud' };
    const { code, out, err } = await runProcess(main, [], '', env);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^DISCORD_TOKEN has blanks .*\nLOG_LEVEL must be one of .*\n$/);
    expect(err).not.toMatch(/two words|loud/);
  });
});
