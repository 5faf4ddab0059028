// The stand-in itself, by a client that does wrong on purpose: each wrong has to be told, and a client that does right not.

import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { WebSocket } from 'ws';
import { Asked, Said } from './ledger.ts';
import { StandIn } from './stand-in.ts';
import { until } from './talk.ts';

let standIn: StandIn;
const agent = { 'user-agent': 'DiscordBot (https://example.org, 1)' };

beforeEach(async () => {
  standIn = new StandIn();
  await standIn.listen();
});
afterEach(() => standIn.close());

const channel = (): string => standIn.world.groups[0]?.channels[0]?.id ?? '';

function asked(more: Partial<Asked['what']> = {}): Asked {
  const by = standIn.world.groups[0]?.owner.id ?? '';
  const what = { id: '1575513698271756353', token: 'abc', type: 2, label: '/wax', by, channel: channel() };
  const one = new Asked({ ...what, optionType: 3, isExpired: false, ...more });
  one.delivered();
  standIn.ledger.asked.push(one);
  return one;
}

async function call(method: string, path: string, body?: object, token = standIn.token): Promise<Response> {
  return fetch(`${standIn.apiUrl}/v10${path}`, {
    method,
    headers: { ...agent, authorization: `Bot ${token}`, 'content-type': 'application/json' },
    ...(body ? { body: JSON.stringify(body) } : {}),
  });
}

const answer = (body: object, one: Asked): Promise<Response> =>
  call('POST', `/interactions/${one.what.id}/${one.what.token}/callback`, body);
const followUp = (one: Asked): Promise<Response> =>
  call('POST', `/webhooks/${standIn.world.bot.id}/${one.what.token}`, {
    content: 'more',
    allowed_mentions: { parse: [] },
  });
const words = { type: 4, data: { content: 'wax', allowed_mentions: { parse: [] } } };
const faults = (): string => {
  standIn.ledger.audit();
  return standIn.ledger.faults.join('\n');
};

describe('answers', () => {
  test('one in time is right', async () => {
    expect((await answer(words, asked())).status).toBe(204);
    expect(faults()).toBe('');
  });

  test('two are told', async () => {
    const one = asked();
    await answer(words, one);
    expect((await answer(words, one)).status).toBe(400);
    expect(faults()).toMatch(/twice: \/wax/);
  });

  test('none is told', () => {
    asked();
    expect(faults()).toMatch(/missing: no answer to \/wax/);
  });

  test('a late one is told', async () => {
    const one = asked();
    one.deliveredAt = Date.now() - 3100;
    expect((await answer(words, one)).status).toBe(404);
    expect(faults()).toMatch(/late: \/wax/);
  });

  test('a promise that is not kept is told, one that is kept is not', async () => {
    const one = asked();
    await answer({ type: 5 }, one);
    expect(faults()).toMatch(/promised an answer that never came/);
    standIn.ledger.faults.length = 0;
    await call('PATCH', `/webhooks/${standIn.world.bot.id}/abc/messages/@original`, { content: 'now' });
    expect(faults()).toBe('');
  });

  test('a follow-up before the first answer is told', async () => {
    expect((await followUp(asked())).status).toBe(404);
    expect(faults()).toMatch(/before its first answer/);
  });

  test('the same follow-up twice is told', async () => {
    const one = asked();
    await answer(words, one);
    await followUp(one);
    await followUp(one);
    expect(faults()).toMatch(/doubled/);
  });

  test('too long a one is refused and told', async () => {
    const one = asked();
    const body = { type: 4, data: { content: 'x'.repeat(2001) } };
    expect((await answer(body, one)).status).toBe(400);
    expect(faults()).toMatch(/limit: \/wax: content: has 2001/);
  });

  test('words of the program are told', async () => {
    await answer({ type: 4, data: { content: 'It weighs undefined g' } }, asked());
    expect(faults()).toMatch(/words: .*undefined g/);
  });

  test('a token that has run out is refused, and trying again is told', async () => {
    const one = asked({ isExpired: true });
    expect((await answer(words, one)).status).toBe(404);
    expect(faults()).toBe('');
    await answer(words, one);
    expect(faults()).toMatch(/expired/);
  });
});

