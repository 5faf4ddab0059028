import { setTimeout as sleep } from 'node:timers/promises';
import { ButtonStyle, ComponentType, MessageFlags } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { messageProblems } from '../helpers/chat-stand-in/message-limits.ts';
import { echoed, echoTopic, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { chatWith } from '../helpers/chat-stand-in/with-bot.ts';

// The end-to-end tests lean on the stand-in noticing what the platform would refuse, so that is tested too.

const sound = { content: 'Good morning', allowed_mentions: { parse: [] } };
const button = (id: string, label = 'Again') => ({
  type: ComponentType.Button as const,
  style: ButtonStyle.Secondary as const,
  custom_id: id,
  label,
});
const row = (...components: ReturnType<typeof button>[]) => ({
  type: ComponentType.ActionRow as const,
  components,
});

describe('the stand-in', () => {
  it('should find nothing wrong with a sound message', () => {
    expect(messageProblems({ ...sound, components: [row(button('a'), button('b'))] }, [])).toEqual([]);
  });

  it.each([
    ['2001 characters', { ...sound, content: 'x'.repeat(2001) }],
    ['no words', { ...sound, content: '' }],
    ['no allowed mentions', { content: 'Good morning' }],
    [
      'mentions allowed',
      {
        content: 'Good morning',
        allowed_mentions: { parse: [], replied_user: true },
      },
    ],
    ['mentions not excluded', { content: 'Good morning', allowed_mentions: {} }],
    ['a long button id', { ...sound, components: [row(button('x'.repeat(101)))] }],
    ['a long label', { ...sound, components: [row(button('a', 'x'.repeat(81)))] }],
    ['two buttons of one id', { ...sound, components: [row(button('a'), button('a'))] }],
    [
      'six buttons in a row',
      {
        ...sound,
        components: [row(...['a', 'b', 'c', 'd', 'e', 'f'].map((id) => button(id)))],
      },
    ],
    ['a flag not meant for it', { ...sound, flags: MessageFlags.Crossposted }],
  ])('should refuse a message with %s', (_, body) => {
    expect(messageProblems(body, [])).toHaveLength(1);
  });

  it('should notice an interaction acknowledged too late', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(120);
      return echoed(heard);
    });
    const { standIn, log, close } = await chatWith({
      pipkin,
      topics: [echoTopic],
      acknowledgeWithinMs: 50,
    });
    standIn.slashSent('echo', { text: 'late' });
    await sleep(250);
    await close();
    expect(standIn.problems).toContain('interaction acknowledged too late');
    expect(log.faults.map(({ event }) => event)).toEqual(['chat.fault', 'chat.apology-not-sent']);
  });
});
