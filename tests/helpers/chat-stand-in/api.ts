import type { IncomingMessage, ServerResponse } from 'node:http';
import {
  type APIGatewayBotInfo,
  type APIInteractionResponse,
  InteractionResponseType,
  type RESTPostAPIChannelMessageJSONBody,
} from 'discord-api-types/v10';
import { type Commands, keptCommands } from './commands.ts';
import { asMessage, type Exchange, type Shown, shownFrom } from './exchange.ts';
import { messageProblems } from './message-limits.ts';
import { botUser, directChannel, freshId, guild } from './people.ts';
import { type RequestBody, readBody } from './read-body.ts';

/** What the HTTP side shares with the rest of the stand-in. */
export interface ApiState {
  readonly token: string;
  readonly acknowledgeWithinMs: number;
  readonly gateway: () => string;
  /** What it advises a bot to run in. */
  readonly shards: number;
  readonly problem: (what: string) => void;
  /** Interactions by token; messages by their own id and, the last of each, by channel. */
  readonly interactions: Map<string, Exchange>;
  readonly asked: Map<string, Exchange>;
  /** What the bot is not allowed in the channel; the channels that were deleted, or in which it may not write. */
  readonly withheld: { replies: boolean; gone: Set<string>; silent: Set<string> };
  /** What the bot posted without being asked. */
  readonly unasked: Unasked[];
  readonly commands: Commands;
}

/** A message nobody asked for, in the rows of buttons it was sent with. */
export interface Unasked {
  readonly channel: string;
  readonly nonce: string;
  readonly shown: Shown;
  readonly rows: readonly number[];
}

interface Call extends RequestBody {
  readonly method: string;
  readonly parts: readonly string[];
}

interface Result {
  readonly status: number;
  readonly body?: unknown;
}

const nothing: Result = { status: 204 };
const missing = (code: number, message: string): Result => ({
  status: 404,
  body: { code, message },
});

/** Checks a message and shows it; the platform's refusal when there is something wrong with it. */
const take = async (
  state: ApiState,
  exchange: Exchange,
  { body, files }: Call,
  id?: string,
): Promise<Result> => {
  const message = (body ?? {}) as RESTPostAPIChannelMessageJSONBody;
  const problems = messageProblems(message, files);
  if (problems.length > 0) {
    for (const problem of problems) state.problem(problem);
    return { status: 400, body: { code: 50035, message: 'Invalid Form Body' } };
  }
  const shown = await shownFrom(message, files, id ?? freshId());
  exchange.show(shown);
  return { status: 200, body: asMessage(shown, exchange.channel) };
};

/** Does what a first answer to an interaction says. */
const acknowledged = async (
  state: ApiState,
  exchange: Exchange,
  call: Call,
  response: APIInteractionResponse,
): Promise<Result> => {
  switch (response.type) {
    case InteractionResponseType.ChannelMessageWithSource: {
      const result = await take(state, exchange, { ...call, body: response.data }, `${exchange.id}0`);
      return result.status === 200 ? nothing : result;
    }
    case InteractionResponseType.DeferredChannelMessageWithSource:
      exchange.deferred = true;
      return nothing;
    case InteractionResponseType.ApplicationCommandAutocompleteResult: {
      const choices = response.data.choices ?? [];
      const sound = ({ name, value }: { name: string; value: string | number }) =>
        name.length >= 1 && name.length <= 100 && String(value).length <= 100;
      if (choices.length > 25 || !choices.every(sound)) state.problem('completions outside the limits');
      exchange.offered = choices.map(({ name }) => name);
      exchange.changed();
      return nothing;
    }
    default:
      state.problem(`interaction response ${response.type} not expected`);
      return {
        status: 400,
        body: { code: 50035, message: 'Invalid Form Body' },
      };
  }
};

const acknowledge = async (state: ApiState, exchange: Exchange, call: Call): Promise<Result> => {
  const response = call.body as APIInteractionResponse;
  const tookMs = performance.now() - exchange.startedAt;
  if (exchange.acknowledgedMs !== undefined || tookMs > state.acknowledgeWithinMs) {
    state.problem(`interaction acknowledged ${exchange.acknowledgedMs === undefined ? 'too late' : 'twice'}`);
    return missing(10062, 'Unknown interaction');
  }
  const result = await acknowledged(state, exchange, call, response);
  // A refused answer leaves the interaction open, so that a better one may follow.
  if (result.status < 400) exchange.acknowledgedMs = tookMs;
  return result;
};
/** Follow-ups, and changes to the first answer, through an interaction's token. */
const webhook = async (state: ApiState, call: Call): Promise<Result> => {
  const exchange = state.interactions.get(call.parts[2] ?? '');
  if (!exchange) return missing(10015, 'Unknown Webhook');
  if (exchange.acknowledgedMs === undefined) state.problem('follow-up before the acknowledgement');
  const original = `${exchange.id}0`;
  if (call.method === 'POST' && call.parts.length === 3) return take(state, exchange, call);
  if (call.parts[3] !== 'messages' || call.parts[4] !== '@original') return missing(10008, 'Unknown Message');
  if (call.method === 'PATCH') return take(state, exchange, call, original);
  if (call.method !== 'DELETE') return missing(0, 'Not found');
  exchange.shown = exchange.shown.filter(({ id }) => id !== original);
  return nothing;
};

const refused = (status: number, code: number, text: string): Result => ({
  status,
  body: { code, message: text },
});

