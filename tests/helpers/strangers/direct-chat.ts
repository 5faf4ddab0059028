import { type Client, DiscordAPIError, Events } from 'discord.js';
import type { GatewayInteractionCreateDispatchData } from 'discord-api-types/v10';
import { chatClient } from '../../../bot/discord/client.ts';
import type { Front } from '../../../bot/discord/front.ts';
import { onInteraction } from '../../../bot/discord/interactions.ts';
import { onMessage } from '../../../bot/discord/messages.ts';
import { route } from '../chat-stand-in/api.ts';
import { messageCreated, type Place, type Written } from '../chat-stand-in/asked.ts';
import { Exchange } from '../chat-stand-in/exchange.ts';
import { botUser, channelId, directChannelId, guild, hazel, textChannel } from '../chat-stand-in/people.ts';
import { type ApiState, type Call, freshState, type Result } from '../chat-stand-in/state.ts';

// The group chat from the event to the request, with the real client and the stand-in's own checks, but without a network
// between them: some thousand events a second.

interface RawFile {
  readonly name: string;
  readonly data: string | Uint8Array;
}

interface Request {
  readonly body?: unknown;
  readonly files?: readonly RawFile[];
}

const filesOf = ({ files = [] }: Request): readonly File[] =>
  files.map(({ name, data }) => new File([typeof data === 'string' ? data : new Uint8Array(data)], name));

/** Parts of the library that its types do not show: how an event is handled once it has come over the wire. */
interface Inside {
  readonly actions: Readonly<Record<'InteractionCreate' | 'MessageCreate', { handle(event: unknown): void }>>;
  readonly guilds: { _add(guild: unknown): void };
  readonly users: { _add(user: unknown): unknown };
  readonly rest: Record<string, unknown>;
  user: unknown;
}

/** The client's own road to the platform, led to the stand-in's answers. */
const withoutNetwork = (client: Client, state: ApiState): void => {
  const { rest } = client as unknown as Inside;
  const answered =
    (method: string) =>
    async (path: string, request: Request = {}) => {
      const parts = path
        .split('/')
        .filter((part) => part !== '')
        .map(decodeURIComponent);
      const call: Call = { method, parts, body: structuredClone(request.body), files: filesOf(request) };
      const result: Result = state.trouble(call)?.result ?? (await route(state, call));
      if (result.status < 400) return result.body;
      const body = result.body as { code: number; message: string };
      throw new DiscordAPIError(body, body.code, result.status, method, path, {
        body: undefined,
        files: undefined,
      });
    };
  for (const method of ['get', 'post', 'put', 'patch', 'delete'])
    rest[method] = answered(method.toUpperCase());
};

export interface DirectChat {
  /** What the bot did that the platform would refuse. */
  readonly problems: readonly string[];
  readonly state: ApiState;
  /** An interaction of this id; resolves when the bot is done with it. */
  interact(
    place: Place,
    id: string,
    event: (token: string) => GatewayInteractionCreateDispatchData,
  ): Promise<Exchange>;
  /** A message of this id; resolves when the bot is done with it. */
  write(id: string, written: Written): Promise<Exchange>;
  close(): Promise<void>;
}

/** @param servers - servers beside the hall in which plain messages are heard */
export const directChat = (front: Front, servers: readonly NonNullable<Place['server']>[]): DirectChat => {
  const problems: string[] = [];
  const state = freshState({
    token: 'a-token-of-no-worth',
    acknowledgeWithinMs: 60_000,
    gateway: () => '',
    shards: 1,
    problem: (what) => problems.push(what),
    manner: {},
  });
  const client = chatClient('http://127.0.0.1:9/api');
  const inside = client as unknown as Inside;
  withoutNetwork(client, state);
  inside.user = inside.users._add(botUser);
  for (const server of servers)
    inside.guilds._add({
      ...guild,
      id: server.guild,
      roles: guild.roles.map((role) => (role.id === guild.id ? { ...role, id: server.guild } : role)),
      channels: [{ ...textChannel, id: server.channel, guild_id: server.guild }],
    });
  let work: Promise<void> = Promise.resolve();
  client.on(Events.InteractionCreate, (interaction) => {
    work = onInteraction(front, interaction);
  });
  client.on(Events.MessageCreate, (message) => {
    work = onMessage(front, message);
  });
  const channelOf = ({ direct, server, member = hazel }: Place): string =>
    direct ? directChannelId(member) : (server?.channel ?? channelId);

  /** The library hands an event on at once, so what was begun by it is known when it returns. */
  const handled = (handle: () => void): Promise<void> => {
    work = Promise.resolve();
    handle();
    return work;
  };
  return {
    problems,
    state,
    async interact(place, id, event) {
      const exchange = new Exchange(channelOf(place), id);
      const token = `interaction-${id}`;
      state.interactions.set(token, exchange);
      // What could not be answered is told in the channel.
      state.asked.set(exchange.channel, exchange);
      await handled(() => inside.actions.InteractionCreate.handle(event(token)));
      state.interactions.delete(token);
      return exchange;
    },
    async write(id, written) {
      const exchange = new Exchange(channelOf(written), id);
      state.asked.set(id, exchange);
      state.asked.set(exchange.channel, exchange);
      await handled(() => inside.actions.MessageCreate.handle(messageCreated(id, written).d));
      state.asked.delete(id);
      state.nonces.clear();
      return exchange;
    },
    close: () => client.destroy(),
  };
};
