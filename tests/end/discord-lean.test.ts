import { ChannelType, MessageType } from 'discord-api-types/v10';
import { expect, it } from 'vitest';
import { serverOf } from '../helpers/chat-stand-in/crowd.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

// Of a server's channels nothing is kept: a message has to be answered from what comes with it.
const openChat = useChat();

it.each([
  ['a channel nobody spoke in before', {}],
  ['a channel whose kind is not told', { channel_type: undefined }],
  ['a reply to another message', { type: MessageType.Reply }],
  ['a thread', { channel_type: ChannelType.PublicThread }],
  ['the chat of a voice channel', { channel_type: ChannelType.GuildVoice }],
])('should answer in %s', async (_, as) => {
  const { standIn } = await openChat();
  const exchange = standIn.write({ text: '<@900000000000000001> hello there', as: as as never });
  expect((await exchange.until(1)).text).toContain('hello there');
});

it('should answer a command in each of many servers, by their own members', async () => {
  const { standIn, running } = await openChat({ crowd: 50 });
  expect(running.guilds).toBe(51);
  for (const at of [0, 17, 49]) {
    const text = `in hall number ${at}`;
    expect((await standIn.slash('echo', { text }, { server: serverOf(at) })).text).toContain(text);
  }
});
