import { createInterface, type Interface, type Key } from 'node:readline';
import { assembler } from './assemble.ts';
import type { Between, Chat } from './chat.ts';
import { loadHistory, mostHistory, saveHistory } from './history.ts';
import { goodbye, isLeaving, listHint, welcome } from './words.ts';

/** Asks the terminal to mark pasted text, so that its line breaks do not send it line by line. */
const markPastes = '\x1b[?2004h';
const unmarkPastes = '\x1b[?2004l';

const clearLine = '\r\x1b[K';

const prompts = { message: '> ', list: '… ', more: '… ', paste: '… ' } as const;

/** Follows the terminal's paste marks among the keys. */
const pasteWatch = (input: Chat['parts']['input']): (() => boolean) => {
  let pasting = false;
  input.on('keypress', (_text: string | undefined, key: Key | undefined) => {
    if (key?.name === 'paste-start') pasting = true;
    if (key?.name === 'paste-end') pasting = false;
  });
  return () => pasting;
};

const openLines = async (chat: Chat): Promise<Interface> => {
  const { input, output, historyFile } = chat.parts;
  return createInterface({
    input,
    output,
    terminal: true,
    prompt: prompts.message,
    history: await loadHistory(historyFile),
    historySize: mostHistory,
    removeHistoryDuplicates: true,
  });
};

/** Nobody reads any longer, or the chat is ended from outside. */
const closeWhenOver = ({ out, parts: { signal } }: Chat, lines: Interface): void => {
  const close = (): void => lines.close();
  out.onGone(close);
  signal?.addEventListener('abort', close, { once: true });
  if (signal?.aborted) close();
};

/** Hands each whole message on, one after the other; resolves when the person has left and the last is answered. */
const converseOn = (chat: Chat, lines: Interface): Promise<void> => {
  const messages = assembler();
  const isPasting = pasteWatch(chat.parts.input);
  let turn: Promise<void> = Promise.resolve();
  let left = false;
  let saidGoodbye = false;

  const prompt = (): void => {
    if (left) return;
    lines.setPrompt(prompts[messages.waitsFor()]);
    lines.prompt(true);
  };
  const hint = (): void => void chat.out.write(`${chat.style.quiet(listHint)}\n`);
  const take = async (message: string): Promise<void> => {
    if (saidGoodbye) return;
    saidGoodbye = isLeaving(message);
    if (saidGoodbye) lines.close();
    else if (message.trim() !== '') await chat.answer(message);
    prompt();
  };

  // In its turn, so that it does not come into the middle of an answer.
  const between: Between = (write) => {
    const written = turn.then(async () => {
      chat.parts.output.write(clearLine);
      await write();
      prompt();
    });
    turn = written;
    return written;
  };
  const opened = chat.opened(between);

  return new Promise<void>((resolve, reject) => {
    opened.catch(reject);
    lines.on('line', (line) => {
      const waited = messages.waitsFor();
      const message = messages.add(line, isPasting());
      if (messages.waitsFor() === 'list' && waited !== 'list') hint();
      if (message === undefined) prompt();
      else turn = turn.then(() => take(message));
      turn.catch(() => lines.close());
    });
    lines.on('SIGINT', () => lines.close());
    lines.on('SIGCONT', () => void chat.out.write(markPastes).then(prompt));
    lines.on('close', () => {
      left = true;
      turn.then(resolve, reject);
    });
    closeWhenOver(chat, lines);
    prompt();
  });
};

/** The chat in a terminal: welcome, line editing with history, pastes kept whole, the terminal left as it was found. */
export const converse = async (chat: Chat): Promise<void> => {
  const { out, style, width, parts } = chat;
  const lines = await openLines(chat);
  let history: readonly string[] = [];
  lines.on('history', (all) => {
    history = all;
  });
  await out.write(`${welcome(width(), style)}\n${markPastes}`);
  try {
    await converseOn(chat, lines);
  } finally {
    await out.write(`${unmarkPastes}\n${goodbye}\n`);
    await saveHistory(parts.historyFile, history);
  }
};
