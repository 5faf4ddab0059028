import { describe, expect, it } from 'vitest';
import { shutOutSentence } from '../../bot/discord/shut-out.ts';
import { holdStray } from '../../bot/discord/stray.ts';
import { keptLog } from '../helpers/chat-stand-in/samples.ts';

const strays = ['unhandledRejection', 'uncaughtException'] as const;

/** With the test runner's own listeners away, which would count such a fault against the test. */
const alone = (work: () => void): void => {
  const kept = strays.map((name) => [name, process.rawListeners(name)] as const);
  for (const name of strays) process.removeAllListeners(name);
  try {
    work();
  } finally {
    for (const [name, listeners] of kept)
      for (const listener of listeners) process.on(name, listener as (fault: unknown) => void);
  }
};

const throwUncaught = (): void => void process.emit('uncaughtException', new Error('my private balm'));

describe('faults that nobody held', () => {
  it('should be logged under an id each, without the words they quote, and end nothing', () => {
    alone(() => {
      const log = keptLog();
      let given = 0;
      const letGo = holdStray(log, () => given++);
      throwUncaught();
      process.emit('unhandledRejection', new TypeError('my private balm'), Promise.resolve());
      letGo();
      expect(log.faults).toMatchObject([
        { event: 'chat.stray-fault', fields: { name: 'Error', id: expect.stringMatching(/^[0-9a-f]{8}$/) } },
        { event: 'chat.stray-fault', fields: { name: 'TypeError' } },
      ]);
      expect(JSON.stringify(log.faults)).not.toContain('private');
      expect(given).toBe(0);
      expect(strays.map((name) => process.listenerCount(name))).toEqual([0, 0]);
    });
  });

  it('should be given up at when they come in a flood', () => {
    alone(() => {
      let given = 0;
      const letGo = holdStray(keptLog(), () => given++);
      for (let n = 0; n < 20; n++) throwUncaught();
      expect(given).toBe(0);
      throwUncaught();
      letGo();
      expect(given).toBe(1);
    });
  });
});

describe('being shut out', () => {
  it('should have a sentence for a code that nobody has heard of', () => {
    expect(shutOutSentence(4999)).toBe(
      'The chat platform has shut the bot out (code 4999): its documentation says why.',
    );
  });
});
