import { GatewayCloseCodes } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

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

  it('should leave, and say why, when the platform shuts it out for good', async () => {
    const { standIn, running, log } = await open();
    standIn.gateway.shut(GatewayCloseCodes.AuthenticationFailed);
    expect(await running.stopped).toBe('shut-out');
    expect(log.faults.map(({ event }) => event)).toContain('chat.shut-out');
    expect(standIn.gateway.seen.identifies).toBe(1);
  });
});
