import type { Readable, Writable } from 'node:stream';
import { type Delivered, deliver } from '../console/deliver.ts';
import { type Line, linesOf } from '../console/lines.ts';
import { filesFolder, heardHere, mostBytes } from '../console/local.ts';
import { type Sink, sinkOf } from '../console/sink.ts';
import type { House } from '../house.ts';
import { warmPictures } from '../pictures/warm.ts';
import { jsonLine } from '../render/json.ts';
import { styleFor } from '../render/style.ts';
import { textOf } from '../render/text.ts';
import { widthFor } from '../render/width.ts';
import { type AskedLine, messageOf } from './message.ts';
import { type AskOptions, readOptions, usage } from './options.ts';

export interface AskParts {
  readonly argv: readonly string[];
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: Readable;
  readonly stdout: Writable & {
    readonly isTTY?: boolean;
    readonly columns?: number;
  };
  readonly stderr: Writable;
  readonly clock: () => number;
  /** Where the books are kept when `--store` does not say. */
  readonly storeUrl: string;
  /** Rejects with a plain sentence as its message when the store cannot be used. */
  readonly open: (storeUrl: string) => Promise<House>;
}

type ExitCode = 0 | 1 | 2;

interface Work {
  readonly parts: AskParts;
  readonly options: AskOptions;
  readonly house: House;
  readonly folder: string;
  readonly out: Sink;
}

const answered = ({ parts, options, house, folder }: Work, asked: AskedLine): Promise<Delivered> => {
  const { group = options.group, member = options.member, now = options.now ?? parts.clock(), text } = asked;
  return deliver(house.pipkin, heardHere({ text, at: now, group, member, region: options.region }), folder);
};

const one = async (work: Work): Promise<void> => {
  const { stdout, env } = work.parts;
  const { reply, files } = await answered(work, { text: work.options.words });
  const style = styleFor(stdout, env);
  const line =
    work.options.mode === 'json'
      ? jsonLine(reply, files)
      : textOf(reply, { width: widthFor(stdout.columns), style, files });
  await work.out.write(`${line}\n`);
};

const toLine = (work: Work, line: Line): Promise<Delivered> | Delivered => {
  const asked = messageOf(line);
  return asked.ok ? answered(work, asked.value) : { reply: { topic: null, error: asked.problem }, files: [] };
};

/** One answer is written before the next line is taken up, so memory stays the same however many lines come. */
const many = async (work: Work): Promise<void> => {
  const { stdin } = work.parts;
  warmPictures();
  work.out.onGone(() => stdin.destroy());
  try {
    for await (const line of linesOf(stdin, mostBytes)) {
      const { reply, files } = await toLine(work, line);
      if (!(await work.out.write(`${jsonLine(reply, files)}\n`))) return;
    }
  } catch (fault) {
    if (!work.out.isGone()) throw fault;
  }
};

const answerAll = async (parts: AskParts, options: AskOptions): Promise<ExitCode> => {
  const storeUrl = options.store ?? parts.storeUrl;
  const house = await parts.open(storeUrl);
  const out = sinkOf(parts.stdout);
  try {
    const work = { parts, options, house, folder: filesFolder(storeUrl), out };
    await (options.mode === 'jsonl' ? many(work) : one(work));
  } finally {
    await house.close();
  }
  const fault = out.fault();
  if (fault) throw fault;
  return house.faults() === 0 ? 0 : 1;
};

const said = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

/**
 * The one-shot command. Resolves to its exit code: 0 when every message got an answer or a clear error, 2 for wrong
 * options, 1 for a fault (the store cannot be used, the output cannot be written). A reader that goes away (a closed
 * pipe) is no fault.
 */
export const runAsk = async (parts: AskParts): Promise<ExitCode> => {
  const options = readOptions(parts.argv);
  if (!options.ok) {
    parts.stderr.write(`${options.problem}\n\n${usage}`);
    return 2;
  }
  if (options.value.mode === 'usage') {
    parts.stdout.write(usage);
    return 0;
  }
  try {
    return await answerAll(parts, options.value);
  } catch (fault) {
    parts.stderr.write(`${said(fault)}\n`);
    return 1;
  }
};
