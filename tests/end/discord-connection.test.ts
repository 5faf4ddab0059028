import { GatewayCloseCodes } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { messageCreated } from '../helpers/chat-stand-in/asked.ts';
import { guild } from '../helpers/chat-stand-in/people.ts';
import { samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { until } from '../helpers/run-process.ts';

const open = useChat();

describe('losing the connection', () => {
  it.each([{ ask: false }, { ask: true }])(
    'should resume and answer what came meanwhile once ($ask)',
    async ({ ask }) => {
      const pipkin = samplePipkin();
      const { standIn } = await open({ pipkin });
      await standIn.mention('before');
      const back = standIn.dropConnection({ resume: true, ask });
      const meanwhile = standIn.mention('meanwhile');
      await back;
      expect((await meanwhile).shown).toHaveLength(1);
      expect((await standIn.mention('after')).first.content).toBe('**after**');
      expect(pipkin.heard.map(({ text }) => text)).toEqual(['before', 'meanwhile', 'after']);
      expect(standIn.gateway.seen).toMatchObject({ identifies: 1, resumes: 1 });
    },
  );

  it('should start a new session when the old one is void', async () => {
    const { standIn } = await open();
    await standIn.dropConnection({ resume: false });
    expect((await standIn.mention('after')).first.content).toBe('**after**');
    expect(standIn.gateway.seen).toMatchObject({ identifies: 2, resumes: 1 });
  });

  // The platform's documented close codes (from memory): these ask the client to come back.
  it.each([
    [GatewayCloseCodes.UnknownError, 'resume'],
    [GatewayCloseCodes.UnknownOpcode, 'resume'],
    [GatewayCloseCodes.DecodeError, 'resume'],
    [GatewayCloseCodes.NotAuthenticated, 'afresh'],
    [GatewayCloseCodes.AlreadyAuthenticated, 'afresh'],
    [GatewayCloseCodes.InvalidSeq, 'afresh'],
    [GatewayCloseCodes.RateLimited, 'afresh'],
    [GatewayCloseCodes.SessionTimedOut, 'either'],
  ] as const)('should come back after being closed with %i (%s)', async (code, how) => {
    const { standIn, running } = await open();
    await standIn.mention('before');
    expect(running.standing().connected).toBe(true);
    standIn.gateway.shut(code);
    await standIn.gateway.live();
    expect((await standIn.mention('after')).shown.map(({ content }) => content)).toEqual(['**after**']);
    const { identifies, resumes } = standIn.gateway.seen;
    if (how === 'resume') expect({ identifies, resumes }).toEqual({ identifies: 1, resumes: 1 });
    if (how === 'afresh') expect(identifies).toBe(2);
    expect(running.standing().connected).toBe(true);
  });

  it.each([
    GatewayCloseCodes.InvalidShard,
    GatewayCloseCodes.ShardingRequired,
    GatewayCloseCodes.InvalidAPIVersion,
    GatewayCloseCodes.InvalidIntents,
    GatewayCloseCodes.DisallowedIntents,
  ])('should not come back after being closed with %i, and have a sentence for it', async (code) => {
    const { standIn, running } = await open();
    standIn.gateway.shut(code);
    expect(await running.stopped).toBe('shut-out');
    expect(running.reason()).toMatch(
      new RegExp(`^The chat platform has shut the bot out \\(code ${code}\\): .+\\.$`),
    );
    expect(standIn.gateway.seen.identifies).toBe(1);
  });

  it('should take a connection without an answer to heartbeats for dead, and come back', async () => {
    const { standIn } = await open({ heartbeatMs: 150 });
    standIn.gateway.deaf = true;
    await until(() => standIn.gateway.seen.resumes + standIn.gateway.seen.identifies > 1, 'a new connection');
    standIn.gateway.deaf = false;
    await standIn.gateway.live();
    expect((await standIn.mention('after')).shown).toHaveLength(1);
  });

  it('should answer an event that comes twice once, and late ones as well', async () => {
    const pipkin = samplePipkin();
    const { standIn } = await open({ pipkin });
    const first = standIn.write({ text: 'first', direct: true });
    const second = standIn.write({ text: 'second', direct: true });
    await second.until(1);
    const again = messageCreated(first.id, { text: 'first', direct: true });
    standIn.raw(again);
    standIn.raw(again);
    expect((await standIn.direct('third')).text).toBe('**third**');
    expect(first.shown).toHaveLength(1);
    expect(pipkin.heard.map(({ text }) => text)).toEqual(['first', 'second', 'third']);
  });

  it('should answer in time although a server is away at the start', async () => {
    const { standIn, running } = await open({ serversAway: true });
    expect(running.guilds).toBeLessThanOrEqual(1);
    expect((await standIn.direct('hello')).text).toBe('**hello**');
    standIn.raw({ t: 'GUILD_CREATE', d: guild });
    expect((await standIn.mention('back')).text).toBe('**back**');
  });

  it('should leave, and say why, when the platform shuts it out for good', async () => {
    const { standIn, running, log } = await open();
    standIn.gateway.shut(GatewayCloseCodes.AuthenticationFailed);
    expect(await running.stopped).toBe('shut-out');
    expect(log.faults.map(({ event }) => event)).toContain('chat.shut-out');
    expect(standIn.gateway.seen.identifies).toBe(1);
  });
});
