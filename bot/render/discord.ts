import type { Answer, AnswerFile, Block, Reply, Warning } from '../answer.ts';
import {
  maxButtons,
  type NextButton,
  type NextMenu,
  nextButtons,
  nextMenu,
  type Part,
} from '../discord/buttons.ts';
import { chatText, codeText, sourceText } from '../discord/escape.ts';
import { type Piece, pages } from '../discord/pages.ts';
import { isLasting } from '../lasting.ts';
import { clean } from './clean.ts';
import { safeName } from './files.ts';
import { tableLines } from './table.ts';
import { textOf } from './text.ts';
import { wrap } from './wrap.ts';

// Answers are plain messages: text, code blocks for tables, buttons below. The platform's layout components were
// looked at and left: they have no table either (columns still need a code block, and a container's padding takes
// columns away from it on a phone), a message made of them shows no text in notifications or to be copied as a whole,
// and once a message is made of them it can hold no plain text.

/** One message to send. `text` is at most 2,000 characters. */
export interface ChatMessage {
  readonly text: string;
  readonly buttons: readonly NextButton[];
  readonly menu?: NextMenu | undefined;
  readonly files: readonly AnswerFile[];
}

/** Messages in the order they are sent; `aside` ones are for the asking member alone where that can be. */
export interface ChatReply {
  readonly messages: readonly [ChatMessage, ...ChatMessage[]];
  readonly aside: boolean;
  /** The topic of an answer for the asking member alone, which must not stand where others can read it. */
  readonly personal?: string | undefined;
}

/** Platform limits: characters and files in a message, bytes of a file (the lowest there is for a bot). */
const maxLength = 2000;
const maxFiles = 10;
const maxFileBytes = 10 * 1024 * 1024;

/** Columns a code block shows on a narrow phone without breaking its lines. */
const phoneColumns = 40;
/** Columns of the text file that carries what would take too many messages. */
const fileColumns = 72;
/** An answer that needs more messages than this is sent as its beginning and a text file with all of it. */
const mostPages = 2;
/** Longest stretch of running text taken as one line: escaping may double it, and it must still fit on a page. */
const lineColumns = 900;

const lastly = 'local-rules';

const paragraph = (lines: readonly string[]): Piece => ({
  open: '',
  lines,
  close: '',
});

// Wrapped before it is escaped, so that no mark is parted from the backslash before it.
const running = (text: string, shown = chatText): string[] => {
  const said = clean(text).trim();
  return said === '' ? [] : wrap(said, lineColumns).map(shown);
};

/** Sentences remembered as they are written in a message. */
const mostSentences = 1000;
const sentences = new Map<string, string[]>();

/** As `running`, for the sentences below an answer: the same few hundred again and again, whoever asks. */
const closingLines = (text: string): string[] => {
  const before = sentences.get(text);
  if (before) return before;
  if (sentences.size >= mostSentences) sentences.clear();
  const lines = running(text);
  sentences.set(text, lines);
  return lines;
};

const tablePiece = (block: Extract<Block, { kind: 'table' }>): Piece => {
  const lines = tableLines(block, phoneColumns).map(codeText);
  const rule = lines.findIndex((line) => /^─+$/.test(line));
  // A table without titles has no rule before its first row; the rule of a total must not be taken for one.
  const titled = block.columns.some(({ title }) => title !== '') && rule > 0 && rule <= 6;
  const head = titled ? lines.slice(0, rule + 1) : [];
  const open = ['```', ...head].map((line) => `${line}\n`).join('');
  return { open, lines: lines.slice(head.length), close: '\n```' };
};

const small = (text: string): string => `-# ${text}`;

/** A block's own lines. Assumptions and sources are collected further down. */
const pieceOf = (block: Block): Piece => {
  switch (block.kind) {
    case 'text':
      return paragraph(running(block.text));
    case 'list':
      return paragraph(
        block.items.flatMap((item) =>
          running(item).map((line, at) => (at === 0 ? `- ${line}` : `  ${line}`)),
        ),
      );
    case 'chart':
      return { open: '```\n', lines: block.lines.map(codeText), close: '\n```' };
    case 'table':
      return tablePiece(block);
    case 'assumed':
    case 'source':
      return paragraph([]);
  }
};

const collected = (answer: Answer, kind: 'assumed' | 'source'): string[] => [
  ...new Set(answer.blocks.flatMap((block) => (block.kind === kind ? [block.text.trim()] : []))),
];

const warningLines = (warnings: readonly Warning[]): string[] =>
  warnings.filter(({ code }) => code !== lastly).flatMap(({ text }) => closingLines(`⚠️ ${text}`));

const closing = (answer: Answer): Piece[] => {
  const sources = collected(answer, 'source');
  const heading = sources.length === 1 ? 'Source' : 'Sources';
  return [
    paragraph(warningLines(answer.warnings)),
    paragraph(
      collected(answer, 'assumed')
        .flatMap((text) => closingLines(`Assumed: ${text}`))
        .map(small),
    ),
    paragraph(
      sources.length === 0 ? [] : running(`${heading}: ${sources.join('; ')}`, sourceText).map(small),
    ),
    paragraph(
      answer.warnings
        .filter(({ code }) => code === lastly)
        .flatMap(({ text }) => closingLines(text))
        .map(small),
    ),
  ];
};

