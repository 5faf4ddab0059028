// Channels and the messages in them.

import { isThing, type Wire } from './check.ts';
import type { Message, Said } from './ledger.ts';
import { messageFaults } from './limits.ts';
import { type Answer, type Desk, invalid, type Request, type Route, refused } from './rest-desk.ts';
import { channelObject, directObject } from './world.ts';

function channel(desk: Desk, id: string): Answer {
  const place = desk.world.place(id);
  const at = place?.group?.channels.find((one) => one.id === id);
  if (place?.group && at) return { status: 200, body: channelObject(place.group, at) };
  if (place?.person) return { status: 200, body: directObject(id, place.person) };
  return refused(404, 10003, 'Unknown Channel');
}

/**
 * Whose message this answers: by its reference, or in a direct channel as the last thing its member wrote; a further part of an
 * answer in a server by what was answered there last.
 */
function answered(desk: Desk, at: string, body: Wire): Said | undefined {
  const reference = isThing(body.message_reference) ? body.message_reference.message_id : undefined;
  const { said } = desk.ledger;
  if (reference !== undefined) return said.find(({ id }) => id === reference);
  const person = desk.world.place(at)?.person;
  if (person) return said.findLast(({ by }) => by === person.id);
  return said
    .filter(({ channel: where, repliedAt }) => where === at && repliedAt > 0)
    .sort(byReply)
    .at(-1);
}

const byReply = (a: Said, b: Said): number => a.repliedAt - b.repliedAt;

/** A word in the channel that the answer to a command came too late: once for each that did. */
function excused(desk: Desk, at: string, body: Wire): boolean {
  if (body.message_reference !== undefined) return false;
  const late = desk.ledger.asked.find(
    ({ what, attempts, isExcused }) =>
      what.isExpired && what.channel === at && attempts.length > 0 && !isExcused,
  );
  if (!late) return false;
  late.isExcused = true;
  desk.ledger.count('told that it came too late');
  return true;
}

/** Channels there are not, those the bot may not write in, and members who take no direct messages. */
function closedTo(desk: Desk, at: string): Answer | undefined {
  const place = desk.world.place(at);
  if (!place) return refused(404, 10003, 'Unknown Channel');
  if (place.group?.channels.find(({ id }) => id === at)?.isClosed) {
    desk.ledger.count('refused for want of rights');
    return refused(403, 50013, 'Missing Permissions');
  }
  if (!desk.world.closed.has(place.person?.id)) return undefined;
  desk.ledger.count('refused direct messages');
  return refused(403, 50007, 'Cannot send messages to this user');
}

function create(desk: Desk, { params, body, uploads }: Request): Answer {
  const at = String(params[0]);
  const barred = closedTo(desk, at);
  if (barred) return barred;
  const faults = messageFaults(body, uploads, 'create');
  for (const fault of faults) desk.ledger.fault('limit', `message: ${fault}`);
  if (faults.length > 0) return invalid(faults);
  desk.ledger.words('message', body);
  const same = desk.ledger.nonces.get(`${at} ${String(body.nonce)}`);
  if (same && body.enforce_nonce === true) {
    desk.ledger.count('sent again with its nonce');
    return { status: 200, body: same };
  }
  const reference = isThing(body.message_reference) ? body.message_reference : undefined;
  if (
    reference &&
    reference.fail_if_not_exists !== false &&
    !desk.messages.get(String(reference.message_id))
  ) {
    return invalid(['message_reference: Unknown message']);
  }
  const made = desk.messages.put(at, body, uploads);
  if (body.nonce !== undefined) desk.ledger.nonces.set(`${at} ${String(body.nonce)}`, made);
  record(desk, at, body, made, uploads);
  desk.dispatch('MESSAGE_CREATE', made);
  return { status: 200, body: made };
}

function record(desk: Desk, at: string, body: Wire, made: Message, uploads: Request['uploads']): void {
  desk.ledger.count('messages sent');
  if (excused(desk, at, body)) return;
  const said = answered(desk, at, body);
  if (!said) {
    desk.ledger.unasked.push(made);
    return;
  }
  said.replies.push(made);
  said.repliedAt = performance.now();
  const { nonce: _nonce, ...rest } = body;
  said.bodies.push(JSON.stringify([at, rest, uploads.map(({ name, bytes }) => [name, bytes])]));
}

function edit(desk: Desk, { params, body, uploads }: Request): Answer {
  const old = desk.messages.get(String(params[1]));
  if (!old) return refused(404, 10008, 'Unknown Message');
  const wasNewer = (Number(old.flags) & (1 << 15)) !== 0;
  const faults = messageFaults(body, uploads, 'edit', wasNewer);
  for (const fault of faults) desk.ledger.fault('limit', `edit: ${fault}`);
  if (faults.length > 0) return invalid(faults);
  desk.ledger.words('edit', body);
  const made = desk.messages.put(old.channel_id, body, uploads, old);
  desk.dispatch('MESSAGE_UPDATE', made);
  return { status: 200, body: made };
}

function remove(desk: Desk, { params }: Request): Answer {
  if (!desk.messages.get(String(params[1]))) return refused(404, 10008, 'Unknown Message');
  desk.messages.delete(String(params[1]));
  desk.dispatch('MESSAGE_DELETE', { id: params[1], channel_id: params[0] });
  return { status: 204 };
}

function direct(desk: Desk, body: Wire): Answer {
  const recipient = desk.world.everyPerson().find(({ id }) => id === body.recipient_id);
  if (!recipient) return refused(400, 50033, 'Invalid Recipient(s)');
  return { status: 200, body: directObject(desk.world.direct(recipient), recipient) };
}

export function channels(desk: Desk): readonly Route[] {
  const one = /^\/channels\/(\d+)\/messages\/(\d+)$/;
  const family = 'messages' as const;
  return [
    {
      method: 'GET',
      path: /^\/channels\/(\d+)$/,
      family: 'other',
      handle: ({ params }) => channel(desk, String(params[0])),
    },
    { method: 'POST', path: /^\/channels\/(\d+)\/typing$/, family: 'other', handle: () => ({ status: 204 }) },
    {
      method: 'POST',
      path: /^\/channels\/(\d+)\/messages$/,
      family,
      handle: (request) => create(desk, request),
    },
    {
      method: 'GET',
      path: /^\/channels\/(\d+)\/messages$/,
      family,
      handle: () => ({ status: 200, body: [] }),
    },
    {
      method: 'GET',
      path: one,
      family,
      handle: ({ params }) => {
        const found = desk.messages.get(String(params[1]));
        return found ? { status: 200, body: found } : refused(404, 10008, 'Unknown Message');
      },
    },
    { method: 'PATCH', path: one, family, handle: (request) => edit(desk, request) },
    { method: 'DELETE', path: one, family, handle: (request) => remove(desk, request) },
    {
      method: 'POST',
      path: /^\/users\/@me\/channels$/,
      family: 'other',
      handle: ({ body }) => direct(desk, body),
    },
  ];
}
