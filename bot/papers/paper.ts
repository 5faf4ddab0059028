import type { Mark, Paper } from '../../core/paper/paper.ts';
import { ThreadFault } from '../threads/thread-fault.ts';
import { compiledScript, type ThreadLimits, WorkThread } from '../threads/work-thread.ts';
import type { PaperOrder } from './write-paper.ts';

export const usualPaperLimits: ThreadLimits = { milliseconds: 20_000, waiting: 10 };
/** Most marks on all pages together, stamped ones each time they are printed: a label has about twenty. */
const mostMarks = 60_000;

const count = (marks: readonly Mark[]): number =>
  marks.reduce((sum, mark) => sum + (mark.kind === 'stamp' ? mark.at.length * count(mark.marks) : 1), 0);

let thread: WorkThread<PaperOrder> | undefined;

/**
 * PDF of a paper, written on a thread of its own with the shipped font. `at` is the message's instant in epoch
 * milliseconds, the paper's date: the same paper and instant give the same bytes. To be imported when a paper is wanted,
 * not before. Rejects with a `ThreadFault`; an answer says so and does without its paper.
 */
export const pdfOf = async (paper: Paper, at: number): Promise<Uint8Array> => {
  const marks = paper.pages.reduce((sum, page) => sum + count(page.marks), 0);
  if (marks > mostMarks) throw new ThreadFault('not-drawn', 'paper too long');
  thread ??= new WorkThread(usualPaperLimits, compiledScript(import.meta.url, 'papers/paper-thread.js'));
  return thread.make({ paper, at });
};

/** Ends the thread; a later paper would start a new one. */
export const closePapers = async (): Promise<void> => {
  const closing = thread;
  thread = undefined;
  await closing?.close();
};
