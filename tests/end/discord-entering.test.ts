import { describe, expect, it } from 'vitest';
import { startDiscord } from '../../bot/discord/run.ts';
import { ChatStartError } from '../../bot/discord/start-error.ts';
import { echoTopic, keptLog, samplePipkin, scaleSample } from '../helpers/chat-stand-in/samples.ts';
import { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { until } from '../helpers/run-process.ts';

const open = useChat();

describe('entering the chat', () => {
  it('should log in without privileged intents, be ready and register its commands once', async () => {
    const { standIn, running, log, restart } = await open();
    expect(running.guilds).toBe(1);
    expect(standIn.gateway.seen.identifies).toBe(1);
    expect(standIn.commands.list.map(({ name }) => name)).toEqual(['scale', 'echo', 'Read as a recipe']);
    expect(standIn.commands.writes).toBe(1);
    await restart();
    expect(standIn.commands).toMatchObject({ reads: 2, writes: 1 });
    await restart([scaleSample]);
    expect(standIn.commands.writes).toBe(2);
    expect(standIn.commands.list.map(({ name }) => name)).toEqual(['scale', 'Read as a recipe']);
    expect(log.faults).toEqual([]);
    expect(log.lines.map(({ event }) => event)).toContain('chat.ready');
  });

  it('should register again when only a description has changed', async () => {
    const { standIn, restart } = await open();
    await restart([{ ...scaleSample, summary: 'Work out the grams' }, echoTopic]);
    expect(standIn.commands.writes).toBe(2);
  });

  it('should answer heartbeats', async () => {
    const { standIn } = await open({ heartbeatMs: 40 });
    await until(() => standIn.gateway.seen.heartbeats > 1, 'heartbeats');
  });

  it('should say so plainly when the token is refused, without quoting it', async () => {
    const { standIn } = await open();
    const token = 'some-other-token';
    const log = keptLog();
    const entering = startDiscord({
      token,
      apiUrl: standIn.apiUrl,
      pipkin: samplePipkin(),
      topics: [],
      log,
    });
    const fault = await entering.catch((reason: unknown) => reason);
    expect(fault).toBeInstanceOf(ChatStartError);
    expect(String(fault)).toContain('refused the token');
    expect(String(fault) + JSON.stringify(log)).not.toContain(token);
  });

  it('should say so plainly when nobody is there', async () => {
    const gone = await StandIn.start();
    const { apiUrl, token } = gone;
    await gone.close();
    const entering = startDiscord({
      token,
      apiUrl,
      pipkin: samplePipkin(),
      topics: [],
      log: keptLog(),
    });
    await expect(entering).rejects.toThrow(/Could not enter the chat platform at http:\/\/127\.0\.0\.1/);
  });
});
