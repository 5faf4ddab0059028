import type { Readable, Writable } from 'node:stream';
import type { Reply } from '../answer.ts';
import { deliver } from '../console/deliver.ts';
import { heardHere } from '../console/local.ts';
import { type Sink, sinkOf } from '../console/sink.ts';
import type { Pipkin } from '../handle.ts';
import type { Sender } from '../remind/sender.ts';
import { type Style, styleFor } from '../render/style.ts';
import { textOf } from '../render/text.ts';
import { widthFor } from '../render/width.ts';
import { converse } from './converse.ts';
import { terminalSender } from './daily-sender.ts';
import { listen } from './listen.ts';

export interface ChatParts {
  readonly input: Readable & { readonly isTTY?: boolean };
  readonly output: Writable & {
    readonly isTTY?: boolean;
    readonly columns?: number;
  };
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly pipkin: Pipkin;
  readonly clock: () => number;
  readonly filesFolder: string;
  /** Where lines typed are kept for the next time; none are kept without it. */
  readonly historyFile?: string;
  /** Ends the chat from outside. */
  readonly signal?: AbortSignal;
  /** Called once the chat is open, with a way to show what nobody asked for. */
  readonly remind?: (sender: Sender) => Promise<Reminding | undefined>;
}

interface Reminding {
  sweep(): Promise<unknown>;
  stop(): Promise<void>;
}

/** Writes something in between: what is being typed is put out of the way and set again below. */
export type Between = (write: () => Promise<unknown>) => Promise<void>;

/** A chat under way, as its two ways of reading see it. */
export interface Chat {
  readonly parts: ChatParts;
  readonly out: Sink;
  readonly style: Style;
  width(): number;
  /** Answers one message in full. */
  answer(message: string): Promise<void>;
  /** To be called when the chat is open: shows what is due by now, and from then on at its hour. */
  opened(between: Between): Promise<void>;
  /** To be called when the chat is over. */
  closed(): Promise<void>;
}

const chatOf = (parts: ChatParts): Chat => {
  const { output, pipkin, clock, filesFolder } = parts;
  const out = sinkOf(output);
  const style = styleFor(output, parts.env);
  const width = () => widthFor(output.columns);
  let reminding: Reminding | undefined;
  return {
    parts,
    out,
    style,
    width,
    async answer(message) {
      const { reply, files } = await deliver(pipkin, heardHere({ text: message, at: clock() }), filesFolder);
      await out.write(`${textOf(reply, { width: width(), style, files, next: true })}\n\n`);
    },
    async opened(between) {
      const show = (reply: Reply) => `${textOf(reply, { width: width(), style, next: true })}\n\n`;
      reminding = await parts.remind?.(terminalSender(out, show, between));
      await reminding?.sweep();
    },
    async closed() {
      await reminding?.stop();
    },
  };
};

/**
 * The chat in a terminal, or (where input or output is none) message by message over a pipe without prompts.
 * Resolves when the person leaves, the input ends or `signal` aborts, with every answer written.
 */
export const runChat = async (parts: ChatParts): Promise<void> => {
  const chat = chatOf(parts);
  const isTerminal = parts.input.isTTY === true && parts.output.isTTY === true;
  try {
    await (isTerminal ? converse(chat) : listen(chat));
  } finally {
    await chat.closed();
  }
  const fault = chat.out.fault();
  if (fault) throw fault;
};
