import {
  Client,
  type ClientOptions,
  GatewayIntentBits,
  LimitedCollection,
  Options,
  Partials,
} from 'discord.js';
import { onlyShard, type Shard } from '../book/shard.ts';
import { patiently } from './patience.ts';
import { makeWhole } from './whole-events.ts';

/** Most kept at once of each kind; what is not named is kept whole. */
const limits = {
  ApplicationCommandManager: 0,
  ApplicationEmojiManager: 0,
  AutoModerationRuleManager: 0,
  BaseGuildEmojiManager: 0,
  EntitlementManager: 0,
  GuildBanManager: 0,
  GuildEmojiManager: 0,
  GuildInviteManager: 0,
  GuildMemberManager: 10,
  GuildScheduledEventManager: 0,
  GuildSoundboardSoundManager: 0,
  GuildStickerManager: 0,
  MessageManager: 0,
  PresenceManager: 0,
  ReactionManager: 0,
  ReactionUserManager: 0,
  StageInstanceManager: 0,
  ThreadMemberManager: 0,
  UserManager: 100,
  VoiceStateManager: 0,
};

/** The one cache of all that keep nothing: it takes nothing in. A table each, for ten of them in every server, was 20 MB in 10,000. */
const nothing = new LimitedCollection<never, never>({ maxSize: 0 });

const limited = Options.cacheWithLimits(limits);

const smallCache: NonNullable<ClientOptions['makeCache']> = (...about) => {
  const cache = limited(...about);
  return cache instanceof LimitedCollection && cache.maxSize === 0 ? nothing : cache;
};

/**
 * A client that hears slash commands, mentions and direct messages. The privileged message-content intent is not
 * asked for: the platform sends the text of direct messages and of messages that mention the bot without it.
 *
 * Caches are kept small so that memory stays flat however many people write: a message is answered from what came
 * with it. Roles and channels stay (the library needs them); a few members and users per server do, because the
 * library finds the author of the message at hand among them.
 *
 * @param apiUrl - base URL of the HTTP API without a version, e.g. `http://127.0.0.1:8080/api`; the platform's own
 *   when left out. The gateway's address is what that API answers.
 */
export const chatClient = (apiUrl?: string, shard: Shard = onlyShard): Client => {
  const client = new Client({
    // Said outright: the library would otherwise read the environment's SHARDS, which means something else here.
    shards: [shard.index],
    shardCount: shard.count,
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
    // Without it, direct messages in channels not seen since the start would be dropped.
    partials: [Partials.Channel],
    allowedMentions: { parse: [], repliedUser: false },
    failIfNotExists: false,
    // A server that is away at the start is not waited for any longer: commands elsewhere must be answered in three seconds.
    waitGuildTimeout: 1500,
    rest: { makeRequest: patiently(), ...(apiUrl ? { api: apiUrl.replace(/\/+$/, '') } : {}) },
    makeCache: smallCache,
    sweepers: { ...Options.DefaultSweeperSettings },
  });
  makeWhole(client);
  return client;
};
