import { afterEach, expect } from 'vitest';
import { echoTopic, samplePipkin, scaleSample } from './samples.ts';
import { type Chat, type ChatSetup, chatWith } from './with-bot.ts';

/**
 * For a test file: gives a function that opens a chat (sample topics, a Pipkin that says back what it hears, unless
 * said otherwise). After each test it is closed, and whatever the stand-in found wrong fails the test.
 */
export const useChat = (): ((setup?: Partial<ChatSetup>) => Promise<Chat>) => {
  let chat: Chat | undefined;
  afterEach(async () => {
    await chat?.close();
    const problems = chat?.standIn.problems ?? [];
    chat = undefined;
    expect(problems).toEqual([]);
  });
  return async (setup = {}) => {
    chat = await chatWith({
      pipkin: samplePipkin(),
      topics: [scaleSample, echoTopic],
      ...setup,
    });
    return chat;
  };
};
