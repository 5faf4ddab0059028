import { lotKey } from '../../core/bench/codes.ts';
import { plusDays } from '../../core/bench/days.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import type { Batch, Bench } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok } from '../../core/result.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { correctBatch } from './batch-correct.ts';
import { batchFigures } from './batch-figures.ts';
import { recordGone } from './batch-gone.ts';
import { recordPour } from './batch-pour.ts';
import { listBatches, showBatch } from './batch-show.ts';
import { lookAfterDays, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { findBatch } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { localRules } from './warnings.ts';

/** Most notes of one batch: a page of them. */
const mostNotes = 200;

const tooManyNotes = (batch: Batch): Trouble => ({
  code: 'out-of-range',
  text: `${batch.lot} has ${batch.notes.length} notes already; that is all one batch can hold.`,
});

const noteEvents = (batch: Batch, wish: BatchWish, on: string): BenchEvent[] => {
  const { note, pictures = [] } = wish;
  const [first, ...more] = pictures;
  return [
    { kind: 'batch-noted', lot: batch.lot, on, ...defined({ text: note, picture: first }) },
    ...more.map((picture) => ({ kind: 'batch-noted', lot: batch.lot, on, picture }) as const),
  ];
};

const lookEvent = (batch: Batch, wish: BatchWish, on: string): BenchEvent => ({
  kind: 'batch-looked',
  lot: batch.lot,
  on,
  fine: wish.fine ?? false,
  ...defined({ text: wish.text }),
});

const notFine =
  'Keep the rest of it back until you know why: give none away, look at the retention sample, and note what it was. Mould, water or a rancid smell: throw it away.';

const lookBlocks = (batch: Batch, wish: BatchWish, on: string): Block[] => {
  const early = on < plusDays(batch.madeOn, lookAfterDays);
  return [
    text(
      wish.fine
        ? `Looked at on ${dayText(on)}: fine.`
        : `Looked at on ${dayText(on)}: ${wish.text ?? 'not fine'}.`,
    ),
    ...(wish.fine ? [] : [text(notFine)]),
    ...(early && wish.fine
      ? [
          text(
            `Grain can take a week to show: look again on ${dayText(plusDays(batch.madeOn, lookAfterDays))}.`,
          ),
        ]
      : []),
  ];
};

const noteBlocks = (wish: BatchWish): Block[] => [
  ...(wish.note ? [text(`Noted: ${wish.note}`)] : []),
  ...(wish.pictures ?? []).map((url) => text(`Picture: ${url}`)),
];

/** A note or a look: written for a batch that is there. */
const recordAbout = async (wish: BatchWish, tools: Tools): Promise<Answer | Trouble> => {
  const on = wish.on ?? todayFor(tools);
  const wrongDay = dayTrouble(on, todayFor(tools));
  if (wrongDay) return wrongDay;
  const decide = (bench: Bench) => {
    const batch = findBatch(wish.lot ?? '', bench);
    if ('code' in batch) return fail(batch);
    if (batch.notes.length + batch.looks.length >= mostNotes) return fail(tooManyNotes(batch));
    const events = wish.action === 'look' ? [lookEvent(batch, wish, on)] : noteEvents(batch, wish, on);
    return ok({ events, value: batch.lot });
  };
  const changed = await tools.book.change((state) => decide(benchOf(state)), by(tools));
  if (!changed.ok) return changed.problem;
  const { state, value: lot } = changed.value;
  const batch = benchOf(state).batches.get(lotKey(lot)) as Batch;
  return {
    title: `${batch.lot}: ${batch.name}`,
    blocks: wish.action === 'look' ? lookBlocks(batch, wish, on) : noteBlocks(wish),
    figures: batchFigures(batch, state),
    warnings: [localRules],
    next: [{ label: `Show ${batch.lot}`, say: `batch ${batch.lot}` }],
  };
};

type Action = BatchWish['action'];
type Answering = (wish: BatchWish, tools: Tools) => Answer | Trouble | Promise<Answer | Trouble>;

const answers: Readonly<Record<Action, Answering>> = {
  pour: recordPour,
  correct: correctBatch,
  gone: recordGone,
  back: recordGone,
  look: recordAbout,
  note: recordAbout,
  show: showBatch,
  list: listBatches,
};

/** Answers whatever was said about batches. */
export const answerBatch: Answering = (wish, tools) => answers[wish.action](wish, tools);
