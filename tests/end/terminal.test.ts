import { mkdtemp, readFile, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { runChat } from '../../bot/terminal/chat.ts';
import { readyLine, tries } from '../../bot/terminal/words.ts';
import { fakeHouse } from '../helpers/fake-house.mjs';
import { until } from '../helpers/run-process.ts';

/** A terminal made of two streams: `type` presses keys, `seen` is everything printed. */
const atTerminal = async (
  options: { columns?: number; env?: Record<string, string>; historyFile?: string } = {},
) => {
  const { pipkin } = await fakeHouse('data/book');
  const input = Object.assign(new PassThrough(), {
    isTTY: true,
    setRawMode: () => undefined,
  });
  const output = Object.assign(new PassThrough(), {
    isTTY: true,
    columns: options.columns ?? 80,
  });
  let printed = '';
  output.setEncoding('utf8').on('data', (text: string) => {
    printed += text;
  });
  const leaving = new AbortController();
  const done = runChat({
    input,
    output,
    env: options.env ?? { NO_COLOR: '1' },
    pipkin,
    clock: () => 0,
    filesFolder: join(tmpdir(), 'unused'),
    signal: leaving.signal,
    ...(options.historyFile ? { historyFile: options.historyFile } : {}),
  });
  const seen = (words: string) => until(() => printed.includes(words), JSON.stringify(words));
  await seen('> ');
  return {
    type: (keys: string) => input.write(keys),
    seen,
    printed: () => printed,
    done,
    leaving,
    input,
  };
};
const answers = (printed: string) => [...printed.matchAll(/Heard: (".*?")\r?\n/g)].map((match) => match[1]);
const paste = (text: string) => `\u001b[200~${text.replaceAll('\n', '\r')}\u001b[201~`;

describe('the chat in a terminal', () => {
  it('should welcome with three things to try, help, and the way out', async () => {
    const { printed, type, done } = await atTerminal();
    for (const words of [readyLine, ...tries, 'help', 'quit', 'Ctrl-D']) expect(printed()).toContain(words);
    type('quit\r');
    await done;
    expect(printed()).toMatch(/Goodbye\.\n$/);
  });

  it.each([
    ['Ctrl-D', '\u0004'],
    ['Ctrl-C', '\u0003'],
    ['Ctrl-C with words typed', 'half a mess\u0003'],
  ])('should leave at %s, with the paste marks off', async (_name, keys) => {
    const { printed, type, done } = await atTerminal();
    type(keys);
    await done;
    expect(printed()).toContain('\u001b[?2004h');
    expect(printed().lastIndexOf('\u001b[?2004l')).toBeGreaterThan(printed().lastIndexOf('\u001b[?2004h'));
    expect(answers(printed())).toEqual([]);
  });

  it('should leave when told from outside', async () => {
    const { done, leaving, printed } = await atTerminal();
    leaving.abort();
    await done;
    expect(printed()).toContain('Goodbye.');
  });

  it('should answer what was typed before leaving', async () => {
    const { type, done, printed } = await atTerminal();
    type('one\rtwo\rquit\rthree\r');
    await done;
    expect(answers(printed())).toEqual(['"one"', '"two"']);
  });

  it('should take a pasted recipe with line breaks as one message, sent by Enter', async () => {
    const { type, seen, done, printed } = await atTerminal();
    type(paste('save recipe Hall balm:\n- 20 g beeswax\n\n- 80 g olive oil'));
    await seen('80 g olive oil');
    expect(answers(printed())).toEqual([]);
    type('\r');
    await seen('Heard: ');
    type('help\r');
    type('\u0004');
    await done;
    expect(answers(printed())).toEqual([
      '"save recipe Hall balm:\\n- 20 g beeswax\\n\\n- 80 g olive oil"',
      '"help"',
    ]);
  });

  it('should take a paste that ends in a line break, and one after words typed', async () => {
    const { type, done, printed } = await atTerminal();
    type(`scale ${paste('20 g beeswax\n80 g olive oil\n')}\r`);
    type('bye\r');
    await done;
    expect(answers(printed())).toEqual(['"scale 20 g beeswax\\n80 g olive oil\\n"']);
  });

  it('should wait with another prompt after a colon until an empty line', async () => {
    const { type, seen, done, printed } = await atTerminal();
    type('save recipe X:\r');
    await seen('an empty line sends it');
    await seen('… ');
    type('- 1 g beeswax\r\r');
    await seen('Heard: ');
    type('\u0004');
    await done;
    expect(answers(printed())).toEqual(['"save recipe X:\\n- 1 g beeswax"']);
  });

  it('should bring earlier lines back with the arrow key, also from an earlier chat', async () => {
    const historyFile = join(await mkdtemp(join(tmpdir(), 'pipkin-chat-')), 'history');
    const first = await atTerminal({ historyFile });
    first.type('one\rquit\r');
    await first.done;
    expect(await readFile(historyFile, 'utf8')).toBe('quit\none\n');
    expect((await stat(historyFile)).mode & 0o077).toBe(0);
    const second = await atTerminal({ historyFile });
    second.type('\u001b[A\u001b[A\r\u0004');
    await second.done;
    expect(answers(second.printed())).toEqual(['"one"']);
  });

  it('should colour only when it may', async () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colours are made of them
    const colour = /\u001b\[(?:1|2|32|33)m/;
    const bright = await atTerminal({ env: {} });
    bright.type('\u0004');
    await bright.done;
    expect(bright.printed()).toMatch(colour);
    const plain = await atTerminal();
    plain.type('hello\r\u0004');
    await plain.done;
    expect(plain.printed()).not.toMatch(colour);
  });

  it('should never let a member’s words steer the terminal', async () => {
    const { type, seen, done, printed } = await atTerminal();
    type('escape please\r');
    await seen('Heard: ');
    type('\u0004');
    await done;
    expect(printed()).not.toContain('\u001b[31m');
    expect(printed()).not.toContain('\u0007');
  });
});
