import { DefaultRestOptions, type RESTOptions } from 'discord.js';
import { describe, expect, test } from 'vitest';
import { patiently } from '../../bot/discord/patience.ts';

type Send = RESTOptions['makeRequest'];
const callback = 'http://127.0.0.1/api/v10/interactions/1/abc/callback';
const followUp = 'http://127.0.0.1/api/v10/webhooks/1/abc';
const waits = [1, 1, 1];

/** Fails as often as it has faults, then answers with 200. */
function failing(...faults: readonly (number | string)[]): { send: Send; times: () => number } {
  let times = 0;
  const send: Send = async () => {
    const fault = faults[times] ?? 200;
    times += 1;
    if (typeof fault === 'string') throw Object.assign(new Error('the line broke'), { code: fault });
    return new Response(null, { status: fault });
  };
  return { send, times: () => times };
}

const made = async (send: Send, url: string, method = 'POST'): Promise<number> =>
  (await patiently(send, () => waits)(url, { method })).status;

describe('calls to the platform', () => {
  test('servers out of order are tried again until they are back', async () => {
    const { send, times } = failing(502, 503, 500);
    expect(await made(send, callback)).toBe(200);
    expect(times()).toBe(4);
  });

  test('servers that stay out of order are told as such in the end', async () => {
    const { send, times } = failing(...Array.from({ length: 9 }, () => 503));
    expect(await made(send, callback)).toBe(503);
    expect(times()).toBe(4);
  });

  test('refusals are no business of it', async () => {
    for (const status of [200, 204, 400, 404, 429]) {
      const { send, times } = failing(status);
      expect(await made(send, callback)).toBe(status);
      expect(times()).toBe(1);
    }
  });

  test('a broken line is tried again, another fault is not', async () => {
    const broken = failing('UND_ERR_SOCKET', 'ECONNREFUSED', 'ECONNRESET');
    expect(await made(broken.send, callback)).toBe(200);
    const other = failing('ERR_INVALID_ARG_TYPE');
    await expect(made(other.send, callback)).rejects.toThrow('the line broke');
    expect(other.times()).toBe(1);
  });

  test('a further message to a command is not sent again where it may have been heard', async () => {
    const { send, times } = failing('UND_ERR_SOCKET');
    await expect(made(send, followUp)).rejects.toThrow('the line broke');
    expect(times()).toBe(1);
    expect(await made(failing('UND_ERR_SOCKET').send, `${followUp}/messages/@original`, 'PATCH')).toBe(200);
    expect(await made(failing(503).send, followUp)).toBe(200);
  });

  test('a first answer is given up after a second and a half, an edit is kept at', {
    timeout: 20_000,
  }, async () => {
    const [first, edit] = [failing(...Array(9).fill(503)), failing(503, 503, 503, 503, 503)];
    const start = performance.now();
    const given = patiently(first.send)(`${callback}?with_response=false`, { method: 'POST' });
    const kept = patiently(edit.send)(`${followUp}/messages/@original`, { method: 'PATCH' });
    expect((await given).status).toBe(503);
    expect(performance.now() - start).toBeGreaterThan(1400);
    expect([first.times(), (await kept).status, edit.times()]).toEqual([5, 200, 6]);
  });

  test('waiting ends when the call is given up', async () => {
    const giveUp = new AbortController();
    const call = patiently(failing(503).send, () => [60_000])(callback, {
      method: 'POST',
      signal: giveUp.signal,
    });
    giveUp.abort();
    await expect(call).rejects.toMatchObject({ name: 'AbortError' });
  });

  test('by itself it makes calls as the library does', async () => {
    expect(typeof DefaultRestOptions.makeRequest).toBe('function');
    await expect(
      patiently(undefined, () => [])('http://127.0.0.1:1/api', { method: 'GET' }),
    ).rejects.toMatchObject({
      code: 'ECONNREFUSED',
    });
  });
});
