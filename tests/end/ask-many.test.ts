import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { runAsk } from '../../bot/ask/run.ts';
import { fakeHouse } from '../helpers/fake-house.mjs';
import { leftLater } from '../helpers/left-later.ts';
import { runProcess, startProcess, until } from '../helpers/run-process.ts';

// The command as a process of its own, wired to a stand-in that echoes what it heard.
const program = 'tests/helpers/fake-ask.mjs';
const jsonl = async (input: string | Uint8Array, args: readonly string[] = []) => {
  const { out, code } = await runProcess(program, ['--jsonl', ...args], input);
  return {
    code,
    lines: out
      .split('\n')
      .slice(0, -1)
      .map((line) => JSON.parse(line)),
  };
};

describe('asking many things', () => {
  it('should give one line for each line, in order, whatever the line is', async () => {
    const { code, lines } = await jsonl(
      [
        'plain words',
        '"a JSON string\\nof two lines"',
        '"quoted" words',
        '{"text": "whose", "group": "hall", "member": "ada", "now": "2026-05-01T09:00:00Z"}',
        '{broken',
        '{"text": 5}',
        '{"text": "x", "colour": "red"}',
        '{"text": "x", "now": "soon"}',
        '[1]',
        '',
        '   ',
        '""',
        'with a carriage return\r',
        'and no line break at the end',
      ].join('\n'),
    );
    expect(code).toBe(0);
    const heard = lines.map((line) => line.request?.text ?? line.error.code);
    const no = 'not-understood';
    expect(heard).toEqual([
      'plain words',
      'a JSON string\nof two lines',
      '"quoted" words',
      'whose',
      ...[no, no, no, no],
      '[1]',
      ...[no, no, no],
      'with a carriage return',
      'and no line break at the end',
    ]);
    expect(lines[3].request).toMatchObject({
      group: 'hall',
      member: 'ada',
      at: Date.UTC(2026, 4, 1, 9),
    });
    for (const { error } of lines) if (error) expect(error.text).toMatch(/what is beeswax/);
  });

  it('should say nothing to nothing', async () => {
    expect(await jsonl('')).toEqual({ code: 0, lines: [] });
  });

  it('should keep the fixed clock and the group of its options unless a line says otherwise', async () => {
    const options = ['--now', '2026-01-01T00:00:00Z', '--group', 'hall'];
    const { lines } = await jsonl('a\n{"text":"b","group":"shed"}\n', options);
    expect(lines.map(({ request }) => [request.group, request.at])).toEqual([
      ['hall', Date.UTC(2026, 0, 1)],
      ['shed', Date.UTC(2026, 0, 1)],
    ]);
  });

  it('should take bytes that are no UTF-8, a byte order mark and null characters', async () => {
    const { lines } = await jsonl(Buffer.from([0xef, 0xbb, 0xbf, 0x61, 0x0a, 0xff, 0xfe, 0x0a, 0x00, 0x0a]));
    expect(lines.map(({ request }) => request.text)).toEqual(['a', '\uFFFD\uFFFD', '\u0000']);
  });

  it('should answer each line as it comes, before the next one', async () => {
    const { child, done, out } = startProcess(program, ['--jsonl']);
    for (const count of [1, 2, 3]) {
      child.stdin.write(`line ${count}\n`);
      await until(() => out().split('\n').length === count + 1, `answer ${count}`);
    }
    child.stdin.end();
    expect(await done).toMatchObject({ code: 0 });
  });

  it('should refuse a line of 100 MB in little memory, and go on', async () => {
    const { child, done } = startProcess(program, ['--jsonl'], {
      SHOW_MEMORY: '1',
    });
    const piece = Buffer.alloc(1_000_000, 'x');
    for (let count = 0; count < 100; count++) {
      if (!child.stdin.write(piece)) await new Promise((resolve) => child.stdin.once('drain', resolve));
    }
    child.stdin.end('\nafter\n');
    const { out, err, code } = await done;
    const [first, second] = out.split('\n').map((line) => line && JSON.parse(line));
    expect(code).toBe(0);
    expect(first).toMatchObject({ topic: null, error: { code: 'too-long' } });
    expect(second.request.text).toBe('after');
    expect(Number(err) / 1024).toBeLessThan(150);
  });

  it('should answer 200,000 lines in order in constant memory', async () => {
    const { child, done } = startProcess(program, ['--jsonl'], {
      SHOW_MEMORY: '1',
    });
    const total = 200_000;
    for (let from = 0; from < total; from += 1000) {
      const piece = Array.from({ length: 1000 }, (_, index) => `scale ${from + index}\n`).join('');
      if (!child.stdin.write(piece)) await new Promise((resolve) => child.stdin.once('drain', resolve));
    }
    child.stdin.end();
    const { out, err, code } = await done;
    const numbers = out
      .split('\n')
      .slice(0, -1)
      .map((line) => Number(/"scale (\d+)"/.exec(line)?.[1]));
    expect(code).toBe(0);
    expect(numbers).toHaveLength(total);
    expect(numbers.every((number, index) => number === index)).toBe(true);
    // Node itself takes about 60 MB; the lines in and out would take over 60 MB more if they were kept.
    expect(Number(err) / 1024).toBeLessThan(170);
  });

  it('should end quietly, store closed, when nobody reads any longer', async () => {
    const { child, done, out } = startProcess(program, ['--jsonl', '--store', 'noted']);
    child.stdin.write('one\n');
    await until(() => out().includes('\n'), 'the first answer');
    child.stdout.destroy();
    child.stdin.write('two\n');
    expect(await done).toMatchObject({ code: 0, err: 'store closed\n' });
  });

  it('should end though more input may come, when a reader is found gone only after the writing', async () => {
    const stdin = new PassThrough();
    const code = runAsk({
      argv: ['--jsonl'],
      env: {},
      stdin,
      stdout: leftLater(),
      stderr: new PassThrough(),
      clock: () => 0,
      storeUrl: 'data/book',
      open: fakeHouse,
    });
    stdin.write('one\n');
    expect(await code).toBe(0);
  });
});
