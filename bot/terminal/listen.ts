import { linesOf } from '../console/lines.ts';
import { mostBytes } from '../console/local.ts';
import { assembler } from './assemble.ts';
import type { Chat } from './chat.ts';
import { isLeaving, readyLine } from './words.ts';

/** What is read in place of a line too long to keep: the handler refuses it as too long. */
const overlong = 'x'.repeat(mostBytes);

const answerEach = async ({ parts, out, answer }: Chat): Promise<void> => {
  const messages = assembler();
  for await (const line of linesOf(parts.input, mostBytes)) {
    const message = messages.add(line.kind === 'line' ? line.text : overlong, false);
    if (message === undefined || message.trim() === '') continue;
    if (isLeaving(message)) return;
    await answer(message);
    if (out.isGone()) return;
  }
  const rest = messages.rest();
  if (rest !== undefined && !isLeaving(rest)) await answer(rest);
};

/** The chat over a pipe: a ready line, then an answer to each message until the input ends. No prompts. */
export const listen = async (chat: Chat): Promise<void> => {
  const { parts, out } = chat;
  let stopped = false;
  const stop = (): void => {
    stopped = true;
    parts.input.destroy();
  };
  out.onGone(stop);
  parts.signal?.addEventListener('abort', stop, { once: true });
  if (parts.signal?.aborted) stop();
  try {
    await out.write(`${readyLine}\n\n`);
    await chat.opened(async (write) => void (await write()));
    await answerEach(chat);
  } catch (fault) {
    if (!stopped) throw fault;
  }
};
