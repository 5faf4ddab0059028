import { mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runProcess } from '../helpers/run-process.ts';

// The command as a process of its own, wired to a stand-in that echoes what it heard.
const program = 'tests/helpers/fake-ask.mjs';
const ask = (args: readonly string[], input: string | Uint8Array = '') => runProcess(program, args, input);

describe('asking one thing', () => {
  it('should join the words and print the answer as text', async () => {
    expect(await ask(['what', 'is', 'beeswax'])).toMatchObject({
      code: 0,
      out: 'Heard: "what is beeswax"\n',
      err: '',
    });
  });

  it('should print one line of JSON', async () => {
    const { code, out } = await ask(['--json', 'hello']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      topic: 'echo',
      request: { text: 'hello', group: 'local', member: 'me' },
    });
    expect(out.indexOf('\n')).toBe(out.length - 1);
  });

  it('should pass on who asks, where, when and by which rules', async () => {
    const options = [
      '--group',
      'hall',
      '--member=ada',
      '--region',
      'US',
      '--now',
      '2026-05-01T09:00:00+01:00',
    ];
    const { out } = await ask(['--json', ...options, 'hello']);
    expect(JSON.parse(out).request).toEqual({
      text: 'hello',
      group: 'hall',
      at: Date.UTC(2026, 4, 1, 8),
      region: 'us',
      member: 'ada',
      manages: true,
    });
  });

  it('should take words that begin with a dash after a further --', async () => {
    expect((await ask(['--', '-5', 'C in F'])).out).toBe('Heard: "-5 C in F"\n');
  });

  it('should call a clear error an answer', async () => {
    expect(await ask(['gibberish'])).toMatchObject({
      code: 0,
      out: 'I did not understand that.\n',
    });
    expect((await ask(['--json', 'gibberish'])).out).toBe(
      '{"topic":null,"error":{"code":"not-understood","text":"I did not understand that."}}\n',
    );
  });

  it('should write files into the store’s folder and say where', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'pipkin-ask-'));
    const { out } = await ask(['--json', '--store', join(folder, 'book'), 'file please']);
    const { files, text } = JSON.parse(out);
    expect(files).toEqual([{ name: 'label.txt', path: join(folder, 'book', 'files', 'label.txt') }]);
    expect(text).toContain(files[0].path);
    expect(await readFile(files[0].path, 'utf8')).toBe('INCI');
  });

  it('should still answer, with a warning, where files cannot be written', async () => {
    const { out, code } = await ask(['--json', '--store', '/dev/null/book', 'file please']);
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      files: [],
      warnings: [{ code: 'file-not-written' }],
    });
  });

  it.each([
    [['--frob', 'x'], "Unknown option '--frob'"],
    [['--region', 'mars', 'x'], '--region must be one of eu, uk, us, ca, au.'],
    [['--now', 'yesterday', 'x'], '--now must be an instant as in 2026-05-01T09:00:00Z.'],
    [['--now', '2026-05-01', 'x'], '--now must be an instant as in 2026-05-01T09:00:00Z.'],
    [['--group', ' ', 'x'], '--group must not be empty.'],
    [['--store'], "Option '--store <value>' argument missing"],
    [['--json', '--jsonl'], '--json and --jsonl do not go together.'],
    [['--jsonl', 'x'], '--jsonl reads its messages from standard input'],
    [[], 'There is no message.'],
  ])('should refuse %j with its usage', async (args, problem) => {
    const { code, out, err } = await ask(args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(problem);
    expect(err).toContain('npm run --silent ask -- --jsonl < messages');
  });

  it('should print its usage when asked for', async () => {
    expect(await ask(['--help'])).toMatchObject({
      code: 0,
      out: expect.stringContaining('--store PATH_OR_URL'),
    });
  });

  it('should end with 1 and a plain sentence where the store cannot be used', async () => {
    expect(await ask(['--store', 'broken', 'hello'])).toMatchObject({
      code: 1,
      out: '',
      err: 'The store is damaged; restore it from a copy.\n',
    });
  });

  it('should end with 1 after a fault of the program, with the answer given', async () => {
    expect(await ask(['--store', 'faulty', 'hello'])).toMatchObject({
      code: 1,
      out: 'Heard: "hello"\n',
    });
  });

  it('should close the store', async () => {
    expect(await ask(['--store', 'noted', 'hello'])).toMatchObject({
      code: 0,
      err: 'store closed\n',
    });
  });
});
