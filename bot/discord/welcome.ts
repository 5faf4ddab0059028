import { ChannelType, type Client, Events, type Guild, PermissionFlagsBits, Routes } from 'discord.js';
import type { Notes } from '../book/notes.ts';
import { chatReply } from '../render/discord.ts';
import { welcome } from '../words/welcome.ts';
import { buttonRows } from './buttons.ts';
import { guarded } from './faults.ts';
import type { ChatLog } from './front.ts';
import { unaskedBody } from './send.ts';

/** A group joined so recently, in milliseconds, is welcomed also when the bot was away at that moment. */
export const recentMs = 86_400_000;

/** The channel a server keeps for notices, or the first one in which everybody talks and the bot may. */
const channelOf = (guild: Guild): string | undefined => {
  const { me } = guild.members;
  const needed = PermissionFlagsBits.ViewChannel | PermissionFlagsBits.SendMessages;
  const open = [...guild.channels.cache.values()]
    .filter((channel) => channel.type === ChannelType.GuildText)
    .filter((channel) => me !== null && channel.permissionsFor(me).has(needed))
    .toSorted((a, b) => a.rawPosition - b.rawPosition);
  return (open.find(({ id }) => id === guild.systemChannelId) ?? open[0])?.id;
};

/** Greets one group, once for good: that it was done is written down first. */
const greet = async (guild: Guild, notes: Notes, log: ChatLog): Promise<void> => {
  const group = `guild:${guild.id}`;
  const channel = channelOf(guild);
  if (channel === undefined || (await notes.read(group, 'welcomed')) !== undefined) return;
  await notes.write(group, 'welcomed', { v: 1 });
  const { text } = chatReply({ topic: 'help', request: {}, answer: welcome }).messages[0];
  const body = unaskedBody(text, buttonRows([welcome.next ?? []]), `hello${guild.id}`);
  await guild.client.rest.post(Routes.channelMessages(channel), { body });
  log.info('chat.welcomed', { group });
};

/** Welcomes groups the bot comes to, and those it came to while it was away. Never rejects. */
export const welcomeGroups = async (client: Client<true>, notes: Notes, log: ChatLog): Promise<void> => {
  const welcomed = (guild: Guild) => guarded(log, 'welcome', () => greet(guild, notes, log));
  client.on(Events.GuildCreate, (guild) => void welcomed(guild));
  const fresh = [...client.guilds.cache.values()].filter(
    ({ joinedTimestamp }) => Date.now() - joinedTimestamp < recentMs,
  );
  for (const guild of fresh) await welcomed(guild);
};
