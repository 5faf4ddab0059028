import { lotKey } from '../../core/bench/codes.ts';
import type { BenchEvent } from '../../core/bench/events.ts';
import { type Moved, type Place, type ReturnProblem, returnsOf } from '../../core/bench/returns.ts';
import { type Batch, type Bench, tinsLeft, tinsOut } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import { defined } from '../../core/defined.ts';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Answer, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { batchFigures } from './batch-figures.ts';
import { countText, text } from './batch-text.ts';
import { dayText, dayTrouble, todayFor } from './bench-dates.ts';
import { writtenOnce } from './bench-twice.ts';
import { findBatch } from './find-lot.ts';
import { by } from './recipe-table.ts';
import { localRules } from './warnings.ts';

type Part = NonNullable<BatchWish['parts']>[number];
type Decision = Result<{ events: readonly BenchEvent[]; value: readonly Moved[] }, Trouble>;

const tooMany = (batch: Batch, count: number, back: boolean): Trouble => {
  const have = back ? tinsOut(batch) : tinsLeft(batch);
  const where = back ? 'out of the house' : 'left';
  const are = have === 1 ? 'is' : 'are';
  const none = back
    ? `No ${batch.container} of ${batch.lot} is out of the house`
    : `No ${batch.container} of ${batch.lot} is left`;
  return {
    code: 'out-of-range',
    text: `${have <= 0 ? none : `Only ${countText(have, batch.container)} of ${batch.lot} ${are} ${where}`}, so not ${count}. Nothing was written down. If the count was wrong: "correct ${batch.lot}: it was ${batch.count + count - Math.max(0, have)} ${batch.container}s, counted again".`,
  };
};

const eventFor = (batch: Batch, wish: BatchWish, on: string, { count, to }: Moved): BenchEvent =>
  wish.action === 'back'
    ? { kind: 'tins-back', lot: batch.lot, count, on, ...defined({ from: to }) }
    : { kind: 'tins-gone', lot: batch.lot, count, how: wish.how ?? 'given', on, ...defined({ to }) };

const gone = (batch: Batch, parts: readonly Part[]): Result<readonly Moved[], Trouble> => {
  let left = tinsLeft(batch);
  const list: Moved[] = [];
  for (const { count, all, to } of parts) {
    const wanted = all ? left : (count ?? 1);
    if (wanted > left || wanted < 1) return fail(tooMany(batch, Math.max(1, wanted), false));
    left -= wanted;
    list.push({ count: wanted, ...defined({ to }) });
  }
  return ok(list);
};

const placeText = ({ to, count }: Place): string => `${to ?? 'a place not noted'} (${count})`;

const whichPlace = (
  batch: Batch,
  { said, places }: Extract<ReturnProblem, { code: 'which-place' }>,
): Trouble => {
  const named = places.find(({ to }) => to !== undefined)?.to ?? 'the fair';
  const why =
    said === undefined ? 'From which place' : `The book does not have so many at ${said}. From which place`;
  return {
    code: 'missing',
    text: `${why} did they come back? Of ${batch.lot} there are out: ${places.map(placeText).join(', ')}. Nothing was written down. Say it with the place: "2 ${batch.container}s of ${batch.lot} came back from ${named}".`,
  };
};

const back = (batch: Batch, parts: readonly Part[]): Result<readonly Moved[], Trouble> => {
  const found = returnsOf(batch, parts);
  if (found.ok) return found;
  const { problem } = found;
  return fail(problem.code === 'too-many' ? tooMany(batch, problem.count, true) : whichPlace(batch, problem));
};

const decide = (bench: Bench, wish: BatchWish, on: string): Decision => {
  const batch = findBatch(wish.lot ?? '', bench);
  if ('code' in batch) return fail(batch);
  if (on < batch.madeOn)
    return fail({
      code: 'out-of-range',
      text: `${batch.lot} was poured on ${dayText(batch.madeOn)}, after ${dayText(on)}. Which day was it?`,
    });
  const parts = (wish.action === 'back' ? back : gone)(batch, wish.parts ?? []);
  if (!parts.ok) return parts;
  return ok({ events: parts.value.map((part) => eventFor(batch, wish, on, part)), value: parts.value });
};

const verbs = {
  given: 'Given out',
  sold: 'Sold',
  used: 'Used up',
  wasted: 'Thrown away',
  kept: 'Kept as a sample',
} as const;

const saidOf = (wish: BatchWish, batch: Batch, { count, to }: Moved): string => {
  const back = wish.action === 'back';
  const verb = back ? 'Back' : verbs[wish.how ?? 'given'];
  const where = to === undefined ? '' : `, ${back ? 'from' : wish.how === 'sold' ? 'at or to' : 'to'} ${to}`;
  return `${verb}: ${countText(count, batch.container)}${where}.`;
};

const keptText =
  'Keep it sealed, labelled and dark until a year after its best before (common practice). Open it only when a complaint comes.';

const pastDate = (batch: Batch, wish: BatchWish, on: string): Warning[] =>
  batch.bestBefore < on && (wish.how === 'given' || wish.how === 'sold')
    ? [
        {
          code: 'past-date',
          text: `${batch.lot} was best before ${dayText(batch.bestBefore)}: ask for it back.`,
        },
      ]
    : [];

const answerFor = (wish: BatchWish, parts: readonly Moved[], state: BookState, on: string): Answer => {
  const batch = benchOf(state).batches.get(lotKey(wish.lot ?? '')) as Batch;
  const left = tinsLeft(batch);
  return {
    title: `${batch.lot}: ${batch.name}`,
    blocks: [
      ...parts.map((part) => text(saidOf(wish, batch, part))),
      text(
        `${left === 0 ? 'None' : left} of ${batch.count} left in the house. Written down for ${dayText(on)}.`,
      ),
      ...(wish.how === 'kept' ? [text(keptText)] : []),
    ],
    figures: batchFigures(batch, state),
    warnings: [...pastDate(batch, wish, on), localRules],
    next: [{ label: `Show ${batch.lot}`, say: `batch ${batch.lot}` }],
  };
};

const twice = (wish: BatchWish): Trouble => ({
  code: 'not-allowed',
  text: `You told me that a moment ago, and I wrote it down. If it happened twice, say it with "another": "gave another 6 tins of ${wish.lot ?? ''} to the fair".`,
});

/** Writes down containers that left the house or came back: all of the places named, or none. */
export const recordGone = async (wish: BatchWish, tools: Tools): Promise<Answer | Trouble> => {
  const today = todayFor(tools);
  const on = wish.on ?? today;
  const wrongDay = dayTrouble(on, today);
  if (wrongDay) return wrongDay;
  const { again, ...same } = wish;
  const changed = await writtenOnce(tools, same, again, () =>
    tools.book.change((state) => decide(benchOf(state), wish, on), by(tools)),
  );
  if (!changed) return twice(wish);
  return changed.ok ? answerFor(wish, changed.value.value, changed.value.state, on) : changed.problem;
};