describe('messages and calls', () => {
  test('a message without an answer, and one with the same answer twice, are told', async () => {
    const by = standIn.world.groups[0]?.owner.id ?? '';
    const message = {
      content: 'wax',
      message_reference: { message_id: '2', fail_if_not_exists: false },
      allowed_mentions: { parse: [] },
    };
    standIn.ledger.said.push(new Said('1', by, channel(), 'and oil?'), new Said('2', by, channel(), 'wax?'));
    await call('POST', `/channels/${channel()}/messages`, message);
    await call('POST', `/channels/${channel()}/messages`, message);
    expect(faults()).toMatch(/no answer to "and oil\?"[\s\S]*doubled: the same answer twice to "wax\?"/);
  });

  test('one nonce is one message', async () => {
    const message = { content: 'wax', nonce: '12', enforce_nonce: true, allowed_mentions: { parse: [] } };
    const [first, second] = [
      await call('POST', `/channels/${channel()}/messages`, message),
      await call('POST', `/channels/${channel()}/messages`, message),
    ].map((response) => response.json() as Promise<{ id: string }>);
    expect((await first)?.id).toBe((await second)?.id);
  });

  test('a ping, a wrong token and an unknown route are told', async () => {
    await call('POST', `/channels/${channel()}/messages`, { content: '@everyone' });
    await call('GET', '/users/@me', undefined, 'wrong');
    await call('GET', '/voice/regions');
    expect(faults()).toMatch(/would ping[\s\S]*without the token[\s\S]*unknown route/);
  });

  test('whoever comes back before the time is told, whoever waits is not', async () => {
    standIn.trouble.burst('global', 600);
    const refused = await call('GET', '/users/@me');
    expect(refused.status).toBe(429);
    expect(refused.headers.get('x-ratelimit-global')).toBe('true');
    const { retry_after: seconds } = (await refused.json()) as { retry_after: number };
    await pause(100);
    for (let again = 0; again < 3; again += 1) await call('GET', '/users/@me');
    expect(faults()).toBe('');
    await call('GET', '/users/@me');
    expect(faults()).toMatch(/too early/);
    standIn.ledger.faults.length = 0;
    await pause(seconds * 1000 + 50);
    expect((await call('GET', '/users/@me')).status).toBe(200);
    expect(faults()).toBe('');
  });
});

describe('the gateway', () => {
  type Frame = { op: number; t?: string; s?: number; d: unknown };

  async function client(): Promise<{
    frames: Frame[];
    send: (op: number, d: unknown) => void;
    code: () => number;
  }> {
    const socket = new WebSocket(
      `${standIn.apiUrl.replace('http', 'ws').replace('/api', '')}/?v=10&encoding=json`,
    );
    const frames: Frame[] = [];
    let code = 0;
    socket.on('message', (data) => frames.push(JSON.parse(String(data)) as Frame));
    socket.on('close', (closed) => {
      code = closed;
    });
    await until(() => frames.length > 0, 5000);
    return { frames, send: (op, d) => socket.send(JSON.stringify({ op, d })), code: () => code };
  }

  const identify = (): object => ({ token: standIn.token, intents: 1, properties: {} });

  test('hello, ready, servers, and a resume with what was missed', async () => {
    const first = await client();
    first.send(2, identify());
    await until(() => first.frames.length >= 4, 5000);
    expect(first.frames.map(({ op, t }) => t ?? op)).toEqual([10, 'READY', 'GUILD_CREATE', 'GUILD_CREATE']);
    standIn.gateway.break('4000');
    standIn.gateway.dispatch('TYPING_START', { missed: true });
    await until(() => first.code() !== 0, 5000);
    expect(first.code()).toBe(4000);
    const ready = first.frames[1]?.d as { session_id: string };
    const second = await client();
    second.send(6, { token: standIn.token, session_id: ready.session_id, seq: 3 });
    await until(() => second.frames.length >= 3, 5000);
    expect(second.frames.map(({ op, t }) => t ?? op)).toEqual([10, 'TYPING_START', 'RESUMED']);
    expect(faults()).toBe('');
  });

  test('a session that has ended is not resumed, and what it never delivered counts as lost', async () => {
    const first = await client();
    first.send(2, identify());
    await until(() => first.frames.length >= 4, 5000);
    standIn.gateway.break('resume refused');
    const said = new Said('1', '2', channel(), 'wax?');
    standIn.ledger.said.push(said);
    standIn.gateway.dispatch('MESSAGE_CREATE', {}, said);
    const ready = first.frames[1]?.d as { session_id: string };
    const second = await client();
    second.send(6, { token: standIn.token, session_id: ready.session_id, seq: 3 });
    await until(() => second.frames.length >= 2, 5000);
    expect(second.frames.at(-1)).toEqual({ op: 9, d: false });
    expect(said.isLost).toBe(true);
    expect(faults()).toBe('');
  });

  test('identifying again at once, and with intents that need leave, are told', async () => {
    const first = await client();
    first.send(2, { ...identify(), intents: 1 << 15 });
    await until(() => first.frames.length >= 2, 5000);
    const second = await client();
    second.send(2, identify());
    await until(() => second.frames.length >= 2, 5000);
    expect(faults()).toMatch(/privileged intents[\s\S]*identified again after/);
  });
});