/** As the documentation has it (resources/message, from memory): an enforced nonce posts once and gives the first message back. */
const unasked = async (state: ApiState, channel: string, call: Call): Promise<Result> => {
  const body = call.body as RESTPostAPIChannelMessageJSONBody;
  if (state.withheld.gone.has(channel)) return refused(404, 10003, 'Unknown Channel');
  if (state.withheld.silent.has(channel)) return refused(403, 50013, 'Missing Permissions');
  const nonce = String(body.nonce);
  if (nonce.length > 25) state.problem(`nonce of ${nonce.length} characters, more than 25`);
  const before = state.unasked.find((each) => each.nonce === nonce && each.channel === channel);
  if (before) return { status: 200, body: asMessage(before.shown, channel) };
  for (const problem of messageProblems(body, call.files)) state.problem(problem);
  const shown = await shownFrom(body, call.files);
  state.unasked.push({
    channel,
    nonce,
    shown,
    rows: (body.components ?? []).map((row) => ('components' in row ? row.components.length : 0)),
  });
  return { status: 200, body: asMessage(shown, channel) };
};

/** Messages of a channel; the platform gives no nonce back with old ones. */
const readBack = (state: ApiState, channel: string): Result => ({
  status: 200,
  body: state.unasked
    .filter((each) => each.channel === channel)
    .map(({ shown }) => asMessage(shown, channel)),
});

const message = async (state: ApiState, call: Call): Promise<Result> => {
  const channel = call.parts[1] ?? '';
  if (call.method === 'GET' && call.parts[2] === 'messages') return readBack(state, channel);
  if (call.parts[2] === 'messages' && isDaily(call)) return unasked(state, channel, call);
  const { message_reference: reference } = (call.body ?? {}) as RESTPostAPIChannelMessageJSONBody;
  const exchange = state.asked.get(reference?.message_id ?? call.parts[1] ?? '');
  if (!exchange) return missing(10003, 'Unknown Channel');
  if (call.parts[2] === 'typing') {
    exchange.typing += 1;
    return nothing;
  }
  if (reference && state.withheld.replies)
    return { status: 400, body: { code: 160002, message: 'Cannot reply' } };
  return call.parts[2] === 'messages' ? take(state, exchange, call) : missing(0, 'Not found');
};

const gatewayInfo = (state: ApiState): APIGatewayBotInfo => ({
  url: state.gateway(),
  shards: state.shards,
  session_start_limit: {
    total: 1000,
    remaining: 999,
    reset_after: 60_000,
    max_concurrency: 16,
  },
});

const interaction = async (state: ApiState, call: Call): Promise<Result> => {
  const exchange = state.interactions.get(call.parts[2] ?? '');
  return exchange && call.parts[3] === 'callback'
    ? acknowledge(state, exchange, call)
    : missing(10062, 'Unknown interaction');
};

const commands = (state: ApiState, { method, body }: Call): Result => {
  const { commands } = state;
  if (method === 'PUT') {
    commands.writes += 1;
    commands.list = keptCommands(body, state.problem);
  } else commands.reads += 1;
  return { status: 200, body: commands.list };
};

/** The client gives every message a nonce of digits of its own; ours are letters too. */
const isDaily = ({ body }: Call): boolean => /[^\d]/.test(String((body as { nonce?: unknown }).nonce ?? ''));

const users = (state: ApiState, { method, parts, body }: Call): Result => {
  if (method !== 'POST') return { status: 200, body: botUser };
  const { recipient_id: id } = body as { recipient_id: string };
  if (parts[2] !== 'channels') state.problem(`POST ${parts.join('/')} not expected`);
  return { status: 200, body: directChannel({ id, name: 'owner' }) };
};

/** By the first part of the address; the parts behind it are looked at there. */
const routes: Readonly<Record<string, (state: ApiState, call: Call) => Result | Promise<Result>>> = {
  gateway: (state) => ({ status: 200, body: gatewayInfo(state) }),
  users,
  guilds: () => ({ status: 200, body: guild }),
  applications: commands,
  channels: message,
  webhooks: webhook,
  interactions: interaction,
};

const route = async (state: ApiState, call: Call): Promise<Result> => {
  const answer = routes[call.parts[0] ?? ''];
  const result = await answer?.(state, call);
  const known = result?.status === 404 && state.withheld.gone.has(call.parts[1] ?? '');
  if (!result || (result.status === 404 && !known))
    state.problem(`${call.method} ${call.parts.join('/')} not expected`);
  return result ?? missing(0, '404: Not Found');
};

/** Interaction tokens stand for themselves; everything else needs the bot's token. */
const admitted = (state: ApiState, request: IncomingMessage, parts: readonly string[]): boolean =>
  ['interactions', 'webhooks'].includes(parts[0] ?? '') ||
  request.headers.authorization === `Bot ${state.token}`;

/** Answers one HTTP request of the client as the platform's API does. */
export const respond = async (
  state: ApiState,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> => {
  const { pathname } = new URL(request.url ?? '/', 'http://stand-in');
  const parts = pathname
    .split('/')
    .filter((part) => part !== '')
    .map(decodeURIComponent);
  const [api, version, ...rest] = parts;
  if (api !== 'api' || version !== 'v10') state.problem(`address ${pathname} is not under /api/v10`);
  const call = {
    method: request.method ?? 'GET',
    parts: rest,
    ...(await readBody(request)),
  };
  const result = admitted(state, request, rest)
    ? await route(state, call)
    : { status: 401, body: { code: 0, message: '401: Unauthorized' } };
  if (result.body === undefined) response.writeHead(result.status).end();
  else {
    response.writeHead(result.status, { 'content-type': 'application/json' });
    response.end(JSON.stringify(result.body));
  }
};
