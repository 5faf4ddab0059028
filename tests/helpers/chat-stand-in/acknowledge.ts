import {
  type APIInteractionResponse,
  type APIModalInteractionResponseCallbackData,
  InteractionResponseType,
  type RESTPostAPIChannelMessageJSONBody,
} from 'discord-api-types/v10';
import { asMessage, type Exchange, shownFrom } from './exchange.ts';
import { formShown } from './forms.ts';
import { confirmation } from './manner.ts';
import { choiceListProblems, messageProblems } from './message-limits.ts';
import { modalProblems } from './modal-limits.ts';
import { freshId } from './people.ts';
import { type ApiState, type Call, missing, nothing, type Result, refused } from './state.ts';

/** Checks a message and shows it; the platform's refusal when there is something wrong with it. */
export const take = async (
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
  const key = `${exchange.channel} ${message.enforce_nonce ? message.nonce : undefined}`;
  const before = message.enforce_nonce ? state.nonces.get(key) : undefined;
  if (before) return { status: 200, body: asMessage(before, exchange.channel) };
  const shown = await shownFrom(message, files, id ?? freshId());
  if (message.enforce_nonce) state.nonces.set(key, shown);
  exchange.show(shown);
  return { status: 200, body: asMessage(shown, exchange.channel) };
};

const form = (
  state: ApiState,
  exchange: Exchange,
  shown: APIModalInteractionResponseCallbackData,
): Result => {
  const problems = modalProblems(shown);
  for (const problem of problems) state.problem(problem);
  if (!exchange.mayShowForm) state.problem('a form shown in answer to a form');
  if (problems.length > 0) return { status: 400, body: { code: 50035, message: 'Invalid Form Body' } };
  exchange.form = formShown(shown);
  exchange.changed();
  return nothing;
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
      for (const problem of choiceListProblems(choices)) state.problem(problem);
      exchange.offered = choices.map(({ name }) => name);
      exchange.changed();
      return nothing;
    }
    case InteractionResponseType.Modal:
      return form(state, exchange, response.data);
    default:
      state.problem(`interaction response ${response.type} not expected`);
      return {
        status: 400,
        body: { code: 50035, message: 'Invalid Form Body' },
      };
  }
};

export const acknowledge = async (state: ApiState, exchange: Exchange, call: Call): Promise<Result> => {
  const response = call.body as APIInteractionResponse;
  const tookMs = performance.now() - exchange.startedAt;
  // Sent again after an answer that broke off.
  if (exchange.acknowledgedMs !== undefined && state.brokenOff.has(call.parts.join('/')))
    return refused(400, 40060, 'Interaction has already been acknowledged.');
  if (exchange.acknowledgedMs !== undefined || tookMs > state.acknowledgeWithinMs) {
    state.problem(`interaction acknowledged ${exchange.acknowledgedMs === undefined ? 'too late' : 'twice'}`);
    return missing(10062, 'Unknown interaction');
  }
  const result = await acknowledged(state, exchange, call, response);
  // A refused answer leaves the interaction open, so that a better one may follow.
  if (result.status < 400) exchange.acknowledgedMs = tookMs;
  return confirmation(state.manner, exchange, call, result);
};

/** Follow-ups, and changes to the first answer, through an interaction's token. */
export const webhook = async (state: ApiState, call: Call): Promise<Result> => {
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
