import { setTimeout as sleep } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { echoed, refused, samplePipkin } from '../helpers/chat-stand-in/samples.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';

const open = useChat();

describe('taking its time', () => {
  it('should show that it is thinking, then answer in place', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(300);
      return echoed(heard);
    });
    const { standIn } = await open({
      pipkin,
      acknowledgeWithinMs: 250,
      pace: { deferAfterMs: 60 },
    });
    const exchange = await standIn.slash('echo', { text: 'slow' });
    expect(exchange.deferred).toBe(true);
    expect(exchange.acknowledgedMs).toBeLessThan(250);
    expect(exchange.shown.map(({ content }) => content)).toEqual(['**echo slow**']);
  });

  it('should acknowledge within the 3 s of the platform at its usual pace', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(3200);
      return echoed(heard);
    });
    const { standIn } = await open({ pipkin });
    const exchange = await standIn.slash('echo', { text: 'slow' });
    expect(exchange.acknowledgedMs).toBeLessThan(2000);
    expect(exchange.first.content).toBe('**echo slow**');
  });

  it('should take the sign back and answer aside when a late answer is an error', async () => {
    const pipkin = samplePipkin(async () => {
      await sleep(150);
      return refused('I did not understand that. Try "help".');
    });
    const { standIn } = await open({ pipkin, pace: { deferAfterMs: 30 } });
    const exchange = await standIn.slash('echo', { text: 'slow' });
    expect(exchange.shown.map(({ content, aside }) => [content, aside])).toEqual([
      ['I did not understand that. Try "help".', true],
    ]);
  });

  it('should show the typing sign for a message', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(200);
      return echoed(heard);
    });
    const { standIn } = await open({ pipkin, pace: { typingAfterMs: 30 } });
    const exchange = await standIn.mention('slow');
    expect(exchange.typing).toBe(1);
  });

  it('should offer no completions rather than late ones', async () => {
    const pipkin = {
      ...samplePipkin(),
      complete: async () => sleep(400, ['late']),
    };
    const { standIn } = await open({ pipkin, pace: { suggestWithinMs: 50 } });
    expect(await standIn.autocomplete('scale', 'recipe', 'l')).toEqual([]);
  });

  it('should leave at a signal, and say when it has', async () => {
    const { running, log } = await open();
    process.emit('SIGTERM');
    await running.stopped;
    expect(log.lines.at(-1)?.event).toBe('chat.stopped');
    expect(process.listeners('SIGTERM')).toEqual([]);
  });

  it('should finish what is under way when stopped', async () => {
    const pipkin = samplePipkin(async (heard) => {
      await sleep(200);
      return echoed(heard);
    });
    const { standIn, running } = await open({ pipkin });
    const exchange = standIn.write({
      text: '<@900000000000000001> last words',
    });
    await sleep(80);
    await running.stop();
    await running.stopped;
    expect(exchange.text).toBe('**last words**');
  });
});
