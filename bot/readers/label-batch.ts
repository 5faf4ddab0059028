import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { batchMeant } from './batch-meant.ts';
import { readBench } from './bench-reading.ts';
import { cover } from './check-parts.ts';
import type { Board } from './target.ts';

/** The batch a label is for: by its code, "the last batch of R", or the one spoken of before. */
export interface LabelBatch {
  readonly batch?: string;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const none: LabelBatch = { assumed: [] };
const batchWord = /\bbatch\b|\b(?:last|latest|today's|yesterday's)\s+pour\b/i;

/** Reads which poured batch is meant and takes its code off the board. Nothing where the group has poured none. */
export const takeBatch = (board: Board, reading: Reading): LabelBatch => {
  if (reading.bench.batches.size === 0) return none;
  const bench = readBench(reading);
  const coded = bench.lots.filter(({ kind }) => kind === 'batch');
  for (const { from, to } of coded) cover(board, from, to);
  const before = reading.last?.topic === 'batch' && !reading.items.some(({ letter }) => /[Ri]/.test(letter));
  if (coded.length === 0 && !batchWord.test(reading.text) && !before) return none;
  const { lot, assumed, trouble } = batchMeant(reading, bench, true);
  if (lot !== undefined) return { batch: lot, assumed };
  return trouble ? { assumed: [], trouble } : none;
};
