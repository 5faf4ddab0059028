import {
  ChannelType,
  type Client,
  Events,
  GatewayDispatchEvents,
  type GatewayGuildCreateDispatchData,
  type GatewayMessageCreateDispatchData,
  type GatewayReadyDispatchData,
} from 'discord.js';
import { keepHeapLean } from '../lean-heap.ts';
import { recentMs } from './welcome.ts';

// The library keeps whatever it is told of a server for as long as the bot is in it: with ten thousand servers that was
// most of the memory. Channels are made again from the message or command that comes from one, roles are needed for their
// names, and nothing here looks at the rest.

/** Channels kept at once, of all servers and direct messages; the one nobody wrote in for longest is let go. */
const mostChannels = 2000;

type Told = { -readonly [K in keyof GatewayGuildCreateDispatchData]: GatewayGuildCreateDispatchData[K] };

type ToldRole = Told['roles'][number];

/** Of a role, what it is called, where it stands and what it allows: not how it looks. */
const leanRole = ({ id, name, permissions, position }: ToldRole) =>
  ({ id, name, permissions, position }) as ToldRole;

/**
 * Takes out of what is told of a server what is not needed. One just joined is welcomed in one of its channels: it is new,
 * or joined while the bot was away.
 */
export const lean = (told: Told, isNew: boolean, now: number): void => {
  if (!isNew && now - Date.parse(told.joined_at) > recentMs) told.channels = [];
  told.roles = told.roles.map(leanRole);
  told.threads = [];
  told.emojis = [];
  told.stickers = [];
  told.voice_states = [];
  told.presences = [];
  told.stage_instances = [];
  told.guild_scheduled_events = [];
  told.soundboard_sounds = [];
};

/** Marks a channel as just used, and lets the longest unused go. */
export const usedChannel = ({ channels }: Client, id: string, most = mostChannels): void => {
  const { cache } = channels;
  const channel = cache.get(id);
  if (!channel) return;
  cache.delete(id);
  cache.set(id, channel);
  const [oldest] = cache.values();
  if (cache.size <= most || !oldest) return;
  cache.delete(oldest.id);
  if ('guild' in oldest) oldest.guild?.channels.cache.delete(oldest.id);
};

/** From so many servers on, what is kept of them is most of the heap, and what it may grow by is worth saving. */
const manyServers = 1000;

/** Keeps the library's memory small. Before anything is heard. */
export const keepLean = (client: Client, clock: () => number): void => {
  client.ws.on(GatewayDispatchEvents.Ready, ({ guilds }: GatewayReadyDispatchData) => {
    if (guilds.length >= manyServers) keepHeapLean();
  });
  client.ws.on(GatewayDispatchEvents.GuildCreate, (told: Told) =>
    lean(told, !client.guilds.cache.has(told.id), clock()),
  );
  // A message may say what kind of channel it is from; where it does not, any that can be written in will do, and outside
  // servers it is a direct one. (Not for bots' own: the library takes the author for the one written to.)
  client.ws.on(GatewayDispatchEvents.MessageCreate, (message: GatewayMessageCreateDispatchData) => {
    if (message.guild_id !== undefined) message.channel_type ??= ChannelType.GuildText;
    else if (message.author.bot !== true) message.channel_type ??= ChannelType.DM;
  });
  client.on(Events.MessageCreate, ({ channelId }) => usedChannel(client, channelId));
  client.on(Events.InteractionCreate, ({ channelId }) => {
    if (channelId) usedChannel(client, channelId);
  });
};
