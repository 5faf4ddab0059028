import type { Answer, Block, Reply, Warning } from '../answer.ts';
import { clean, cleanLine } from './clean.ts';
import type { SavedFile } from './files.ts';
import { plainStyle, type Style } from './style.ts';
import { tableLines } from './table.ts';
import { wrap } from './wrap.ts';

export interface Look {
  /** Columns of a fixed-width font; 40 or more. */
  readonly width: number;
  readonly style?: Style;
  /** Where the answer's files were written. */
  readonly files?: readonly SavedFile[];
  /** Also name what could be asked next (a chat does, the one-shot command does not). */
  readonly next?: boolean;
}

/** Lines that belong together; an empty line stands between paragraphs. */
type Paragraph = readonly string[];

const lastly = 'local-rules';

/** A block as lines. Assumptions and sources are collected further down, so they give none here. */
const written = (block: Block, width: number, style: Style): Paragraph => {
  switch (block.kind) {
    case 'text':
      return wrap(clean(block.text).trim(), width);
    case 'table':
      return tableLines(block, width, style);
    case 'chart':
      return block.lines.map((line) => clean(line));
    case 'list':
      return block.items.flatMap((item) => wrap(`- ${cleanLine(item)}`, width, '  '));
    case 'assumed':
    case 'source':
      return [];
  }
};

const collected = (answer: Answer, kind: 'assumed' | 'source'): string[] => [
  ...new Set(answer.blocks.flatMap((block) => (block.kind === kind ? [cleanLine(block.text)] : []))),
];

const sourceLines = (sources: readonly string[], width: number): Paragraph => {
  if (sources.length === 0) return [];
  return wrap(`${sources.length === 1 ? 'Source' : 'Sources'}: ${sources.join('; ')}`, width, '  ');
};

const mindLines = (warnings: readonly Warning[], width: number): Paragraph =>
  warnings.flatMap(({ text }) => wrap(`Mind: ${cleanLine(text)}`, width, '  '));

/** Paths are not wrapped: a broken path cannot be copied. */
const fileLines = (files: readonly SavedFile[]): Paragraph =>
  files.map(({ name, path }) => `File ${cleanLine(name)}: ${clean(path)}`);

const nextLines = (answer: Answer, width: number): Paragraph =>
  (answer.next ?? [])
    .filter(({ form }) => !form)
    .flatMap(({ say }) => wrap(`Next, say: ${cleanLine(say)}`, width, '  '));

const answerParagraphs = (answer: Answer, look: Look): Paragraph[] => {
  const { width, style = plainStyle } = look;
  const reminders = answer.warnings.filter(({ code }) => code === lastly);
  const warnings = answer.warnings.filter(({ code }) => code !== lastly);
  return [
    wrap(cleanLine(answer.title), width).map(style.title),
    ...answer.blocks.map((block) => written(block, width, style)),
    collected(answer, 'assumed').flatMap((text) => wrap(`Assumed: ${text}`, width, '  ')),
    sourceLines(collected(answer, 'source'), width).map(style.quiet),
    mindLines(warnings, width).map(style.mind),
    fileLines(look.files ?? []),
    (look.next === true ? nextLines(answer, width) : []).map(style.quiet),
    reminders.flatMap(({ text }) => wrap(cleanLine(text), width)).map(style.quiet),
  ];
};

/**
 * A reply as a person reads it in a fixed-width font: title, the blocks in their order, what was assumed, sources,
 * warnings, files, and the reminder of local rules last. No line is wider than `width` (file paths excepted), and no
 * control character of a member's text gets through. No line break at the end.
 */
export const textOf = (reply: Reply, look: Look): string => {
  const { width, style = plainStyle } = look;
  if ('error' in reply) return wrap(clean(reply.error.text).trim(), width).map(style.trouble).join('\n');
  return answerParagraphs(reply.answer, look)
    .filter((lines) => lines.some((line) => line !== ''))
    .map((lines) => lines.join('\n'))
    .join('\n\n');
};
