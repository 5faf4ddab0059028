import { type Client, Events, Status } from 'discord.js';
import { memoryNotes, type Notes } from '../book/notes.ts';
import { onlyShard, type Shard } from '../book/shard.ts';
import type { Pipkin } from '../handle.ts';
import { defaultLimits, type Limits } from '../limit.ts';
import { faultFields } from '../log.ts';
import type { Sender } from '../remind/sender.ts';
import { seenIds } from '../seen.ts';
import { slashCommands } from '../slash.ts';
import type { Topic } from '../topic.ts';
import type { Standing } from '../watch/watch.ts';
import { chatClient } from './client.ts';
import { messageCommands } from './context-menu.ts';
import { dailySender } from './daily-sender.ts';
import { guarded } from './faults.ts';
import { type ChatLog, defaultPace, type Front, type Pace } from './front.ts';
import { gate } from './gate.ts';
import { onInteraction } from './interactions.ts';
import { inviteLink } from './invite.ts';
import { keepLean } from './lean.ts';
import { type Leaver, leaver } from './leaving.ts';
import { longIds } from './long-ids.ts';
import { onMessage } from './messages.ts';
import { registerCommands } from './register.ts';
import { ChatStartError, place, ShutOutError, startError } from './start-error.ts';
import { welcomeGroups } from './welcome.ts';

export interface DiscordOptions {
  readonly token: string;
  /** Base URL of the platform's HTTP API without a version; its own when left out. */
  readonly apiUrl?: string | undefined;
  readonly pipkin: Pipkin;
  readonly topics: readonly Topic[];
  readonly log: ChatLog;
  readonly pace?: Partial<Pace>;
  readonly limits?: Partial<Limits>;
  /** Where what buttons mean is kept when it is too long for them; in memory when left out. */
  readonly notes?: Notes;
  /** Called once inside, with a way to post what nobody asked for; what it starts is stopped before the chat is left. */
  readonly remind?: (sender: Sender) => Promise<Stoppable | undefined>;
  /** The groups this process serves; all of them when left out. */
  readonly shard?: Shard;
}

interface Stoppable {
  stop(): Promise<void>;
}

export interface RunningChat extends Leaver {
  /** Servers the bot was in when it entered. */
  readonly guilds: number;
  /** Where others take it into their servers. */
  readonly invite: string;
  /** How it stands in the chat now. */
  standing(): Standing;
}

const standingOf = ({ ws, guilds }: Client): Standing => ({
  connected: ws.shards.size > 0 && ws.shards.every(({ status }) => status === Status.Ready),
  guilds: guilds.cache.size,
  pingMs: ws.ping >= 0 ? ws.ping : undefined,
});

const ready = (client: Client): Promise<Client<true>> =>
  new Promise((resolve) => client.once(Events.ClientReady, resolve));

const listen = (client: Client, front: Front, busy: Set<Promise<void>>): void => {
  const track = (work: Promise<void>) => {
    const done = work.finally(() => busy.delete(done));
    busy.add(done);
  };
  const seen = seenIds();
  client.on(Events.InteractionCreate, (interaction) => {
    if (!seen(interaction.id)) track(onInteraction(front, interaction));
  });
  client.on(Events.MessageCreate, (message) => {
    if (!seen(message.id)) track(onMessage(front, message));
  });
  client.on(Events.Error, (fault) => front.log.error('chat.error', faultFields(fault, 'info')));
  client.on(Events.ShardError, (fault, shard) =>
    front.log.error('chat.gateway-error', {
      shard,
      ...faultFields(fault, 'info'),
    }),
  );
  client.on(Events.ShardReconnecting, (shard) => front.log.info('chat.reconnecting', { shard }));
  client.on(Events.ShardResume, (shard, replayed) => front.log.info('chat.resumed', { shard, replayed }));
};

const register = (client: Client<true>, { topics, log }: DiscordOptions): Promise<void> =>
  guarded(log, 'registering commands', async () => {
    const commands = [...slashCommands(topics), ...messageCommands];
    const written = await registerCommands(client.rest, client.application.id, commands);
    log.info('chat.commands', { count: commands.length, written });
  });

/**
 * Enters the group chat, registers the slash commands where they differ, and answers until stopped. Resolves when
 * ready. A dropped connection is taken up again by the library; close the store when `stopped` resolves.
 * @throws {ChatStartError} when the token is refused or the platform cannot be reached
 */
export const startDiscord = async (options: DiscordOptions): Promise<RunningChat> => {
  const { token, apiUrl, pipkin, topics, log, shard = onlyShard } = options;
  const pace = { ...defaultPace, ...options.pace };
  const client = chatClient(apiUrl, shard);
  keepLean(client, Date.now);
  const busy = new Set<Promise<void>>();
  const notes = options.notes ?? memoryNotes();
  listen(
    client,
    {
      pipkin,
      topics: new Map(topics.map((topic) => [topic.name, topic])),
      log,
      pace,
      apiUrl,
      gate: gate({ ...defaultLimits, ...options.limits }, () => busy.size),
      longIds: longIds(notes, (fault) => log.error('chat.id-not-kept', faultFields(fault, 'info'))),
      clock: Date.now,
    },
    busy,
  );
  const entered = ready(client);
  try {
    await client.login(token);
  } catch (fault) {
    throw startError(fault, apiUrl);
  }
  let reminding: Stoppable | undefined;
  const first = async (): Promise<void> => reminding?.stop();
  const { stop, stopped, reason } = leaver(client, log, { busy, first, finishWithinMs: pace.finishWithinMs });
  const here = await Promise.race([entered, stopped]);
  if (here === 'shut-out') throw new ShutOutError(reason());
  if (typeof here === 'string') throw new ChatStartError(`Stopped before ${place(apiUrl)} let me in.`);
  // The commands are the same for all: one registers them.
  if (shard.index === 0) await register(here, options);
  await welcomeGroups(here, notes, log);
  reminding = await options.remind?.(dailySender(here, log));
  const guilds = here.guilds.cache.size;
  const invite = inviteLink(here.application.id);
  log.info('chat.ready', { shard: shard.index, guilds, commands: topics.length, invite });
  return { guilds, invite, standing: () => standingOf(here), stop, stopped, reason };
};
