import type { IncomingMessage, ServerResponse } from 'node:http';
import { setTimeout as sleep } from 'node:timers/promises';
import type { APIGatewayBotInfo, RESTPostAPIChannelMessageJSONBody } from 'discord-api-types/v10';
import { acknowledge, take, webhook } from './acknowledge.ts';
import { keptCommands } from './commands.ts';
import { asMessage, type Exchange, shownFrom } from './exchange.ts';
import { messageProblems } from './message-limits.ts';
import { botUser, directChannel, guild, isDirect } from './people.ts';
import { readBody } from './read-body.ts';
import { type ApiState, type Call, missing, nothing, type Result, refused } from './state.ts';

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

/** Written to somebody directly who asked nothing there; the platform's refusal when they do not want that. */
const direct = async (state: ApiState, channel: string, call: Call): Promise<Result> => {
  if (state.withheld.directs) return refused(403, 50007, 'Cannot send messages to this user');
  const body = call.body as RESTPostAPIChannelMessageJSONBody;
  for (const problem of messageProblems(body, call.files)) state.problem(problem);
  const shown = await shownFrom(body, call.files);
  state.directs.set(channel, [...(state.directs.get(channel) ?? []), shown]);
  return { status: 200, body: asMessage(shown, channel) };
};

/** An answer to something asked in the channel, or the typing sign before it. */
const answered = (
  state: ApiState,
  exchange: Exchange,
  call: Call,
  isReply: boolean,
): Result | Promise<Result> => {
  if (call.parts[2] === 'typing') {
    exchange.typing += 1;
    return nothing;
  }
  if (isReply && state.withheld.replies) return refused(400, 160002, 'Cannot reply');
  return call.parts[2] === 'messages' ? take(state, exchange, call) : missing(0, 'Not found');
};

const message = async (state: ApiState, call: Call): Promise<Result> => {
  const channel = call.parts[1] ?? '';
  if (call.method === 'GET' && call.parts[2] === 'messages') return readBack(state, channel);
  if (call.parts[2] === 'messages' && isDaily(call)) return unasked(state, channel, call);
  const { message_reference: reference } = (call.body ?? {}) as RESTPostAPIChannelMessageJSONBody;
  const exchange = state.asked.get(reference?.message_id ?? channel);
  if (exchange) return answered(state, exchange, call, reference !== undefined);
  return isDirect(channel) ? direct(state, channel, call) : missing(10003, 'Unknown Channel');
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
  if (method === 'GET' && state.manner.secretive) return refused(405, 0, '405: Method Not Allowed');
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

/** Does what one request asks and gives the platform's answer. */
export const route = async (state: ApiState, call: Call): Promise<Result> => {
  const answer = routes[call.parts[0] ?? ''];
  const result = await answer?.(state, call);
  const known = result?.status === 404 && state.withheld.gone.has(call.parts[1] ?? '');
  if (!result || (result.status === 404 && !known))
    state.problem(`${call.method} ${call.parts.join('/')} not expected`);
  return result ?? missing(0, '404: Not Found');
};

/** Does what is asked, as far as the trouble of the moment lets it. */
const troubled = async (state: ApiState, call: Call): Promise<Result> => {
  const { delayMs = 0, result, after = false } = state.trouble(call) ?? {};
  if (delayMs > 0) await sleep(delayMs);
  if (result && !after) return result;
  if (after) state.brokenOff.add(call.parts.join('/'));
  const done = await route(state, call);
  return result ?? done;
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
    ? await troubled(state, call)
    : { status: 401, body: { code: 0, message: '401: Unauthorized' } };
  if (result.body === undefined) response.writeHead(result.status, result.headers).end();
  else {
    response.writeHead(result.status, { 'content-type': 'application/json', ...result.headers });
    response.end(JSON.stringify(result.body));
  }
};
