// Answers to interactions: the first one within three seconds and once, then edits and follow-ups while the token lasts.

import { isThing, type Wire } from './check.ts';
import type { Asked, Message } from './ledger.ts';
import { callbackFaults, messageFaults, type Way } from './limits.ts';
import { type Answer, type Desk, invalid, type Request, type Route, refused } from './rest-desk.ts';
import { userObject } from './world.ts';

const unknown = (): Answer => refused(404, 10062, 'Unknown interaction');
const tokenLife = 15 * 60_000;

function interactionOf(desk: Desk, one: Asked): Wire {
  const by = desk.world.everyPerson().find(({ id }) => id === one.what.by) ?? desk.world.bot;
  return {
    type: one.what.type === 2 ? 20 : 19,
    webhook_id: desk.world.bot.id,
    application_id: desk.world.bot.id,
    interaction_metadata: {
      id: one.what.id,
      type: one.what.type,
      user: userObject(by),
      authorizing_integration_owners: { '0': desk.world.place(one.what.channel)?.group?.id ?? '0' },
    },
  };
}

function keep(one: Asked, made: Message, body: unknown, uploads: Request['uploads']): void {
  one.messages.push(made);
  one.bodies.push(JSON.stringify([body, uploads.map(({ name, bytes }) => [name, bytes])]));
}

/** Whether an interaction can still be answered for the first time, and how it is refused when not. */
function gate(desk: Desk, one: Asked | undefined, id: string): Answer | undefined {
  if (one?.what.id !== id) {
    desk.ledger.fault('unknown', `an answer to an interaction there never was: ${id}`);
    return unknown();
  }
  const now = Date.now();
  one.attempts.push(now);
  if (one.what.isExpired) return unknown();
  if (one.ackedAt !== undefined) {
    // Where the answer to the first one was lost on its way, the bot cannot know.
    if (!one.isForgotten) desk.ledger.fault('twice', `${one.what.label} was answered twice`);
    return refused(400, 40060, 'Interaction has already been acknowledged.');
  }
  if (desk.ledger.isLate(one, now)) {
    desk.ledger.fault('late', `${one.what.label} after ${now - (one.deliveredAt ?? 0)} ms`);
    return unknown();
  }
  return undefined;
}

function callback(desk: Desk, { params, body, uploads, query }: Request): Answer {
  const one = desk.ledger.byToken(String(params[1]));
  const refusal = gate(desk, one, String(params[0]));
  if (refusal || !one) return refusal ?? unknown();
  const faults = callbackFaults(body, uploads, {
    type: one.what.type,
    fromMessage: one.source !== undefined,
    optionType: one.what.optionType,
  });
  for (const fault of faults) desk.ledger.fault('limit', `${one.what.label}: ${fault}`);
  if (faults.length > 0) return invalid(faults);
  desk.ledger.words(one.what.label, body);
  one.ackedAt = Date.now();
  one.ackType = Number(body.type);
  desk.ledger.count(`answered with ${one.ackType}`);
  const made = settle(desk, one, isThing(body.data) ? body.data : {}, uploads);
  if (query.get('with_response') !== 'true') return { status: 204 };
  return {
    status: 200,
    body: {
      interaction: { id: one.what.id, type: one.what.type, response_message_id: made?.id ?? null },
      ...(made ? { resource: { type: one.ackType, message: made } } : {}),
    },
  };
}

function settle(desk: Desk, one: Asked, data: Wire, uploads: Request['uploads']): Message | undefined {
  const { channel } = one.what;
  if (one.ackType === 8) one.choices = (data.choices as Wire[] | undefined) ?? [];
  if (one.ackType === 9) one.modal = data;
  if (one.ackType === 6) one.original = one.source?.id;
  if (one.ackType === 4 || one.ackType === 5) {
    const made = desk.messages.put(channel, data, uploads, undefined, interactionOf(desk, one));
    one.original = made.id;
    one.isLoading = one.ackType === 5;
    if (!one.isLoading) announce(desk, one, made, data, uploads);
    return made;
  }
  if (one.ackType === 7 && one.source) {
    const made = desk.messages.put(channel, data, uploads, desk.messages.get(one.source.id) ?? one.source);
    one.original = made.id;
    keep(one, made, data, uploads);
    return made;
  }
  return undefined;
}

