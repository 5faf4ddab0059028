import { MessageType } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { benchRoleId, guildId, hazel, otherBot, warden, wren } from '../helpers/chat-stand-in/people.ts';
import { roundTrips } from '../helpers/chat-stand-in/round-trips.ts';
import { answered, echoed, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

const open = useChat();

describe('being asked', () => {
  it('should answer a slash command through the same reader as a message', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const { first, deferred } = await standIn.slash(
      'scale',
      { recipe: 'Fernlea hand balm', count: 24, container: 'jar' },
      { member: wren },
    );
    expect(first.content).toBe('**scale Fernlea hand balm to 24 jars**');
    expect(first.aside).toBe(false);
    expect(deferred).toBe(false);
    expect(pipkin.heard).toHaveLength(1);
    expect(pipkin.heard[0]).toMatchObject({
      text: 'scale Fernlea hand balm to 24 jars',
      group: `guild:${guildId}`,
      member: { id: wren.id, name: 'wren', manages: false },
    });
    expect(pipkin.heard[0]?.member.roles).toEqual(expect.arrayContaining(['Bench', benchRoleId]));
    expect(Math.abs((pipkin.heard[0]?.at ?? 0) - Date.now())).toBeLessThan(5000);
  });

  it('should offer completions of the asking group only, within the limits', async () => {
    const names = [...Array.from({ length: 40 }, (_, at) => `Fernlea balm ${at}`), 'F'.repeat(101)];
    const pipkin = samplePipkin(echoed, names);
    const { standIn } = await open({ pipkin });
    expect(await standIn.autocomplete('scale', 'recipe', 'fernlea')).toEqual(names.slice(0, 25));
    expect(await standIn.autocomplete('scale', 'recipe', 'FFF')).toEqual([]);
    expect(await standIn.autocomplete('echo', 'text', 'fern')).toEqual([]);
    await standIn.autocomplete('scale', 'recipe', 'f', { direct: true });
    expect(pipkin.completed.map(({ group }) => group)).toEqual([
      `guild:${guildId}`,
      `guild:${guildId}`,
      `dm:${hazel.id}`,
    ]);
  });

  it('should answer a mention as a reply that does not ring, with the mention taken off', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const { id, first } = await standIn.mention('scale Fernlea hand balm to 24 tins');
    expect(first).toMatchObject({
      content: '**scale Fernlea hand balm to 24 tins**',
      replyTo: id,
    });
    expect(pipkin.heard[0]).toMatchObject({
      text: 'scale Fernlea hand balm to 24 tins',
      group: `guild:${guildId}`,
    });
  });

  it('should answer a direct message, whose writer manages their own book', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const { first } = await standIn.direct('convert 5 oz to g');
    expect(first.content).toBe('**convert 5 oz to g**');
    expect(pipkin.heard[0]).toMatchObject({
      group: `dm:${hazel.id}`,
      member: { manages: true, roles: [] },
    });
  });

  it('should know who manages the server, by command and by mention', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    await standIn.slash('echo', { text: 'a' }, { member: warden });
    await standIn.slash('echo', { text: 'b' }, { member: wren });
    await standIn.mention('c', { member: wren });
    expect(pipkin.heard.map(({ member }) => member.manages)).toEqual([true, false, false]);
    expect(pipkin.heard[2]?.member.roles).toContain('Bench');
  });

  it('should turn next steps into buttons that work after a restart, for whoever presses them', async () => {
    const pipkin = samplePipkin(({ text }) =>
      answered({
        title: text,
        next: [
          { label: '40 tins', say: 'scale Fernlea hand balm to 40 tins' },
          { label: '40 tins again', say: 'scale Fernlea hand balm to 40 tins' },
          { label: 'long', say: 'x'.repeat(100) },
          { label: 'too long', say: 'x'.repeat(1300) },
        ],
      }),
    );
    const { standIn, restart } = await open({ pipkin });
    const asked = await standIn.mention('scale Fernlea hand balm to 24 tins');
    expect(asked.first.buttons.map(({ label }) => label)).toEqual(['40 tins', 'long']);
    await restart();
    const long = await standIn.press(asked.first.buttons[1]?.id ?? '');
    expect(long.first.content).toBe(`**${'x'.repeat(100)}**`);
    const pressed = await standIn.press(asked.first.buttons[0]?.id ?? '', {
      member: wren,
    });
    expect(pressed.first.content).toBe('**scale Fernlea hand balm to 40 tins**');
    expect(pipkin.heard[2]).toMatchObject({
      group: `guild:${guildId}`,
      member: { id: wren.id, manages: false },
    });
  });

  it('should turn away politely what it does not know', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const command = await standIn.slash('brew');
    const button = await standIn.press('old-button');
    const elsewhere = await standIn.slash('echo', { text: 'a' }, { privateGroup: true });
    expect([command, button, elsewhere].map(({ first }) => first.aside)).toEqual([true, true, true]);
    expect(command.first.content).toContain('I do not know that command');
    expect(button.first.content).toContain('no longer of use');
    expect(elsewhere.first.content).toContain('not in group conversations');
    expect(pipkin.heard).toEqual([]);
  });

  it('should pass over bots, webhooks, notices, empty messages and talk not meant for it', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const mention = '<@900000000000000001> help';
    const ignored = [
      standIn.write({ text: mention, member: otherBot }),
      standIn.write({
        text: mention,
        as: { webhook_id: '900000000000000301' },
      }),
      standIn.write({
        text: mention,
        as: { type: MessageType.ChannelPinnedMessage },
      }),
      standIn.write({ text: '<@900000000000000001>' }),
      standIn.write({ text: '   ', direct: true }),
      standIn.write({ text: 'anybody seen the beeswax?' }),
      standIn.write({
        text: mention,
        member: { id: '900000000000000001', name: 'pipkin', bot: true },
      }),
    ];
    await standIn.mention('help');
    expect(pipkin.heard.map(({ text }) => text)).toEqual(['help']);
    expect(ignored.flatMap(({ shown }) => shown)).toEqual([]);
  });
});

describe('many at once', () => {
  it('should answer each of many commands', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin, limits: { member: { burst: 200, perMinute: 60 } } });
    const { latencies } = await roundTrips(standIn, {
      n: 200,
      concurrency: 16,
      command: { name: 'echo', options: { text: 'many' } },
    });
    expect(latencies).toHaveLength(200);
    expect(pipkin.heard).toHaveLength(200);
  });
});
