import { afterEach, describe, expect, it } from 'vitest';
import { memoryStore } from '../../bot/book/keeper-memory.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { pipkin } from '../../bot/handle.ts';
import type { Sender, Sent } from '../../bot/remind/sender.ts';
import { topics } from '../../bot/topics.ts';
import { type Meters, meters } from '../../bot/watch/meters.ts';
import { PortError, serveMeters, type WatchServer } from '../../bot/watch/serve.ts';

/** The value of one sample, its labels in any order, as the Prometheus text format writes it. */
const sample = (text: string, name: string, labels: Record<string, string> = {}): number | undefined => {
  for (const line of text.split('\n')) {
    const [, found, inside = '', value] = /^([a-z_]+)(?:\{(.*)\})? (\S+)$/.exec(line) ?? [];
    const given = Object.fromEntries([...inside.matchAll(/([a-z_]+)="([^"]*)"/g)].map(([, k, v]) => [k, v]));
    const same =
      JSON.stringify(Object.entries(given).sort()) === JSON.stringify(Object.entries(labels).sort());
    if (found === name && same) return Number(value);
  }
  return undefined;
};

const watched = () => {
  const watch = meters();
  const keeper = openKeeper(watch.store(memoryStore()));
  watch.books(() => keeper.books());
  const faults: unknown[] = [];
  const house = watch.pipkin(pipkin({ keeper, onFault: (_, fault) => faults.push(fault) }));
  const say = (text: string, group = 'hall') =>
    house.hear({
      text,
      group,
      channel: 'c',
      member: { id: 'm1', name: 'Hazel', roles: [], manages: true },
      at: Date.UTC(2026, 10, 25, 9),
    });
  return { watch, house, say };
};

describe('what is counted', () => {
  it('should be messages by topic and outcome, answered as without a look', async () => {
    const { watch, say } = watched();
    const reply = await say('5 oz in g');
    expect(reply.topic).toBe('convert');
    await say('5 oz in g');
    await say('scale 20 g beeswax, 80 g olive oil');
    await say('sing me something');
    const text = await watch.text();
    expect(sample(text, 'pipkin_messages_total', { topic: 'convert', outcome: 'answered' })).toBe(2);
    expect(sample(text, 'pipkin_messages_total', { topic: 'scale', outcome: 'missing' })).toBe(1);
    expect(sample(text, 'pipkin_messages_total', { topic: 'none', outcome: 'not-understood' })).toBe(1);
    expect(sample(text, 'pipkin_answer_seconds_count')).toBe(4);
    expect(sample(text, 'pipkin_answer_seconds_bucket', { le: '+Inf' })).toBe(4);
  });

  it('should be writes, with those that fail, and the books in memory', async () => {
    const { watch, say } = watched();
    await say('save recipe Own balm: 20 g beeswax, 80 g olive oil');
    await say('list recipes', 'shed');
    const failing = watch.store({ ...memoryStore(), writeAll: () => Promise.reject(new Error('full')) });
    await expect(failing.writeAll([])).rejects.toThrow('full');
    const text = await watch.text();
    expect(sample(text, 'pipkin_store_append_seconds_count', { outcome: 'written' })).toBeGreaterThan(0);
    expect(sample(text, 'pipkin_store_append_seconds_count', { outcome: 'failed' })).toBe(1);
    expect(sample(text, 'pipkin_open_books')).toBe(2);
  });

  it('should be daily messages by what came of them', async () => {
    const watch = meters();
    const outcomes: Sent[] = ['sent', 'no-permission', 'sent'];
    const sender = watch.sender({
      send: async () => outcomes.shift() ?? 'other',
      wasSent: async () => false,
      tellOwner: async () => true,
    });
    const message: Parameters<Sender['send']>[1] = {
      answer: { title: '', blocks: [], figures: {}, warnings: [] },
      rows: [],
    };
    for (let n = 0; n < 3; n++) await sender.send({ group: 'hall', channel: 'c' }, message, `n${n}`);
    const text = await watch.text();
    expect(sample(text, 'pipkin_reminders_total', { outcome: 'sent' })).toBe(2);
    expect(sample(text, 'pipkin_reminders_total', { outcome: 'no-permission' })).toBe(1);
  });

  it('should be the process itself: heap, and how long the event loop is held up', async () => {
    const text = await meters().text();
    expect(sample(text, 'nodejs_heap_size_used_bytes')).toBeGreaterThan(1e6);
    expect(sample(text, 'nodejs_eventloop_lag_seconds')).toBeGreaterThanOrEqual(0);
  });

  it('should name no group, no member and no word, and no label but topics and codes', async () => {
    const { watch, say } = watched();
    await say('save recipe Secret balm: 20 g beeswax, 80 g olive oil', 'guild:123');
    await say('quibblewax {topic="forged"}\npipkin_messages_total 7', 'guild:123');
    const text = await watch.text();
    expect(text).not.toMatch(/secret|guild:|hazel|quibble|forged/i);
    const labels = new Set([...text.matchAll(/topic="([^"]*)"/g)].map(([, topic]) => topic));
    for (const topic of labels) expect(['none', ...topics.map(({ name }) => name)]).toContain(topic);
  });
});

describe('the page for whoever runs it', () => {
  let server: WatchServer | undefined;
  afterEach(async () => {
    await server?.close();
    server = undefined;
  });

  const open = async (watch: Meters = meters()) => {
    server = await serveMeters(watch, 0);
    const { port } = server;
    return (path: string, init: RequestInit = {}) => fetch(`http://127.0.0.1:${port}${path}`, init);
  };

  it('should be healthy from the start, and ready only while connected', async () => {
    const watch = meters();
    const get = await open(watch);
    expect((await get('/health')).status).toBe(200);
    expect((await get('/ready')).status).toBe(503);
    let connected = true;
    watch.chat(() => ({ connected, guilds: 3, pingMs: 40 }));
    expect((await get('/ready')).status).toBe(200);
    expect(sample(await (await get('/metrics')).text(), 'pipkin_gateway_connected')).toBe(1);
    expect(sample(await watch.text(), 'pipkin_gateway_ping_seconds')).toBe(0.04);
    expect(sample(await watch.text(), 'pipkin_guilds')).toBe(3);
    connected = false;
    const down = await get('/ready');
    expect([down.status, await down.text()]).toEqual([503, 'the connection to the chat is down\n']);
    expect((await get('/health')).status).toBe(200);
    expect(sample(await watch.text(), 'pipkin_gateway_connected')).toBe(0);
  });

  it('should be in the text format with its content type', async () => {
    const get = await open();
    const page = await get('/metrics');
    // Prometheus exposition formats, text format 0.0.4 (from memory).
    expect(page.headers.get('content-type')).toMatch(/^text\/plain; version=0\.0\.4/);
    for (const line of (await page.text()).trimEnd().split('\n'))
      expect(line).toMatch(/^(# (HELP|TYPE) [a-z0-9_]+ .+|[a-z0-9_]+(\{.*\})? \S+|)$/);
  });

  it.each([
    ['/', {}, 404],
    ['/__proto__', {}, 404],
    ['/constructor', {}, 404],
    ['/metrics', { method: 'POST', body: 'x' }, 405],
    ['/metrics', { method: 'HEAD' }, 200],
    ['/health?probe=1', {}, 200],
  ] as const)('should answer %s %j with %i', async (path, init, status) => {
    const get = await open();
    expect((await get(path, init)).status).toBe(status);
  });

  it('should listen on this machine alone', async () => {
    const get = await open();
    expect((await get('/health')).status).toBe(200);
    const { networkInterfaces } = await import('node:os');
    const outside = Object.values(networkInterfaces())
      .flatMap((each) => each ?? [])
      .find(({ internal, family }) => !internal && family === 'IPv4');
    if (!outside) return;
    await expect(fetch(`http://${outside.address}:${server?.port}/health`)).rejects.toThrow();
  });

  it('should say plainly when the port is taken', async () => {
    await open();
    const again = serveMeters(meters(), server?.port ?? 0);
    await expect(again).rejects.toThrow(PortError);
    await expect(again).rejects.toThrow(/METRICS_PORT \d+ on 127\.0\.0\.1 cannot be used \(EADDRINUSE\)/);
  });
});
