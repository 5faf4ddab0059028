import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { answered, refused, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

const open = useChat();

describe('answering', () => {
  it('should show an error aside for a command, and in the channel for a message', async () => {
    const { standIn } = await open({
      pipkin: samplePipkin(() => refused('I do not know *sheaa*.')),
    });
    const command = await standIn.slash('echo', { text: 'x' });
    const message = await standIn.mention('x');
    expect(command.first).toMatchObject({
      content: String.raw`I do not know \*sheaa\*.`,
      aside: true,
    });
    expect(message.first).toMatchObject({
      content: String.raw`I do not know \*sheaa\*.`,
      aside: false,
    });
  });

  it('should show a quiet answer to the asking member alone', async () => {
    const { standIn } = await open({
      pipkin: samplePipkin(() => answered({ title: 'Settings', quiet: true })),
    });
    expect((await standIn.slash('echo', { text: 'x' })).first.aside).toBe(true);
  });

  it('should mention nobody and break out of nothing with hostile words', async () => {
    const hostile =
      '@everyone <@900000000000000203> <@&900000000000000102> ```\n# big ||hidden|| [link](https://example.org)';
    const { standIn } = await open({
      pipkin: samplePipkin(({ text }) =>
        answered({
          title: text,
          blocks: [
            { kind: 'text', text },
            {
              kind: 'table',
              columns: [{ title: 'Name', align: 'left' }],
              rows: [[text]],
            },
          ],
        }),
      ),
    });
    const { text } = await standIn.mention(hostile);
    const fences = [...text.matchAll(/(?<!\\)```/g)].map(({ index }) => index);
    expect(fences).toHaveLength(2);
    const outside = text.slice(0, fences[0]);
    expect(outside).not.toMatch(/@everyone|(?<!\\)<@|(?<!\\)\|\||(?<!\\)\[|https:\/\/|^# /m);
    expect(text.slice(fences[0])).toContain('@everyone');
    expect(text.endsWith('```')).toBe(true);
  });

  it('should send a long answer as two messages, and a very long one with all of it in a file', async () => {
    const rows = (count: number) =>
      Array.from({ length: count }, (_, at) => [`Lot ${at} of beeswax`, `${at}.5`]);
    const listed = (count: number) =>
      answered({
        title: 'Lots',
        blocks: [
          {
            kind: 'table',
            columns: [
              { title: 'Lot', align: 'left' },
              { title: 'g', align: 'right' },
            ],
            rows: rows(count),
          },
        ],
        next: [{ label: 'Help', say: 'help' }],
      });
    const { standIn } = await open({
      pipkin: samplePipkin(({ text }) => listed(Number(text.split(' ').at(-1)))),
    });
    const long = await (await standIn.slash('echo', { text: '100' })).until(2);
    expect(long.shown.map(({ buttons }) => buttons.length)).toEqual([0, 1]);
    for (const [name] of rows(100)) expect(long.text).toContain(name);
    const veryLong = await standIn.mention('1000');
    await sleep(100);
    expect(veryLong.shown).toHaveLength(1);
    expect(veryLong.first.content).toContain('pipkin-scale.txt');
    for (const [name] of rows(1000)) expect(veryLong.first.files[0]?.text).toContain(name);
  });

  it('should answer below where it may not reply', async () => {
    const { standIn, log } = await open();
    standIn.withheld.replies = true;
    expect((await standIn.mention('help')).first).toMatchObject({
      content: '**help**',
      replyTo: null,
    });
    expect(log.faults).toEqual([]);
  });

  it('should attach files', async () => {
    const file = {
      name: '../labels.pdf',
      type: 'application/pdf',
      bytes: new TextEncoder().encode('%PDF'),
    };
    const { standIn } = await open({
      pipkin: samplePipkin(() => answered({ title: 'Labels', files: [file] })),
    });
    const { first } = await standIn.slash('echo', { text: 'x' });
    expect(first.files).toEqual([{ name: 'labels.pdf', text: '%PDF' }]);
  });
});

describe('when something goes wrong', () => {
  it('should apologise with an id, log that id without any words of the member, and go on', async () => {
    const pipkin = samplePipkin(({ text }) => {
      if (text.includes('wobble')) throw new TypeError(`no such thing: ${text}`);
      return answered({ title: text });
    });
    const { standIn, log } = await open({ pipkin });
    const { first } = await standIn.slash('echo', { text: 'wobble' });
    const id = /Fault (\w+)/.exec(first.content)?.[1];
    expect(first.aside).toBe(true);
    expect(log.faults).toMatchObject([
      {
        event: 'chat.fault',
        fields: { id, during: 'interaction', name: 'TypeError' },
      },
    ]);
    expect(JSON.stringify(log)).not.toContain('wobble');
    expect((await standIn.mention('steady')).first.content).toBe('**steady**');
    expect((await standIn.mention('wobble')).first.content).toContain('Something went wrong on my side');
  });

  it('should survive an event it cannot make sense of', async () => {
    // The test runner listens for such rejections too, and would count this one against the test.
    const listening = process.listeners('unhandledRejection');
    process.removeAllListeners('unhandledRejection');
    try {
      const { standIn, log, running } = await open();
      standIn.raw({
        t: 'INTERACTION_CREATE',
        d: { id: '1', type: 2, data: { type: 1 } },
      });
      standIn.raw({ t: 'NO_SUCH_EVENT', d: null });
      expect((await standIn.mention('steady')).first.content).toBe('**steady**');
      expect(log.faults.map(({ event }) => event)).toEqual(['chat.stray-fault']);
      await running.stop();
    } finally {
      for (const listener of listening) process.on('unhandledRejection', listener);
    }
  });
});
