import { mkdtemp } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { GatewayCloseCodes } from 'discord-api-types/v10';
import { afterEach, describe, expect, it } from 'vitest';
import { applicationId, botId } from '../helpers/chat-stand-in/people.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { startProcess, until } from '../helpers/run-process.ts';

// The bot as `npm start` runs it for a group chat, in a process of its own, as its supervisor and its operator see it.

const cleanups: (() => unknown)[] = [];
afterEach(async () => {
  for (const each of cleanups.splice(0).reverse()) await each();
});

const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });

const start = async (env: Record<string, string> = {}) => {
  const standIn = await StandIn.start();
  cleanups.push(() => standIn.close());
  const started = startProcess('.build/bot/main.js', [], {
    DISCORD_TOKEN: standIn.token,
    DISCORD_API_URL: standIn.apiUrl,
    STORE_URL: join(await mkdtemp(join(tmpdir(), 'pipkin-process-')), 's'),
    LOG_LEVEL: 'debug',
    BACKUP_DIR: 'none',
    ...env,
  });
  cleanups.push(() => started.child.kill('SIGKILL'));
  await until(() => started.out().includes('ready'), 'the ready line', 20_000);
  return { standIn, ...started };
};

describe('the process of the group chat', () => {
  it('should say when it is ready, and how to take it in with no more rights than it uses', async () => {
    const { out, child, done } = await start();
    await until(() => out().includes('https://'), 'the link');
    const link = new URL(/https:\S+/.exec(out())?.[0] ?? '');
    expect(out()).toMatch(/^Pipkin is ready in the group chat\.\n/);
    expect(link.searchParams.get('client_id')).toBe(applicationId);
    expect(link.searchParams.get('scope')?.split(' ').sort()).toEqual(['applications.commands', 'bot']);
    // The platform's documented permission bits (from memory): view 10, send 11, attach 15, history 16, in threads 38.
    const bits = [10n, 11n, 15n, 16n, 38n].reduce((all, bit) => all | (1n << bit), 0n);
    expect(link.searchParams.get('permissions')).toBe(String(bits));
    child.kill('SIGTERM');
    expect(await done).toMatchObject({ code: 0, signal: null });
  });

  it('should serve health and figures where asked, and log no word and no token', async () => {
    const port = await freePort();
    const { standIn, child, done } = await start({ METRICS_PORT: String(port) });
    const get = (path: string) => fetch(`http://127.0.0.1:${port}${path}`);
    await standIn.mention('scale 20 g quibblewax, 80 g olive oil to 3 tins of 15 ml');
    await standIn.mention('5 oz in g');
    expect((await get('/health')).status).toBe(200);
    expect((await get('/ready')).status).toBe(200);
    const figures = await (await get('/metrics')).text();
    expect(figures).toContain('pipkin_messages_total{topic="convert",outcome="answered"} 1\n');
    expect(figures).toContain('pipkin_gateway_connected 1\n');
    expect(figures).toContain('pipkin_guilds 1\n');
    expect(figures).toMatch(/^pipkin_open_books 1$/m);
    expect(figures).not.toContain('quibble');
    child.kill('SIGTERM');
    const { err } = await done;
    const lines = err.trimEnd().split('\n');
    for (const line of lines) expect(JSON.parse(line)).toHaveProperty('event');
    expect(err).not.toContain('quibble');
    expect(err).not.toContain(standIn.token);
    await expect(get('/health')).rejects.toThrow();
  });

  it('should finish what is under way at SIGTERM and leave within ten seconds', async () => {
    const { standIn, child, done } = await start();
    const asked = Array.from({ length: 20 }, (_, n) =>
      standIn.write({ text: `<@${botId}> save recipe Last balm ${n + 1}: 20 g beeswax, 80 g olive oil` }),
    );
    await asked[0]?.until(1);
    const told = performance.now();
    child.kill('SIGTERM');
    expect(await done).toMatchObject({ code: 0, signal: null });
    expect(performance.now() - told).toBeLessThan(10_000);
    // What was heard before the signal has its answer; what was not heard has none, and no half one.
    for (const { shown } of asked) expect(shown.length).toBeLessThanOrEqual(1);
    expect(standIn.problems).toEqual([]);
  });

  it.each([
    [GatewayCloseCodes.AuthenticationFailed, /refuses the token/],
    [GatewayCloseCodes.ShardingRequired, /SHARDS/],
    [GatewayCloseCodes.DisallowedIntents, /does not allow/],
  ])('should end with an error and a sentence when it is shut out with %i', async (code, sentence) => {
    const { standIn, done } = await start({ LOG_LEVEL: 'silent' });
    standIn.gateway.shut(code);
    const ended = await done;
    expect(ended).toMatchObject({ code: 3, signal: null });
    expect(ended.err).toMatch(sentence);
    expect(ended.err.trimEnd().split('\n')).toHaveLength(1);
  });
});
