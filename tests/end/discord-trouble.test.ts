import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { guildId, hazel } from '../helpers/chat-stand-in/people.ts';
import { echoed, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import type { Call, Trouble } from '../helpers/chat-stand-in/state.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { until } from '../helpers/run-process.ts';

// What goes wrong between the bot and the platform's HTTP API. Codes and headers are the platform's documented ones
// (from memory). Whatever happens, what was asked is answered once, or the member is told that it was not.
const open = useChat();

const to =
  (part: string, is = 'POST') =>
  ({ method, parts }: Call) =>
    method === is && parts.includes(part);

/** The first `times` requests that `wanted` takes go wrong in this way; the others do not. */
const firstOnes = (times: number, wanted: (call: Call) => boolean, trouble: Trouble) => {
  let left = times;
  return (call: Call): Trouble | undefined => {
    if (left === 0 || !wanted(call)) return undefined;
    left -= 1;
    return trouble;
  };
};

const limited = (seconds: number, global: boolean): Trouble => ({
  result: {
    status: 429,
    body: { message: 'You are being rate limited.', retry_after: seconds, global },
    headers: {
      'retry-after': String(seconds),
      ...(global
        ? { 'x-ratelimit-global': 'true', 'x-ratelimit-scope': 'global' }
        : { 'x-ratelimit-scope': 'user' }),
    },
  },
});

const broken: Trouble = { result: { status: 502, body: { message: 'Bad Gateway' } } };
const refusedWith = (status: number, code: number): Trouble => ({
  result: { status, body: { code, message: 'refused' } },
});

describe('an HTTP API in trouble', () => {
  it.each([
    ['of one route', limited(0.3, false)],
    ['of all routes', limited(0.3, true)],
  ])('should wait as told at a rate limit %s, and then answer once', async (_, trouble) => {
    const { standIn } = await open();
    standIn.trouble = firstOnes(1, to('messages'), trouble);
    const start = performance.now();
    const exchange = await standIn.mention('hello');
    expect(performance.now() - start).toBeGreaterThan(280);
    await sleep(100);
    expect(exchange.shown.map(({ content }) => content)).toEqual(['**hello**']);
  });

  it('should answer everything once through a burst of rate limits', async () => {
    const { standIn } = await open({ limits: { member: { burst: 100, perMinute: 100 } } });
    let asked = 0;
    standIn.trouble = (call) =>
      to('messages')(call) && asked++ % 3 === 0 ? limited(0.05, false) : undefined;
    const exchanges = Array.from({ length: 15 }, (_, n) => standIn.write({ text: `ask ${n}`, direct: true }));
    for (const exchange of exchanges) await exchange.until(1, 15_000);
    await sleep(200);
    expect(exchanges.map(({ text }) => text)).toEqual(exchanges.map((_, n) => `**ask ${n}**`));
  });

  it('should try again when the platform breaks off', async () => {
    const { standIn } = await open();
    standIn.trouble = firstOnes(2, () => true, broken);
    expect((await standIn.mention('hello')).text).toBe('**hello**');
    standIn.trouble = firstOnes(2, () => true, broken);
    expect((await standIn.slash('echo', { text: 'hello' })).text).toBe('**echo hello**');
  });

  it('should not answer a message twice when the answer stood although the platform broke off', async () => {
    const { standIn, log } = await open();
    standIn.trouble = firstOnes(1, to('messages'), { ...broken, after: true });
    const exchange = await standIn.mention('hello');
    await sleep(300);
    expect(exchange.shown.map(({ content }) => content)).toEqual(['**hello**']);
    expect(log.faults).toEqual([]);
  });

  it('should not answer a command twice when the answer stood although the platform broke off', async () => {
    const { standIn, log } = await open();
    standIn.trouble = firstOnes(1, to('callback'), { ...broken, after: true });
    const exchange = standIn.slashSent('echo', { text: 'hello' });
    await exchange.until(1);
    await sleep(300);
    expect(exchange.shown.map(({ content }) => content)).toEqual(['**echo hello**']);
    expect(log.faults).toEqual([]);
  });

  it('should answer in time although each request takes long', async () => {
    const { standIn } = await open();
    standIn.trouble = () => ({ delayMs: 700 });
    const exchange = await standIn.slash('echo', { text: 'slow' });
    expect(exchange.acknowledgedMs).toBeLessThan(3000);
    expect((await standIn.mention('slow')).shown).toHaveLength(1);
  });

  it('should say in the channel, without what was in it, that the answer to a command came too late', async () => {
    const { standIn, log } = await open();
    standIn.trouble = (call) => (to('callback')(call) ? refusedWith(404, 10062) : undefined);
    const exchange = standIn.slashSent('echo', { text: 'private matter' });
    // Whatever was asked in the channel last takes what is posted there without a reference.
    const bystander = standIn.write({ text: 'not for the bot' });
    await until(() => exchange.shown.length + bystander.shown.length > 0, 'a word about it');
    const text = exchange.text + bystander.text;
    expect(text).toContain('came too late');
    expect(text).not.toContain('private matter');
    expect(log.faults).toMatchObject([{ event: 'chat.fault', fields: { code: '10062' } }]);
  });

  it('should tell the member directly when it may not write in the channel', async () => {
    const { standIn, log } = await open();
    standIn.trouble = ({ method, parts, body }) =>
      method === 'POST' &&
      parts[2] === 'messages' &&
      (body as { message_reference?: unknown }).message_reference
        ? refusedWith(403, 50013)
        : undefined;
    const exchange = standIn.write({ text: '<@900000000000000001> hello' });
    const directs = () => standIn.writtenTo(hazel);
    await until(() => directs().length > 0, 'a direct message');
    expect(exchange.shown).toEqual([]);
    expect(directs().map(({ content }) => content)).toEqual([
      expect.stringContaining('I may not write in the channel'),
    ]);
    expect(log.faults).toMatchObject([{ event: 'chat.fault', fields: { code: '50013' } }]);
  });

  it('should leave the files away where it may not attach any, and say so', async () => {
    const pipkin = samplePipkin(async (heard) => {
      const reply = echoed(heard);
      const file = { name: 'label.txt', type: 'text/plain', bytes: new TextEncoder().encode('INCI') };
      return 'answer' in reply ? { ...reply, answer: { ...reply.answer, files: [file] } } : reply;
    });
    const { standIn } = await open({ pipkin });
    expect((await standIn.mention('with')).first.files).toHaveLength(1);
    standIn.trouble = (call) =>
      to('messages')(call) && call.files.length > 0 ? refusedWith(403, 50013) : undefined;
    const { first } = await standIn.mention('without');
    expect(first.files).toEqual([]);
    expect(first.content).toContain('**without**');
    expect(first.content).toContain('may not attach files');
  });

  // The platform posts without a reference, as it is asked to with `fail_if_not_exists`; codes of a refusal from memory.
  const gone = (code: number, errors: object = {}): Trouble => ({
    result: { status: code === 10008 ? 404 : 400, body: { code, message: 'Gone', ...errors } },
  });
  it.each([
    ['posted without a reference', undefined],
    ['an unknown message', gone(10008)],
    [
      'a wrong field',
      gone(50035, {
        errors: {
          message_reference: { _errors: [{ code: 'MESSAGE_REFERENCE_UNKNOWN_MESSAGE', message: 'Gone' }] },
        },
      }),
    ],
  ] as const)(
    'should answer once when what it replies to is deleted in mid-answer: %s',
    async (_, trouble) => {
      let answer: () => void = () => {};
      const thought = new Promise<void>((resolve) => {
        answer = resolve;
      });
      const pipkin = samplePipkin(async (heard) => {
        await thought;
        return echoed(heard);
      });
      const { standIn, log } = await open({ pipkin });
      const references: unknown[] = [];
      standIn.trouble = ({ body }) => {
        const { message_reference: reference } = (body ?? {}) as { message_reference?: unknown };
        if (!reference) return undefined;
        references.push(reference);
        return trouble;
      };
      const asked = standIn.write({ text: '<@900000000000000001> hello' });
      standIn.raw({ t: 'MESSAGE_DELETE', d: { id: asked.id, channel_id: asked.channel, guild_id: guildId } });
      answer();
      await asked.until(1);
      await sleep(100);
      expect(references).toMatchObject([{ message_id: asked.id, fail_if_not_exists: false }]);
      expect(asked.shown.map(({ content }) => content)).toEqual(['**hello**']);
      expect(log.faults).toEqual([]);
    },
  );
});