/** Where the chart is attached as a picture, its drawing in characters would only say it twice. */
const shownBlocks = ({ blocks, files = [] }: Answer): readonly Block[] =>
  files.some(({ type }) => type === 'image/png') ? blocks.filter(({ kind }) => kind !== 'chart') : blocks;

const pieces = (answer: Answer): Piece[] => [
  paragraph(running(answer.title.replaceAll('\n', ' ')).map((line) => `**${line}**`)),
  ...shownBlocks(answer).map(pieceOf),
  ...closing(answer),
];

const textFile = (topic: string, reply: Reply): AnswerFile => ({
  name: safeName(`pipkin-${topic}.txt`),
  type: 'text/plain; charset=utf-8',
  bytes: new TextEncoder().encode(`${textOf(reply, { width: fileColumns })}\n`),
});

interface Written {
  readonly texts: readonly string[];
  readonly files: readonly AnswerFile[];
}

const fitting = (reply: Extract<Reply, { answer: Answer }>): Written => {
  const all = pieces(reply.answer);
  const texts = pages(all, maxLength);
  if (texts.length <= mostPages) return { texts, files: [] };
  const file = textFile(reply.topic, reply);
  const note = small(`This is the beginning; all of it is in the file ${chatText(file.name)}.`);
  const [beginning = ''] = pages(all, maxLength - note.length - 1);
  return { texts: [`${beginning}\n${note}`], files: [file] };
};

const tooBig = ({ bytes }: AnswerFile): boolean => bytes.byteLength > maxFileBytes;

const bunches = <T>(list: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, at) => list.slice(at * size, (at + 1) * size));

const fileMessages = (files: readonly AnswerFile[]): ChatMessage[] =>
  bunches(
    files.map((file) => ({ ...file, name: safeName(file.name) })),
    maxFiles,
  ).map((bunch) => ({ text: '', buttons: [], files: bunch }));

const notSent = (files: readonly AnswerFile[]): ChatMessage[] =>
  files.map(({ name }) => ({
    text: `The file ${chatText(safeName(name))} is larger than this chat takes (10 MiB), so it is not attached.`,
    buttons: [],
    files: [],
  }));

/** Buttons for the next steps; a few choices are buttons too, more of them a menu. */
const goingOn = (
  { next = [], choices }: Answer,
  part: Part | undefined,
): Required<Pick<ChatMessage, 'buttons' | 'menu'>> => {
  const few = choices !== undefined && choices.steps.length + next.length <= maxButtons;
  return few
    ? { buttons: nextButtons([...next, ...choices.steps]), menu: undefined }
    : { buttons: nextButtons(next), menu: nextMenu(choices, part) };
};

/** The last text message carries the buttons and the first files, so that they stand under what they belong to. */
const assembled = (
  { texts, files }: Written,
  answer: Answer,
  part: Part | undefined,
): readonly ChatMessage[] => {
  const offered = [...files, ...(answer.files ?? [])];
  const [first, ...more] = fileMessages(offered.filter((file) => !tooBig(file)));
  // The platform takes no message without text; an answer without any is a topic's fault, but still an answer.
  const last = texts.at(-1) ?? '…';
  const { buttons, menu } = goingOn(answer, part);
  return [
    ...texts.slice(0, -1).map((text) => ({ text, buttons: [], files: [] })),
    { text: last, buttons, menu, files: first?.files ?? [] },
    ...more,
    ...notSent(offered.filter(tooBig)),
  ];
};

/** Plain text as one message. Cut, visibly, at what one message holds. */
export const plainMessage = (text: string): string => {
  const [first = '', ...more] = pages([paragraph(running(text))], maxLength - 2);
  return more.length > 0 ? `${first}\n…` : first;
};

/** A short plain message for the asking member alone: an error, or a polite refusal. */
export const asideReply = (text: string): ChatReply => ({
  messages: [{ text: plainMessage(text), buttons: [], files: [] }],
  aside: true,
});

/** Messages by the answer they were written for: an answer that is kept (kept-answers.ts) is written once. */
const written = new WeakMap<Answer, ChatReply>();

/**
 * A reply as the messages to send for it, inside the platform's limits. Pure; nothing in it mentions anybody.
 *
 * @param part - of a menu with more options than one can hold; without it they end where it is full
 */
export const chatReply = (reply: Reply, part?: Part): ChatReply => {
  if ('error' in reply) return asideReply(reply.error.text);
  const { answer } = reply;
  const before = written.get(answer);
  if (before) return before;
  const messages = messagesOf(reply, part);
  // Only a menu differs by its part.
  if (!answer.choices && isLasting(answer)) written.set(answer, messages);
  return messages;
};

const messagesOf = (reply: Extract<Reply, { answer: Answer }>, part: Part | undefined): ChatReply => {
  const [first, ...more] = assembled(fitting(reply), reply.answer, part);
  if (!first) return asideReply(reply.answer.title);
  const aside = reply.answer.quiet === true;
  return { messages: [first, ...more], aside, ...(aside ? { personal: reply.topic } : {}) };
};
