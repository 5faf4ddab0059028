import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { runChat } from '../../bot/terminal/chat.ts';
import { readyLine } from '../../bot/terminal/words.ts';
import { fakeHouse } from '../helpers/fake-house.mjs';
import { leftLater } from '../helpers/left-later.ts';
import { runProcess, startProcess, until } from '../helpers/run-process.ts';

const program = 'tests/helpers/fake-chat.mjs';
const overPipe = (input: string, env: Record<string, string> = {}) => runProcess(program, [], input, env);

describe('the chat over a pipe', () => {
  it('should say when it is ready, answer each message without prompts, and end with the input', async () => {
    const { code, out, err } = await overPipe('what is beeswax\n\n5 oz in g');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toBe(`${readyLine}\n\nHeard: "what is beeswax"\n\nHeard: "5 oz in g"\n\n`);
  });

  it.each(['quit', 'exit', 'Bye!', 'goodbye'])(
    'should leave at %j with what follows unread',
    async (word) => {
      expect((await overPipe(`one\n${word}\ntwo\n`)).out).toBe(`${readyLine}\n\nHeard: "one"\n\n`);
    },
  );

  it('should take a list after a colon, up to an empty line, as one message', async () => {
    const { out } = await overPipe('save recipe Hall balm:\n- 20 g beeswax\n- 80 g olive oil\n\nhelp\n');
    expect(out).toContain('Heard: "save recipe Hall balm:\\n- 20 g beeswax\\n- 80 g olive oil"');
    expect(out).toContain('Heard: "help"');
  });

  it('should go on after a backslash, and answer what the input ends on', async () => {
    const { out } = await overPipe('scale 20 g beeswax, \\\n80 g olive oil\nrecipe X:\n- 1 g beeswax');
    expect(out).toContain('Heard: "scale 20 g beeswax, \\n80 g olive oil"');
    expect(out).toContain('Heard: "recipe X:\\n- 1 g beeswax"');
  });

  it('should name written files with their path', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'pipkin-chat-'));
    const { out } = await overPipe('file please\n', { FILES: folder });
    expect(out).toContain(`File label.txt: ${join(folder, 'label.txt')}`);
  });

  it('should end quietly when nobody reads any longer', async () => {
    const { child, done, out } = startProcess(program);
    await until(() => out().includes(readyLine), 'the ready line');
    child.stdout.destroy();
    child.stdin.write('one\n');
    expect(await done).toMatchObject({ code: 0, err: '' });
  });
});

describe('the chat with a reader found gone only after the writing', () => {
  it('should end though more input may come', async () => {
    const { pipkin } = await fakeHouse('data/book');
    const input = new PassThrough();
    input.write('one\n');
    const parts = {
      input,
      output: leftLater(),
      env: {},
      pipkin,
      clock: () => 0,
      filesFolder: join(tmpdir(), 'unused'),
    };
    await runChat(parts);
    expect(input.destroyed).toBe(true);
  });
});