function announce(desk: Desk, one: Asked, made: Message, body: unknown, uploads: Request['uploads']): void {
  keep(one, made, body, uploads);
  if ((Number(made.flags) & 64) === 0) desk.dispatch('MESSAGE_CREATE', made);
}

/** The interaction of a webhook's token, while it may be used. */
function held(desk: Desk, token: string): Asked | undefined {
  const one = desk.ledger.byToken(token);
  if (!one || one.what.isExpired) return undefined;
  if (one.ackedAt === undefined) {
    desk.ledger.fault('order', `${one.what.label} was followed up before its first answer`);
    return undefined;
  }
  if (one.ackType === 8) desk.ledger.fault('order', `${one.what.label}: a message after suggestions`);
  return Date.now() - one.ackedAt > tokenLife ? undefined : one;
}

function checked(desk: Desk, one: Asked, { body, uploads }: Request, way: Way, old?: Message): string[] {
  const wasNewer = (Number(old?.flags ?? 0) & (1 << 15)) !== 0;
  const faults = messageFaults(body, uploads, way, wasNewer);
  for (const fault of faults) desk.ledger.fault('limit', `${one.what.label}, ${way}: ${fault}`);
  desk.ledger.words(one.what.label, body);
  return faults;
}

function followUp(desk: Desk, request: Request): Answer {
  const one = held(desk, String(request.params[1]));
  if (!one) return refused(404, 10015, 'Unknown Webhook');
  const faults = checked(desk, one, request, 'follow-up');
  if (faults.length > 0) return invalid(faults);
  desk.ledger.count('follow-ups');
  // The first follow-up to a promised answer takes its place.
  const old = one.isLoading ? desk.messages.get(String(one.original)) : undefined;
  one.isLoading = false;
  const { body, uploads } = request;
  const made = desk.messages.put(one.what.channel, body, uploads, old, old ? {} : interactionOf(desk, one));
  announce(desk, one, made, body, uploads);
  return { status: 200, body: made };
}

function target(desk: Desk, one: Asked, id: string): Message | undefined {
  const found = desk.messages.get(id === '@original' ? String(one.original) : id);
  return found;
}

function edit(desk: Desk, request: Request): Answer {
  const one = held(desk, String(request.params[1]));
  if (!one) return refused(404, 10015, 'Unknown Webhook');
  const old = target(desk, one, String(request.params[2]));
  if (!old) return refused(404, 10008, 'Unknown Message');
  const faults = checked(desk, one, request, 'edit', old);
  if (faults.length > 0) return invalid(faults);
  desk.ledger.count('edits');
  const { body, uploads } = request;
  const made = desk.messages.put(old.channel_id, body, uploads, old);
  const wasLoading = one.isLoading && made.id === one.original;
  if (wasLoading) one.isLoading = false;
  one.messages.push(made);
  return { status: 200, body: made };
}

function remove(desk: Desk, { params }: Request): Answer {
  const one = held(desk, String(params[1]));
  if (!one) return refused(404, 10015, 'Unknown Webhook');
  const old = target(desk, one, String(params[2]));
  if (!old) return refused(404, 10008, 'Unknown Message');
  if (old.id === one.original && one.isLoading) one.isLoading = false;
  desk.messages.delete(old.id);
  return { status: 204 };
}

export function interactions(desk: Desk): readonly Route[] {
  const message = /^\/webhooks\/(\d+)\/([\w-]+)\/messages\/(@original|\d+)$/;
  const family = 'webhook' as const;
  return [
    {
      method: 'POST',
      path: /^\/interactions\/(\d+)\/([\w-]+)\/callback$/,
      family: 'callback',
      open: true,
      handle: (request) => callback(desk, request),
    },
    {
      method: 'POST',
      path: /^\/webhooks\/(\d+)\/([\w-]+)$/,
      family,
      open: true,
      handle: (request) => followUp(desk, request),
    },
    { method: 'PATCH', path: message, family, open: true, handle: (request) => edit(desk, request) },
    { method: 'DELETE', path: message, family, open: true, handle: (request) => remove(desk, request) },
    {
      method: 'GET',
      path: message,
      family,
      open: true,
      handle: ({ params }) => {
        const one = held(desk, String(params[1]));
        const found = one && target(desk, one, String(params[2]));
        return found ? { status: 200, body: found } : refused(404, 10008, 'Unknown Message');
      },
    },
  ];
}
